import { describe, expect, test } from 'vitest';
import { wireProfile, type HeatedRod } from '#core/thermal/profile.ts';

/** A rod of constant properties, for closed forms. */
function rod(given: { k: number; diameter: number; loss: number; resistivity: number }): HeatedRod {
	const area = (Math.PI / 4) * given.diameter ** 2;
	return {
		room: { temperature: 293.15 },
		hottest: 5000,
		heatLoss: (temperature) => given.loss * (temperature - 293.15),
		resistancePerMetre: () => given.resistivity / area,
		conductance: () => given.k * area,
	};
}

describe('Joule-heated wire between clips at air temperature, closed form (derived from the fin equation)', () => {
	const wire = rod({ k: 20, diameter: 0.2e-3, loss: 0.03, resistivity: 1e-6 });
	const clipped = { clipTemperature: 293.15, drive: 1 };

	test('40 mm: the middle rises 1034.1957 K and the mean 818.3221 K', () => {
		const found = wireProfile(wire, { ...clipped, length: 0.04 });
		expect(Math.abs(found.middle - 293.15 - 1034.1957)).toBeLessThan(0.1);
		expect(Math.abs(found.mean - 293.15 - 818.3221)).toBeLessThan(0.1);
	});

	test('6 mm: the middle rises 193.229 K', () => {
		const found = wireProfile(wire, { ...clipped, length: 0.006 });
		expect(Math.abs(found.middle - 293.15 - 193.229)).toBeLessThan(0.1);
	});

	test('both clips take 2 k A m θ tanh(mL/2)', () => {
		const area = (Math.PI / 4) * 0.2e-3 ** 2;
		const m = Math.sqrt(0.03 / (20 * area));
		const rise = 1e-6 / area / 0.03;
		const expected = 2 * 20 * area * m * rise * Math.tanh((m * 0.04) / 2);
		const found = wireProfile(wire, { ...clipped, length: 0.04 });
		expect(Math.abs(found.clipLoss / expected - 1)).toBeLessThan(2e-3);
	});
});

describe('rod fins without current: a warm clip cools along the rod', () => {
	/** Heat into one end of a rod so long that its middle feels nothing. */
	function endHeat(k: number): number {
		const fin = rod({ k, diameter: 5e-3, loss: 100 * Math.PI * 5e-3, resistivity: 1e-6 });
		return -wireProfile(fin, { length: 3, clipTemperature: 293.15 + 75, drive: 0 }).clipLoss / 2;
	}

	test.each([
		{ metal: 'copper', k: 398, expected: 8.3 },
		{ metal: 'aluminium alloy', k: 180, expected: 5.6 },
		{ metal: 'stainless steel', k: 14, expected: 1.6 },
	])('Incropera, Fundamentals, example 3.9 (from memory, 0.95): $metal leads $expected W', ({ k, expected }) => {
		expect(Math.abs(endHeat(k) / expected - 1)).toBeLessThan(0.03);
	});

	test('Sukhatme, Textbook on Heat Transfer, example 2.13(b) (looked up): tip at 90.06 °C', () => {
		const pin = rod({ k: 15, diameter: 3e-3, loss: 10 * Math.PI * 3e-3, resistivity: 1e-6 });
		// base 120, air 20 °C: a rise of 100 K, and an insulated tip is the middle of twice the length
		const found = wireProfile(pin, { length: 0.06, clipTemperature: 293.15 + 100, drive: 0 });
		expect(Math.abs((found.middle - 293.15 + 20) / 90.06 - 1)).toBeLessThan(1e-3);
	});
});
