import { expect, test } from 'vitest';
import { roundedUp } from '#ui/chart/view.ts';

test.each([
	[0.7, 0.8],
	[1, 1],
	[17, 20],
	[61, 80],
	[240, 250],
	[9.5, 10],
])('a scale that must reach %d ends at %d', (value, end) => {
	expect(roundedUp(value)).toBeCloseTo(end, 9);
});

test('a scale for nothing still has a length', () => {
	expect(roundedUp(0)).toBe(1);
	expect(roundedUp(Number.NaN)).toBe(1);
});
