import { describe, expect, test } from 'vitest';
import { awgDiameter, swgDiameter } from '#core/quantity/gauge.ts';

const astm = 'ASTM B258, nominal diameters in mils rounded to 0.1 mil; from memory';
const handbook = 'AWG wire tables by ASTM B258, diameters in mm; from memory';
const british = 'BS 3737:1964, diameters in inches; a reprint was looked up';

const mil = 25.4e-6;

describe('American wire gauge', () => {
	test.each([
		{ source: astm, item: 'No. 10', inputs: 10, expected: 101.9, tolerance: 0.051 },
		{ source: astm, item: 'No. 18', inputs: 18, expected: 40.3, tolerance: 0.051 },
		{ source: astm, item: 'No. 22', inputs: 22, expected: 25.3, tolerance: 0.051 },
		{ source: astm, item: 'No. 24', inputs: 24, expected: 20.1, tolerance: 0.051 },
		{ source: astm, item: 'No. 28', inputs: 28, expected: 12.6, tolerance: 0.051 },
		{ source: astm, item: 'No. 30', inputs: 30, expected: 10.0, tolerance: 0.051 },
		{ source: astm, item: 'No. 36', inputs: 36, expected: 5.0, tolerance: 0.0001 },
		{ source: astm, item: 'No. 40', inputs: 40, expected: 3.1, tolerance: 0.051 },
	])('$item, mils', ({ inputs, expected, tolerance }) => {
		expect(Math.abs(awgDiameter(inputs) / mil - expected)).toBeLessThanOrEqual(tolerance);
	});

	test.each([
		{ source: handbook, item: 'No. 36', inputs: 36, expected: 0.127, tolerance: 0.0005 },
		{ source: handbook, item: 'No. 30', inputs: 30, expected: 0.2546, tolerance: 0.0005 },
		{ source: handbook, item: 'No. 28', inputs: 28, expected: 0.3211, tolerance: 0.0005 },
		{ source: handbook, item: 'No. 24', inputs: 24, expected: 0.5106, tolerance: 0.0005 },
		{ source: handbook, item: 'No. 20', inputs: 20, expected: 0.8118, tolerance: 0.0005 },
		{ source: handbook, item: 'No. 10', inputs: 10, expected: 2.588, tolerance: 0.0005 },
	])('$item, mm', ({ inputs, expected, tolerance }) => {
		expect(Math.abs((awgDiameter(inputs) * 1000) / expected - 1)).toBeLessThanOrEqual(tolerance);
	});
});

describe('British standard wire gauge', () => {
	test.each([
		{ source: british, item: 'No. 0', inputs: 0, expected: 0.324 },
		{ source: british, item: 'No. 10', inputs: 10, expected: 0.128 },
		{ source: british, item: 'No. 16', inputs: 16, expected: 0.064 },
		{ source: british, item: 'No. 22', inputs: 22, expected: 0.028 },
		{ source: british, item: 'No. 24', inputs: 24, expected: 0.022 },
		{ source: british, item: 'No. 30', inputs: 30, expected: 0.0124 },
		{ source: british, item: 'No. 36', inputs: 36, expected: 0.0076 },
		{ source: british, item: 'No. 40', inputs: 40, expected: 0.0048 },
		{ source: british, item: 'No. 50', inputs: 50, expected: 0.001 },
	])('$item', ({ inputs, expected }) => {
		expect(swgDiameter(inputs) / 0.0254).toBeCloseTo(expected, 9);
	});

	// BS 3737: steps of 0.4 mil from No. 49 to No. 39 and of 0.8 mil from No. 39 to No. 30
	test.each([
		{ source: british, item: 'No. 49 to 39', inputs: [39, 49], expected: 0.4 },
		{ source: british, item: 'No. 39 to 30', inputs: [30, 39], expected: 0.8 },
	])('equal steps, $item', ({ inputs: [from = 0, to = 0], expected }) => {
		for (let number = from; number < to; number++) {
			expect((swgDiameter(number) - swgDiameter(number + 1)) / mil).toBeCloseTo(expected, 6);
		}
	});
});
