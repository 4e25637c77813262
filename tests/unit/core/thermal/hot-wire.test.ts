import { describe, expect, test } from 'vitest';
import { materials } from '#core/material/materials.ts';
import { awgDiameter } from '#core/quantity/gauge.ts';
import { HotWire } from '#core/thermal/hot-wire.ts';
import { iceZero } from '#core/thermal/physical-constants.ts';
import { stillRoom } from '#core/thermal/room.ts';

const celsius = (temperature: number) => temperature + iceZero;
const nickelChromium = materials['nicr-80-20'];
const ironChromium = materials['cral-25-5'];
const r40 = new HotWire({ material: nickelChromium, diameter: 0.4e-3, emissivity: 0.88 }, stillRoom);

/** Bisection on the law itself, to compare the curve with. */
function directTemperature(wire: HotWire, current: number): number {
	let low = wire.room.temperature;
	let high = wire.hottest;
	for (let round = 0; round < 60; round += 1) {
		const middle = (low + high) / 2;
		if (wire.heatLoss(middle) < current ** 2 * wire.resistancePerMetre(middle)) low = middle;
		else high = middle;
	}
	return (low + high) / 2;
}

describe('sample values of the course scenario, printed in its cupboard table', () => {
	const wires = [
		{ name: 'R-25', material: nickelChromium, diameter: 0.25e-3, emissivity: 0.88, amperes: [0.68, 1.12, 1.92] },
		{ name: 'R-32', material: nickelChromium, diameter: 0.32e-3, emissivity: 0.88, amperes: [0.92, 1.51, 2.63] },
		{ name: 'R-40', material: nickelChromium, diameter: 0.4e-3, emissivity: 0.88, amperes: [1.21, 2.0, 3.5] },
		{ name: 'R-50', material: nickelChromium, diameter: 0.5e-3, emissivity: 0.88, amperes: [1.59, 2.64, 4.67] },
		{ name: 'R-71', material: nickelChromium, diameter: 0.71e-3, emissivity: 0.88, amperes: [2.47, 4.12, 7.41] },
		{ name: 'F-40', material: ironChromium, diameter: 0.4e-3, emissivity: 0.7, amperes: [1.04, 1.72, 2.95] },
		{ name: 'G-28', material: ironChromium, diameter: awgDiameter(28), emissivity: 0.7, amperes: [0.8, 1.31, 2.24] },
		{ name: 'G-36', material: ironChromium, diameter: awgDiameter(36), emissivity: 0.7, amperes: [0.27, 0.43, 0.72] },
		{ name: 'C-40', material: materials['cuni-44'], diameter: 0.4e-3, emissivity: 0.55, amperes: [1.78, 2.92] },
	];
	test.each(wires)('$name needs $amperes A for 150, 300 and 600 °C', ({ amperes, ...wire }) => {
		const hot = new HotWire(wire, stillRoom);
		amperes.forEach((current, index) => {
			const found = hot.currentAt(celsius([150, 300, 600][index] ?? 0));
			expect(Math.abs(found - current)).toBeLessThanOrEqual(0.02 * current + 0.005);
		});
	});

	test.each([
		{ amperes: 1.5, temperature: 200 },
		{ amperes: 2.5, temperature: 400 },
		{ amperes: 3.5, temperature: 600 },
		{ amperes: 5, temperature: 865 },
	])('R-40 is near $temperature °C at $amperes A', ({ amperes, temperature }) => {
		const found = r40.temperatureAt(amperes);
		expect(found.isInRange).toBe(true);
		expect(Math.abs(found.temperature - celsius(temperature))).toBeLessThan(0.03 * temperature);
	});

	test('G-36 is well over 600 °C at 1 A', () => {
		const wire = new HotWire({ material: ironChromium, diameter: awgDiameter(36) }, stillRoom);
		expect(wire.temperatureAt(1).temperature).toBeGreaterThan(celsius(700));
	});
});

describe('the cached curve', () => {
	const draughty = { ...stillRoom, draught: 1.7 };
	test.each([
		{ name: 'thin', wire: new HotWire({ material: ironChromium, diameter: 0.05e-3 }, stillRoom) },
		{ name: 'R-40', wire: r40 },
		{ name: 'thick', wire: new HotWire({ material: nickelChromium, diameter: 2e-3 }, stillRoom) },
		{ name: 'steep', wire: new HotWire({ material: materials['soft-steel'], diameter: 0.4e-3 }, stillRoom) },
		{ name: 'draughty', wire: new HotWire({ material: nickelChromium, diameter: 0.8e-3 }, draughty) },
	])('stays within 1 mK of the law: $name', ({ wire }) => {
		const most = wire.currentAt(wire.hottest);
		for (let step = 1; step < 400; step += 1) {
			const current = (most * step) / 400;
			const { temperature, isInRange } = wire.temperatureAt(current);
			expect(isInRange).toBe(true);
			expect(Math.abs(temperature - directTemperature(wire, current))).toBeLessThan(1e-3);
		}
	});

	test('costs no further law evaluations once it exists', () => {
		class Counting extends HotWire {
			count = 0;
			override heatLoss(temperature: number): number {
				this.count += 1;
				return super.heatLoss(temperature);
			}
		}
		const wire = new Counting({ material: nickelChromium, diameter: 0.4e-3 }, stillRoom);
		wire.temperatureAt(2);
		const once = wire.count;
		for (let current = 0.1; current < 5; current += 0.1) wire.temperatureAt(current);
		expect(once).toBeGreaterThan(100);
		expect(wire.count).toBe(once);
	});

	test('gives room temperature without current', () => {
		expect(r40.temperatureAt(0).temperature).toBeCloseTo(stillRoom.temperature, 6);
	});
});

describe('outside its range', () => {
	test('a current too strong for any steady temperature is told, not guessed', () => {
		expect(r40.temperatureAt(50)).toEqual({ temperature: r40.hottest, isInRange: false });
		expect(r40.temperatureAtPower(1e5)).toEqual({ temperature: r40.hottest, isInRange: false });
	});

	test.each([0.049e-3, 2.01e-3, Number.NaN, 0, -1])('refuses a diameter of %d m', (diameter) => {
		expect(() => new HotWire({ material: nickelChromium, diameter }, stillRoom)).toThrow(RangeError);
	});

	test.each([0.05e-3, 2e-3])('accepts a diameter of %d m', (diameter) => {
		expect(() => new HotWire({ material: nickelChromium, diameter }, stillRoom)).not.toThrow();
	});

	test.each([-0.01, 1.01])('refuses an emissivity of %d', (emissivity) => {
		const wire = { material: nickelChromium, diameter: 0.4e-3, emissivity };
		expect(() => new HotWire(wire, stillRoom)).toThrow(RangeError);
	});

	test.each([
		{ temperature: 232 },
		{ temperature: 334 },
		{ pressure: 49_999 },
		{ pressure: 110_001 },
		{ draught: -0.1 },
		{ draught: 5.1 },
	])('refuses a room with %o', (change) => {
		const wire = { material: nickelChromium, diameter: 0.4e-3 };
		expect(() => new HotWire(wire, { ...stillRoom, ...change })).toThrow(RangeError);
	});

	test('refuses to name a current for a wire colder than its room or hotter than its curve', () => {
		expect(() => r40.currentAt(290)).toThrow(RangeError);
		expect(() => r40.currentAt(r40.hottest + 1)).toThrow(RangeError);
		expect(() => r40.temperatureAt(-1)).toThrow(RangeError);
	});
});
