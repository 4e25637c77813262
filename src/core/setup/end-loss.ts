import { loopCurrent } from '#core/electric/circuit.ts';
import { heldCurrent } from '#core/electric/supply.ts';
import type { Amperes, Kelvin, Metres, Ohms, Watts } from '#core/quantity/unit.ts';
import { wireProfile } from '#core/thermal/profile.ts';
import { heatCurve } from './heat-curve.ts';
import { seriesResistanceOf, type Setup } from './setup.ts';
import { steadyTemperature } from './steady.ts';

/** How far the clips are felt: not in the middle, in the middle, everywhere. */
export type EndVerdict =
	| { readonly code: 'middle-unaffected'; readonly over: number }
	| { readonly code: 'middle-cooled'; readonly over: number }
	| { readonly code: 'ends-rule'; readonly over: number };

/** A wire between its clips, beside the same wire without ends. */
export interface EndLoss {
	readonly verdict: EndVerdict;
	/** λ: over a few of these the clip is felt, in m */
	readonly decayLength: Metres;
	/** of a long wire at the same supply */
	readonly longTemperature: Kelvin;
	readonly middle: Kelvin;
	readonly mean: Kelvin;
	readonly current: Amperes;
	/** of the whole wire with its cooler ends */
	readonly resistanceHot: Ohms;
	/** heat into both clips together */
	readonly clipLoss: Watts;
	/** part of the heat that goes into the clips, 0…1 */
	readonly clipShare: number;
	/** false when some part would be hotter than the wire's data reach; the numbers are then of no use */
	readonly isInRange: boolean;
}

/** Lengths in λ from which the middle is within 1/cosh 5 = 1.4 % of a long wire's rise, and below which the ends rule. */
export const endLengths = { untouched: 10, ruled: 5 } as const;

/**
 * What the clips take from the wire of a set-up. Trips, fuses and an empty battery are left out: the supply is on.
 *
 *   λ = √(k A/G),  G = q′(T)/(T − Tₐ) for the long wire at its temperature T
 *
 * @param setup no problem by `validateSetup`
 * @param clips temperature of both clips in K, from room temperature up; room temperature by default
 * @throws RangeError outside the ranges of the parts
 * @see F. P. Incropera and others, Fundamentals of Heat and Mass Transfer, section 3.6, long fin (from memory)
 */
export function endLoss(setup: Setup, clips: { temperature?: Kelvin } = {}): EndLoss {
	const { supply, wire, room } = setup;
	const rod = heatCurve(setup);
	const held = heldCurrent(supply) ?? Infinity;
	const profile = wireProfile(rod, {
		length: wire.length,
		clipTemperature: clips.temperature ?? room.temperature,
		drive: (loadResistance) =>
			Math.min(
				held,
				loopCurrent({
					sourceVoltage: supply.openCircuitVoltage,
					seriesResistance: seriesResistanceOf(setup),
					loadResistance,
				}),
			),
	});
	const asked = steadyTemperature(setup);
	const longTemperature = asked.current > held ? rod.temperatureAt(held).temperature : asked.temperature;
	const decay = decayLengthAt(setup, longTemperature);
	const heat = profile.clipLoss + profile.roomLoss;
	return {
		verdict: verdictFor(wire.length / decay),
		decayLength: decay,
		longTemperature,
		middle: profile.middle,
		mean: profile.mean,
		current: profile.current,
		resistanceHot: profile.resistanceHot,
		clipLoss: profile.clipLoss,
		clipShare: heat > 0 ? Math.min(1, Math.max(0, profile.clipLoss / heat)) : 0,
		isInRange: profile.isInRange,
	};
}

/** Length over which a clip is felt at a temperature of the long wire, in m; near room temperature as at 1 K above. */
export function decayLengthAt(setup: Pick<Setup, 'wire' | 'room'>, temperature: Kelvin): Metres {
	const rod = heatCurve(setup);
	const rise = Math.max(1, temperature - setup.room.temperature);
	const warm = setup.room.temperature + rise;
	return Math.sqrt((rod.conductance(warm) * rise) / rod.heatLoss(warm));
}

function verdictFor(over: number): EndVerdict {
	if (over > endLengths.untouched) return { code: 'middle-unaffected', over };
	return { code: over < endLengths.ruled ? 'ends-rule' : 'middle-cooled', over };
}
