import { MonotoneCurve } from '#core/numeric/interpolate.ts';
import type { Amperes, Coulombs, Ohms, Volts } from '#core/quantity/unit.ts';
import type { CellSourceKey } from './sources.ts';

/** One cell, or a block that is sold as one, with the numbers it is known by. State of charge runs 0 (empty) … 1 (full). */
export interface Cell {
	readonly id: string;
	/** by the standard that names it */
	readonly designation: string;
	readonly chemistry: 'alkaline-manganese' | 'nickel-metal-hydride' | 'lithium-ion' | 'lead-acid';
	/** cells inside, more than one for a block */
	readonly cellsInside: number;
	/** voltage at rest, in V */
	readonly openCircuit: {
		readonly charge: readonly number[];
		readonly voltage: readonly Volts[];
	} & Origin;
	/** seconds after switching on, in Ω: the usual value and the range of cells met */
	readonly resistance: {
		readonly charge: readonly number[];
		readonly value: readonly Ohms[];
		readonly least: readonly Ohms[];
		readonly most: readonly Ohms[];
	} & Origin;
	/** charge a full cell gives down to its cut-off at a steady current, in C */
	readonly capacity: {
		readonly current: readonly Amperes[];
		readonly charge: readonly Coulombs[];
	} & Origin;
	/** voltage under load below which it is not drawn */
	readonly cutOff: { readonly value: Volts } & Origin;
}

interface Origin {
	readonly source: readonly CellSourceKey[];
	readonly note?: string;
}

/** Which number of a range of cells is taken. */
export type CellSpread = 'least' | 'value' | 'most';

/** Charge in A·h as C. */
export function ampereHours<const T extends readonly number[]>(...hours: T): { readonly [K in keyof T]: Coulombs };
export function ampereHours(...hours: readonly number[]): readonly Coulombs[] {
	return hours.map((value) => value * 3600);
}

/**
 * Voltage at rest, in V, by a monotone curve through the table of the cell.
 *
 * @param charge state of charge, 0…1
 * @throws RangeError outside this range
 */
export function openCircuitVoltageAt(cell: Cell, charge: number): Volts {
	return curvesOf(cell).voltage.at(requireCharge(charge));
}

/**
 * Internal resistance, in Ω, by a monotone curve through the table; held beyond its ends.
 *
 * @param charge state of charge, 0…1
 * @throws RangeError outside this range
 */
export function cellResistanceAt(cell: Cell, charge: number, spread: CellSpread = 'value'): Ohms {
	return curvesOf(cell)[spread].heldAt(requireCharge(charge));
}

/**
 * Charge a full cell gives at a steady current, in C; held beyond the ends of its table.
 *
 * @param current in A, ≥ 0
 * @throws RangeError for a negative current
 */
export function capacityAt(cell: Cell, current: Amperes): Coulombs {
	if (!(current >= 0)) throw new RangeError(`a current must not be negative, got ${current}`);
	return curvesOf(cell).capacity.heldAt(current);
}

type Curves = Readonly<Record<CellSpread | 'voltage' | 'capacity', MonotoneCurve>>;

const known = new WeakMap<Cell, Curves>();

function curvesOf(cell: Cell): Curves {
	const found = known.get(cell);
	if (found !== undefined) return found;
	const { openCircuit, resistance, capacity } = cell;
	const curves = {
		voltage: new MonotoneCurve(openCircuit.charge, openCircuit.voltage),
		least: new MonotoneCurve(resistance.charge, resistance.least),
		value: new MonotoneCurve(resistance.charge, resistance.value),
		most: new MonotoneCurve(resistance.charge, resistance.most),
		capacity: new MonotoneCurve(capacity.current, capacity.charge),
	};
	known.set(cell, curves);
	return curves;
}

function requireCharge(charge: number): number {
	if (!(charge >= 0 && charge <= 1)) throw new RangeError(`a state of charge lies in 0 … 1, got ${charge}`);
	return charge;
}
