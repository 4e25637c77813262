import type { Kelvin } from '#core/quantity/unit.ts';
import { glowThreshold, type RoomLight } from './glow.ts';
import { iceZero } from './physical-constants.ts';

/** State of a wire as a code; the words belong to the interface. */
export type HeatBand = 'cold' | 'warm' | 'hot-no-glow' | 'faint-red' | 'dark-red' | 'red' | 'orange' | 'over-limit';

/** Skin notices the wire as warm; our own round figure. */
export const warmFrom: Kelvin = 30 + iceZero;

/** From here the interface names the temperature and says that the wire burns; our own cautious round figure. */
export const hotFrom: Kelvin = 45 + iceZero;

/** Trade words by temperature, hottest first, from memory; they vary from book to book by 50 K. */
export const glowBands = [
	{ band: 'orange', from: 950 + iceZero },
	{ band: 'red', from: 800 + iceZero },
	{ band: 'dark-red', from: 650 + iceZero },
] as const satisfies readonly { band: HeatBand; from: Kelvin }[];

/**
 * The band of a wire.
 *
 * @param temperature in K
 * @param conditions `limit` the hottest this wire may be in air, in K; `light` of the room, lit when left out
 */
export function heatBand(
	temperature: Kelvin,
	conditions: { readonly limit: Kelvin; readonly light?: RoomLight },
): HeatBand {
	if (temperature > conditions.limit) return 'over-limit';
	if (temperature < warmFrom) return 'cold';
	if (temperature < hotFrom) return 'warm';
	if (temperature < glowThreshold[conditions.light ?? 'lit']) return 'hot-no-glow';
	return glowBands.find(({ from }) => temperature >= from)?.band ?? 'faint-red';
}
