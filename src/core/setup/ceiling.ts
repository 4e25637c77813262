import { planningFraction, ratedCurrent } from '#core/electric/supply.ts';
import type { Amperes, Kelvin } from '#core/quantity/unit.ts';
import type { HotWire } from '#core/thermal/hot-wire.ts';
import { heatCurve } from './heat-curve.ts';
import type { Setup } from './setup.ts';

/** A part that bounds the current one may plan with. */
export interface Ceiling {
	readonly kind: 'supply' | 'leads' | 'fuse' | 'wire';
	/** highest current to plan with, in A */
	readonly ceiling: Amperes;
	/** current over ceiling; above 1 the plan is too bold */
	readonly ratio: number;
}

/**
 * What bounds the planned current, the tightest first: 0.8 of each rating (supply, leads, fuse), and the current that
 * takes the wire to the limit of its metal. A battery without a rating sets no ceiling of its own.
 */
export function ceilings(setup: Setup, current: Amperes): readonly Ceiling[] {
	const { supply, leads, wire } = setup;
	const ratings = [
		{ kind: 'supply', rating: ratedCurrent(supply) },
		{ kind: 'leads', rating: leads.rating },
		{ kind: 'fuse', rating: supply.fuse?.rating ?? null },
	] as const;
	const rows = ratings.flatMap(({ kind, rating }) =>
		rating === null ? [] : [ceilingOf(kind, planningFraction * rating, current)],
	);
	rows.push(ceilingOf('wire', currentAtLimit(heatCurve(setup), wire.material.limit.value), current));
	return rows.sort((a, b) => a.ceiling - b.ceiling);
}

const limitCurrents = new WeakMap<HotWire, Amperes>();

function currentAtLimit(curve: HotWire, limit: Kelvin): Amperes {
	const known = limitCurrents.get(curve);
	if (known !== undefined) return known;
	const current = curve.currentAt(Math.min(limit, curve.hottest));
	limitCurrents.set(curve, current);
	return current;
}

function ceilingOf(kind: Ceiling['kind'], ceiling: Amperes, current: Amperes): Ceiling {
	return { kind, ceiling, ratio: current / ceiling };
}
