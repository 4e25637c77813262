import { describe, expect, it } from 'vitest';
import type { Cell } from '#core/electric/cell/cell.ts';
import { cells } from '#core/electric/cell/cells.ts';
import { currentLoad, discharge, powerLoad, resistanceLoad } from '#core/electric/discharge.ts';
import { materials } from '#core/material/materials.ts';
import { wireLoad } from '#core/setup/wire-load.ts';
import { stillRoom } from '#core/thermal/room.ts';

/** 2 V at every charge, 0.5 Ω, 3600 C at every current: all sums can be done by hand. */
const plain: Cell = {
	id: 'plain',
	designation: 'of the test',
	chemistry: 'lead-acid',
	cellsInside: 1,
	openCircuit: { charge: [0, 1], voltage: [2, 2], source: ['COMMON'] },
	resistance: { charge: [1], value: [0.5], least: [0.5], most: [0.5], source: ['COMMON'] },
	capacity: { current: [1], charge: [3600], source: ['COMMON'] },
	cutOff: { value: 1, source: ['COMMON'] },
};
const one = { cell: plain, series: 1, parallel: 1 };

describe('a cell of constant voltage', () => {
	it('gives 1 A into 1.5 Ω for an hour: 3600 C, 5400 J outside, 1800 J inside', () => {
		const found = discharge(one, resistanceLoad(1.5));
		expect(found.end).toBe('empty');
		expect(found.runTime).toBeCloseTo(3600, 6);
		expect(found.deliveredCharge).toBeCloseTo(3600, 6);
		expect(found.deliveredEnergy).toBeCloseTo(5400, 6);
		expect(found.lostEnergy).toBeCloseTo(1800, 6);
	});

	it('lasts half as long from half charge', () => {
		expect(discharge(one, resistanceLoad(1.5), { start: 0.5 }).runTime).toBeCloseTo(1800, 6);
	});

	it('gives the same power from the smaller of two currents: 1.5 W at 1 A', () => {
		const found = discharge(one, powerLoad(1.5));
		expect(found.points[0]?.current).toBeCloseTo(1, 12);
		expect(found.deliveredEnergy).toBeCloseTo(1.5 * found.runTime, 6);
	});

	it('ends at once when the load pulls it below its cut-off, asks too much power, or the cell is empty', () => {
		expect(discharge(one, resistanceLoad(0.4))).toMatchObject({ end: 'cut-off', runTime: 0, points: [] });
		// U²/(4 R) is 2 W
		expect(discharge(one, powerLoad(2.1))).toMatchObject({ end: 'not-served', runTime: 0 });
		expect(discharge(one, currentLoad(1), { start: 0 })).toMatchObject({ end: 'empty', runTime: 0 });
	});

	it('lasts for ever without a load', () => {
		expect(discharge(one, currentLoad(0))).toMatchObject({ end: 'no-load', runTime: Infinity, deliveredCharge: 0 });
	});

	it('refuses loads that make no sense', () => {
		expect(() => discharge(one, currentLoad(-1))).toThrow(RangeError);
		expect(() => resistanceLoad(0)).toThrow(RangeError);
		expect(() => powerLoad(-1)).toThrow(RangeError);
		expect(() => discharge(one, currentLoad(1), { start: 1.1 })).toThrow(RangeError);
	});
});

describe('a falling rest voltage', () => {
	// from 2 V full to 1 V empty, no resistance: z = U − 1
	const falling: Cell = {
		...plain,
		openCircuit: { charge: [0, 1], voltage: [1, 2], source: ['COMMON'] },
		resistance: { charge: [1], value: [0], least: [0], most: [0], source: ['COMMON'] },
	};

	it('into a resistance falls as an exponential: 2 V to 1 V takes R Q ln 2', () => {
		const found = discharge({ ...one, cell: falling }, resistanceLoad(2));
		expect(found.runTime / (2 * 3600 * Math.LN2)).toBeCloseTo(1, 7);
	});

	it('reaches a cut-off of 1.5 V after half its charge', () => {
		const early: Cell = { ...falling, cutOff: { value: 1.5, source: ['COMMON'] } };
		const found = discharge({ ...one, cell: early }, currentLoad(1));
		expect(found.end).toBe('cut-off');
		expect(found.runTime).toBeCloseTo(1800, 4);
		expect(found.points.at(-1)?.voltage).toBeCloseTo(1.5, 8);
	});
});

describe('a hot wire on a pack', () => {
	const wire = { material: materials['nicr-80-20'], diameter: 0.3e-3, length: 0.3 };
	const load = wireLoad({ wire, leads: { resistance: 0.05, rating: 5 }, room: stillRoom });

	it('draws less as the pack empties, and ends at the cut-off voltage', () => {
		const found = discharge({ cell: cells.lr6, series: 4, parallel: 1 }, load);
		expect(found.end).toBe('cut-off');
		expect(found.points.at(-1)?.voltage).toBeCloseTo(3.2, 6);
		const currents = found.points.map(({ current }) => current);
		expect(currents.every((current, i) => i === 0 || current < (currents[i - 1] ?? 0))).toBe(true);
	});
});
