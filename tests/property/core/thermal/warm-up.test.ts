import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { materials } from '#core/material/materials.ts';
import { HotWire } from '#core/thermal/hot-wire.ts';
import { stillRoom } from '#core/thermal/room.ts';
import {
	steadyTemperatureUnder,
	temperatureAfter,
	timeConstant,
	timeTo95Percent,
	timeToReach,
	warmingRate,
	warmUpCourse,
	type WarmingMetre,
} from '#core/thermal/warm-up.ts';

/** The part of odex used here: its own sources do not compile under our compiler options. */
interface OdexSolver {
	absoluteTolerance: number;
	relativeTolerance: number;
	solve(f: (x: number, y: readonly number[]) => number[], from: number, start: number[], to: number): { y: number[] };
}
const odex: { Solver: new (unknowns: number) => OdexSolver } = createRequire(import.meta.url)('odex');

const room = stillRoom.temperature;
const metals = fc.constantFrom(materials['nicr-80-20'], materials['cral-25-5'], materials['soft-steel']);
const wires = fc
	.record({ material: metals, diameter: fc.double({ min: 0.1e-3, max: 1e-3, noNaN: true }) })
	.map((wire) => new HotWire(wire, stillRoom));
/** a current as a share of the one for the end of the curve */
const shares = fc.double({ min: 0.05, max: 0.95, noNaN: true });

/** First-order metre with constant properties: 8000 kg/m³, 500 J/(kg K), 0.2 mm, 0.03 W/(m K). */
const simple: WarmingMetre = {
	room: { temperature: room },
	hottest: 5000,
	heatLoss: (temperature) => 0.03 * (temperature - room),
	resistancePerMetre: () => 30,
	heatCapacityPerMetre: () => (8000 * 500 * Math.PI * 0.2e-3 ** 2) / 4,
};

describe('first-order warm-up, closed form t90 = τ ln 10 (derived)', () => {
	test('reaches 90 % in 9.645046 s', () => {
		const rise = 30 / 0.03;
		const found = timeToReach(simple, 1, { from: room, target: room + 0.9 * rise });
		expect(Math.abs((found ?? 0) / 9.645046 - 1)).toBeLessThan(1e-5);
	});

	test('95 % takes τ ln 20, and τ is ρ cp A/U', () => {
		const tau = (8000 * 500 * Math.PI * 0.2e-3 ** 2) / 4 / 0.03;
		expect(timeConstant(simple, 1, room + 1000) / tau).toBeCloseTo(1, 6);
		expect((timeTo95Percent(simple, 1) ?? 0) / (tau * Math.log(20))).toBeCloseTo(1, 5);
	});
});

describe('against odex, an independent extrapolation solver', () => {
	test('the temperature at any time agrees to 10 mK', () => {
		fc.assert(
			fc.property(wires, shares, fc.double({ min: 0.1, max: 20, noNaN: true }), (wire, share, time) => {
				const current = share * wire.currentAt(wire.hottest);
				const solver = new odex.Solver(1);
				solver.absoluteTolerance = 1e-7;
				solver.relativeTolerance = 1e-10;
				const oracle = solver.solve((_, y) => [warmingRate(wire, current, y[0] ?? 0)], 0, [room], time);
				const found = temperatureAfter(wire, current, { from: room, duration: time });
				expect(Math.abs(found - (oracle.y[0] ?? 0))).toBeLessThan(0.01);
			}),
			{ numRuns: 40 },
		);
	});
});

describe('laws of warming', () => {
	test('at constant current the wire only grows hotter and ends at the steady temperature', () => {
		fc.assert(
			fc.property(wires, shares, (wire, share) => {
				const current = share * wire.currentAt(wire.hottest);
				const steady = wire.temperatureAt(current).temperature;
				const { temperature, isInRange } = warmUpCourse(wire, current, { duration: 600, points: 50 });
				expect(isInRange).toBe(true);
				temperature.slice(1).forEach((T, index) => {
					expect(T).toBeGreaterThanOrEqual((temperature[index] ?? 0) - 1e-2);
				});
				expect(Math.abs((temperature.at(-1) ?? 0) - steady)).toBeLessThan(0.05);
			}),
			{ numRuns: 40 },
		);
	});

	test('heat taken up is heat put in less heat lost', () => {
		fc.assert(
			fc.property(wires, shares, (wire, share) => {
				const current = share * wire.currentAt(wire.hottest);
				const { time, temperature } = warmUpCourse(wire, current, { duration: 5, points: 5001 });
				const step = (time[1] ?? 0) - (time[0] ?? 0);
				const trapezoid = (f: (T: number) => number) =>
					temperature.slice(1).reduce((sum, T, index) => sum + ((f(T) + f(temperature[index] ?? room)) / 2) * step, 0);
				const put = trapezoid((T) => current ** 2 * wire.resistancePerMetre(T));
				const lost = trapezoid((T) => wire.heatLoss(Math.max(room, T)));
				const stored = temperature.slice(1).reduce((sum, T, index) => {
					const before = temperature[index] ?? room;
					return sum + wire.heatCapacityPerMetre((T + before) / 2) * (T - before);
				}, 0);
				expect(Math.abs(put - lost - stored)).toBeLessThan(1e-3 * put);
			}),
			{ numRuns: 20 },
		);
	});

	test('without current it cools to the room and never below it', () => {
		fc.assert(
			fc.property(wires, shares, (wire, share) => {
				const from = room + share * (wire.hottest - room);
				const { temperature } = warmUpCourse(wire, 0, { from, duration: 1200, points: 40 });
				expect(Math.min(...temperature)).toBeGreaterThan(room - 1e-2);
				expect(temperature.at(-1)).toBeLessThan(room + 1);
			}),
			{ numRuns: 40 },
		);
	});

	test('under a fixed voltage the steady state satisfies the loop', () => {
		fc.assert(
			fc.property(wires, shares, (wire, share) => {
				const target = room + share * (wire.hottest - room);
				const voltage = wire.currentAt(target) * wire.resistancePerMetre(target);
				const found = steadyTemperatureUnder(wire, (resistance) => voltage / resistance);
				expect(found.isInRange).toBe(true);
				expect(found.temperature).toBeLessThanOrEqual(target + 1e-6);
				expect(Math.abs(warmingRate(wire, (resistance) => voltage / resistance, found.temperature))).toBeLessThan(1e-6);
			}),
			{ numRuns: 40 },
		);
	});
});

describe('what cannot be reached is told', () => {
	const wire = new HotWire({ material: materials['nicr-80-20'], diameter: 0.4e-3 }, stillRoom);

	test('a wire that burns through stops at the end of its curve', () => {
		const course = warmUpCourse(wire, 40, { duration: 10, points: 20 });
		expect(course.isInRange).toBe(false);
		expect(course.temperature.at(-1)).toBe(wire.hottest);
		expect(steadyTemperatureUnder(wire, 40)).toEqual({ temperature: wire.hottest, isInRange: false });
		expect(timeTo95Percent(wire, 40)).toBeUndefined();
	});

	test('a temperature the current never reaches has no time', () => {
		expect(timeToReach(wire, 1, { from: room, target: 900 })).toBeUndefined();
	});

	test.each([{ from: 200 }, { from: 3000 }])('refuses to start at $from K', ({ from }) => {
		expect(() => temperatureAfter(wire, 1, { from, duration: 1 })).toThrow(RangeError);
	});

	test.each([-1, 1e7])('refuses a duration of %d s', (duration) => {
		expect(() => temperatureAfter(wire, 1, { from: room, duration })).toThrow(RangeError);
	});
});
