import { expect, test } from 'vitest';
import { lawAgainstSolution, misjudgements, plannedTemperatures } from '#course/checks/weak-spots.ts';

const reached = new Map(misjudgements().map(({ cause, reached: temperatures }) => [cause, temperatures]));

test.each([
	{ cause: 'surface-brighter', sign: 1 },
	{ cause: 'surface-blacker', sign: -1 },
	{ cause: 'draught-faint', sign: -1 },
	{ cause: 'draught-light', sign: -1 },
	{ cause: 'upright', sign: 1 },
	{ cause: 'short', sign: -1 },
] as const)('$cause moves every temperature the way it must', ({ cause, sign }) => {
	const moves = plannedTemperatures.map((planned, index) => ((reached.get(cause)?.[index] ?? NaN) - planned) * sign);
	expect(moves.every((move) => move > 1)).toBe(true);
});

test('the stronger draught cools more', () => {
	const cooler = plannedTemperatures.map(
		(_, index) => (reached.get('draught-faint')?.[index] ?? NaN) - (reached.get('draught-light')?.[index] ?? NaN),
	);
	expect(cooler.every((by) => by > 0)).toBe(true);
});

test('the law of convection lies within 4 % of the numerical solution', () => {
	const { count, mean, rms } = lawAgainstSolution();
	expect(count).toBe(7);
	expect(Math.abs(mean)).toBeLessThanOrEqual(rms);
	expect(rms).toBeLessThan(0.04);
});
