import fc from 'fast-check';
import { expect, test } from 'vitest';
import { materials } from '#core/material/materials.ts';
import { endLoss } from '#core/setup/end-loss.ts';
import { stillRoom } from '#core/thermal/room.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const setups = fc
	.record({
		material: fc.constantFrom(materials['nicr-80-20'], materials['cral-25-5'], materials['cuni-44']),
		diameter: number(0.15e-3, 0.8e-3),
		over: number(3, 60),
		load: number(0.1, 0.6),
	})
	.map(({ material, diameter, over, load }) => ({
		// 12 A/mm^1.5 is about red heat: keeps every case inside the data
		supply: {
			openCircuitVoltage: 24,
			internalResistance: 0,
			protection: { kind: 'holds' as const, limit: load * 12 * (diameter * 1e3) ** 1.5 },
		},
		wire: { material, diameter, length: over * 8 * diameter },
		leads: { resistance: 0.05, rating: 20 },
		room: stillRoom,
	}));

test('I² R is what clips and room take, the mean is below the middle, the middle below a long wire', () => {
	fc.assert(
		fc.property(setups, (setup) => {
			const found = endLoss(setup);
			fc.pre(found.isInRange);
			const heat = found.current ** 2 * found.resistanceHot;
			expect(found.clipLoss / (found.clipShare * heat)).toBeCloseTo(1, 4);
			expect(found.mean).toBeLessThan(found.middle);
			// an alloy whose resistance falls as it warms is a little hotter where it is cooler
			expect(found.middle).toBeLessThanOrEqual(found.longTemperature + 0.5);
		}),
		{ numRuns: 10 },
	);
}, 30_000);

test('beyond ten λ the middle misses the rise of a long wire by no more than 1/cosh 5', () => {
	fc.assert(
		fc.property(setups, (setup) => {
			const found = endLoss(setup);
			fc.pre(found.isInRange && found.verdict.code === 'middle-unaffected');
			const rise = found.longTemperature - stillRoom.temperature;
			expect(Math.abs(found.middle - found.longTemperature)).toBeLessThanOrEqual((1.01 * rise) / Math.cosh(5));
		}),
		{ numRuns: 10 },
	);
}, 30_000);
