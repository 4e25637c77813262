import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { materials } from '#core/material/materials.ts';
import { HotWire } from '#core/thermal/hot-wire.ts';
import { wireProfile } from '#core/thermal/profile.ts';
import { radiatedPerMetre } from '#core/thermal/radiation.ts';
import { stillRoom } from '#core/thermal/room.ts';

const double = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const wires = fc.record({
	material: fc.constantFrom(...Object.values(materials)),
	diameter: double(0.05e-3, 2e-3),
	emissivity: double(0.05, 1),
});
const rooms = fc.record({
	temperature: double(233, 333),
	pressure: double(50_000, 110_000),
	draught: fc.oneof(fc.constant(0), double(0, 5)),
});
const share = double(0.02, 0.98);
const runs = { numRuns: 60 };

describe('energy balance', () => {
	test('at the steady temperature the heat put in is the heat lost', () => {
		fc.assert(
			fc.property(wires, rooms, share, (wire, room, part) => {
				const hot = new HotWire(wire, room);
				const current = part * hot.currentAt(hot.hottest);
				const { temperature, isInRange } = hot.temperatureAt(current);
				expect(isInRange).toBe(true);
				const put = current ** 2 * hot.resistancePerMetre(temperature);
				const lost = hot.heatLoss(temperature);
				// 1 mK of wire, at the slope of the loss
				const slack = 1e-3 * (hot.heatLoss(temperature + 0.5) - lost) * 2 + 1e-9;
				expect(Math.abs(put - lost)).toBeLessThan(slack * 2);
			}),
			runs,
		);
	});

	test('the loss is convection plus radiation', () => {
		fc.assert(
			fc.property(wires, rooms, share, (wire, room, part) => {
				const hot = new HotWire(wire, room);
				const temperature = room.temperature + part * (hot.hottest - room.temperature);
				const radiated = radiatedPerMetre({ ...wire, temperature }, room.temperature);
				expect(hot.heatLoss(temperature) / (hot.convected(temperature) + radiated)).toBeCloseTo(1, 12);
			}),
			runs,
		);
	});

	test('a clipped wire loses to clips and room what the current puts in', () => {
		const lengths = double(5e-3, 1);
		fc.assert(
			fc.property(wires, lengths, double(0.05, 0.6), (wire, length, part) => {
				const hot = new HotWire(wire, stillRoom);
				const drive = part * hot.currentAt(hot.hottest);
				const found = wireProfile(hot, { length, clipTemperature: 300, drive });
				expect(found.isInRange).toBe(true);
				const put = drive ** 2 * found.resistanceHot;
				expect(Math.abs(put - found.clipLoss - found.roomLoss)).toBeLessThan(1e-5 * (put + 1e-6));
			}),
			{ numRuns: 30 },
		);
	});
});

describe('monotony', () => {
	const ordered = fc.tuple(share, share).filter(([a, b]) => b - a > 0.01);

	test('more heat is lost at a higher temperature', () => {
		fc.assert(
			fc.property(wires, rooms, ordered, (wire, room, [low, high]) => {
				const hot = new HotWire(wire, room);
				const at = (part: number) => hot.heatLoss(room.temperature + part * (hot.hottest - room.temperature));
				expect(at(high)).toBeGreaterThan(at(low));
			}),
			runs,
		);
	});

	test('more current never makes the wire colder', () => {
		fc.assert(
			fc.property(wires, rooms, ordered, (wire, room, [low, high]) => {
				const hot = new HotWire(wire, room);
				const most = hot.currentAt(hot.hottest);
				const [cooler, hotter] = [hot.temperatureAt(low * most), hot.temperatureAt(high * most)];
				expect(hotter.temperature).toBeGreaterThan(cooler.temperature);
			}),
			runs,
		);
	});

	test('a draught, a blacker surface and denser air each carry more away', () => {
		fc.assert(
			fc.property(wires, share, double(0.01, 4.5), (wire, part, draught) => {
				const hot = new HotWire({ ...wire, emissivity: 0.4 }, stillRoom);
				const temperature = 300 + part * (hot.hottest - 300);
				const loss = hot.heatLoss(temperature);
				const windy = new HotWire(hot.wire, { ...stillRoom, draught });
				const windier = new HotWire(hot.wire, { ...stillRoom, draught: draught + 0.5 });
				const black = new HotWire({ ...hot.wire, emissivity: 0.9 }, stillRoom);
				const low = new HotWire(hot.wire, { ...stillRoom, pressure: 70_000 });
				expect(windy.heatLoss(temperature)).toBeGreaterThan(loss);
				expect(windier.heatLoss(temperature)).toBeGreaterThan(windy.heatLoss(temperature));
				expect(black.heatLoss(temperature)).toBeGreaterThan(loss);
				expect(low.heatLoss(temperature)).toBeLessThan(loss);
			}),
			runs,
		);
	});

	test('clips cool: the mean is under the middle, the middle under the endless wire', () => {
		fc.assert(
			fc.property(wires, double(5e-3, 0.5), double(0.1, 0.6), (wire, length, part) => {
				const hot = new HotWire(wire, stillRoom);
				const drive = part * hot.currentAt(hot.hottest);
				const found = wireProfile(hot, { length, clipTemperature: stillRoom.temperature, drive });
				expect(found.mean).toBeLessThan(found.middle);
				expect(found.middle).toBeLessThan(hot.temperatureAt(drive).temperature + 0.01);
			}),
			{ numRuns: 30 },
		);
	});
});

describe('scaling', () => {
	test('a wire of k times the resistivity needs 1/√k of the current', () => {
		fc.assert(
			fc.property(double(0.5, 2), double(350, 1300), (factor, temperature) => {
				const material = materials['nicr-80-20'];
				const { resistivity } = material;
				const changed = { ...material, resistivity: { ...resistivity, value: resistivity.value * factor } };
				const before = new HotWire({ material, diameter: 0.4e-3 }, stillRoom);
				const after = new HotWire({ material: changed, diameter: 0.4e-3 }, stillRoom);
				expect((after.currentAt(temperature) / before.currentAt(temperature)) * Math.sqrt(factor)).toBeCloseTo(1, 9);
			}),
			runs,
		);
	});

	test('the current for a temperature grows with diameter by a power between 1.0 and 1.5', () => {
		// convection of a fine wire hardly depends on d, so I ∝ d; radiation grows with d, so I ∝ d^1.5
		fc.assert(
			fc.property(double(0.05e-3, 1e-3), double(400, 1300), (diameter, temperature) => {
				const at = (d: number) =>
					new HotWire({ material: materials['cral-25-5'], diameter: d }, stillRoom).currentAt(temperature);
				const power = Math.log2(at(2 * diameter) / at(diameter));
				expect(power).toBeGreaterThan(1);
				expect(power).toBeLessThan(1.5);
			}),
			runs,
		);
	});

	test('the temperature for a current finds the current again, at that temperature or a lower one', () => {
		// a bright iron wire in thin cold air gains resistance faster than it loses heat: one current, several temperatures
		fc.assert(
			fc.property(wires, rooms, share, (wire, room, part) => {
				const hot = new HotWire(wire, room);
				const target = room.temperature + part * (hot.hottest - room.temperature);
				const current = hot.currentAt(target);
				const found = hot.temperatureAt(current);
				expect(found.temperature).toBeLessThan(target + 2e-3);
				expect(Math.abs(hot.currentAt(found.temperature) - current)).toBeLessThan(1e-4 * current + 1e-6);
			}),
			runs,
		);
	});
});
