import { describe, expect, test } from 'vitest';
import { markAnswer } from '#exercise/marking/mark.ts';
import { parseExercise } from '#exercise/schema.ts';
import { sampleVariant } from '#exercise/variant.ts';
import { readCupboard } from '#tests/support/content.ts';

interface Item {
	readonly source: string;
	readonly item: string;
	readonly givens: readonly (readonly [symbol: string, quantity: string, value: number, unit: string])[];
	readonly steps: readonly (readonly [find: string, quantity: string, unit: string, relation: string])[];
	/** the answer as the book prints it */
	readonly printed: string;
	/** a working with the book's numbers, ending in the printed value */
	readonly working: string;
}

const book = 'College Physics 2e (OpenStax)';
const university = 'University Physics Volume 2 (OpenStax)';

// Givens and printed answers as looked up in the books' source texts; the workings are ours
const items: readonly Item[] = [
	{
		source: book,
		item: 'chapter 20, example 20.4',
		givens: [
			['V', 'voltage', 12, 'V'],
			['I', 'current', 2.5, 'A'],
		],
		steps: [['R', 'resistance', 'Ω', 'R = V / I']],
		printed: '4.80 Ω',
		working: 'R = V/I = 12.0 V / 2.50 A = 4.80 Ω',
	},
	{
		source: book,
		item: 'chapter 20, problem 18',
		givens: [
			['V', 'voltage', 3, 'V'],
			['R', 'resistance', 3.6, 'Ω'],
		],
		steps: [['I', 'current', 'A', 'I = V / R']],
		printed: '0.833 A',
		working: 'I = 3.00/3.60 = 0.833 A',
	},
	{
		source: book,
		item: 'chapter 20, problem 20',
		givens: [
			['V', 'voltage', 11, 'V'],
			['I', 'current', 150, 'A'],
		],
		steps: [['R', 'resistance', 'Ω', 'R = V / I']],
		printed: '7.33×10⁻² Ω',
		working: 'R = 11.0/150 = 7.33e-2 ohm',
	},
	{
		source: book,
		item: 'chapter 20, problem 22 (a)',
		givens: [
			['I', 'current', 5, 'A'],
			['R', 'resistance', 0.06, 'Ω'],
		],
		steps: [['V', 'voltage', 'V', 'V = I * R']],
		printed: '0.300 V',
		working: 'U = 5.00 A · 0.0600 Ω = 0.300 V',
	},
	{
		source: book,
		item: 'chapter 20, problem 44 (a)',
		givens: [
			['I', 'current', 5, 'A'],
			['R', 'resistance', 0.06, 'Ω'],
		],
		steps: [['P', 'power', 'W', 'P = I^2 * R']],
		printed: '1.50 W',
		working: 'P = I²R = 5.00²·0.0600 = 1.50 W',
	},
	{
		source: book,
		item: 'chapter 20, problem 24',
		givens: [
			['L', 'length', 20, 'm'],
			['d', 'diameter', 2.053, 'mm'],
			['ρ', 'resistivity', 1.72e-8, 'Ω·m'],
		],
		steps: [
			['A', 'area', 'mm²', 'A = pi * d^2 / 4'],
			['R', 'resistance', 'Ω', 'R = ρ * L / A'],
		],
		printed: '0.104 Ω',
		working: 'A = π·(2.053 mm)²/4 = 3.31 mm²; R = 1.72×10⁻⁸·20.0/3.31e-6 = 0.104 Ω',
	},
	{
		source: university,
		item: 'chapter 9, additional problem 75',
		givens: [
			['L', 'length', 5, 'm'],
			['A', 'area', 16.8, 'mm²'],
			['R', 'resistance', 5.1, 'mΩ'],
		],
		steps: [['ρ', 'resistivity', 'Ω·m', 'ρ = R * A / L']],
		printed: '1.71×10⁻⁸ Ω·m',
		working: 'ρ = RA/L = 5.10e-3·16.8e-6/5.00 = 1.71e-8 Ω m',
	},
	{
		source: book,
		item: 'chapter 20, example 20.7, cold filament',
		givens: [
			['V', 'voltage', 12, 'V'],
			['R', 'resistance', 0.35, 'Ω'],
		],
		steps: [['P', 'power', 'W', 'P = V^2 / R']],
		printed: '411 W',
		working: 'P = V²/R = 12.0²/0.350 = 411 W',
	},
];

function exerciseOf({ givens, steps }: Item) {
	const parsed = parseExercise(
		JSON.stringify({
			format: 1,
			id: 'book',
			title: 'A textbook problem',
			skills: ['K4'],
			prompt: 'As in the book.',
			givens: givens.map(([symbol, quantity, value, unit]) => ({ symbol, quantity, value, unit })),
			steps: steps.map(([find, quantity, unit, relation]) => ({ find, quantity, unit, relation })),
			wanted: steps.slice(-1).map(([find]) => find),
			sense: 'As in the book.',
			caution: { signal: 'caution', hazard: '-', consequence: '-', instruction: '-' },
			sample: { values: {} },
			answers: [{ text: '-', marks: {}, unit: false, right: false }],
		}),
		'book.yaml',
	);
	if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
	return parsed.value;
}

const cupboard = readCupboard();
const options = { decimalSign: '.', voltageLetter: 'V' } as const;

describe.each(items)('$source, $item', (item) => {
	const exercise = exerciseOf(item);
	const variant = sampleVariant(exercise, cupboard);

	test.each([item.printed, item.working])('%s gets full marks', (text) => {
		const { score, isRight } = markAnswer(exercise, variant, text, options);
		expect({ text, got: score.got, isRight }).toEqual({ text, got: score.of, isRight: true });
	});

	test('twice the printed number is not right', () => {
		const [number = '', ...unit] = item.printed.split(' ');
		const twice = `${number}·2 = ${2 * Number(number.replace('×10⁻²', 'e-2').replace('×10⁻⁸', 'e-8'))} ${unit.join(' ')}`;
		expect(markAnswer(exercise, variant, twice, options).isRight).toBe(false);
	});
});
