import { describe, expect, it } from 'vitest';
import {
	foldbackCurrent,
	foldbackPoint,
	foldbackStart,
	powerCeilingPoint,
	powerCeilingVoltage,
} from '#core/electric/output-curve.ts';
import { materials } from '#core/material/materials.ts';
import { warmingLoad } from '#core/setup/warming-load.ts';
import { stillRoom } from '#core/thermal/room.ts';

// sums by hand, no source
describe('a power ceiling of 18 W at 12 V and at most 3 A', () => {
	const supply = { voltage: 12, power: 18, greatestCurrent: 3 };

	it.each([
		{ load: 24, mode: 'voltage', current: 0.5, voltage: 12 },
		{ load: 4.5, mode: 'power', current: 2, voltage: 9 },
		{ load: 1, mode: 'current', current: 3, voltage: 3 },
		{ load: 0, mode: 'current', current: 3, voltage: 0 },
	])('gives $current A at $voltage V into $load Ω', ({ load, mode, current, voltage }) => {
		const found = powerCeilingPoint(supply, load);
		expect(found.mode).toBe(mode);
		expect(found.current).toBeCloseTo(current, 12);
		expect(found.voltage).toBeCloseTo(voltage, 12);
	});

	it('keeps 12 V up to 1.5 A, 6 V at 3 A and nothing above', () => {
		expect([0, 1.5, 3, 3.1].map((current) => powerCeilingVoltage(supply, current))).toEqual([12, 12, 6, 0]);
	});

	it('refuses ratings of nothing and negative loads', () => {
		expect(() => powerCeilingPoint({ ...supply, power: 0 }, 1)).toThrow(RangeError);
		expect(() => powerCeilingPoint(supply, -1)).toThrow(RangeError);
		expect(() => powerCeilingVoltage(supply, -1)).toThrow(RangeError);
	});
});

describe('a foldback supply of 12 V and 5 A, 1 A into a short', () => {
	const supply = { voltage: 12, kneeCurrent: 5, shortCurrent: 1 };

	it('keeps its voltage down to 2.4 Ω', () => {
		expect(foldbackPoint(supply, 2.4)).toEqual({ mode: 'voltage', current: 5, voltage: 12 });
		expect(foldbackPoint(supply, 6)).toEqual({ mode: 'voltage', current: 2, voltage: 12 });
	});

	it('gives 1 A into a short and 1.5 A at 1.5 V into 1 Ω', () => {
		expect(foldbackPoint(supply, 0)).toEqual({ mode: 'foldback', current: 1, voltage: 0 });
		// 1 + 4 · 1.5/12 is 1.5
		expect(foldbackPoint(supply, 1).current).toBeCloseTo(1.5, 12);
		expect(foldbackCurrent(supply, 1.5)).toBeCloseTo(1.5, 12);
	});

	it('is no foldback when the short current reaches the knee', () => {
		expect(() => foldbackPoint({ ...supply, shortCurrent: 5 }, 1)).toThrow(RangeError);
		expect(() => foldbackPoint({ ...supply, shortCurrent: -0.1 }, 1)).toThrow(RangeError);
		expect(() => foldbackCurrent(supply, 12.1)).toThrow(RangeError);
	});

	describe('starting a wire', () => {
		const leads = { resistance: 0.05, rating: 10 };
		const start = (material: Parameters<typeof warmingLoad>[0]['wire']['material'], length: number) =>
			foldbackStart(supply, warmingLoad({ wire: { material, diameter: 0.5e-3, length }, leads, room: stillRoom }));

		it('brings up a nickel-chromium wire that takes 4 A, cold or hot', () => {
			// 5.55 Ω/m: 0.55 m is about 3 Ω
			expect(start(materials['nicr-80-20'], 0.55).code).toBe('starts');
		});

		it('never brings up half a metre of nickel: it is nearly a short while cold', () => {
			const found = start(materials['ni-99-2'], 0.5);
			expect(found.code).toBe('locks-up');
			if (found.code === 'locks-up') expect(found.voltage).toBeLessThan(2);
		});

		it('climbs when a load warms at any current', () => {
			const found = foldbackStart(supply, (warmth) => ({ resistance: 2 + 2 * warmth, heldCurrent: 0.1 * warmth }));
			expect(found.code).toBe('climbs');
		});

		it('locks up at its hottest when even that asks more than the knee', () => {
			const found = foldbackStart(supply, (warmth) => ({ resistance: 1 + warmth, heldCurrent: 0.1 * warmth }));
			expect(found).toMatchObject({ code: 'locks-up', warmth: 1 });
		});
	});
});
