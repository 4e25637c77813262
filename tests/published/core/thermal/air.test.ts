import { describe, expect, test } from 'vitest';
import { airAt, airConductivity, airSpecificHeat, airViscosity, type Air } from '#core/thermal/air.ts';

const textbook =
	'Incropera, DeWitt, Bergman, Lavine, Fundamentals of Heat and Mass Transfer, 6th ed. 2007, table A.4 (from memory)';
const equations =
	'Lemmon & Jacobsen, Int. J. Thermophys. 25 (2004) 21–69, check values of dilute air (from memory, 0.9; the looked-up coefficients reproduce them)';

describe(textbook, () => {
	const rows: readonly { item: keyof Air; kelvin: number; expected: number; tolerance: number }[] = [
		{ item: 'viscosity', kelvin: 300, expected: 1.846e-5, tolerance: 0.01 },
		{ item: 'conductivity', kelvin: 300, expected: 0.0263, tolerance: 0.01 },
		{ item: 'specificHeat', kelvin: 300, expected: 1007, tolerance: 0.01 },
		{ item: 'kinematicViscosity', kelvin: 300, expected: 1.589e-5, tolerance: 0.01 },
		{ item: 'diffusivity', kelvin: 300, expected: 2.25e-5, tolerance: 0.01 },
		{ item: 'prandtl', kelvin: 300, expected: 0.707, tolerance: 0.02 },
		{ item: 'viscosity', kelvin: 400, expected: 2.301e-5, tolerance: 0.02 },
		{ item: 'conductivity', kelvin: 400, expected: 0.0338, tolerance: 0.02 },
		{ item: 'viscosity', kelvin: 500, expected: 2.701e-5, tolerance: 0.03 },
		{ item: 'conductivity', kelvin: 500, expected: 0.0407, tolerance: 0.03 },
		{ item: 'viscosity', kelvin: 800, expected: 3.698e-5, tolerance: 0.03 },
		{ item: 'conductivity', kelvin: 800, expected: 0.0573, tolerance: 0.03 },
		{ item: 'viscosity', kelvin: 1000, expected: 4.244e-5, tolerance: 0.03 },
		{ item: 'conductivity', kelvin: 1000, expected: 0.0667, tolerance: 0.03 },
		{ item: 'specificHeat', kelvin: 1000, expected: 1141, tolerance: 0.01 },
		{ item: 'kinematicViscosity', kelvin: 1000, expected: 1.219e-4, tolerance: 0.03 },
		{ item: 'diffusivity', kelvin: 1000, expected: 1.68e-4, tolerance: 0.03 },
		{ item: 'prandtl', kelvin: 1000, expected: 0.726, tolerance: 0.02 },
	];
	test.each(rows)('$item at $kelvin K is $expected', ({ item, kelvin, expected, tolerance }) => {
		const found = airAt({ temperature: kelvin, pressure: 101_325 })[item];
		expect(Math.abs(found / expected - 1)).toBeLessThanOrEqual(tolerance);
	});
});

describe(equations, () => {
	test.each([
		{ property: airViscosity, kelvin: 100, expected: 7.09559e-6 },
		{ property: airViscosity, kelvin: 300, expected: 1.8523e-5 },
		{ property: airConductivity, kelvin: 100, expected: 9.35902e-3 },
		{ property: airConductivity, kelvin: 300, expected: 0.0263529 },
	])('$property.name at $kelvin K is $expected', ({ property, kelvin, expected }) => {
		expect(Math.abs(property(kelvin) / expected - 1)).toBeLessThan(1e-5);
	});
});

describe('outside the range of the formulas', () => {
	test.each([199.9, 2000.1, Number.NaN])('refuses air at %d K', (kelvin) => {
		expect(() => airSpecificHeat(kelvin)).toThrow(RangeError);
	});

	test.each([200, 2000])('accepts air at %d K', (kelvin) => {
		expect(() => airAt({ temperature: kelvin, pressure: 101_325 })).not.toThrow();
	});

	test.each([9_999, 200_001])('refuses a pressure of %d Pa', (pressure) => {
		expect(() => airAt({ temperature: 300, pressure })).toThrow(RangeError);
	});

	test.each([99.9, 2000.1])('refuses a viscosity at %d K', (kelvin) => {
		expect(() => airViscosity(kelvin)).toThrow(RangeError);
	});
});
