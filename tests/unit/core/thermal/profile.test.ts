import { describe, expect, test } from 'vitest';
import { materials } from '#core/material/materials.ts';
import { HotWire } from '#core/thermal/hot-wire.ts';
import { wireProfile } from '#core/thermal/profile.ts';
import { rodMesh } from '#core/thermal/rod-mesh.ts';
import { stillRoom } from '#core/thermal/room.ts';

const room = stillRoom.temperature;
const hot = new HotWire({ material: materials['nicr-80-20'], diameter: 0.4e-3 }, stillRoom);

describe('a long wire between clips', () => {
	const found = wireProfile(hot, { length: 0.5, clipTemperature: room, drive: 3.5 });

	test('is as hot in the middle as an endless one', () => {
		expect(Math.abs(found.middle - hot.temperatureAt(3.5).temperature)).toBeLessThan(0.1);
	});

	test('loses to its clips what the first integral says: 2 √(2 ∫ k A (I² R′ − q′) dT)', () => {
		const steady = hot.temperatureAt(3.5).temperature;
		const pieces = 20_000;
		let integral = 0;
		for (let piece = 0; piece < pieces; piece += 1) {
			const T = room + ((steady - room) * (piece + 0.5)) / pieces;
			integral += hot.conductance(T) * (3.5 ** 2 * hot.resistancePerMetre(T) - hot.heatLoss(T));
		}
		const expected = 2 * Math.sqrt((2 * integral * (steady - room)) / pieces);
		expect(Math.abs(found.clipLoss / expected - 1)).toBeLessThan(3e-3);
	});

	test('is symmetric and held by its clips', () => {
		expect(found.temperature).toEqual(found.temperature.toReversed());
		expect(found.temperature[0]).toBe(room);
		expect(found.position.at(-1)).toBeCloseTo(0.5, 9);
		found.position.slice(1).forEach((x, index) => expect(x).toBeGreaterThan(found.position[index] ?? 0));
	});

	test('has a hot resistance between cold and that of the middle', () => {
		expect(found.resistanceHot).toBeGreaterThan(0.5 * hot.resistancePerMetre(room));
		expect(found.resistanceHot).toBeLessThan(0.5 * hot.resistancePerMetre(found.middle));
	});
});

describe('a loop that answers to the resistance', () => {
	test('carries the current that its hot resistance asks for', () => {
		const found = wireProfile(hot, { length: 0.5, clipTemperature: room, drive: (R) => 12 / (R + 0.2) });
		expect(found.current).toBeCloseTo(12 / (found.resistanceHot + 0.2), 6);
	});

	test('can be off', () => {
		const found = wireProfile(hot, { length: 0.5, clipTemperature: room, drive: () => 0 });
		expect(found.current).toBe(0);
		expect(found.middle).toBeCloseTo(room, 6);
	});
});

describe('range', () => {
	test('a short wire between cold clips bears more than an endless one', () => {
		const current = 1.5 * hot.currentAt(hot.hottest);
		expect(hot.temperatureAt(current).isInRange).toBe(false);
		expect(wireProfile(hot, { length: 0.002, clipTemperature: room, drive: current }).isInRange).toBe(true);
	});

	test('a wire too hot for its curve is told', () => {
		expect(wireProfile(hot, { length: 0.3, clipTemperature: room, drive: 30 }).isInRange).toBe(false);
	});

	test.each([
		{ length: 0.0009, clipTemperature: room },
		{ length: 101, clipTemperature: room },
		{ length: 0.1, clipTemperature: room - 1 },
		{ length: 0.1, clipTemperature: 3000 },
	])('refuses %o', (clipped) => {
		expect(() => wireProfile(hot, { ...clipped, drive: 1 })).toThrow(RangeError);
	});
});

describe('mesh', () => {
	test('fills the length, starts fine and grows', () => {
		const widths = rodMesh({ length: 0.4, cells: 200, shortest: 1e-4 });
		expect(widths.reduce((sum, width) => sum + width, 0)).toBeCloseTo(0.4, 9);
		expect(widths[0]).toBeCloseTo(1e-4, 6);
		expect(widths.at(-1)).toBeGreaterThan(1e-3);
	});

	test('is even where even cells are fine enough', () => {
		expect(new Set(rodMesh({ length: 0.01, cells: 200, shortest: 1e-4 }))).toEqual(new Set([0.01 / 200]));
	});
});
