import { describe, expect, test } from 'vitest';
import { quantityParts, writeNumber, writeQuantity, type WriteOptions, writeUncertain } from '#core/quantity/write.ts';

function written(value: number, unit: string, options?: WriteOptions): string {
	return writeQuantity(value, unit, options).replaceAll(/[\u202F\u00A0]/g, '_');
}

describe('quantities are written with three figures and the prefix that suits', () => {
	test.each([
		[0.554, 'm', '554_mm'],
		[0.0004, 'm', '0.400_mm'],
		[0.9996, 'm', '1.00_m'],
		[1.25, 'm', '1.25_m'],
		[4.8, 'Ω', '4.80_Ω'],
		[0.035, 'Ω', '35.0_mΩ'],
		[4700, 'Ω', '4.70_kΩ'],
		[0.68, 'A', '0.680_A'],
		[0.002, 'A', '2.00_mA'],
		[1.09e-6, 'Ω·m', '1.09_µΩ·m'],
		[8.67, 'Ω/m', '8.67_Ω/m'],
		[873.15, '°C', '600_°C'],
		[293.15, '°C', '20.0_°C'],
		[40000, 'W/cm²', '4.00_W/cm²'],
		[7200, 'A·h', '2.00_A·h'],
		[-5, 'V', '−5.00_V'],
		[0, 'A', '0_A'],
	])('%s %s', (value, unit, expected) => {
		expect(written(value, unit)).toBe(expected);
	});

	test('a decimal comma, more figures, fixed decimals, inches and a kept unit by wish', () => {
		expect(written(4.8, 'Ω', { decimalSign: ',' })).toBe('4,80_Ω');
		expect(written(4.8123, 'Ω', { figures: 4 })).toBe('4.812_Ω');
		expect(written(2, 'A', { decimals: 1 })).toBe('2.0_A');
		expect(written(0.4064, 'm', { lengthUnit: 'inch' })).toBe('16.0_in');
		expect(written(0.5, 'm', { keepUnit: true })).toBe('0.500_m');
	});

	test('number and unit come apart for typesetting', () => {
		expect(quantityParts(0.554, 'm')).toEqual({ number: '554', unit: 'mm', text: '554\u00A0mm' });
	});

	test('long numbers are grouped from five digits on, and very large or small ones get a power of ten', () => {
		expect(writeNumber(9876, { figures: 4 })).toBe('9876');
		expect(writeNumber(98765, { figures: 5 })).toBe('98\u202F765');
		expect(writeNumber(-1.2e-7, { figures: 2 })).toBe('−1.2\u202F×\u202F10⁻⁷');
		expect(writeNumber(2.5e9, { decimalSign: ',' })).toBe('2,50\u202F×\u202F10⁹');
	});

	test('no minus before a zero', () => {
		expect(writeNumber(-0.001, { decimals: 1 })).toBe('0.0');
	});

	test('what is no number, or has too many figures, is our mistake', () => {
		expect(() => writeQuantity(Number.NaN, 'V')).toThrow(RangeError);
		expect(() => writeQuantity(1, 'foo')).toThrow(RangeError);
		expect(() => writeNumber(1, { figures: 16 })).toThrow(RangeError);
	});
});

test.each([
	[1.0012, 0.0608, '1.00 ± 0.06'],
	[12.004, 0.73, '12.0 ± 0.7'],
	[3.812, 0.19, '3.81 ± 0.19'],
	[3.812, 0.24, '3.8 ± 0.2'],
	[25.3, 0.096, '25.30 ± 0.10'],
	[1234, 57, '1230 ± 60'],
	[1234, 140, '1230 ± 140'],
	[0.0312, 0.0004, '0.0312 ± 0.0004'],
])('%f with an uncertainty of %f is written %s', (value, uncertainty, written) => {
	expect(writeUncertain(value, uncertainty)).toBe(written);
});

test('an uncertainty of nothing cannot be written', () => {
	expect(() => writeUncertain(1, 0)).toThrow(RangeError);
});
