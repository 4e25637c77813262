import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cells } from '#core/electric/cell/cells.ts';
import { packCapacity, packCutOff, packSource, type Pack } from '#core/electric/cell/pack.ts';
import { discharge, powerLoad, resistanceLoad, type Load } from '#core/electric/discharge.ts';
import { materials } from '#core/material/materials.ts';
import { wireLoad } from '#core/setup/wire-load.ts';
import { stillRoom } from '#core/thermal/room.ts';

/** The part of odex used here: its own sources do not compile under our compiler options. */
interface OdexSolver {
	absoluteTolerance: number;
	relativeTolerance: number;
	solve(f: (x: number, y: readonly number[]) => number[], from: number, start: number[], to: number): { y: number[] };
}
const odex: { Solver: new (unknowns: number) => OdexSolver } = createRequire(import.meta.url)('odex');

const packs: fc.Arbitrary<Pack> = fc.record({
	cell: fc.constantFrom(...Object.values(cells)),
	series: fc.integer({ min: 1, max: 2 }),
	parallel: fc.integer({ min: 1, max: 3 }),
	contacts: fc.double({ min: 0, max: 0.1, noNaN: true }),
	spread: fc.constantFrom('least' as const, 'value' as const, 'most' as const),
});
/** load resistance as a multiple of the pack's own when full */
const multiples = fc.double({ min: 3, max: 100, noNaN: true });
const starts = fc.double({ min: 0.3, max: 1, noNaN: true });

const loadFor = (pack: Pack, multiple: number) => resistanceLoad(multiple * packSource(pack, 1).resistance);

/** Charge, delivered energy and lost energy after a time, by the other solver. */
function byOdex(pack: Pack, load: Load, { start, time }: { start: number; time: number }) {
	const solver = new odex.Solver(3);
	solver.absoluteTolerance = 1e-11;
	solver.relativeTolerance = 1e-11;
	// time as a share of the whole, energies as shares of what the pack holds
	const scale = packCapacity(pack, 0) * packSource(pack, 1).voltage;
	const rates = (_: number, [z = 0]: readonly number[]) => {
		const source = packSource(pack, Math.min(1, Math.max(0, z)));
		const current = load(source) ?? 0;
		const inside = current ** 2 * source.resistance;
		return [
			(-time * current) / packCapacity(pack, current),
			(time * (current * source.voltage - inside)) / scale,
			(time * inside) / scale,
		];
	};
	const [charge = 0, delivered = 0, lost = 0] = solver.solve(rates, 0, [start, 0, 0], 1).y;
	return { charge, delivered: delivered * scale, lost: lost * scale };
}

describe('against odex, an independent extrapolation solver in time', () => {
	test('charge left and energies agree for a resistance', () => {
		fc.assert(
			fc.property(packs, multiples, starts, (pack, multiple, start) => {
				const load = loadFor(pack, multiple);
				const found = discharge(pack, load, { start });
				fc.pre(found.runTime > 0);
				const other = byOdex(pack, load, { start, time: found.runTime });
				expect(Math.abs(other.charge - (found.points.at(-1)?.charge ?? Number.NaN))).toBeLessThan(2e-5);
				expect(Math.abs(other.delivered / found.deliveredEnergy - 1)).toBeLessThan(2e-5);
				expect(Math.abs(other.lost / found.lostEnergy - 1)).toBeLessThan(2e-5);
			}),
			{ numRuns: 40 },
		);
	});

	test('and for a hot wire', () => {
		const pack: Pack = { cell: cells.hr6, series: 4, parallel: 1 };
		const load = wireLoad({
			wire: { material: materials['ni-99-2'], diameter: 0.2e-3, length: 0.4 },
			leads: { resistance: 0.05, rating: 5 },
			room: stillRoom,
		});
		const found = discharge(pack, load);
		const other = byOdex(pack, load, { start: 1, time: found.runTime });
		expect(found.runTime).toBeGreaterThan(60);
		expect(Math.abs(other.charge - (found.points.at(-1)?.charge ?? Number.NaN))).toBeLessThan(2e-5);
		expect(Math.abs(other.delivered / found.deliveredEnergy - 1)).toBeLessThan(2e-5);
	});
});

describe('laws of a discharge', () => {
	test('rest voltage times charge is what left the posts and what stayed as heat', () => {
		fc.assert(
			fc.property(packs, multiples, (pack, multiple) => {
				const { points, deliveredEnergy, lostEnergy } = discharge(pack, loadFor(pack, multiple));
				// the trapezoid of U₀ I over the times of the points
				const power = points.map(({ charge, current }) => packSource(pack, charge).voltage * current);
				const chemical = points.slice(1).reduce((sum, { time }, i) => {
					return sum + ((power[i] ?? 0) + (power[i + 1] ?? 0)) * 0.5 * (time - (points[i]?.time ?? 0));
				}, 0);
				expect(Math.abs(chemical - deliveredEnergy - lostEnergy)).toBeLessThanOrEqual(3e-3 * chemical);
			}),
			{ numRuns: 60 },
		);
	});

	test('no more charge comes out than the pack gives at its smallest current', () => {
		fc.assert(
			fc.property(packs, multiples, starts, (pack, multiple, start) => {
				const { deliveredCharge } = discharge(pack, loadFor(pack, multiple), { start });
				expect(deliveredCharge).toBeLessThanOrEqual(start * packCapacity(pack, 0) * (1 + 1e-9));
			}),
			{ numRuns: 60 },
		);
	});

	test('a larger load resistance lasts longer', () => {
		fc.assert(
			fc.property(packs, multiples, (pack, multiple) => {
				const heavy = discharge(pack, loadFor(pack, multiple));
				fc.pre(heavy.runTime > 0);
				expect(discharge(pack, loadFor(pack, multiple * 1.1)).runTime).toBeGreaterThan(heavy.runTime);
			}),
			{ numRuns: 60 },
		);
	});

	test('voltage never falls below the cut-off, and time and charge run one way', () => {
		fc.assert(
			fc.property(packs, fc.double({ min: 0.1, max: 20, noNaN: true }), (pack, power) => {
				const { points } = discharge(pack, powerLoad(power));
				points.forEach(({ time, charge, voltage }, i) => {
					const before = points[i - 1];
					expect(voltage).toBeGreaterThanOrEqual(packCutOff(pack) - 1e-9);
					if (before === undefined) return;
					expect(time).toBeGreaterThan(before.time);
					expect(charge).toBeLessThan(before.charge);
				});
			}),
			{ numRuns: 60 },
		);
	});

	test('two equal packs side by side share the load: each gives half', () => {
		fc.assert(
			fc.property(packs, multiples, (pack, multiple) => {
				const single = { ...pack, parallel: 1, contacts: 0 };
				const double = { ...pack, parallel: 2, contacts: 0 };
				const resistance = multiple * packSource(single, 1).resistance;
				const alone = discharge(single, resistanceLoad(resistance));
				const together = discharge(double, resistanceLoad(resistance / 2));
				expect(together.runTime).toBeCloseTo(alone.runTime, 3);
				expect(together.deliveredCharge).toBeCloseTo(2 * alone.deliveredCharge, 3);
			}),
			{ numRuns: 60 },
		);
	});
});
