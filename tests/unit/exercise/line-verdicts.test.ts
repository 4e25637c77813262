import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { markAnswer } from '#exercise/marking/mark.ts';
import { parseExercise } from '#exercise/schema.ts';
import { sampleVariant } from '#exercise/variant.ts';
import { readCupboard } from '#tests/support/content.ts';

function marked(file: string, text: string) {
	const exercise = parseExercise(readFileSync(`src/content/lessons/${file}`, 'utf8'), file);
	if (!exercise.ok) throw new Error(JSON.stringify(exercise.problems));
	const variant = sampleVariant(exercise.value, readCupboard());
	return markAnswer(exercise.value, variant, text, { decimalSign: '.', voltageLetter: 'V' });
}

// the sample: 12 V drive 2.5 A, so R = 4.8 Ω
const ohms = (text: string) => marked('03-solve-for-resistance/1-volts-and-amperes.yaml', text);
// the sample: 12 V on 6 Ω, the label says 5 A, so 2 A flow and the ceiling is 4 A
const ceiling = (text: string) => marked('02-choose-a-current/2-what-really-flows.yaml', text);
const verdicts = ({ lines }: ReturnType<typeof marked>) => lines.map(({ verdict }) => verdict);

test.each([
	['R = 12 V / 2.5 A = 4.8 Ω', 'right'],
	['R = 12 V / 2.5 A = 4.8 A', 'unit-not'],
	['R = 12 V / 2.5 A = 4.8 kohm', 'unit-not'],
	['R = 12 V / 2.5 A = 4.8', 'unit-not'],
])('the verdict on %s is %s', (text, verdict) => {
	expect(verdicts(ohms(text))).toEqual([verdict]);
});

test('what the choice is held against is part of the work', () => {
	expect(verdicts(ceiling('I = 12/6 = 2 A\n0.8*5.0 A = 4.0 A\nunder'))).toEqual(['right', 'right']);
	expect(verdicts(ceiling('I = 12/6 = 2 A\n0.7*5.0 A = 3.5 A\nunder'))).not.toEqual(['right', 'right']);
});

test('a relation only quoted does not stand in for a sum with other numbers', () => {
	const { steps } = ohms('R = V/I = 2.0 V * 0.33 A');
	expect(steps.map(({ method }) => method)).toEqual([false]);
});
