import type { Charge } from './battery.ts';
import type { Amperes, Ohms, Volts } from '#core/quantity/unit.ts';

/** What a supply does when more is asked than it gives. */
export type Protection =
	/** lets the voltage fall so that the current stays at the limit */
	| { readonly kind: 'holds'; readonly limit: Amperes }
	/** switches off above `tripAbove` and tries again by itself */
	| { readonly kind: 'retries'; readonly rated: Amperes; readonly tripAbove: Amperes }
	/** switches off above `tripAbove` and stays off until unplugged */
	| { readonly kind: 'latches'; readonly rated: Amperes; readonly tripAbove: Amperes }
	/** nothing but its own resistance limits the current */
	| { readonly kind: 'none' };

/** A source of direct current, as set. */
export interface Supply {
	/** voltage without load, in V, 0…24 */
	readonly openCircuitVoltage: Volts;
	/** resistance inside, in Ω, ≥ 0 */
	readonly internalResistance: Ohms;
	readonly protection: Protection;
	readonly fuse?: { readonly rating: Amperes };
	/** given for a battery */
	readonly charge?: Charge;
}

/** The pair of leads between supply and wire. */
export interface Leads {
	/** both together with their clips, in Ω, ≥ 0 */
	readonly resistance: Ohms;
	/** what they carry without growing warm, in A, > 0 */
	readonly rating: Amperes;
}

/** No supply above this is used: extra-low voltage with a wide margin, a rule of this workshop. */
export const highestVoltage: Volts = 24;

/** Plans stay within this part of every rating: room for the meter, warm-up and age. A rule of this workshop. */
export const planningFraction = 0.8;

/** The current a supply may give steadily by its label, in A; null for one that has only its own resistance. */
export function ratedCurrent({ protection }: Supply): Amperes | null {
	switch (protection.kind) {
		case 'holds':
			return protection.limit;
		case 'retries':
		case 'latches':
			return protection.rated;
		case 'none':
			return null;
		default:
			return protection satisfies never;
	}
}

/** The current above which a supply switches off, in A; null when it never does. */
export function tripCurrent({ protection }: Supply): Amperes | null {
	return protection.kind === 'retries' || protection.kind === 'latches' ? protection.tripAbove : null;
}

/** The current a supply holds, in A; null when it does not hold. */
export function heldCurrent({ protection }: Supply): Amperes | null {
	return protection.kind === 'holds' ? protection.limit : null;
}
