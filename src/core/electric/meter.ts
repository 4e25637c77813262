/** What a meter's data sheet says: ±(part of the reading + a number of steps). */
export interface Meter {
	/** smallest step shown, in the unit of the quantity, > 0 */
	readonly step: number;
	/** part of the reading, 0.008 for 0.8 %, ≥ 0 */
	readonly relativeLimit: number;
	/** steps of the last figure, ≥ 0 */
	readonly steps: number;
}

/** The figure the meter shows for a value: rounded to its step. */
export function shownReading({ step }: Meter, value: number): number {
	return Number((Math.round(value / step) * step).toPrecision(12));
}

/**
 * Limit of a reading, in the unit of the reading.
 *
 *   ± (p · reading + n · step)
 */
export function readingLimit(meter: Meter, reading: number): number {
	return Math.abs(reading) * meter.relativeLimit + meter.steps * meter.step;
}

/**
 * Standard uncertainty of a reading: every value within the limit is taken as equally likely.
 *
 *   u = limit/√3
 *
 * @see JCGM 100:2008 (GUM), 4.3.7, from memory
 */
export function readingUncertainty(meter: Meter, reading: number): number {
	return readingLimit(meter, reading) / Math.sqrt(3);
}
