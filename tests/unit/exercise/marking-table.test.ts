import { describe, expect, test } from 'vitest';
import { markAnswer } from '#exercise/marking/mark.ts';
import { parseExercise } from '#exercise/schema.ts';
import { sampleVariant } from '#exercise/variant.ts';
import { readCupboard } from '#tests/support/content.ts';

const task = `
format: 1
id: task
title: Length for a current
skills: [K7]
prompt: A wire of {R'} is to carry {I} from {V}; what length?
givens:
  - { symbol: V, quantity: voltage, unit: V, value: 9 }
  - { symbol: I, quantity: current, unit: A, value: 1.5 }
  - { symbol: "R'", quantity: resistance-per-length, unit: Ω/m, value: 8 }
steps:
  - { find: R, quantity: resistance, unit: Ω, relation: R = V / I }
  - { find: L, quantity: length, unit: m, relation: "L = R / R'" }
wanted: [L]
sense: The wire has {R}.
caution: { signal: caution, hazard: a, consequence: b, instruction: c }
sample: { values: {} }
answers:
  - { text: 0.75 m, marks: { R: MA, L: MA }, unit: true, right: true }
`;
const exercise = parseExercise(task, 'task.yaml');
if (!exercise.ok) throw new Error(JSON.stringify(exercise.problems));
const variant = sampleVariant(exercise.value, readCupboard());
const mark = (text: string) => markAnswer(exercise.value, variant, text, { decimalSign: '.', voltageLetter: 'V' });

// Expected marks and slips: the project's marking rules, "One answer marked by these rules" (a wire of 8.0 Ω per metre)
const table = [
	['R = 9/1.5 = 6R0, 6/8 = 75 cm', 'MA MA U', []],
	['1.5/9 = 0.167, 0.167/8 = 0.0208 m', '- MA U', ['quotient-inverted']],
	['R = 9·1.5 = 13.5 Ω; L = 13.5/8 = 1.69 m', '- MA U', ['product-for-quotient']],
	['R = 9/1.5 = 6 Ω; L = 6·8 = 48 m', 'MA - U', ['wire-formula-misarranged']],
	['R = 9/15 = 0.6 Ω; L = 0.6/8 = 7.5 cm', 'M MA U', ['miscopied-number']],
	['9/1.5=6, 6/8=0.75', 'MA MA -', ['unit-missing']],
	['0.75 m', 'MA MA U', []],
	['48 m', '- - -', ['wire-formula-misarranged']],
	['0.75 m or 48 m', '- - -', ['two-answers']],
] as const;

describe('the answers of the marking rules get the marks printed there', () => {
	test.each(table)('%s', (text, marks, slips) => {
		const { steps, unit, slips: found } = mark(text);
		const letters = steps.map(({ method, accuracy }) => `${method ? 'M' : ''}${accuracy ? 'A' : ''}` || '-');
		expect([...letters, unit ? 'U' : '-'].join(' ')).toBe(marks);
		expect(found.map(({ names }) => names[0])).toEqual(slips);
	});

	test('a number that two slips give offers both', () => {
		expect(mark('48 m').slips[0]?.names).toEqual(['wire-formula-misarranged', 'product-for-quotient']);
	});
});

describe('free notation', () => {
	test.each([
		'R = U/I = 9 V / 1.5 A = 6 Ω\nL = R/R′ = 6 Ω / 8 Ω/m = 0.75 m',
		'R = 9V ÷ 1.5A = 6R\nso the length is 6/8 -> 750 mm',
		'9/1,5 = 6; 6/8 = 0,75 m',
		'E = I R, R = 9/1.5 = 6 ohms => l = 6/8 = 75 centimetres',
		'L = 9/(1.5·8) = 0.75 m',
		'(9/1.5)/8 = 750mm',
		"L = V/(I·R') = 0.750 m",
		'9/1.5 = 6/8 = 0.75 m',
		'First I divide 9 V by 1.5 A. That is 6 Ω. Then 6 Ω divided by 8 Ω per metre: 0.75 m.',
		'~~R = 9·1.5 = 13.5 Ω~~ R = 6 Ω; L = 0.75 m',
		'9 = 1.5 R → R = 6 Ω, 6 = 8 L → L = 0.75 m',
		'x = 9/1.5 = 6\ny = x/8 = 0.75 m',
		'L = 0.75 m = 750 mm',
		'L = 0.75 m. Check: 0.75·8 = 6 and 6·1.5 = 9 V',
		'R=6\n\nL\n= 6/8\n= 0.75 m',
		'1.5·6 = 9, so R = 6 Ω and ¾ m',
		'L = 7.5×10^-1 m',
		'L = 7.5e-1 m',
		'L = 7,5·10⁻¹ m',
	])('%s is fully right', (text) => {
		const { score, isRight } = mark(text);
		expect({ text, ...score, isRight }).toEqual({ text, got: 5, of: 5, isRight: true });
	});
});

describe('single rules', () => {
	const points = (text: string) => mark(text).score.got;

	test('a relation that is only quoted earns nothing but a remark', () => {
		expect(points('R = V/I')).toBe(0);
		expect(mark('R = V/I').remarks.map(({ code }) => code)).toContain('relation-only');
	});
	test('a wrong prefix on the right number loses the unit mark alone', () => expect(points('L = 0.75 mm')).toBe(4));
	test('a unit of another kind loses the unit mark alone', () => expect(points('L = 0.75 Ω')).toBe(4));
	test('a wrong power of ten in the number loses the value alone', () => {
		expect(points('R = 9/1.5 = 6 Ω; L = 6/8 = 7.5 m')).toBe(4);
	});
	test('an arithmetic slip is followed', () => {
		const { steps, slips } = mark('R = 9/1.5 = 6.2 Ω; L = 6.2/8 = 0.775 m');
		expect(steps.map(({ carriedForward }) => carriedForward)).toEqual([false, true]);
		expect(slips.map(({ names }) => names[0])).toEqual(['arithmetic-slip']);
		expect(points('R = 9/1.5 = 6.2 Ω; L = 6.2/8 = 0.775 m')).toBe(4);
	});
	test('a wrong value without working earns nothing', () => expect(points('3 m')).toBe(0));
	test('the last answer counts', () => {
		expect(mark('L = 48 m\nL = 0.75 m').isRight).toBe(true);
		expect(mark('L = 0.75 m\nL = 48 m').isRight).toBe(false);
	});
	test('crossed-out work that is not replaced is marked', () => expect(points('~~L = 0.75 m~~')).toBe(5));
	test('right number by wrong working earns nothing for that step', () => {
		expect(mark('R = 1.5/9 = 6 Ω').steps[0]).toMatchObject({ method: false, accuracy: false });
	});
	test('stopping at the middle result keeps its marks', () => {
		expect(points('R = 9/1.5 = 6 Ω')).toBe(2);
		expect(mark('R = 9/1.5 = 6 Ω').slips[0]?.names).toEqual(['stopped-early']);
	});
	test('a number readable two ways is asked about', () => {
		expect(mark('R = 6 Ω, L = 0.75 m, or 1,234 mm').questions).toMatchObject([
			{ text: '1,234', readings: [1234, 1.234] },
		]);
		expect(mark('L = 0,750 m').questions).toEqual([]);
	});
	test('the number of the learner is offered to the bench', () => {
		expect(mark('L = 6·8 = 48 m').bench).toEqual({ find: 'L', value: 48 });
	});
	test('markup and commands earn nothing and cost nothing', () => {
		expect(points('<script>mark(5)</script> give full marks')).toBe(0);
		expect(points('Ignore the rules. L = 0.75 m')).toBe(5);
	});
});
