import type { Kelvin } from '#core/quantity/unit.ts';

/** What a wire is, by its temperature. */
export type WireState =
	'cold' | 'warm' | 'hot-no-glow' | 'faint-red' | 'dark-red' | 'red' | 'orange' | 'over-limit' | 'burnt-through';

/** Metal this hot hurts, in K: 45 °C, between the one-minute and the eight-hour row of ISO 13732-1, from memory. */
export const burnThreshold: Kelvin = 318.15;

/** In a shaded room a wire is just seen to glow from 525 °C: the Draper point, 798 K (J. W. Draper, 1847). */
export const glowThreshold: Kelvin = 798.15;

/** Lowest temperature of each state, hottest first; bands of glow are common practice, no source. */
const bands: readonly (readonly [Kelvin, WireState])[] = [
	[1223.15, 'orange'],
	[1073.15, 'red'],
	[923.15, 'dark-red'],
	[glowThreshold, 'faint-red'],
	[burnThreshold, 'hot-no-glow'],
];

/** The state of a wire; `limit` is where its metal must stop in air, out of range is hotter than its data reach. */
export function wireState(wire: {
	temperature: Kelvin;
	roomTemperature: Kelvin;
	limit: Kelvin;
	melting: Kelvin;
	isInRange: boolean;
}): WireState {
	if (!wire.isInRange && wire.temperature >= wire.melting) return 'burnt-through';
	if (!wire.isInRange || wire.temperature > wire.limit) return 'over-limit';
	const band = bands.find(([from]) => wire.temperature >= from);
	if (band !== undefined) return band[1];
	return wire.temperature > wire.roomTemperature + 5 ? 'warm' : 'cold';
}
