import type { Metres } from '#core/quantity/unit.ts';

/**
 * Widths of cells along a rod, growing away from its start, so that the start is resolved to `shortest`: equal cells
 * when those are already fine enough, else edges at length · sinh(a s)/sinh(a) with s equally spaced.
 *
 * @returns as many widths as cells, summing to the length
 */
export function rodMesh(rod: {
	readonly length: Metres;
	readonly cells: number;
	readonly shortest: Metres;
}): readonly Metres[] {
	const { length, cells, shortest } = rod;
	const equal = length / cells;
	if (equal <= shortest) return Array.from({ length: cells }, () => equal);
	const first = (a: number) => (length * Math.sinh(a / cells)) / Math.sinh(a);
	let low = 1e-6;
	let high = 50;
	for (let round = 0; round < 60; round += 1) {
		const middle = (low + high) / 2;
		if (first(middle) > shortest) low = middle;
		else high = middle;
	}
	const edge = (index: number) => (length * Math.sinh((high * index) / cells)) / Math.sinh(high);
	return Array.from({ length: cells }, (_, index) => edge(index + 1) - edge(index));
}
