import type { Amperes, Ohms, Volts, Watts } from '#core/quantity/unit.ts';

/** A source with its resistance inside, and what is joined to it. */
export interface Loop {
	/** source voltage, in V, ≥ 0 */
	readonly sourceVoltage: Volts;
	/** resistance inside the source and in the leads, in Ω, ≥ 0 */
	readonly seriesResistance: Ohms;
	/** resistance of the load, in Ω, ≥ 0 */
	readonly loadResistance: Ohms;
}

/**
 * Current in a closed loop.
 *
 *   I = Us/(Rs + R)
 *
 * @returns current in A; infinite when nothing in the loop resists
 * @throws RangeError when a value is negative or not a number
 * @see College Physics 2e (OpenStax), chapter 21; checked in tests/published/electric/circuit.test.ts
 */
export function loopCurrent({ sourceVoltage, seriesResistance, loadResistance }: Loop): Amperes {
	for (const value of [sourceVoltage, seriesResistance, loadResistance]) notNegative(value);
	return sourceVoltage === 0 ? 0 : sourceVoltage / (seriesResistance + loadResistance);
}

/**
 * Voltage left at the terminals of a source that delivers a current.
 *
 *   U = Us − I Ri
 *
 * @returns voltage in V; negative when the current cannot come from this source alone, above Us while it is charged
 */
export function terminalVoltage(source: { sourceVoltage: Volts; internalResistance: Ohms; current: Amperes }): Volts {
	return source.sourceVoltage - source.current * source.internalResistance;
}

/**
 * Power turned to heat in a resistance.
 *
 *   P = I² R
 *
 * @param part current in A; resistance in Ω, ≥ 0
 * @returns power in W
 */
export function resistancePower(part: { current: Amperes; resistance: Ohms }): Watts {
	return part.current ** 2 * part.resistance;
}

/**
 * Most power a load can draw from a source, reached when the load equals the series resistance.
 *
 *   Pmax = Us²/(4 Rs)
 *
 * @returns power in W; infinite without series resistance
 */
export function greatestPower(source: { sourceVoltage: Volts; seriesResistance: Ohms }): Watts {
	return source.sourceVoltage ** 2 / (4 * source.seriesResistance);
}

/** Resistance of parts in one row, in Ω: R = R₁ + R₂ + … */
export function seriesResistance(parts: readonly Ohms[]): Ohms {
	return parts.reduce((sum, part) => sum + notNegative(part), 0);
}

/** Resistance of parts side by side, in Ω: 1/R = 1/R₁ + 1/R₂ + …; zero when one of them is a short. */
export function parallelResistance(parts: readonly Ohms[]): Ohms {
	if (parts.length === 0) throw new RangeError('no part given');
	return 1 / parts.reduce((sum, part) => sum + 1 / notNegative(part), 0);
}

/**
 * Source voltage and internal resistance from two readings at the posts.
 *
 *   Ri = (U₁ − U₂)/(I₂ − I₁),  Us = U₁ + I₁ Ri
 *
 * @param readings voltage in V and current in A, at two different currents
 * @returns internal resistance in Ω and source voltage in V
 * @throws RangeError when both currents are the same
 */
export function sourceFromReadings(readings: {
	first: { voltage: Volts; current: Amperes };
	second: { voltage: Volts; current: Amperes };
}): { internalResistance: Ohms; sourceVoltage: Volts } {
	const { first, second } = readings;
	if (first.current === second.current) throw new RangeError('both readings were taken at the same current');
	const internalResistance = (first.voltage - second.voltage) / (second.current - first.current);
	return { internalResistance, sourceVoltage: first.voltage + first.current * internalResistance };
}

function notNegative(value: number): number {
	if (!(value >= 0)) throw new RangeError(`a voltage or resistance must not be negative, got ${value}`);
	return value;
}
