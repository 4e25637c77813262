import { describe, expect, test } from 'vitest';
import { MonotoneCurve } from '#core/numeric/interpolate.ts';
import { linearFit } from '#core/numeric/linear-fit.ts';
import { rootBetween } from '#core/numeric/root.ts';

describe('a monotone curve', () => {
	const curve = new MonotoneCurve([0, 1, 3], [0, 2, 3]);

	test('refuses to answer outside its points, holds its ends or goes on straight only by name', () => {
		expect(() => curve.at(3.0001)).toThrow(RangeError);
		expect(() => curve.at(Number.NaN)).toThrow(RangeError);
		expect(curve.heldAt(9)).toBe(3);
		expect(curve.continuedAt(-1)).toBeLessThan(0);
	});

	test('keeps a straight line straight', () => {
		const line = new MonotoneCurve([0, 1, 4, 5], [1, 3, 9, 11]);
		expect(line.at(2.5)).toBeCloseTo(6, 12);
		expect(line.continuedAt(7)).toBeCloseTo(15, 12);
	});

	test('is flat where its points turn', () => {
		expect(new MonotoneCurve([0, 1, 2], [0, 1, 0]).at(1)).toBe(1);
		expect(new MonotoneCurve([0, 1, 2], [0, 1, 0]).at(0.99)).toBeLessThan(1);
	});

	test('is constant with a single point', () => {
		const single = new MonotoneCurve([2], [7]);
		expect(single.at(2)).toBe(7);
		expect(single.continuedAt(5)).toBe(7);
	});

	test('refuses data that make no curve', () => {
		expect(() => new MonotoneCurve([], [])).toThrow(RangeError);
		expect(() => new MonotoneCurve([0, 0], [1, 2])).toThrow(RangeError);
		expect(() => new MonotoneCurve([0, 1], [1])).toThrow(RangeError);
		expect(() => new MonotoneCurve([0, 1], [1, Number.NaN])).toThrow(RangeError);
	});
});

describe('a root', () => {
	test('is found to the tolerance in few calls', () => {
		let calls = 0;
		const root = rootBetween(
			(x) => {
				calls++;
				return Math.cos(x) - x;
			},
			{ from: 0, to: 1, tolerance: 1e-12 },
		);
		expect(Math.cos(root)).toBeCloseTo(root, 11);
		expect(calls).toBeLessThan(15);
	});

	test('is found where a secant would run away', () => {
		expect(rootBetween((x) => Math.atan(50 * (x - 3)), { from: -1000, to: 1500, tolerance: 1e-9 })).toBeCloseTo(3, 8);
		expect(rootBetween((x) => (x - 1) ** 9, { from: -3, to: 10, tolerance: 1e-6 })).toBeCloseTo(1, 5);
	});

	test('may lie at an end', () => {
		expect(rootBetween((x) => x, { from: 0, to: 1, tolerance: 1e-9 })).toBe(0);
		expect(rootBetween((x) => x - 1, { from: 0, to: 1, tolerance: 1e-9 })).toBe(1);
	});

	test('is refused without a change of sign', () => {
		expect(() => rootBetween((x) => x * x + 1, { from: -1, to: 1, tolerance: 1e-9 })).toThrow(RangeError);
		expect(() => rootBetween(() => Number.NaN, { from: -1, to: 1, tolerance: 1e-9 })).toThrow(RangeError);
	});
});

test('a fit needs three points with different x', () => {
	expect(() => linearFit([{ x: 0, y: 1 }])).toThrow(RangeError);
	expect(() => linearFit([0, 1, 2].map((y) => ({ x: 1, y })))).toThrow(RangeError);
});
