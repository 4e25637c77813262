import { describe, expect, test } from 'vitest';
import { cie1931 } from '#core/thermal/cie-1931.ts';
import {
	blackBodyChromaticity,
	blackBodyRadiance,
	draperPoint,
	encodeSrgb,
	glowLuminance,
	linearSrgb,
} from '#core/thermal/glow.ts';

function uv(kelvin: number): readonly [number, number] {
	const { x, y } = blackBodyChromaticity(kelvin);
	const scale = -2 * x + 12 * y + 3;
	return [(4 * x) / scale, (6 * y) / scale];
}

test('black body at 800 K, 4 µm: 1 311 694 129.743 W/(m² sr m) – example of a heat-transfer library (looked up)', () => {
	expect(Math.abs(blackBodyRadiance(4e-6, 800) / 1_311_694_129.7430933 - 1)).toBeLessThan(1e-6);
});

test('Wien displacement: radiance peaks at 0.002897771955 m K – CODATA 2018 (looked up)', () => {
	const peak = 0.002897771955 / 1200;
	for (const factor of [0.999, 1.001]) {
		expect(blackBodyRadiance(peak, 1200)).toBeGreaterThan(blackBodyRadiance(peak * factor, 1200));
	}
});

describe('Robertson, J. Opt. Soc. Am. 58 (1968) 1528–1535, isotemperature table (looked up)', () => {
	test.each([
		{ mired: 600, u: 0.33724, v: 0.36051 },
		{ mired: 500, u: 0.30505, v: 0.35907 },
		{ mired: 350, u: 0.25591, v: 0.34951 },
		{ mired: 150, u: 0.19962, v: 0.30921 },
	])('$mired reciprocal megakelvin: u $u, v $v', ({ mired, u, v }) => {
		const found = uv(1e6 / mired);
		expect(Math.abs(found[0] - u)).toBeLessThan(2e-5);
		expect(Math.abs(found[1] - v)).toBeLessThan(2e-5);
	});
});

describe('Kelly, J. Opt. Soc. Am. 53 (1963) 999; Wyszecki & Stiles, Color Science, 2nd ed. (from memory, 0.97)', () => {
	test.each([
		{ kelvin: 1000, x: 0.6528, y: 0.3444 },
		{ kelvin: 1500, x: 0.5857, y: 0.3931 },
		{ kelvin: 2000, x: 0.5267, y: 0.4133 },
		{ kelvin: 2856, x: 0.4475, y: 0.4074 },
		{ kelvin: 6500, x: 0.3135, y: 0.3237 },
	])('$kelvin K: x $x, y $y', ({ kelvin, x, y }) => {
		const found = blackBodyChromaticity(kelvin);
		expect(Math.abs(found.x - x)).toBeLessThan(1.5e-4);
		expect(Math.abs(found.y - y)).toBeLessThan(1.5e-4);
	});
});

test('illuminant A, a black body at 2855.5 K in today’s constants: x 0.44758, y 0.40745 – CIE 15 (looked up)', () => {
	// CIE 15 defines A as 2848 K with c₂ = 1.435e-2 m K, which is 2848 · 1.438776877/1.435 K now
	const { x, y } = blackBodyChromaticity((2848 * 1.438776877) / 1.435);
	expect(Math.abs(x - 0.44758)).toBeLessThan(1.5e-4);
	expect(Math.abs(y - 0.40745)).toBeLessThan(1.5e-4);
});

describe('CIE 1931 observer', () => {
	test('has 95 rows from 360 to 830 nm and peaks in y at 555 nm with 1.000 – CIE 018', () => {
		expect(cie1931.map(([nanometres]) => nanometres)).toEqual(Array.from({ length: 95 }, (_, i) => 360 + 5 * i));
		const brightest = cie1931.reduce((most, row) => (row[2] > most[2] ? row : most));
		expect(brightest[0]).toBe(555);
		expect(brightest[2]).toBeCloseTo(1, 3);
	});
});

describe('Draper point', () => {
	test('is 798 K ± 1 – Draper, Phil. Mag. 1847, 345–359, 977 °F (looked up)', () => {
		expect(Math.abs(draperPoint - 798)).toBeLessThan(1);
		expect(Math.abs(draperPoint - ((977 - 32) / 1.8 + 273.15))).toBeLessThan(0.01);
	});

	test('a black body there shows 0.0076 cd/m² – CIE 1931 with Planck’s law (derived, 0.97)', () => {
		expect(Math.abs(glowLuminance(798.15, 1) / 0.0076 - 1)).toBeLessThan(0.02);
	});
});

describe('IEC 61966-2-1:1999 (looked up in a colour library)', () => {
	test('white of D65 is 1, 1, 1', () => {
		for (const channel of linearSrgb({ X: 0.9505, Y: 1, Z: 1.089 })) expect(Math.abs(channel - 1)).toBeLessThan(1e-3);
	});

	test('red of the screen, XYZ 0.4124, 0.2126, 0.0193, is 1, 0, 0', () => {
		const [red, green, blue] = linearSrgb({ X: 0.4124, Y: 0.2126, Z: 0.0193 });
		expect(red).toBeCloseTo(1, 3);
		expect(green).toBeCloseTo(0, 3);
		expect(blue).toBeCloseTo(0, 3);
	});

	test.each([
		{ linear: 0.18, expected: 0.4613561 },
		{ linear: 0.5, expected: 0.735357 },
		{ linear: 0.0031308, expected: 0.0404499 },
		{ linear: 0.214041, expected: 0.5 },
	])('encodes $linear as $expected', ({ linear, expected }) => {
		expect(Math.abs(encodeSrgb(linear) - expected)).toBeLessThan(1e-6);
	});
});
