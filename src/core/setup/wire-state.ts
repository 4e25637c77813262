import type { Kelvin } from '#core/quantity/unit.ts';
import { glowThreshold as glowThresholds } from '#core/thermal/glow.ts';
import { heatBand, hotFrom, type HeatBand } from '#core/thermal/heat-band.ts';

/** What a wire is, by its temperature. */
export type WireState = HeatBand | 'burnt-through';

/** Metal this hot hurts, in K: 45 °C, between the one-minute and the eight-hour row of ISO 13732-1, from memory. */
export const burnThreshold: Kelvin = hotFrom;

/** In a shaded room a wire is just seen to glow from the Draper point, 525 °C. */
export const glowThreshold: Kelvin = glowThresholds.shaded;

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
	if (wire.temperature >= burnThreshold) return heatBand(wire.temperature, { limit: wire.limit, light: 'shaded' });
	return wire.temperature > wire.roomTemperature + 5 ? 'warm' : 'cold';
}
