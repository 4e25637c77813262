import { describe, expect, test } from 'vitest';
import { solveOde, valueInStep } from '#core/numeric/ode.ts';
import { materials } from '#core/material/materials.ts';
import { HotWire } from '#core/thermal/hot-wire.ts';
import { iceZero } from '#core/thermal/physical-constants.ts';
import { stillRoom } from '#core/thermal/room.ts';
import { temperatureAfter, timeConstant, timeTo95Percent, timeToCool, timeToReach } from '#core/thermal/warm-up.ts';

const celsius = (temperature: number) => temperature + iceZero;
const nickelChromium = (diameter: number) => new HotWire({ material: materials['nicr-80-20'], diameter }, stillRoom);

describe('sample values of the bench drawing', () => {
	test.each([
		{ millimetres: 0.25, seconds: 0.9 },
		{ millimetres: 0.4, seconds: 1.7 },
		{ millimetres: 0.71, seconds: 3.6 },
	])('near 600 °C the time constant of $millimetres mm is about $seconds s', ({ millimetres, seconds }) => {
		const wire = nickelChromium(millimetres * 1e-3);
		const found = timeConstant(wire, wire.currentAt(celsius(600)), celsius(600));
		expect(Math.abs(found / seconds - 1)).toBeLessThan(0.05);
	});
});

describe('t90 of CrAl 25 5 as the heat model notes give it, with a middling constant specific heat', () => {
	// ours follows the specific heat, which is lower when cold: hence 20 %
	test.each([
		{ millimetres: 0.15, at: 900, seconds: 0.9 },
		{ millimetres: 0.15, at: 300, seconds: 1.9 },
		{ millimetres: 0.4, at: 900, seconds: 3.5 },
		{ millimetres: 0.4, at: 300, seconds: 8.8 },
		{ millimetres: 1.2, at: 900, seconds: 14 },
		{ millimetres: 1.2, at: 300, seconds: 43 },
	])('$millimetres mm to $at °C: $seconds s', ({ millimetres, at, seconds }) => {
		const wire = new HotWire({ material: materials['cral-25-5'], diameter: millimetres * 1e-3 }, stillRoom);
		const target = stillRoom.temperature + 0.9 * (at - 20);
		const found = timeToReach(wire, wire.currentAt(celsius(at)), { from: stillRoom.temperature, target });
		expect(Math.abs((found ?? 0) / seconds - 1)).toBeLessThan(0.2);
	});
});

describe('cooling', () => {
	const wire = nickelChromium(0.4e-3);
	test('takes longer than warming and ends at 45 °C', () => {
		const cool = timeToCool(wire, celsius(600)) ?? 0;
		expect(cool).toBeGreaterThan(timeTo95Percent(wire, wire.currentAt(celsius(600))) ?? Infinity);
		expect(temperatureAfter(wire, 0, { from: celsius(600), duration: cool })).toBeCloseTo(celsius(45), 2);
	});

	test('is done at once for a wire that is not hot', () => {
		expect(timeToCool(wire, celsius(30))).toBe(0);
	});

	test('never ends in a room at 50 °C', () => {
		const warm = new HotWire(wire.wire, { ...stillRoom, temperature: celsius(50) });
		expect(timeToCool(warm, celsius(300))).toBeUndefined();
	});

	test('no current, nothing to wait for', () => {
		expect(timeTo95Percent(wire, 0)).toBe(0);
	});
});

describe('the solver', () => {
	test('follows y′ = −y to its closed form, inside steps too', () => {
		const steps = solveOde({ derivative: (_, y) => -y, from: 0, to: 3, value: 1, tolerance: 1e-9 });
		for (const step of steps) {
			const middle = (step.from + step.to) / 2;
			expect(Math.abs(step.valueTo - Math.exp(-step.to))).toBeLessThan(1e-7);
			expect(Math.abs(valueInStep(step, middle) - Math.exp(-middle))).toBeLessThan(1e-4);
		}
		expect(steps.at(-1)?.to).toBe(3);
	});

	test('takes no step over no time, and refuses to go back', () => {
		const problem = { derivative: () => 1, from: 1, value: 0, tolerance: 1e-6 };
		expect(solveOde({ ...problem, to: 1 })).toEqual([]);
		expect(() => solveOde({ ...problem, to: 0 })).toThrow(RangeError);
	});

	test('refuses a solution that runs to infinity before the end: y′ = y², y(0) = 1, at t = 1', () => {
		expect(() => solveOde({ derivative: (_, y) => y ** 2, from: 0, to: 2, value: 1, tolerance: 1e-6 })).toThrow(
			RangeError,
		);
	});
});
