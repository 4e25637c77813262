import { describe, expect, it } from 'vitest';
import { heatCurve } from '#core/setup/heat-curve.ts';
import { seriesResistanceOf, validateSetup } from '#core/setup/setup.ts';
import { sweepLength } from '#core/setup/sweep.ts';
import { wireState } from '#core/setup/wire-state.ts';
import { iceZero } from '#core/thermal/physical-constants.ts';
import { clipPair, reel40, setupWith, supplies } from '#tests/support/shed.ts';

describe('a set-up from outside', () => {
	it('of the shed has no problem', () => {
		for (const supply of Object.values(supplies)) expect(validateSetup(setupWith({ supply }))).toEqual([]);
	});

	it('tells every problem at once', () => {
		const problems = validateSetup({
			supply: { openCircuitVoltage: 25, internalResistance: -1, protection: { kind: 'none' } },
			wire: { ...reel40, length: NaN, emissivity: 1.2 },
			leads: { resistance: 0, rating: 0 },
			room: { temperature: 400, pressure: 101_325, draught: 0 },
		});
		expect(problems).toEqual([
			{ code: 'below', field: 'internal-resistance', value: -1, least: 0 },
			{ code: 'not-a-number', field: 'length' },
			{ code: 'above', field: 'emissivity', value: 1.2, most: 1 },
			{ code: 'below', field: 'leads-rating', value: 0, least: 0.1 },
			{ code: 'above', field: 'room-temperature', value: 400, most: 333 },
			{ code: 'over-24-volts', voltage: 25, most: 24 },
		]);
	});

	it('tells a trip below the rating', () => {
		const supply = { ...supplies.brick, protection: { kind: 'latches', rated: 5, tripAbove: 4 } } as const;
		expect(validateSetup(setupWith({ supply }))).toEqual([{ code: 'trip-below-rated', rated: 5, tripAbove: 4 }]);
	});
});

it('adds what resists outside the wire', () => {
	expect(seriesResistanceOf({ supply: supplies.fourAA, leads: clipPair })).toBeCloseTo(1.1, 12);
});

it('shares one heat curve between lengths and supplies, not between rooms', () => {
	const curve = heatCurve(setupWith());
	expect(heatCurve(setupWith({ supply: supplies.brick, wire: { ...reel40, length: 2 } }))).toBe(curve);
	const cooler = { ...setupWith().room, temperature: 283.15 };
	expect(heatCurve(setupWith({ room: cooler }))).not.toBe(curve);
});

it('marks where the supply acts along a sweep, and only there', () => {
	const held = setupWith({ supply: { ...supplies.benchSupply, protection: { kind: 'holds', limit: 2 } } });
	const points = sweepLength(held, { from: 0.1, to: 2 });
	expect(points).toHaveLength(400);
	expect(points[0]).toMatchObject({ length: 0.1, state: 'holding-limit', isSupplyActing: true, current: 2 });
	expect(points.at(-1)).toMatchObject({ length: 2, state: 'on', isSupplyActing: false });
	const change = points.findIndex(({ isSupplyActing }) => !isSupplyActing);
	expect(points.slice(change).every(({ isSupplyActing }) => !isSupplyActing)).toBe(true);
	expect(() => sweepLength(held, { from: 0, to: 1 })).toThrow(RangeError);
	expect(() => sweepLength(held, { from: 0.1, to: 1, points: 1 })).toThrow(RangeError);
});

it('names the state of a wire by its temperature', () => {
	const at = (celsius: number) =>
		wireState({
			temperature: celsius + iceZero,
			roomTemperature: 293.15,
			limit: 1373.15,
			melting: 1673.15,
			isInRange: true,
		});
	expect([20, 30, 46, 530, 651, 801, 951, 1101].map(at)).toEqual([
		'cold',
		'warm',
		'hot-no-glow',
		'faint-red',
		'dark-red',
		'red',
		'orange',
		'over-limit',
	]);
});
