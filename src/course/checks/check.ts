import type { Had } from '#core/material/sources.ts';
import type { CheckSource } from './sources.ts';

/** One number, or the parts of one result such as x and y. */
export type CheckValue = number | readonly number[];

/** Relative to the published value, or absolute in its unit and for each part. */
export type Tolerance = { readonly relative: number } | { readonly absolute: number };

/** A value somebody published, restated with where it stands and how it was had. */
export interface CheckFacts {
	/** running number, 1…104 */
	readonly number: number;
	readonly id: string;
	readonly quantity: string;
	readonly item: string;
	readonly published: CheckValue;
	/** empty for a pure number */
	readonly unit: string;
	readonly tolerance: Tolerance;
	readonly source: CheckSource;
	readonly had: Had;
	/** that the published value is restated rightly, 0…1; below `gateConfidence` it is shown and gates nothing */
	readonly confidence: number;
	readonly note?: string;
}

/** A published value with the way our own is reckoned. */
export interface PublishedCheck extends CheckFacts {
	/** in the unit of the published value */
	readonly ours: () => CheckValue;
}

export interface CheckResult extends CheckFacts {
	readonly ours: CheckValue;
	/** the largest part: as a share of the published value, or in its unit, as the tolerance is */
	readonly deviation: number;
	readonly isWithin: boolean;
	readonly isGate: boolean;
}

export const gateConfidence = 0.9;

/** Ties the inputs of a check to the function that reckons ours from them. */
export function check<const I>(
	entry: CheckFacts & { readonly inputs: I; readonly ours: (inputs: I) => CheckValue },
): PublishedCheck {
	const { inputs, ours, ...facts } = entry;
	return { ...facts, ours: () => ours(inputs) };
}

/** Reckons ours and compares: the largest deviation of any part against the tolerance. */
export function runCheck(entry: PublishedCheck): CheckResult {
	const { ours: reckon, ...facts } = entry;
	const ours = reckon();
	const { tolerance } = facts;
	const published = [facts.published].flat();
	const found = [ours].flat();
	if (found.length !== published.length) throw new RangeError(`${facts.id}: ${found.length} parts`);
	const deviations = published.map((value, index) => {
		const difference = (found[index] ?? NaN) - value;
		return 'relative' in tolerance ? difference / Math.abs(value) : difference;
	});
	const deviation = deviations.reduce((worst, part) => (Math.abs(part) > Math.abs(worst) ? part : worst));
	const limit = 'relative' in tolerance ? tolerance.relative : tolerance.absolute;
	return {
		...facts,
		ours,
		deviation,
		isWithin: deviations.every((part) => Math.abs(part) <= limit),
		isGate: facts.confidence >= gateConfidence,
	};
}
