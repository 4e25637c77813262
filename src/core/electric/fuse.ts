import type { Amperes, Seconds } from '#core/quantity/unit.ts';

/**
 * Gates of a quick-acting miniature fuse: at `ratio` times its rating it opens within `within`.
 * Source: IEC 60127-2, quick-acting links, from memory. Between 1.5 and 2.1 times nothing is promised.
 */
export const fuseGates = {
	holdsAnHourUpTo: 1.5,
	opens: [
		{ ratio: 10, within: 0.02 },
		{ ratio: 4, within: 0.3 },
		{ ratio: 2.75, within: 3 },
		{ ratio: 2.1, within: 1800 },
	],
} as const;

/** Rated currents of the usual series, in A. Source: IEC 60127-2, R10 steps, from memory. */
export const fuseRatings: readonly Amperes[] = [0.5, 0.63, 0.8, 1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8, 10];

/** What the standard promises about a fuse at a steady current. */
export type FuseVerdict =
	| { readonly gate: 'within-rating'; readonly ratio: number }
	| { readonly gate: 'holds-an-hour'; readonly ratio: number }
	| { readonly gate: 'undecided'; readonly ratio: number }
	| { readonly gate: 'opens'; readonly ratio: number; readonly within: Seconds };

/**
 * The gate a steady current falls into.
 *
 * @param fuse rating in A, > 0; current in A, ≥ 0
 * @throws RangeError outside these ranges
 */
export function fuseVerdict({ rating, current }: { rating: Amperes; current: Amperes }): FuseVerdict {
	if (!(rating > 0)) throw new RangeError(`a fuse rating must be above zero, got ${rating}`);
	if (!(current >= 0)) throw new RangeError(`a current must not be negative, got ${current}`);
	const ratio = current / rating;
	const opening = fuseGates.opens.find((gate) => ratio >= gate.ratio);
	if (opening !== undefined) return { gate: 'opens', ratio, within: opening.within };
	if (ratio > fuseGates.holdsAnHourUpTo) return { gate: 'undecided', ratio };
	return { gate: ratio > 1 ? 'holds-an-hour' : 'within-rating', ratio };
}

/**
 * The smallest fuse that carries a planned current with a margin and still protects the leads.
 *
 *   1.25 I ≤ rating ≤ rating of the leads
 *
 * @param plan current in A, > 0; rating of the leads in A; the fuses at hand in A, in any order
 * @returns the rating in A, or null when none fits: thicker leads are needed
 */
export function smallestFuse(plan: {
	current: Amperes;
	leadsRating: Amperes;
	atHand?: readonly Amperes[];
}): Amperes | null {
	if (!(plan.current > 0)) throw new RangeError(`a current must be above zero, got ${plan.current}`);
	const fitting = (plan.atHand ?? fuseRatings).filter(
		(rating) => rating >= 1.25 * plan.current * (1 - 1e-12) && rating <= plan.leadsRating,
	);
	return fitting.length === 0 ? null : Math.min(...fitting);
}
