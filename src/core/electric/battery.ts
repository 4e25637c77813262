import type { Amperes, Coulombs, Seconds } from '#core/quantity/unit.ts';

/** What a battery holds. */
export interface Charge {
	/** rated charge in C (1 A·h is 3600 C), > 0 */
	readonly capacity: Coulombs;
	/** part that can be drawn before cut-off, 0…1 */
	readonly usableFraction: number;
}

/** Charge that can be drawn before cut-off, in C: Q = k C. */
export function usableCharge({ capacity, usableFraction }: Charge): Coulombs {
	if (!(capacity > 0)) throw new RangeError(`a capacity must be above zero, got ${capacity}`);
	if (!(usableFraction > 0 && usableFraction <= 1)) {
		throw new RangeError(`the usable part must lie above 0 and up to 1, got ${usableFraction}`);
	}
	return capacity * usableFraction;
}

/**
 * Time a battery carries a steady current. The capacity is taken as the same at every current.
 *
 *   t = k C/I
 *
 * @param current in A, ≥ 0
 * @returns time in s; infinite at no current
 */
export function batteryRunTime(charge: Charge, current: Amperes): Seconds {
	if (!(current >= 0)) throw new RangeError(`a current must not be negative, got ${current}`);
	return usableCharge(charge) / current;
}

/** Whole jobs one charge is good for: the usable charge over I t, rounded down. */
export function jobsPerCharge(charge: Charge, job: { current: Amperes; time: Seconds }): number {
	const each = job.current * job.time;
	if (!(each > 0)) throw new RangeError(`a job must draw some charge, got ${each} C`);
	return Math.floor(usableCharge(charge) / each + 1e-9);
}
