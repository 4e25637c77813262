import { describe, expect, test } from 'vitest';
import { dimensions } from '#core/quantity/dimension.ts';
import { readQuantity, type ReadOptions } from '#core/quantity/read.ts';

function valueOf(typed: string, options?: ReadOptions): number {
	const read = readQuantity(typed, options);
	if (!read.ok) throw new Error(`${typed}: ${JSON.stringify(read.problems)}`);
	return read.value.value;
}

function codesOf(typed: string, options?: ReadOptions): readonly string[] {
	const read = readQuantity(typed, options);
	return read.ok ? [] : read.problems.map(({ code }) => code);
}

describe('numbers are read as people write them', () => {
	test.each([
		['4.8 A', 4.8],
		['4,8 A', 4.8],
		['2·5 A', 2.5],
		['.5 A', 0.5],
		['5. A', 5],
		['−5 A', -5],
		['–5 A', -5],
		['1 200 A', 1200],
		['1\u202F200 A', 1200],
		["1'200 A", 1200],
		['1.234.567 A', 1234567],
		['1,234,567.5 A', 1234567.5],
		['1.234.567,5 A', 1234567.5],
		['0,123 A', 0.123],
		['1.2×10^3 A', 1200],
		['1.2x10^3 A', 1200],
		['3·10^(−7) A', 3e-7],
		['3*10**-7 A', 3e-7],
		['3×10⁻⁷ A', 3e-7],
		['10⁻⁶ A', 1e-6],
		['10^3 A', 1000],
		['3E-07 A', 3e-7],
		['3 EE −7 A', 3e-7],
		['1,234e3 A', 1234],
		['3/4 A', 0.75],
		['½ A', 0.5],
		['2½ A', 2.5],
		['2 1/2 A', 2.5],
		['≈ 5 A', 5],
		['ca. 5 A', 5],
		['\u200B5\u00A0A', 5],
		['５ A', 5],
		['٣٫٥ A', 3.5],
	])('%s', (typed, expected) => {
		expect(valueOf(typed)).toBeCloseTo(expected, 12);
	});
});

describe('units are read in symbols and words', () => {
	test.each([
		['4.8 Ω', 4.8],
		['4.8 \u2126', 4.8],
		['4,8 ohms', 4.8],
		['4.8 Ohm', 4.8],
		['4R8', 4.8],
		['R47', 0.47],
		['47R', 47],
		['4K7', 4700],
		['1M0', 1e6],
		['5L0', 0.005],
		['5 mΩ', 0.005],
		['5 MΩ', 5e6],
		['5 m Ω', 5],
		['5 milliohm', 0.005],
		['5 kilohms', 5000],
		['200 mA', 0.2],
		['6 volts', 6],
		['6 v', 6],
		['3 mV', 0.003],
		['1.09 µΩ·m', 1.09e-6],
		['1.09 \u03BCΩm', 1.09e-6],
		['1.09 Ω·mm²/m', 1.09e-6],
		['1.09 Ωmm²/m', 1.09e-6],
		['8.67 Ω/m', 8.67],
		['8.67 ohm per metre', 8.67],
		['8.67 Ω m⁻¹', 8.67],
		['107 W/m', 107],
		['4 W/cm²', 4e4],
		['4 W/cm2', 4e4],
		['4 W cm^-2', 4e4],
		['16 W/(m K)', 16],
		['0.55 m', 0.55],
		['55 cm', 0.55],
		['16 in', 0.4064],
		['16"', 0.4064],
		['3 ft', 0.9144],
		['5 ft 6 in', 1.6764],
		['5\'6"', 1.6764],
		['45 min', 2700],
		['1 h 30 min', 5400],
		['1:30 h', 5400],
		['2 A·h', 7200],
		['2000 mAh', 7200],
		['3 s', 3],
		['20 °C', 293.15],
		['20 degrees C', 293.15],
		['300 K', 300],
		['212 °F', 373.15],
		['0.00393 1/K', 0.00393],
		['3.93e-3 /K', 0.00393],
		['50 %', 0.5],
	])('%s', (typed, expected) => {
		expect(valueOf(typed) / expected).toBeCloseTo(1, 12);
	});

	test('the unit of the field is taken when none is typed', () => {
		expect(valueOf('0,4', { defaultUnit: 'mm' })).toBeCloseTo(0.0004, 15);
		expect(valueOf('20', { defaultUnit: '°C' })).toBeCloseTo(293.15, 10);
	});

	test('C means degrees where a temperature is asked for, and coulombs elsewhere', () => {
		expect(valueOf('300 C', { dimension: dimensions.temperature })).toBeCloseTo(573.15, 10);
		expect(valueOf('300 C')).toBe(300);
	});

	test('47k is 47 kΩ where a resistance is asked for', () => {
		expect(valueOf('47k', { defaultUnit: 'Ω' })).toBe(47000);
		expect(codesOf('47k')).toEqual(['unit-unknown']);
	});

	test('the prefix and the figures typed are kept for the marking', () => {
		const read = readQuantity('1.20 kΩ');
		expect(read.ok && [read.value.number, read.value.unitFactor, read.value.figures]).toEqual([1.2, 1000, 3]);
	});
});

describe('what cannot be read is told with its place', () => {
	test.each([
		['', 'empty'],
		['   ', 'empty'],
		['abc', 'not-a-number'],
		['W/m', 'not-a-number'],
		['1.2.3 m', 'not-a-number'],
		['12 00 m', 'not-a-number'],
		['--5 m', 'not-a-number'],
		['5 foo', 'unit-unknown'],
		['5 Ω/', 'unit-unknown'],
		['5', 'unit-missing'],
		['1e999 V', 'too-large'],
		['9'.repeat(201), 'too-long'],
	])('%s is %s', (typed, code) => {
		expect(codesOf(typed)).toEqual([code]);
	});

	test('one mark before three digits is asked about unless it is the decimal sign of the page', () => {
		expect(readQuantity('1,234 m')).toEqual({
			ok: false,
			problems: [{ code: 'ambiguous-number', span: { start: 0, end: 5 }, text: '1,234', readings: [1.234, 1234] }],
		});
		expect(valueOf('1,234 m', { decimalSign: ',' })).toBe(1.234);
		expect(codesOf('1.234 m', { decimalSign: ',' })).toEqual(['ambiguous-number']);
		expect(valueOf('1.234 m')).toBe(1.234);
	});

	test('an unknown unit is marked where it stands, also behind characters that vanish', () => {
		expect(readQuantity('5\u200B m foo')).toEqual({
			ok: false,
			problems: [{ code: 'unit-unknown', span: { start: 5, end: 8 }, text: 'foo' }],
		});
	});

	test('a unit of another kind names both kinds', () => {
		expect(readQuantity('5 A', { defaultUnit: 'Ω' })).toEqual({
			ok: false,
			problems: [
				{
					code: 'dimension',
					span: { start: 0, end: 3 },
					expected: dimensions.resistance,
					found: dimensions.current,
				},
			],
		});
	});

	test('a default unit that is no unit is our mistake', () => {
		expect(() => readQuantity('5', { defaultUnit: 'foo' })).toThrow(RangeError);
	});
});
