import fc from 'fast-check';
import { expect, it, vi } from 'vitest';
import { materialIds, materials } from '#core/material/materials.ts';
import { cautionsFor } from '#core/setup/caution.ts';
import { operatingPoint } from '#core/setup/operating-point.ts';
import { validateSetup, type Setup } from '#core/setup/setup.ts';
import { solveWish, type Wish } from '#core/setup/solve.ts';
import { predictionUncertainty } from '#core/setup/uncertainty.ts';

// each run evaluates a new heat curve
vi.setConfig({ testTimeout: 30_000 });

const ends = (min: number, max: number) => fc.oneof(fc.constantFrom(min, max), fc.double({ min, max, noNaN: true }));
const protection = fc.oneof(
	fc.record({ kind: fc.constant('holds' as const), limit: ends(0, 100) }),
	fc.record({ kind: fc.constant('latches' as const), rated: ends(0.01, 3), tripAbove: ends(3, 200) }),
	fc.record({ kind: fc.constant('none' as const) }),
);
const setups: fc.Arbitrary<Setup> = fc.record({
	supply: fc.record(
		{
			openCircuitVoltage: ends(0, 24),
			internalResistance: ends(0, 100),
			protection,
			fuse: fc.record({ rating: ends(0.01, 100) }),
			charge: fc.record({ capacity: ends(1, 1e6), usableFraction: ends(0.01, 1) }),
		},
		{ requiredKeys: ['openCircuitVoltage', 'internalResistance', 'protection'] },
	),
	wire: fc.record(
		{
			material: fc.constantFrom(...materialIds.map((id) => materials[id])),
			diameter: ends(0.05e-3, 2e-3),
			length: ends(0.001, 50),
			emissivity: ends(0, 1),
		},
		{ requiredKeys: ['material', 'diameter', 'length'] },
	),
	leads: fc.record({ resistance: ends(0, 10), rating: ends(0.1, 100) }),
	room: fc.record({ temperature: ends(233, 333), pressure: ends(50_000, 110_000), draught: ends(0, 5) }),
});
const wishes: fc.Arbitrary<Wish> = fc.record({
	kind: fc.constantFrom(
		'current',
		'resistance',
		'cold-resistance',
		'length',
		'temperature',
		'power',
		'power-per-metre',
	),
	value: fc.oneof(fc.double(), fc.double({ min: 0.001, max: 2000, noNaN: true })),
});

function isFinite(values: readonly number[]): boolean {
	return values.every((value) => Number.isFinite(value));
}

it('any set-up without a problem settles to finite numbers and is cautioned about', () => {
	fc.assert(
		fc.property(setups, (setup) => {
			expect(validateSetup(setup)).toEqual([]);
			const p = operatingPoint(setup);
			const values = [p.current, p.postsVoltage, p.supplyVoltage, p.resistanceHot, p.power, p.powerPerMetre];
			expect(isFinite([...values, p.temperature, p.surfaceLoad, p.supplyLoss, p.leadsLoss])).toBe(true);
			expect(Math.min(...values)).toBeGreaterThanOrEqual(0);
			const cautions = cautionsFor(setup, p);
			if (p.current > 0 && p.temperature > 320) expect(cautions.length).toBeGreaterThan(0);
		}),
		{ numRuns: 150 },
	);
});

it('any wish on any set-up is fulfilled or refused with a reason', () => {
	fc.assert(
		fc.property(setups, wishes, (setup, wish) => {
			const outcome = solveWish(setup, wish);
			if (!outcome.ok) {
				expect(outcome.problems.length).toBeGreaterThan(0);
				return;
			}
			expect(outcome.value.length).toBeGreaterThanOrEqual(0.01);
			expect(outcome.value.length).toBeLessThanOrEqual(50);
			expect(isFinite([outcome.value.resistanceHot, outcome.value.temperature])).toBe(true);
		}),
		{ numRuns: 200 },
	);
});

it('any prediction has a finite uncertainty or none', () => {
	fc.assert(
		fc.property(setups, (setup) => {
			const result = predictionUncertainty(setup);
			if (result === null) return;
			const { temperature, current, power } = result;
			expect(isFinite([temperature, current, power].map((u) => u.standardUncertainty))).toBe(true);
			expect(temperature.standardUncertainty).toBeGreaterThan(0);
		}),
		{ numRuns: 80 },
	);
});
