import { jobsPerCharge } from '#core/electric/battery.ts';
import type { Seconds } from '#core/quantity/unit.ts';
import type { OperatingPoint } from './operating-point.ts';
import type { Setup } from './setup.ts';

/** Whether a battery lasts as long as wanted, and by how much. */
export interface RunTime {
	/** at the steady current, in s; infinite while no current flows */
	readonly lasts: Seconds;
	readonly wanted: Seconds;
	readonly isEnough: boolean;
	/** time it lasts over time wanted */
	readonly ratio: number;
}

/** Compares the run time of a battery with the time wanted, in s; null for a supply on the mains. */
export function runTimeFor(setup: Setup, point: OperatingPoint, wanted: Seconds): RunTime | null {
	if (!(wanted > 0)) throw new RangeError(`a time must be above zero, got ${wanted}`);
	if (setup.supply.charge === undefined) return null;
	const lasts = point.runTime ?? Infinity;
	return { lasts, wanted, isEnough: lasts >= wanted, ratio: lasts / wanted };
}

/** Whole jobs of a given time in s that one charge is good for; null on the mains or while no current flows. */
export function jobsFor(setup: Setup, point: OperatingPoint, time: Seconds): number | null {
	const { charge } = setup.supply;
	return charge === undefined || point.current === 0 ? null : jobsPerCharge(charge, { current: point.current, time });
}
