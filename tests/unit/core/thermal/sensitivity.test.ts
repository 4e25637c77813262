import { describe, expect, test } from 'vitest';
import { materials } from '#core/material/materials.ts';
import { HotWire } from '#core/thermal/hot-wire.ts';
import { stillRoom } from '#core/thermal/room.ts';
import { riseSensitivities } from '#core/thermal/sensitivity.ts';

const material = materials['cral-25-5'];
const wire = { material, diameter: 0.25e-3, emissivity: 0.7 };
const hot = new HotWire(wire, stillRoom);

describe('CrAl 25 5, 0.25 mm, emissivity 0.70: table of the heat model notes, reckoned separately', () => {
	test.each([
		{ current: 0.7, rise: 171, to: [1.58, -1.9, 0.79, -0.07, -0.72] },
		{ current: 1.8, rise: 651, to: [1.19, -1.5, 0.6, -0.15, -0.45] },
		{ current: 2.6, rise: 975, to: [0.98, -1.3, 0.49, -0.19, -0.31] },
	])('at $current A', ({ current, rise, to }) => {
		const found = riseSensitivities(hot, current);
		const numbers = [found?.current, found?.diameter, found?.resistivity, found?.emissivity, found?.convection];
		expect(Math.abs(hot.temperatureAt(current).temperature - stillRoom.temperature - rise)).toBeLessThan(5);
		numbers.forEach((number, index) => expect(Math.abs((number ?? 9) - (to[index] ?? 0))).toBeLessThan(0.03));
	});
});

describe('against solving again with a changed input', () => {
	const rise = (again: HotWire, current: number) => again.temperatureAt(current).temperature - again.room.temperature;
	const h = 0.01;
	const share = (more: number, less: number) => Math.log(more / less) / Math.log((1 + h) / (1 - h));

	test.each([0.7, 1.8, 2.6])('current, diameter, resistivity, emissivity and room at %d A', (current) => {
		const found = riseSensitivities(hot, current);
		const again = (change: object) => rise(new HotWire({ ...wire, ...change }, stillRoom), current);
		const scaled = (factor: number) => {
			return { ...material, resistivity: { ...material.resistivity, value: material.resistivity.value * factor } };
		};
		expect(found?.current).toBeCloseTo(share(rise(hot, current * (1 + h)), rise(hot, current * (1 - h))), 3);
		const diameters = share(again({ diameter: 0.25e-3 * (1 + h) }), again({ diameter: 0.25e-3 * (1 - h) }));
		expect(found?.diameter).toBeCloseTo(diameters, 3);
		const resistivities = share(again({ material: scaled(1 + h) }), again({ material: scaled(1 - h) }));
		expect(found?.resistivity).toBeCloseTo(resistivities, 3);
		const emissivities = share(again({ emissivity: 0.7 * (1 + h) }), again({ emissivity: 0.7 * (1 - h) }));
		expect(found?.emissivity).toBeCloseTo(emissivities, 3);
		const warmer = new HotWire(wire, { ...stillRoom, temperature: stillRoom.temperature + 1 });
		const colder = new HotWire(wire, { ...stillRoom, temperature: stillRoom.temperature - 1 });
		const byRoom = (warmer.temperatureAt(current).temperature - colder.temperatureAt(current).temperature) / 2;
		expect(found?.roomTemperature).toBeCloseTo(byRoom, 3);
	});
});

describe('the limits', () => {
	test('convection and radiation together are the whole loss', () => {
		const found = riseSensitivities(hot, 1.8);
		expect((found?.convection ?? 0) + (found?.emissivity ?? 0)).toBeCloseTo(found?.heatLoss ?? 0, 9);
	});

	test.each([0.05e-3, 2e-3])('works at the end of the range of diameters, %d m', (diameter) => {
		const end = new HotWire({ material, diameter }, stillRoom);
		const found = riseSensitivities(end, end.currentAt(800));
		expect(found?.diameter).toBeLessThan(-1);
		expect(found?.diameter).toBeGreaterThan(-2);
	});

	test('has no answer where there is no steady temperature', () => {
		expect(riseSensitivities(hot, 30)).toBeUndefined();
	});

	test('refuses a current too weak to warm the wire', () => {
		expect(() => riseSensitivities(hot, 0)).toThrow(RangeError);
	});
});
