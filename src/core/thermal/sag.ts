import type { Metres } from '#core/quantity/unit.ts';
import { requireWithin } from './range.ts';

/**
 * Sag of a wire that was straight between fixed posts and grew longer: s = √(3 ℓ Δℓ/8), the flat parabola.
 *
 * @param wire length between the posts in m, above 0…100; growth in m, 0 up to a fifth of the length
 * @returns depth in the middle, in m; within 2 % while the growth is under a tenth of the length
 * @throws RangeError outside these ranges
 * @see arc length of a shallow parabola, ℓ + 8 s²/(3 ℓ), any engineering handbook (from memory);
 *      checked in tests/unit/core/thermal/sag.test.ts by adding up the arc
 */
export function sagOfLengthenedWire(wire: { readonly length: Metres; readonly growth: Metres }): Metres {
	requireWithin('Length', wire.length, Number.MIN_VALUE, 100, 'm');
	requireWithin('Growth', wire.growth, 0, wire.length / 5, 'm');
	return Math.sqrt((3 * wire.length * wire.growth) / 8);
}

/** Growth in m of a wire heated by `rise` kelvin: Δℓ = α ℓ Δϑ, α the mean coefficient in 1/K. */
export function thermalGrowth(wire: {
	readonly length: Metres;
	readonly expansion: number;
	readonly rise: number;
}): Metres {
	return wire.expansion * wire.length * wire.rise;
}
