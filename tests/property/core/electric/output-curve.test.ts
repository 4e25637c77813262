import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
	foldbackCurrent,
	foldbackPoint,
	powerCeilingPoint,
	powerCeilingVoltage,
	type Foldback,
	type PowerCeiling,
} from '#core/electric/output-curve.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const ceilings: fc.Arbitrary<PowerCeiling> = fc.record({
	voltage: number(1, 24),
	power: number(1, 200),
	greatestCurrent: number(0.5, 20),
});
const foldbacks: fc.Arbitrary<Foldback> = fc
	.record({ voltage: number(1, 24), kneeCurrent: number(0.5, 20), part: number(0.05, 0.95) })
	.map(({ voltage, kneeCurrent, part }) => ({ voltage, kneeCurrent, shortCurrent: part * kneeCurrent }));
const loads = number(0.001, 1000);

test('a power ceiling holds voltage, power and current at once, and one of them is at its end', () => {
	fc.assert(
		fc.property(ceilings, loads, (supply, load) => {
			const { current, voltage } = powerCeilingPoint(supply, load);
			const parts = [voltage / supply.voltage, (current * voltage) / supply.power, current / supply.greatestCurrent];
			expect(Math.max(...parts)).toBeLessThanOrEqual(1 + 1e-9);
			expect(Math.max(...parts)).toBeGreaterThan(1 - 1e-9);
		}),
	);
});

test('the point on a load lies on the curve of voltage against current', () => {
	fc.assert(
		fc.property(ceilings, loads, (supply, load) => {
			const { mode, current, voltage } = powerCeilingPoint(supply, load);
			fc.pre(mode !== 'current');
			expect(powerCeilingVoltage(supply, current) / voltage).toBeCloseTo(1, 9);
		}),
	);
});

test('a foldback point lies on its falling line and on the line of the load', () => {
	fc.assert(
		fc.property(foldbacks, loads, (supply, load) => {
			const { mode, current, voltage } = foldbackPoint(supply, load);
			expect(voltage / (current * load)).toBeCloseTo(1, 9);
			if (mode === 'foldback') expect(foldbackCurrent(supply, voltage) / current).toBeCloseTo(1, 9);
			else expect(voltage).toBe(supply.voltage);
		}),
	);
});

test('a smaller load never raises the voltage of either supply', () => {
	fc.assert(
		fc.property(ceilings, foldbacks, loads, (ceiling, foldback, load) => {
			expect(powerCeilingPoint(ceiling, load / 2).voltage).toBeLessThanOrEqual(
				powerCeilingPoint(ceiling, load).voltage + 1e-12,
			);
			expect(foldbackPoint(foldback, load / 2).voltage).toBeLessThanOrEqual(
				foldbackPoint(foldback, load).voltage + 1e-12,
			);
		}),
	);
});

test('into a nearly dead short a foldback supply gives its short current', () => {
	fc.assert(
		fc.property(foldbacks, (supply) => {
			expect(foldbackPoint(supply, 1e-9).current / supply.shortCurrent).toBeCloseTo(1, 6);
		}),
	);
});
