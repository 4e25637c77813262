import type { Amperes, Metres, Ohms, OhmsPerMetre, Volts } from '#core/quantity/unit.ts';
import type { Meter } from '#core/electric/meter.ts';
import { wireResistancePerMetre } from '#core/electric/wire.ts';
import type { Material } from '#core/material/material.ts';

/** What stands at the posts of a supply that holds its voltage, or its current limit when too much is asked. */
export interface HeldSupplyReading {
	readonly current: Amperes;
	readonly voltage: Volts;
	readonly isHoldingLimit: boolean;
}

/**
 * A supply that holds voltage or limit, loaded with one resistance: I = U/R up to the limit, then U = I_limit · R.
 *
 * @param resistance in Ω, > 0; undefined for empty posts
 * @throws RangeError for a resistance that is not above zero
 */
export function heldSupply(
	supply: { readonly voltage: Volts; readonly limit: Amperes },
	resistance: Ohms | undefined,
): HeldSupplyReading {
	if (resistance === undefined) return { current: 0, voltage: supply.voltage, isHoldingLimit: false };
	if (!(resistance > 0)) throw new RangeError('heldSupply: resistance > 0');
	const asked = supply.voltage / resistance;
	if (asked <= supply.limit) return { current: asked, voltage: supply.voltage, isHoldingLimit: false };
	return { current: supply.limit, voltage: supply.limit * resistance, isHoldingLimit: true };
}

/** The two ohmmeters of the store cupboard; a test holds them to its list. */
export const ohmmeters = {
	MT: { step: 0.1, relativeLimit: 0.008, steps: 2 },
	MH: { step: 0.01, relativeLimit: 0.005, steps: 3 },
} as const satisfies Readonly<Record<string, Meter>>;

export type OhmmeterId = keyof typeof ohmmeters;

/** Resistance of one metre of round wire at 20 °C. */
export function coldResistancePerMetre(material: Material, diameter: Metres): OhmsPerMetre {
	return wireResistancePerMetre({ diameter, resistivity: material.resistivity.value });
}
