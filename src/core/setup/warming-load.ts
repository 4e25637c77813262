import type { WarmingLoad } from '#core/electric/output-curve.ts';
import type { Kelvin } from '#core/quantity/unit.ts';
import { heatCurve } from './heat-curve.ts';
import type { Setup } from './setup.ts';

/** Temperature of a wire at a warmth 0…1 between its room and the end of its curve, in K. */
export function warmthTemperature(setup: Pick<Setup, 'wire' | 'room'>, warmth: number): Kelvin {
	const { temperature } = setup.room;
	return temperature + (heatCurve(setup).hottest - temperature) * warmth;
}

/** The wire of a set-up with its leads as a load that resists more, or less, as it warms. */
export function warmingLoad({ wire, leads, room }: Pick<Setup, 'wire' | 'leads' | 'room'>): WarmingLoad {
	const curve = heatCurve({ wire, room });
	return (warmth) => {
		const temperature = warmthTemperature({ wire, room }, warmth);
		return {
			resistance: curve.resistancePerMetre(temperature) * wire.length + leads.resistance,
			heldCurrent: curve.currentAt(temperature),
		};
	};
}
