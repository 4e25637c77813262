import { describe, expect, it } from 'vitest';
import { materials } from '#core/material/materials.ts';
import { decayLengthAt, endLoss } from '#core/setup/end-loss.ts';
import { operatingPoint } from '#core/setup/operating-point.ts';
import type { Setup } from '#core/setup/setup.ts';
import { stillRoom } from '#core/thermal/room.ts';

const limited = (
	material: Setup['wire']['material'],
	wire: { diameter: number; length: number },
	limit: number,
): Setup => ({
	supply: { openCircuitVoltage: 12, internalResistance: 0, protection: { kind: 'holds', limit } },
	wire: { material, ...wire },
	leads: { resistance: 0.05, rating: 10 },
	room: stillRoom,
});
const nichrome = materials['nicr-80-20'];

describe('a wire of 0.32 mm at 2 A', () => {
	it('half a metre long: the middle is as hot as a long wire, the mean a little cooler', () => {
		const found = endLoss(limited(nichrome, { diameter: 0.32e-3, length: 0.5 }, 2));
		expect(found.verdict.code).toBe('middle-unaffected');
		expect(Math.abs(found.middle - found.longTemperature)).toBeLessThan(0.5);
		expect(found.mean).toBeLessThan(found.middle);
		expect(found.clipShare).toBeLessThan(0.05);
		expect(found.isInRange).toBe(true);
	});

	it('12 mm long: the ends rule, and take the larger part of the heat', () => {
		const found = endLoss(limited(nichrome, { diameter: 0.32e-3, length: 0.012 }, 2));
		expect(found.verdict.code).toBe('ends-rule');
		expect(found.middle).toBeLessThan(found.longTemperature - 50);
		expect(found.clipShare).toBeGreaterThan(0.4);
	});

	it('between five and ten λ the middle is told to be cooled', () => {
		const long = limited(nichrome, { diameter: 0.32e-3, length: 0.5 }, 2);
		const length = 7 * endLoss(long).decayLength;
		expect(endLoss({ ...long, wire: { ...long.wire, length } }).verdict).toMatchObject({ code: 'middle-cooled' });
	});
});

it('a long nickel wire passes a little more current than its operating point: its cool ends resist less', () => {
	const setup = limited(materials['ni-99-2'], { diameter: 0.2e-3, length: 1.5 }, 20);
	const point = operatingPoint(setup);
	const found = endLoss(setup);
	expect(Math.abs(found.middle - found.longTemperature)).toBeLessThan(10);
	expect(found.resistanceHot).toBeLessThan(point.resistanceHot);
	expect(found.resistanceHot / point.resistanceHot).toBeGreaterThan(0.95);
	expect(found.current).toBeGreaterThan(point.current);
});

it('warm clips cool less', () => {
	const setup = limited(nichrome, { diameter: 0.32e-3, length: 0.03 }, 2);
	expect(endLoss(setup, { temperature: 350 }).mean).toBeGreaterThan(endLoss(setup).mean);
	expect(() => endLoss(setup, { temperature: 200 })).toThrow(RangeError);
});

it('without voltage everything is at room temperature', () => {
	const setup = limited(nichrome, { diameter: 0.32e-3, length: 0.1 }, 2);
	const found = endLoss({ ...setup, supply: { ...setup.supply, openCircuitVoltage: 0 } });
	expect(found.middle).toBeCloseTo(stillRoom.temperature, 6);
	expect(found.clipShare).toBe(0);
});

it('λ grows with diameter and shrinks with temperature', () => {
	const at = (diameter: number, temperature: number) =>
		decayLengthAt({ wire: { material: nichrome, diameter, length: 1 }, room: stillRoom }, temperature);
	expect(at(0.5e-3, 800)).toBeGreaterThan(at(0.2e-3, 800));
	expect(at(0.2e-3, 1200)).toBeLessThan(at(0.2e-3, 600));
});
