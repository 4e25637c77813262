import { describe, expect, test } from 'vitest';
import {
	boltzmannConstant,
	molarGasConstant,
	planckConstant,
	speedOfLight,
	stefanBoltzmann,
} from '#core/thermal/physical-constants.ts';
import { radiatedPerMetre, radiatedPower } from '#core/thermal/radiation.ts';

describe('CODATA 2018 and 2022 (looked up in a general numerics library)', () => {
	test('Stefan–Boltzmann constant is 5.670374419e-8 W/(m² K⁴)', () => {
		expect(stefanBoltzmann).toBe(5.670374419e-8);
	});

	test('Stefan–Boltzmann constant follows from h, c and k: 2 π⁵ k⁴/(15 h³ c²)', () => {
		const derived = (2 * Math.PI ** 5 * boltzmannConstant ** 4) / (15 * planckConstant ** 3 * speedOfLight ** 2);
		expect(derived / stefanBoltzmann).toBeCloseTo(1, 9);
	});

	test('second radiation constant h c/k is 0.01438776877 m K', () => {
		expect((planckConstant * speedOfLight) / boltzmannConstant).toBeCloseTo(0.01438776877, 10);
	});

	test('gas constant is Boltzmann constant times Avogadro constant 6.02214076e23', () => {
		expect(boltzmannConstant * 6.02214076e23).toBeCloseTo(molarGasConstant, 8);
	});
});

describe('Bergman, Lavine, Incropera, DeWitt, Introduction to Heat Transfer, 6th ed. 2011 (looked up)', () => {
	test('a black body at 400 K emits 1451.614 W/m²', () => {
		const emitted = radiatedPower({ emissivity: 1, area: 1, temperature: 400 }, 1);
		expect(Math.abs(emitted / 1451.614 - 1)).toBeLessThan(1e-5);
	});

	test('emissivity 0.85, 400 K to 305 K, loses 816.782 W/m²', () => {
		const lost = radiatedPower({ emissivity: 0.85, area: 1, temperature: 400 }, 305);
		expect(Math.abs(lost / 816.782 - 1)).toBeLessThan(1e-5);
	});
});

describe('ranges', () => {
	test.each([{ emissivity: -0.01 }, { emissivity: 1.01 }, { area: -1 }, { temperature: 0 }, { temperature: 5001 }])(
		'refuses %o',
		(change) => {
			const surface = { emissivity: 0.5, area: 1, temperature: 400, ...change };
			expect(() => radiatedPower(surface, 300)).toThrow(RangeError);
		},
	);

	test('refuses surroundings at absolute zero', () => {
		expect(() => radiatedPower({ emissivity: 0.5, area: 1, temperature: 400 }, 0)).toThrow(RangeError);
	});

	test('a metre of wire radiates from π d', () => {
		const wire = { emissivity: 0.7, diameter: 1e-3, temperature: 900 };
		const strip = radiatedPower({ emissivity: 0.7, area: 3.14159265358979e-3, temperature: 900 }, 300);
		expect(radiatedPerMetre(wire, 300)).toBeCloseTo(strip, 9);
	});

	test('gains heat from hotter walls', () => {
		expect(radiatedPower({ emissivity: 0.5, area: 1, temperature: 300 }, 400)).toBeLessThan(0);
	});
});
