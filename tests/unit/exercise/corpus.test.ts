import { expect, test } from 'vitest';
import { markAnswer } from '#exercise/marking/mark.ts';
import { sampleVariant } from '#exercise/variant.ts';
import { readCupboard } from '#tests/support/content.ts';
import { readCorpus } from '#tests/support/corpus.ts';
const cupboard = readCupboard();
test('x', () => {
	let n = 0, ok = 0, okMarks = 0, okSlips = 0;
	for (const { problem, exercise } of readCorpus()) {
		const variant = sampleVariant(exercise, cupboard);
		for (const answer of problem.answers) {
			n++;
			const m = markAnswer(exercise, variant, answer.text, { decimalSign: '.', voltageLetter: 'V' });
			const marks = [...m.steps.map((s) => (s.method ? 'M' : '-') + (s.accuracy ? 'A' : '-') + (s.figures === undefined ? '' : s.figures ? 'S' : '-')), m.unit ? 'U' : '-'].join(' ');
			const found = m.slips.map(({ names }) => names);
			const want = (answer.slips ?? []).map((s) => s.split('|'));
			const slipsOk = want.every((w) => w.includes('') || found.some((f) => f.some((x) => w.includes(x)))) && found.every((f) => want.some((w) => f.some((x) => w.includes(x))));
			const marksOk = marks === answer.marks && m.isRight === answer.right;
			if (marksOk) okMarks++;
			if (slipsOk) okSlips++;
			if (!marksOk || !slipsOk) console.log(`${problem.id}: ${JSON.stringify(answer.text)}\n   want ${answer.marks} ${answer.right} ${answer.slips ?? ''}\n   got  ${marks} ${m.isRight} ${found.map((f) => f.join('|')).join(', ')} ${marksOk ? '' : 'MARKS'}`);
			else ok++;
		}
	}
	console.log({ n, ok, okMarks, okSlips });
	expect(n).toBeGreaterThan(0);
});
