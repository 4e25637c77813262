import { describe, expect, test } from 'vitest';
import { fromCelsius, resistanceRatioAt, resistivityAt } from '#core/material/material.ts';
import { materials } from '#core/material/materials.ts';
import { awgDiameter, swgDiameter } from '#core/quantity/gauge.ts';

const iec = 'IEC 60028:1925; definitions looked up in JIS C 3001, coefficient from a handbook table';
const crc = 'CRC Handbook of Chemistry and Physics, section 15, Wire Tables, p. 15-37; looked up';
const astmNickel = 'ASTM B344, nominal resistivity; from memory';
const astmIron = 'ASTM B603, Table 1, resistivity range; looked up in the public preview';
const chinese = 'GB/T 1234, property table; a reprint was looked up';
const matula = 'R. A. Matula, J. Phys. Chem. Ref. Data 8 (1979) 1147; a data file was looked up';
const forsythe = 'W. E. Forsythe and A. G. Worthing, Astrophys. J. 61 (1925) 146; a copy of the table was looked up';
const npl = 'BISRA/NPL, Physical Constants of Some Commercial Steels (1953), 0.06 % C steel; from memory';

const copper = materials['cu-etp'];
const nichrome = materials['nicr-80-20'];

/** 1 Ω·circular mil per foot in Ω·m. */
const ohmCircularMilPerFoot = ((Math.PI / 4) * 25.4e-6 ** 2) / 0.3048;

function perMetre(resistivity: number, diameter: number): number {
	return resistivity / ((Math.PI / 4) * diameter ** 2);
}

function isClose(found: number, expected: number, tolerance: number): void {
	expect(Math.abs(found / expected - 1), `${found} against ${expected}`).toBeLessThanOrEqual(tolerance);
}

describe('resistivity at 20 °C, Ω·m', () => {
	test.each([
		{ source: iec, item: 'annealed copper, 1/58 Ω·mm²/m', inputs: copper, expected: 1.7241e-8, tolerance: 3e-5 },
		{ source: crc, item: '79Ni-21Cr, a near alloy', inputs: nichrome, expected: 1.075e-6, tolerance: 0.02 },
		{
			source: astmNickel,
			item: '80Ni-20Cr, 650 Ω·circular mil per foot',
			inputs: nichrome,
			expected: 650 * ohmCircularMilPerFoot,
			tolerance: 0.01,
		},
		{
			source: astmNickel,
			item: '60Ni-16Cr, 675 Ω·circular mil per foot',
			inputs: materials['nicr-60-15'],
			expected: 675 * ohmCircularMilPerFoot,
			tolerance: 0.003,
		},
		{ source: chinese, item: 'Cr20Ni80', inputs: nichrome, expected: 1.09e-6, tolerance: 1e-9 },
		{ source: chinese, item: 'Cr30Ni70', inputs: materials['nicr-70-30'], expected: 1.18e-6, tolerance: 1e-9 },
		{ source: chinese, item: 'Cr15Ni60', inputs: materials['nicr-60-15'], expected: 1.11e-6, tolerance: 0.01 },
		{ source: chinese, item: '0Cr25Al5', inputs: materials['cral-25-5'], expected: 1.42e-6, tolerance: 0.015 },
		{ source: chinese, item: '0Cr23Al5', inputs: materials['cral-20-5'], expected: 1.35e-6, tolerance: 0.015 },
		{
			source: 'JIS C 2521:1999, class CN49; looked up',
			item: 'copper-nickel',
			inputs: materials['cuni-44'],
			expected: 0.49e-6,
			tolerance: 1e-9,
		},
		{ source: crc, item: 'tungsten', inputs: materials.w, expected: 5.28e-8, tolerance: 1e-9 },
	])('$item', ({ inputs, expected, tolerance }) => {
		isClose(inputs.resistivity.value, expected, tolerance);
	});

	test.each([
		{ source: astmIron, item: '20-24 Cr, 5.00-6.00 Al', inputs: materials['cral-25-5'], expected: [1.35e-6, 1.5e-6] },
		{ source: astmIron, item: '20-24 Cr, 4.00-5.25 Al', inputs: materials['cral-20-5'], expected: [1.3e-6, 1.44e-6] },
	])('$item lies in the range of the standard', ({ inputs, expected: [from, to] }) => {
		expect(inputs.resistivity.value).toBeGreaterThanOrEqual(from ?? Number.NaN);
		expect(inputs.resistivity.value).toBeLessThanOrEqual(to ?? Number.NaN);
	});
});

describe('resistance per metre at 20 °C, Ω/m', () => {
	test.each([
		{
			source: 'AWG tables for annealed copper; from memory',
			item: 'copper AWG 24',
			inputs: [copper.resistivity.value, awgDiameter(24)],
			expected: 0.0842,
			tolerance: 0.002,
		},
		{
			source: 'handbook wire table, nickel-chromium of 1.08 µΩ·m; looked up',
			item: 'nickel-chromium SWG 22',
			inputs: [nichrome.resistivity.value, swgDiameter(22)],
			expected: 2.72,
			tolerance: 0.015,
		},
		{
			source: chinese,
			item: 'Cr20Ni80, 0.50 mm, 1.09 Ω·mm²/m over 0.19635 mm²',
			inputs: [nichrome.resistivity.value, 0.5e-3],
			expected: 5.551,
			tolerance: 0.0005,
		},
	])('$item', ({ inputs: [resistivity = 0, diameter = 0], expected, tolerance }) => {
		isClose(perMetre(resistivity, diameter), expected, tolerance);
	});
});

describe('resistance when hot', () => {
	test.each([
		{
			source: iec,
			item: 'copper at 75 °C, 1 + 0.00393 · 55',
			inputs: { material: copper, at: 75 },
			expected: 1.21615,
			tolerance: 0.01,
		},
		{
			source: matula,
			item: 'copper at 400 K over 293 K',
			inputs: { material: copper, at: 126.85 },
			expected: 2.402 / 1.678,
			tolerance: 0.01,
		},
		{
			source: crc,
			item: '79Ni-21Cr, 100 °C over 20 °C',
			inputs: { material: nichrome, at: 100 },
			expected: 108.3 / 107.5,
			tolerance: 0.001,
		},
		{
			source: crc,
			item: '60Cu-40Ni, 100 °C over 20 °C',
			inputs: { material: materials['cuni-44'], at: 100 },
			expected: 45.11 / 45.38,
			tolerance: 0.001,
		},
		{
			source: crc,
			item: 'tungsten, 100 °C over 20 °C',
			inputs: { material: materials.w, at: 100 },
			expected: 7.18 / 5.28,
			tolerance: 0.002,
		},
	])('$item', ({ inputs, expected, tolerance }) => {
		isClose(resistanceRatioAt(inputs.material, fromCelsius(inputs.at)), expected, tolerance);
	});

	test.each([
		// the 1925 filament reads 3–4 % above modern values
		{
			source: forsythe,
			item: 'tungsten at 1000 K',
			inputs: { material: materials.w, at: 726.85 },
			expected: 24.93e-8,
			tolerance: 0.04,
		},
		{
			source: forsythe,
			item: 'tungsten at 2000 K',
			inputs: { material: materials.w, at: 1726.85 },
			expected: 56.67e-8,
			tolerance: 0.04,
		},
		{
			source: npl,
			item: 'steel at 300 °C',
			inputs: { material: materials['soft-steel'], at: 300 },
			expected: 34.1e-8,
			tolerance: 0.03,
		},
		{
			source: npl,
			item: 'steel at 500 °C',
			inputs: { material: materials['soft-steel'], at: 500 },
			expected: 57.5e-8,
			tolerance: 0.03,
		},
		{
			source: npl,
			item: 'steel at 700 °C',
			inputs: { material: materials['soft-steel'], at: 700 },
			expected: 89.8e-8,
			tolerance: 0.03,
		},
		{
			source: 'ASM / Peckner and Bernstein, Handbook of Stainless Steels (1977), type 304; from memory',
			item: 'X5CrNi18-10 at 650 °C',
			inputs: { material: materials['x5crni18-10'], at: 650 },
			expected: 116e-8,
			tolerance: 0.03,
		},
		// every table agrees on 1.13–1.16 µΩ·m between 800 and 1000 °C, whatever the state when cold
		{
			source: chinese,
			item: 'Cr20Ni80 at 900 °C',
			inputs: { material: nichrome, at: 900 },
			expected: 1.145e-6,
			tolerance: 0.013,
		},
	])('$item, Ω·m', ({ inputs, expected, tolerance }) => {
		isClose(resistivityAt(inputs.material, fromCelsius(inputs.at)), expected, tolerance);
	});

	test('the temperature coefficient of copper near 20 °C is 0.00393 per kelvin within 3 % (IEC 60028)', () => {
		const slope = (resistanceRatioAt(copper, fromCelsius(40)) - 1) / 20;
		isClose(slope, 0.00393, 0.03);
	});
});
