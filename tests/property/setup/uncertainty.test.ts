import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { drawnTemperature } from '#core/setup/draws.ts';
import { predictionUncertainty } from '#core/setup/uncertainty.ts';
import { setupWith, supplies, reel40 } from '#tests/support/shed.ts';

vi.setConfig({ testTimeout: 30_000 });

const held = { ...supplies.benchSupply, protection: { kind: 'holds', limit: 2.5 } } as const;

describe('the first-order uncertainty of a temperature', () => {
	it.each([
		['12 V held', setupWith({ wire: { ...reel40, length: 0.554 } })],
		['2.5 A held', setupWith({ supply: held, wire: { ...reel40, length: 0.3 } })],
		['four AA cells', setupWith({ supply: supplies.fourAA })],
	])('agrees with random draws: %s', (_, setup) => {
		const byFormula = predictionUncertainty(setup)?.temperature;
		const byDraws = drawnTemperature(setup, { draws: 1500, seed: 5 });
		if (byFormula === undefined || byDraws === null) throw new Error('nothing flows');
		// 1500 draws fix a standard deviation to 1/√3000, 1.8 %; 8 % is four of these
		expect(byFormula.standardUncertainty / byDraws.standardDeviation).toBeCloseTo(1, 0);
		expect(Math.abs(byFormula.standardUncertainty / byDraws.standardDeviation - 1)).toBeLessThan(0.08);
		expect(Math.abs(byFormula.value - byDraws.mean)).toBeLessThan(0.15 * byFormula.standardUncertainty + 1);
	});

	it('draws the same for the same seed', () => {
		const plan = { draws: 100, seed: 'rope bench' };
		expect(drawnTemperature(setupWith(), plan)).toEqual(drawnTemperature(setupWith(), plan));
	});
});

describe('a budget', () => {
	const lengths = fc.double({ min: 0.3, max: 3, noNaN: true });

	it('adds up to one, the largest first, and expands by two', () => {
		fc.assert(
			fc.property(lengths, (length) => {
				const result = predictionUncertainty(setupWith({ wire: { ...reel40, length } }));
				if (result === null) throw new Error('nothing flows');
				for (const quantity of [result.temperature, result.current, result.power, result.neededLength]) {
					if (quantity === null) throw new Error('no length');
					const shares = quantity.budget.map(({ share }) => share);
					expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
					expect(shares).toEqual(shares.toSorted((a, b) => b - a));
					expect(quantity.expandedUncertainty).toBe(2 * quantity.standardUncertainty);
					expect(quantity.standardUncertainty).toBeGreaterThan(0);
				}
			}),
			{ numRuns: 10 },
		);
	});

	it('rests on the heat formulas and the emissivity for temperature, on the reel for current', () => {
		const result = predictionUncertainty(setupWith({ wire: { ...reel40, length: 0.554 } }));
		expect(result?.current.budget[0]?.input).toBe('resistance-per-metre');
		expect(result?.temperature.budget.map(({ input }) => input)).toContain('heat-model');
	});
});

it('knows no uncertainty where nothing flows, and no needed length where the supply holds', () => {
	const tripped = setupWith({ supply: supplies.adaptor, wire: { ...reel40, length: 0.05 } });
	expect(predictionUncertainty(tripped)).toBeNull();
	expect(drawnTemperature(tripped, { draws: 100, seed: 1 })).toBeNull();
	const result = predictionUncertainty(setupWith({ supply: held, wire: { ...reel40, length: 0.3 } }));
	expect(result?.neededLength).toBeNull();
	expect(result?.current.budget.map(({ input, share }) => [input, share])[0]).toEqual(['current-limit', 1]);
});
