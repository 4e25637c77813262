import type { Amperes, Ohms, Volts, Watts } from '#core/quantity/unit.ts';

/** A supply whose output power is held: above P/U the voltage falls as the current rises. */
export interface PowerCeiling {
	/** voltage as set, in V, > 0 */
	readonly voltage: Volts;
	/** most power at the posts, in W, > 0 */
	readonly power: Watts;
	/** most current at any voltage, in A, > 0 */
	readonly greatestCurrent: Amperes;
}

/** A supply whose current falls back with its voltage: a straight line from (knee, U) to (short, 0). */
export interface Foldback {
	/** voltage as set, in V, > 0 */
	readonly voltage: Volts;
	/** current at which the voltage begins to fall, in A, > 0 */
	readonly kneeCurrent: Amperes;
	/** current into a short, in A, ≥ 0 and below the knee; about a fifth of the rating is common practice, no source */
	readonly shortCurrent: Amperes;
}

/** Where a supply settles on a load, and which part of its curve that is. */
export interface OutputPoint {
	readonly mode: 'voltage' | 'power' | 'current' | 'foldback';
	readonly current: Amperes;
	readonly voltage: Volts;
}

/**
 * A supply with a power ceiling on a load of one resistance.
 *
 *   U = min(Uset, √(P R), Imax R),  I = U/R
 *
 * @param load resistance of the load with its leads, in Ω, ≥ 0
 * @throws RangeError outside these ranges
 */
export function powerCeilingPoint(supply: PowerCeiling, load: Ohms): OutputPoint {
	requirePositive(supply.voltage, supply.power, supply.greatestCurrent);
	requireLoad(load);
	const byVoltage = load === 0 ? Infinity : supply.voltage / load;
	const byPower = load === 0 ? Infinity : Math.sqrt(supply.power / load);
	const current = Math.min(byVoltage, byPower, supply.greatestCurrent);
	const mode = current === byVoltage ? 'voltage' : current === byPower ? 'power' : 'current';
	return { mode, current, voltage: current * load };
}

/** Voltage a supply with a power ceiling keeps at a current, in V; 0 above its greatest current. */
export function powerCeilingVoltage(supply: PowerCeiling, current: Amperes): Volts {
	requirePositive(supply.voltage, supply.power, supply.greatestCurrent);
	if (!(current >= 0)) throw new RangeError(`a current must not be negative, got ${current}`);
	if (current > supply.greatestCurrent) return 0;
	return current === 0 ? supply.voltage : Math.min(supply.voltage, supply.power / current);
}

/**
 * A supply with foldback on a load of one resistance: the line of the load meets the curve in one place.
 *
 *   R ≥ U/Ik:  I = U/R;   below:  U′ = U Is R/(U − (Ik − Is) R),  I = U′/R
 *
 * @param load resistance of the load with its leads, in Ω, ≥ 0
 * @throws RangeError outside these ranges
 */
export function foldbackPoint(supply: Foldback, load: Ohms): OutputPoint {
	const { voltage, kneeCurrent, shortCurrent } = requireFoldback(supply);
	requireLoad(load);
	if (load * kneeCurrent >= voltage) return { mode: 'voltage', current: voltage / load, voltage };
	const current = (voltage * shortCurrent) / (voltage - (kneeCurrent - shortCurrent) * load);
	return { mode: 'foldback', current, voltage: current * load };
}

/** Current on the falling part of a foldback curve at a voltage, in A: I = Is + (Ik − Is) U/Uset, 0 ≤ U ≤ Uset. */
export function foldbackCurrent(supply: Foldback, voltage: Volts): Amperes {
	const { voltage: set, kneeCurrent, shortCurrent } = requireFoldback(supply);
	if (!(voltage >= 0 && voltage <= set)) throw new RangeError(`a voltage lies in 0 … ${set} V, got ${voltage}`);
	return shortCurrent + ((kneeCurrent - shortCurrent) * voltage) / set;
}

/** What a foldback supply does with a load that resists less while cold. */
export type FoldbackStart =
	/** the cold load already takes the full voltage */
	| { readonly code: 'starts'; readonly current: Amperes }
	/** the folded current heats the load until it takes the full voltage */
	| { readonly code: 'climbs'; readonly foldedCurrent: Amperes; readonly current: Amperes }
	/** the folded current holds the load at this warmth: it stays there */
	| { readonly code: 'locks-up'; readonly foldedCurrent: Amperes; readonly warmth: number; readonly voltage: Volts };

/** A load on its way from cold, 0, to its hottest, 1. */
export type WarmingLoad = (warmth: number) => {
	readonly resistance: Ohms;
	/** the steady current that keeps it this warm, in A; 0 when cold */
	readonly heldCurrent: Amperes;
};

/**
 * Whether a foldback supply brings a warming load to its full voltage. The load is followed upward in 400 steps: it
 * warms on as long as the folded current is more than would keep it as warm as it is.
 *
 * @throws RangeError outside the ranges of the supply
 */
export function foldbackStart(supply: Foldback, load: WarmingLoad): FoldbackStart {
	const cold = foldbackPoint(supply, load(0).resistance);
	if (cold.mode === 'voltage') return { code: 'starts', current: cold.current };
	const steps = 400;
	for (let step = 1; step <= steps; step += 1) {
		const warmth = step / steps;
		const { resistance, heldCurrent } = load(warmth);
		const { mode, current, voltage } = foldbackPoint(supply, resistance);
		if (mode === 'voltage') return { code: 'climbs', foldedCurrent: cold.current, current };
		if (heldCurrent >= current) return { code: 'locks-up', foldedCurrent: current, warmth, voltage };
	}
	const { current, voltage } = foldbackPoint(supply, load(1).resistance);
	return { code: 'locks-up', foldedCurrent: current, warmth: 1, voltage };
}

function requireFoldback(supply: Foldback): Foldback {
	requirePositive(supply.voltage, supply.kneeCurrent);
	if (!(supply.shortCurrent >= 0 && supply.shortCurrent < supply.kneeCurrent)) {
		throw new RangeError(`a short current lies in 0 … the knee, got ${supply.shortCurrent}`);
	}
	return supply;
}

function requirePositive(...values: readonly number[]): void {
	for (const value of values) if (!(value > 0)) throw new RangeError(`a rating must be above zero, got ${value}`);
}

function requireLoad(load: Ohms): void {
	if (!(load >= 0)) throw new RangeError(`a load must not be negative, got ${load}`);
}
