import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { materials, materialIds } from '#core/material/materials.ts';
import { heatCurve } from '#core/setup/heat-curve.ts';
import { operatingPoint } from '#core/setup/operating-point.ts';
import type { Setup } from '#core/setup/setup.ts';
import { solveWish } from '#core/setup/solve.ts';
import { sweepLength } from '#core/setup/sweep.ts';
import { stillRoom } from '#core/thermal/room.ts';

vi.setConfig({ testTimeout: 30_000 });

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const protection = fc.oneof(
	fc.record({ kind: fc.constant('holds' as const), limit: between(0.2, 10) }),
	fc.record({ kind: fc.constant('retries' as const), rated: fc.constant(5), tripAbove: fc.constant(5.5) }),
	fc.record({ kind: fc.constant('none' as const) }),
);
const setups: fc.Arbitrary<Setup> = fc.record({
	supply: fc.record({
		openCircuitVoltage: between(0.5, 24),
		internalResistance: between(0, 2),
		protection,
		fuse: fc.record({ rating: between(1, 10) }),
	}),
	wire: fc.record({
		material: fc.constantFrom(...materialIds.map((id) => materials[id])),
		diameter: fc.constantFrom(0.2e-3, 0.32e-3, 0.5e-3, 1e-3),
		length: between(0.05, 5),
	}),
	leads: fc.record({ resistance: between(0, 0.5), rating: between(2, 10) }),
	room: fc.record({
		temperature: fc.constantFrom(283.15, 293.15, 303.15),
		pressure: fc.constant(101_325),
		draught: fc.constant(0),
	}),
});

describe('any set-up', () => {
	it('turns all power of the source into heat in wire, leads and supply', () => {
		fc.assert(
			fc.property(setups, (setup) => {
				const point = operatingPoint(setup);
				const asHeat = point.power + point.leadsLoss + point.supplyLoss;
				const given = (point.supplyVoltage + point.current * setup.supply.internalResistance) * point.current;
				expect(Math.abs(given - asHeat)).toBeLessThanOrEqual(1e-9 * (1 + asHeat));
				if (point.state !== 'on') return;
				const source = setup.supply.openCircuitVoltage * point.current;
				expect(Math.abs(source - asHeat)).toBeLessThanOrEqual(1e-9 * (1 + source));
			}),
			{ numRuns: 300 },
		);
	});

	it('obeys U = I R at the wire and never passes its limit', () => {
		fc.assert(
			fc.property(setups, (setup) => {
				const point = operatingPoint(setup);
				expect(point.postsVoltage).toBeCloseTo(point.current * point.resistanceHot, 12);
				const held = setup.supply.protection.kind === 'holds' ? setup.supply.protection.limit : Infinity;
				expect(point.current).toBeLessThanOrEqual(Math.min(held, point.askedCurrent) * (1 + 1e-9));
			}),
		);
	});

	it('holds the heat balance of the wire while a current flows', () => {
		fc.assert(
			fc.property(setups, (setup) => {
				const point = operatingPoint(setup);
				if (!point.isTemperatureInRange || point.current === 0) return;
				const lost = heatCurve(setup).heatLoss(point.temperature);
				expect(Math.abs(point.powerPerMetre - lost)).toBeLessThanOrEqual(1e-4 * lost + 1e-6);
				expect(point.powerPerMetre * setup.wire.length).toBeCloseTo(point.power, 9);
			}),
		);
	});

	it('draws less the longer the wire is', () => {
		fc.assert(
			fc.property(setups, between(1.01, 3), (setup, factor) => {
				const longer = { ...setup, wire: { ...setup.wire, length: setup.wire.length * factor } };
				expect(operatingPoint(longer).askedCurrent).toBeLessThan(operatingPoint(setup).askedCurrent);
			}),
		);
	});

	it('gives a fulfilled wish back', () => {
		const kinds = fc.constantFrom(
			'current' as const,
			'power' as const,
			'power-per-metre' as const,
			'resistance' as const,
		);
		let fulfilled = 0;
		fc.assert(
			fc.property(setups, kinds, between(0.1, 30), (setup, kind, value) => {
				const outcome = solveWish(setup, { kind, value });
				if (!outcome.ok || outcome.value.point.current === 0) return;
				fulfilled += 1;
				const { point } = outcome.value;
				const found = {
					current: point.current,
					power: point.power,
					'power-per-metre': point.powerPerMetre,
					resistance: point.resistanceHot,
				}[kind];
				expect(found / value).toBeCloseTo(1, 5);
			}),
			{ numRuns: 400 },
		);
		expect(fulfilled).toBeGreaterThan(50);
	});
});

it('gives a fulfilled wish for a temperature, and the cold resistance of any length, back', () => {
	let fulfilled = 0;
	fc.assert(
		fc.property(setups, between(320, 1200), (setup, value) => {
			const outcome = solveWish(setup, { kind: 'temperature', value });
			if (!outcome.ok || outcome.value.point.current === 0) return;
			fulfilled += 1;
			expect(outcome.value.temperature).toBeCloseTo(value, 2);
			const cold = { kind: 'cold-resistance', value: outcome.value.resistanceCold } as const;
			const again = solveWish(setup, cold);
			expect(again.ok ? again.value.length / outcome.value.length : 0).toBeCloseTo(1, 9);
		}),
		{ numRuns: 300 },
	);
	expect(fulfilled).toBeGreaterThan(20);
});

it('a wire of constant resistance obeys I = U/(Ri + R) exactly', () => {
	const constantan = materials['cuni-44'];
	const ratio = constantan.resistanceRatio.ratio.map(() => 1);
	const material = { ...constantan, resistanceRatio: { ...constantan.resistanceRatio, ratio } };
	fc.assert(
		fc.property(between(0.5, 6), between(0, 2), between(0.5, 3), (openCircuitVoltage, internalResistance, length) => {
			const point = operatingPoint({
				supply: { openCircuitVoltage, internalResistance, protection: { kind: 'holds', limit: 100 } },
				wire: { material, diameter: 0.4e-3, length },
				leads: { resistance: 0, rating: 100 },
				room: stillRoom,
			});
			const resistance = (material.resistivity.value * length) / (Math.PI * 0.2e-3 ** 2);
			expect(point.current / (openCircuitVoltage / (internalResistance + resistance))).toBeCloseTo(1, 9);
		}),
	);
});

it('a sweep says what each length alone says', () => {
	fc.assert(
		fc.property(setups, (setup) => {
			for (const point of sweepLength(setup, { from: 0.05, to: 2, points: 12 })) {
				const alone = operatingPoint({ ...setup, wire: { ...setup.wire, length: point.length } });
				expect(point.state).toBe(alone.state);
				expect(Math.abs(point.temperature - alone.temperature)).toBeLessThan(0.05);
			}
		}),
		{ numRuns: 60 },
	);
});
