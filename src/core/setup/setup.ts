import { highestVoltage, type Leads, type Supply } from '#core/electric/supply.ts';
import type { Material } from '#core/material/material.ts';
import type { Metres, Ohms, Volts } from '#core/quantity/unit.ts';
import type { Room } from '#core/thermal/room.ts';

/** The wire between the posts. */
export interface SetupWire {
	readonly material: Material;
	/** in m, > 0 */
	readonly diameter: Metres;
	/** between the posts, in m, > 0 */
	readonly length: Metres;
	/** 0…1; without it the value for an oxidised surface is taken */
	readonly emissivity?: number;
}

/** Everything that decides what flows. */
export interface Setup {
	readonly supply: Supply;
	readonly wire: SetupWire;
	readonly leads: Leads;
	readonly room: Room;
}

/** Shortest wire a wish may end in: below it the clips rule the heat. A rule of this workshop. */
export const shortestLength: Metres = 0.01;

/** Longest wire a wish may end in; the shed is no longer. A rule of this workshop. */
export const longestLength: Metres = 50;

/** Below this a wire on a bare battery counts as a short. A rule of this workshop. */
export const shortLink: Metres = 0.04;

/** Diameters the heat formulas take, in m. */
export const diameterRange = { from: 0.05e-3, to: 2e-3 } as const;

/** Room temperatures the heat formulas take, in K. */
export const roomRange = { from: 233, to: 333 } as const;

/** What is wrong with a set-up that came from outside. */
export type SetupProblem =
	| { readonly code: 'not-a-number'; readonly field: SetupField }
	| { readonly code: 'below'; readonly field: SetupField; readonly value: number; readonly least: number }
	| { readonly code: 'above'; readonly field: SetupField; readonly value: number; readonly most: number }
	| { readonly code: 'over-24-volts'; readonly voltage: Volts; readonly most: Volts }
	| { readonly code: 'trip-below-rated'; readonly rated: number; readonly tripAbove: number };

export type SetupField =
	| 'voltage'
	| 'internal-resistance'
	| 'current-limit'
	| 'rated-current'
	| 'trip-current'
	| 'fuse'
	| 'capacity'
	| 'usable-fraction'
	| 'diameter'
	| 'length'
	| 'emissivity'
	| 'leads-resistance'
	| 'leads-rating'
	| 'room-temperature'
	| 'pressure'
	| 'draught';

/** Resistance in the loop outside the wire: inside the supply and in the leads, in Ω. */
export function seriesResistanceOf({ supply, leads }: Pick<Setup, 'supply' | 'leads'>): Ohms {
	return supply.internalResistance + leads.resistance;
}

/** The same set-up with another length of wire, in m. */
export function withLength(setup: Setup, length: Metres): Setup {
	return { ...setup, wire: { ...setup.wire, length } };
}

/** Every problem in a set-up that came from outside, none when it can be solved. */
export function validateSetup({ supply, wire, leads, room }: Setup): readonly SetupProblem[] {
	const { protection } = supply;
	const checks: readonly (readonly [SetupField, number | undefined, number, number])[] = [
		['voltage', supply.openCircuitVoltage, 0, Infinity],
		['internal-resistance', supply.internalResistance, 0, 100],
		['current-limit', protection.kind === 'holds' ? protection.limit : undefined, 0, 100],
		['rated-current', 'rated' in protection ? protection.rated : undefined, 0.01, 100],
		['trip-current', 'tripAbove' in protection ? protection.tripAbove : undefined, 0.01, 200],
		['fuse', supply.fuse?.rating, 0.01, 100],
		['capacity', supply.charge?.capacity, 1, 1e6],
		['usable-fraction', supply.charge?.usableFraction, 0.01, 1],
		['diameter', wire.diameter, diameterRange.from, diameterRange.to],
		['length', wire.length, 0.001, longestLength],
		['emissivity', wire.emissivity, 0, 1],
		['leads-resistance', leads.resistance, 0, 10],
		['leads-rating', leads.rating, 0.1, 100],
		['room-temperature', room.temperature, roomRange.from, roomRange.to],
		['pressure', room.pressure, 50_000, 110_000],
		['draught', room.draught, 0, 5],
	];
	const problems = checks.flatMap(([field, value, least, most]) => rangeProblem(field, value, least, most));
	if (supply.openCircuitVoltage > highestVoltage) {
		problems.push({ code: 'over-24-volts', voltage: supply.openCircuitVoltage, most: highestVoltage });
	}
	if ('rated' in protection && protection.tripAbove < protection.rated) {
		problems.push({ code: 'trip-below-rated', rated: protection.rated, tripAbove: protection.tripAbove });
	}
	return problems;
}

function rangeProblem(field: SetupField, value: number | undefined, least: number, most: number): SetupProblem[] {
	if (value === undefined) return [];
	if (Number.isNaN(value)) return [{ code: 'not-a-number', field }];
	if (value < least) return [{ code: 'below', field, value, least }];
	return value > most ? [{ code: 'above', field, value, most }] : [];
}
