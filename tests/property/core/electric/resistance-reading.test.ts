import fc from 'fast-check';
import { expect, test } from 'vitest';
import { branchesInParallel, bundleResistance, segmentsInSeries, strandCurrent } from '#core/electric/bundle.ts';
import { fourWireReading, resistancePerMetreFromReadings, twoWireReading } from '#core/electric/resistance-reading.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const meter = fc.record({
	step: fc.constantFrom(0.1, 0.01, 0.001),
	relativeLimit: number(0, 0.02),
	steps: fc.integer({ min: 0, max: 5 }),
});

test('a reading over two wires is over by the leads, within half a step', () => {
	fc.assert(
		fc.property(meter, number(0, 100), number(0, 2), (of, resistance, leads) => {
			const { methodError } = twoWireReading(of, { resistance, leads });
			expect(Math.abs(methodError - leads)).toBeLessThanOrEqual(of.step / 2 + 1e-9);
		}),
	);
});

test('a reading over four wires is never over by more than the steps of its meters', () => {
	fc.assert(
		fc.property(number(0.1, 50), number(0.2, 2), (resistance, current) => {
			const fine = { step: 1e-4, relativeLimit: 0, steps: 1 };
			const { methodError } = fourWireReading({ voltmeter: fine, ammeter: fine }, { resistance, current });
			expect(methodError).toBeLessThanOrEqual((0.5e-4 * (1 + resistance)) / (current - 0.5e-4) + 1e-9);
		}),
	);
});

test('leads added to every reading leave the ohms per metre alone', () => {
	const readings = fc.array(fc.record({ length: number(0.1, 2), noise: number(-0.01, 0.01) }), {
		minLength: 3,
		maxLength: 8,
	});
	fc.assert(
		fc.property(readings, number(0, 1), (points, leads) => {
			const lengths = points.map(({ length }) => length);
			fc.pre(Math.max(...lengths) - Math.min(...lengths) > 0.2);
			const fit = (extra: number) =>
				resistancePerMetreFromReadings(
					points.map(({ length, noise }) => ({ length, resistance: 0.5 + 10 * length + noise + extra })),
				);
			const [without, withLeads] = [fit(0), fit(leads)];
			if (!without.ok || !withLeads.ok) throw new Error('no fit');
			expect(withLeads.value.resistancePerMetre).toBeCloseTo(without.value.resistancePerMetre, 8);
			expect(withLeads.value.leads - without.value.leads).toBeCloseTo(leads, 8);
			expect(withLeads.value.leadsUncertainty).toBeCloseTo(without.value.leadsUncertainty, 8);
		}),
	);
});

const resistances = fc.array(number(0.1, 50), { minLength: 1, maxLength: 6 });

test('branches share the whole current, stand at one voltage and make as much heat as one resistance', () => {
	fc.assert(
		fc.property(resistances, number(0.1, 10), (branches, current) => {
			const { resistance, parts } = branchesInParallel(branches, current);
			const sum = (of: (part: (typeof parts)[number]) => number) => parts.reduce((total, part) => total + of(part), 0);
			expect(sum((part) => part.current) / current).toBeCloseTo(1, 9);
			expect(sum((part) => part.power) / (current ** 2 * resistance)).toBeCloseTo(1, 9);
			for (const part of parts) expect((part.current * part.resistance) / (current * resistance)).toBeCloseTo(1, 9);
			expect(resistance).toBeLessThanOrEqual(Math.min(...branches) * (1 + 1e-12));
		}),
	);
});

test('segments in a row make as much heat as one resistance', () => {
	fc.assert(
		fc.property(resistances, number(0.1, 10), (segments, current) => {
			const { resistance, parts } = segmentsInSeries(segments, current);
			const heat = parts.reduce((total, { power }) => total + power, 0);
			expect(heat / (current ** 2 * resistance)).toBeCloseTo(1, 9);
		}),
	);
});

test('like strands are like branches', () => {
	fc.assert(
		fc.property(
			number(1, 100),
			number(0.05, 2),
			fc.integer({ min: 1, max: 7 }),
			(resistancePerMetre, length, strands) => {
				const branches = branchesInParallel(
					Array.from({ length: strands }, () => resistancePerMetre * length),
					3,
				);
				expect(bundleResistance({ resistancePerMetre, length, strands }) / branches.resistance).toBeCloseTo(1, 9);
				expect(strandCurrent({ strands }, 3)).toBeCloseTo(branches.parts[0]?.current ?? Number.NaN, 9);
			},
		),
	);
});

test('a bundle needs whole strands with resistance and length', () => {
	const good = { resistancePerMetre: 10, length: 0.5, strands: 2 };
	for (const bad of [{ strands: 0 }, { strands: 1.5 }, { length: 0 }, { resistancePerMetre: 0 }]) {
		expect(() => bundleResistance({ ...good, ...bad })).toThrow(RangeError);
	}
	expect(() => branchesInParallel([1, 0], 1)).toThrow(RangeError);
});
