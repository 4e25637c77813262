import { expect, test } from 'vitest';
import { materials } from '#core/material/materials.ts';
import { nusseltCrossDraught, nusseltMixed } from '#core/thermal/forced-convection.ts';
import { HotWire } from '#core/thermal/hot-wire.ts';
import { stillRoom } from '#core/thermal/room.ts';

const material = materials['cral-25-5'];
const level = new HotWire({ material, diameter: 0.4e-3 }, stillRoom);

test('without a stated emissivity the wire counts as oxidised', () => {
	expect(level.emissivity).toBe(material.emissivity.oxidised.value);
	const stated = new HotWire({ ...level.wire, emissivity: level.emissivity }, stillRoom);
	expect(stated.heatLoss(900)).toBe(level.heatLoss(900));
});

test('an upright wire keeps 0.65 to 0.80 of the convection and so runs hotter', () => {
	const upright = new HotWire({ ...level.wire, orientation: 'upright' }, stillRoom);
	const kept = upright.convected(700) / level.convected(700);
	expect(kept).toBeGreaterThan(0.65);
	expect(kept).toBeLessThan(0.8);
	expect(upright.temperatureAt(2).temperature).toBeGreaterThan(level.temperatureAt(2).temperature);
});

test('power per metre leads back to its temperature', () => {
	const { temperature } = level.temperatureAt(2);
	expect(level.temperatureAtPower(level.powerPerMetre(2)).temperature).toBeCloseTo(temperature, 2);
	expect(level.temperatureAtPower(0).temperature).toBeCloseTo(stillRoom.temperature, 5);
	expect(() => level.temperatureAtPower(-1)).toThrow(RangeError);
});

// reckoned for the heat model notes: 0.1 m/s adds 10–35 %, 0.5 m/s 50–120 %, even 0.03 m/s 3–12 %
test.each([
	{ draught: 0.03, from: 0.02, to: 0.13 },
	{ draught: 0.1, from: 0.1, to: 0.36 },
	{ draught: 0.5, from: 0.5, to: 1.2 },
])('a draught of $draught m/s raises the convection by a share of $from to $to', ({ draught, from, to }) => {
	for (const diameter of [0.13e-3, 0.4e-3, 0.8e-3]) {
		for (const temperature of [400, 800, 1270]) {
			const still = new HotWire({ material, diameter }, stillRoom).convected(temperature);
			const moved = new HotWire({ material, diameter }, { ...stillRoom, draught }).convected(temperature);
			expect(moved / still - 1).toBeGreaterThan(from);
			expect(moved / still - 1).toBeLessThan(to);
		}
	}
});

test('the laws of forced convection join without a step', () => {
	const at = (reynolds: number) => nusseltCrossDraught({ reynolds, prandtl: 0.7, filmOverAir: 1.5 });
	for (const joint of [0.02, 38, 44, 100, 140]) {
		expect(Math.abs(at(joint * (1 + 1e-7)) / at(joint * (1 - 1e-7)) - 1)).toBeLessThan(1e-6);
	}
	expect(at(0)).toBe(0);
});

test('no draught leaves natural convection alone', () => {
	expect(nusseltMixed({ natural: 0.8, forced: 0 })).toBeCloseTo(0.8, 12);
});
