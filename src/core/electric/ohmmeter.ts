import type { Ohms } from '#core/quantity/unit.ts';

/** What the data sheet of an ohmmeter promises. */
export interface Ohmmeter {
	/** smallest step of the display, > 0 */
	readonly step: Ohms;
	/** limit of error as a fraction of the reading, ≥ 0 */
	readonly relativeLimit: number;
	/** and as a number of steps on top, ≥ 0 */
	readonly stepsLimit: number;
}

/**
 * What the display shows for a true resistance: the nearest step, or one beside it while the last digit flickers.
 *
 * @param resistance between the probe tips and the meter, leads included, in Ω, ≥ 0
 * @param flicker −1, 0 or 1 steps
 * @throws RangeError for a negative or not finite resistance
 */
export function ohmmeterReading(meter: Ohmmeter, resistance: Ohms, flicker: -1 | 0 | 1 = 0): Ohms {
	if (!(resistance >= 0 && Number.isFinite(resistance))) throw new RangeError('ohmmeterReading: resistance ≥ 0');
	const steps = Math.max(0, Math.round(resistance / meter.step) + flicker);
	// whole steps divided by whole steps per ohm, so that 0.3 is shown and not 0.30000000000000004
	return steps / Math.round(1 / meter.step);
}

/** The ± limit of a reading: a part of the reading and some steps of the last digit, in Ω. */
export function ohmmeterLimit(meter: Ohmmeter, reading: Ohms): Ohms {
	return meter.relativeLimit * reading + meter.stepsLimit * meter.step;
}

/** The two meters of the workshop; their data are our invention, of an ordinary kind. */
export const ohmmeters = {
	MT: { step: 0.1, relativeLimit: 0.008, stepsLimit: 2 },
	MH: { step: 0.01, relativeLimit: 0.005, stepsLimit: 3 },
} as const satisfies Readonly<Record<string, Ohmmeter>>;

export type OhmmeterId = keyof typeof ohmmeters;
