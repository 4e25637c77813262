import type { Amperes, Metres, OhmsPerMetre, Ohms, Watts } from '#core/quantity/unit.ts';
import { parallelResistance, seriesResistance } from './circuit.ts';

/** Like pieces of wire, joined between the same two posts. */
export interface Bundle {
	/** of one strand, in Ω/m, > 0 */
	readonly resistancePerMetre: OhmsPerMetre;
	/** of one strand between its joints, in m, > 0 */
	readonly length: Metres;
	/** strands side by side, a whole number ≥ 1 */
	readonly strands: number;
}

/**
 * Resistance of strands side by side.
 *
 *   R = R′ ℓ/n
 *
 * Twisted strands touch and share heat: each runs hotter than alone at its current.
 *
 * @throws RangeError outside the ranges of a bundle
 */
export function bundleResistance({ resistancePerMetre, length, strands }: Bundle): Ohms {
	if (!(resistancePerMetre > 0 && length > 0)) throw new RangeError('a strand needs resistance and length');
	if (!(Number.isInteger(strands) && strands >= 1)) throw new RangeError(`strands are whole, got ${strands}`);
	return (resistancePerMetre * length) / strands;
}

/** Current of one strand, in A, when the bundle carries a current: I/n. */
export function strandCurrent({ strands }: Pick<Bundle, 'strands'>, current: Amperes): Amperes {
	return current / strands;
}

/** One piece of a row or of a set of branches: its resistance, current and heat. */
export interface SharedPart {
	readonly resistance: Ohms;
	readonly current: Amperes;
	readonly power: Watts;
}

/** Pieces in a row at one current: the larger resistance takes the larger heat, Pᵢ = I² Rᵢ. */
export function segmentsInSeries(
	resistances: readonly Ohms[],
	current: Amperes,
): { readonly resistance: Ohms; readonly parts: readonly SharedPart[] } {
	return {
		resistance: seriesResistance(resistances),
		parts: resistances.map((resistance) => ({ resistance, current, power: current ** 2 * resistance })),
	};
}

/**
 * Unlike branches side by side that share a current: the smaller resistance takes the larger heat.
 *
 *   Iᵢ = I R/Rᵢ,  Pᵢ = Iᵢ² Rᵢ
 *
 * @param resistances in Ω, > 0
 * @throws RangeError when one of them is a short, or none is given
 */
export function branchesInParallel(
	resistances: readonly Ohms[],
	current: Amperes,
): { readonly resistance: Ohms; readonly parts: readonly SharedPart[] } {
	if (resistances.some((resistance) => !(resistance > 0))) throw new RangeError('a branch must resist');
	const resistance = parallelResistance(resistances);
	return {
		resistance,
		parts: resistances.map((branch) => {
			const share = (current * resistance) / branch;
			return { resistance: branch, current: share, power: share ** 2 * branch };
		}),
	};
}
