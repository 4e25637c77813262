import { describe, expect, test } from 'vitest';
import { readChains } from '#core/expression/chain.ts';
import { evaluate } from '#core/expression/evaluate.ts';
import type { Vocabulary } from '#core/expression/expression.ts';
import { parseExpression } from '#core/expression/parse.ts';

const values: Readonly<Record<string, number>> = { V: 12, I: 2, R: 5, "R'": 8, L: 0.5, P: 32 };
const units: Readonly<Record<string, number>> = {
	V: 1,
	A: 1,
	mA: 1e-3,
	Ω: 1,
	R: 1,
	'Ω/m': 1,
	m: 1,
	mm: 1e-3,
	'mm^2': 1e-6,
	'Ω·mm^2/m': 1e-6,
};
const vocabulary: Vocabulary = {
	symbol: (name) => (name in values ? name : undefined),
	unit: (text) => (units[text] === undefined ? undefined : { factor: units[text] }),
};

function value(text: string): number {
	const parsed = parseExpression(text, vocabulary);
	if (!parsed.ok) throw new Error(`${text}: ${JSON.stringify(parsed.problems)}`);
	return evaluate(parsed.value, (symbol) => values[symbol]);
}

// expected values worked by hand
describe('formulas as people write them', () => {
	test.each([
		['V/I', 6],
		['V ÷ I', 6],
		['I²R', 20],
		['I^2 * R', 20],
		['I**2·R', 20],
		['IR', 10],
		['2I', 4],
		['2√4', 4],
		["√(P/R')", 2],
		["sqrt(P/R')", 2],
		['(2+3)(4−1)', 15],
		['V/IR', 1.2],
		['-3 + 5', 2],
		['2^-2', 0.25],
		['10⁻³', 0.001],
		['6 ∥ 3', 2],
		['6||3', 2],
		['12 V / 2.5 A', 4.8],
		['12 V / 750 mA', 16],
		['4R8', 4.8],
		['4K7', 4700],
		['5L0', 0.005],
		['1M0', 1e6],
		['47R', 47],
		['5. + .5', 5.5],
		['1 200', 1200],
		["1'200", 1200],
		['1,234,567', 1234567],
		['1,234.5', 1234.5],
		['2,5', 2.5],
		['1.2×10^3', 1200],
		['1.2x10^3', 1200],
		['1.2*10**-3', 0.0012],
		['1.2·10⁻³', 0.0012],
		['3e-7', 3e-7],
		['3E-07', 3e-7],
		['2½', 2.5],
		['2 1/2', 2.5],
		['8 Ω/m * 0.5 m', 4],
		["4.8 Ω / R'", 0.6],
		['5 mm2', 5e-6],
		['1.1 Ω·mm²/m', 1.1e-6],
		['３ ＋ ４', 7],
		['5 times 3', 15],
		['9 divided by 3', 3],
	])('%s', (text, expected) => expect(value(text)).toBeCloseTo(expected, 12));
});

describe('what cannot be read says where', () => {
	test.each([
		['V / (I', 'bracket-open', 4],
		['V / J', 'unknown-name', 4],
		['', 'expected-value', 0],
		['V I )', 'unexpected', 4],
		['J', 'unknown-name', 0],
		['('.repeat(60) + '1' + ')'.repeat(60), 'too-deep', 40],
	])('%s', (text, code, start) => {
		const parsed = parseExpression(text, vocabulary);
		expect(parsed.ok ? [] : parsed.problems).toMatchObject([{ code, span: { start } }]);
	});
});

test('every node knows its place', () => {
	const parsed = parseExpression('V / (I + 2 A)', vocabulary);
	if (!parsed.ok || parsed.value.kind !== 'quotient') throw new Error('not a quotient');
	expect(parsed.value.left.span).toEqual({ start: 0, end: 1 });
	expect(parsed.value.right.span).toEqual({ start: 4, end: 13 });
});

describe('a text twice as long takes about twice the look-ups of names', () => {
	// far more than any of these needs; a reader that tries everything again would not come back
	const most = 1e6;
	function lookUps(text: string): number {
		let count = 0;
		const look = () => {
			count += 1;
			if (count > most) throw new RangeError(`more than ${most} look-ups`);
		};
		readChains(
			text,
			{
				symbol: (name) => {
					look();
					return vocabulary.symbol(name);
				},
				unit: (name) => {
					look();
					return vocabulary.unit(name);
				},
			},
			{ decimalSign: '.' },
		);
		return count;
	}
	test.each(['(R+', '√R ', 'R^', 'R^(', 'R(', 'R-R=', 'VIVIVIR', '2 V 3 ', 'R+(R*', '~R~', 'V/I/', 'J '])(
		'%s',
		(part) => {
			const once = lookUps(part.repeat(400));
			expect(once).toBeGreaterThan(0);
			expect(lookUps(part.repeat(800)) / once).toBeLessThan(2.2);
		},
	);
});
