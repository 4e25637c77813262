import type { Amperes, Coulombs, Ohms, Volts, Watts } from '#core/quantity/unit.ts';
import { capacityAt, cellResistanceAt, openCircuitVoltageAt, type Cell, type CellSpread } from './cell.ts';

/** Like cells, equally charged: `series` of them in a row, `parallel` rows side by side. */
export interface Pack {
	readonly cell: Cell;
	/** cells in a row, a whole number ≥ 1 */
	readonly series: number;
	/** rows side by side, a whole number ≥ 1 */
	readonly parallel: number;
	/** contacts and holder, in Ω, ≥ 0; none by default */
	readonly contacts?: Ohms;
	/** which resistance of the range of cells is taken, the usual one by default */
	readonly spread?: CellSpread;
}

/** What a pack is at its posts: a voltage behind a resistance. */
export interface PackSource {
	readonly voltage: Volts;
	readonly resistance: Ohms;
}

/**
 * Voltage and resistance of a pack.
 *
 *   U = s U₁(z),  R = s R₁(z)/p + Rcontacts
 *
 * @param charge state of charge z, 0…1
 * @throws RangeError outside this range, or for a pack that is not made of whole cells
 */
export function packSource(pack: Pack, charge: number): PackSource {
	const { cell, series, parallel, contacts = 0, spread } = requirePack(pack);
	return {
		voltage: series * openCircuitVoltageAt(cell, charge),
		resistance: (series * cellResistanceAt(cell, charge, spread)) / parallel + contacts,
	};
}

/** Voltage under load below which the pack is not drawn, in V: s times that of its cell. */
export function packCutOff(pack: Pack): Volts {
	return requirePack(pack).series * pack.cell.cutOff.value;
}

/** Charge a full pack gives at a steady current, in C: p Q₁(I/p). @throws RangeError for a negative current */
export function packCapacity(pack: Pack, current: Amperes): Coulombs {
	const { cell, parallel } = requirePack(pack);
	return parallel * capacityAt(cell, current / parallel);
}

/**
 * Heat inside one cell of a pack.
 *
 *   P₁ = (I/p)² R₁(z)
 *
 * Heat of reaction is left out: it is small beside this at the currents of a hot wire (common practice, no source).
 *
 * @param use state of charge 0…1; current of the pack in A
 * @returns power in W
 */
export function heatPerCell(pack: Pack, use: { charge: number; current: Amperes }): Watts {
	const { cell, parallel, spread } = requirePack(pack);
	return (use.current / parallel) ** 2 * cellResistanceAt(cell, use.charge, spread);
}

function requirePack(pack: Pack): Pack {
	for (const count of [pack.series, pack.parallel]) {
		if (!(Number.isInteger(count) && count >= 1)) throw new RangeError(`a pack has whole cells, got ${count}`);
	}
	if (!((pack.contacts ?? 0) >= 0)) throw new RangeError(`contacts must not be negative, got ${pack.contacts}`);
	return pack;
}
