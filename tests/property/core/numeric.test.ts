import fc from 'fast-check';
import { expect, test } from 'vitest';
import { MonotoneCurve } from '#core/numeric/interpolate.ts';
import { linearFit } from '#core/numeric/linear-fit.ts';
import { rootBetween } from '#core/numeric/root.ts';

const step = fc.double({ min: 0.001, max: 100, noNaN: true });
const rise = fc.oneof(fc.constant(0), fc.double({ min: 0, max: 1000, noNaN: true }));
const points = fc.array(fc.record({ step, rise }), { minLength: 1, maxLength: 12 }).map((parts) => {
	const x = [0];
	const y = [0];
	for (const part of parts) {
		x.push((x.at(-1) ?? 0) + part.step);
		y.push((y.at(-1) ?? 0) + part.rise);
	}
	return { x, y };
});

test('a curve through rising points rises everywhere and meets its points', () => {
	fc.assert(
		fc.property(points, ({ x, y }) => {
			const curve = new MonotoneCurve(x, y);
			x.forEach((place, i) => expect(curve.at(place)).toBeCloseTo(y[i] ?? Number.NaN, 6));
			const samples = Array.from({ length: 200 }, (_, i) => curve.from + ((curve.to - curve.from) * i) / 199);
			const values = samples.map((place) => curve.heldAt(place));
			const slack = 1e-9 * (1 + Math.abs(y.at(-1) ?? 0));
			values.slice(1).forEach((value, i) => expect(value).toBeGreaterThanOrEqual((values[i] ?? 0) - slack));
		}),
		{ numRuns: 300 },
	);
});

test('the root of a rising function is found wherever it lies', () => {
	fc.assert(
		fc.property(fc.double({ min: -99, max: 99, noNaN: true }), fc.integer({ min: 0, max: 4 }), (root, power) => {
			const f = (x: number) => (x - root) ** (2 * power + 1) + (x - root) * 1e-3;
			expect(rootBetween(f, { from: -100, to: 100, tolerance: 1e-9 })).toBeCloseTo(root, 7);
		}),
	);
});

test('a fit finds the line its points lie on', () => {
	const number = fc.double({ min: -100, max: 100, noNaN: true });
	fc.assert(
		fc.property(number, number, fc.integer({ min: 3, max: 20 }), (intercept, slope, n) => {
			const fit = linearFit(Array.from({ length: n }, (_, x) => ({ x, y: intercept + slope * x })));
			expect(fit.slope).toBeCloseTo(slope, 8);
			expect(fit.intercept).toBeCloseTo(intercept, 8);
		}),
	);
});
