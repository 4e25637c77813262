/** One input by how far it is shifted: up and down by its standard uncertainty, or less where a range ends. */
export interface ShiftedInput {
	readonly standardUncertainty: number;
	readonly up: number;
	/** negative */
	readonly down: number;
}

/** An input free to be shifted both ways by its standard uncertainty. */
export function freeInput(standardUncertainty: number): ShiftedInput {
	return { standardUncertainty, up: standardUncertainty, down: -standardUncertainty };
}

/**
 * What the uncertainty of each input does to each result: slope times u, from a shift both ways.
 *
 *   cᵢ u(xᵢ) = [y(xᵢ + up) − y(xᵢ + down)] u(xᵢ)/(up − down)
 *
 * @param inputs at least one; up above down
 * @param resultsAt the results with one input shifted, always as many
 * @returns by result, then by input, with sign
 * @see JCGM 100:2008 (GUM), 5.1.3 note 2 (from memory); checked in tests/published/published-checks.test.ts
 */
export function contributions(
	inputs: readonly ShiftedInput[],
	resultsAt: (shift: { readonly input: number; readonly by: number }) => readonly number[],
): readonly (readonly number[])[] {
	const byInput = inputs.map(({ standardUncertainty, up, down }, input) => {
		if (!(up > down)) throw new RangeError(`input ${input} cannot be shifted`);
		const above = resultsAt({ input, by: up });
		const below = resultsAt({ input, by: down });
		return above.map((value, index) => ((value - (below[index] ?? NaN)) * standardUncertainty) / (up - down));
	});
	const [first = []] = byInput;
	return first.map((_, result) => byInput.map((results) => results[result] ?? NaN));
}

/**
 * Covariance of two results from their contributions; of one result with itself, its variance.
 *
 *   u(y, z) = Σᵢ Σⱼ cᵢ u(xᵢ) dⱼ u(xⱼ) r(xᵢ, xⱼ)
 *
 * @param correlation of two inputs by number, −1…1; every input on its own when left out
 * @see JCGM 100:2008 (GUM), 5.2.2, equation 16, and H.9 (from memory)
 */
export function combinedCovariance(
	first: readonly number[],
	second: readonly number[],
	correlation: (i: number, j: number) => number = (i, j) => (i === j ? 1 : 0),
): number {
	return first.reduce((sum, a, i) => sum + second.reduce((inner, b, j) => inner + a * b * correlation(i, j), 0), 0);
}
