import { linearFit } from '#core/numeric/linear-fit.ts';
import { fail, succeed, type Outcome } from '#core/outcome.ts';
import type { Amperes, Metres, Ohms, OhmsPerMetre, Volts } from '#core/quantity/unit.ts';
import { readingLimit, readingUncertainty, shownReading, type Meter } from './meter.ts';

/** What a meter makes of a resistance. */
export interface ResistanceReading {
	/** the figure shown, in Ω */
	readonly shown: Ohms;
	/** shown less true, in Ω: what the method adds */
	readonly methodError: Ohms;
	/** ± by the data sheet of the meter, in Ω */
	readonly limit: Ohms;
	/** standard uncertainty by the data sheet, in Ω */
	readonly uncertainty: Ohms;
}

/**
 * Reading over two wires: the meter cannot tell the leads from the wire.
 *
 *   Rm = R + Rleads
 *
 * @param resistance of the wire, in Ω, ≥ 0; of both leads with their contacts, in Ω, ≥ 0
 * @throws RangeError outside these ranges
 */
export function twoWireReading(
	meter: Meter,
	{ resistance, leads }: { resistance: Ohms; leads: Ohms },
): ResistanceReading {
	notNegative(resistance, leads);
	const shown = shownReading(meter, resistance + leads);
	return {
		shown,
		methodError: shown - resistance,
		limit: readingLimit(meter, shown),
		uncertainty: readingUncertainty(meter, shown),
	};
}

/**
 * Reading over four wires: current through one pair, voltage on the other. The voltmeter bridges the wire.
 *
 *   Rm = U/I = R (Rv + Rs)/(Rv + Rs + R)
 *
 * @param wire resistance in Ω, > 0; current of the source in A, > 0; resistance of the voltmeter in Ω, 10 MΩ by
 *   default (common practice, no source); of the sense leads in Ω, ≥ 0, none by default
 * @returns resistance, and its standard uncertainty by both meters: u²(R)/R² = u²(U)/U² + u²(I)/I²
 * @throws RangeError outside these ranges, or for a current too small for the ammeter to show
 */
export function fourWireReading(
	meters: { voltmeter: Meter; ammeter: Meter },
	wire: { resistance: Ohms; current: Amperes; voltmeterResistance?: Ohms; senseLeads?: Ohms },
): ResistanceReading & { readonly voltage: Volts; readonly current: Amperes } {
	const { resistance, voltmeterResistance = 10e6, senseLeads = 0 } = wire;
	notNegative(resistance, senseLeads);
	const bridge = voltmeterResistance + senseLeads;
	const acrossWire = wire.current * ((resistance * bridge) / (resistance + bridge));
	const voltage = shownReading(meters.voltmeter, (acrossWire * voltmeterResistance) / bridge);
	const current = shownReading(meters.ammeter, wire.current);
	if (!(current > 0)) throw new RangeError(`the ammeter shows no current at ${wire.current} A`);
	const shown = voltage / current;
	return {
		voltage,
		current,
		shown,
		methodError: shown - resistance,
		limit:
			readingLimit(meters.voltmeter, voltage) / current + (shown * readingLimit(meters.ammeter, current)) / current,
		uncertainty: Math.hypot(
			readingUncertainty(meters.voltmeter, voltage) / current,
			(shown * readingUncertainty(meters.ammeter, current)) / current,
		),
	};
}

/** Ohms per metre of a wire and what leads and contacts add, with standard uncertainties from the scatter. */
export interface ResistancePerMetreFit {
	readonly resistancePerMetre: OhmsPerMetre;
	readonly resistancePerMetreUncertainty: OhmsPerMetre;
	readonly leads: Ohms;
	readonly leadsUncertainty: Ohms;
	/** correlation of both, −1…1: longer lengths with less spread come nearer to −1 */
	readonly correlation: number;
	/** standard deviation of one reading about the line, in Ω */
	readonly scatter: Ohms;
}

export type ReadingsProblem =
	| { readonly code: 'too-few-readings'; readonly found: number; readonly least: number }
	| { readonly code: 'one-length-only'; readonly length: Metres }
	| { readonly code: 'reading-not-possible'; readonly index: number }
	| { readonly code: 'does-not-rise'; readonly resistancePerMetre: OhmsPerMetre };

/**
 * Ohms per metre from readings at several lengths of one wire; the leads fall out as the reading at no length.
 *
 *   R(ℓ) = Rleads + R′ ℓ, by least squares
 *
 * @param readings length in m, ≥ 0, and resistance in Ω, ≥ 0; three or more, at two or more lengths
 * @returns the fit, or what is wrong with the readings
 * @see JCGM 100:2008 (GUM), H.3; checked in tests/published/core/electric/resistance-reading.test.ts
 */
export function resistancePerMetreFromReadings(
	readings: readonly { readonly length: Metres; readonly resistance: Ohms }[],
): Outcome<ResistancePerMetreFit, ReadingsProblem> {
	const bad = readings.flatMap(({ length, resistance }, index) =>
		isPossible(length) && isPossible(resistance) ? [] : [{ code: 'reading-not-possible' as const, index }],
	);
	if (bad.length > 0) return fail<ReadingsProblem>(...bad);
	const [first] = readings;
	if (first === undefined || readings.length < 3) {
		return fail<ReadingsProblem>({ code: 'too-few-readings', found: readings.length, least: 3 });
	}
	if (readings.every(({ length }) => length === first.length)) {
		return fail<ReadingsProblem>({ code: 'one-length-only', length: first.length });
	}
	const fit = linearFit(readings.map(({ length, resistance }) => ({ x: length, y: resistance })));
	if (!(fit.slope > 0)) return fail<ReadingsProblem>({ code: 'does-not-rise', resistancePerMetre: fit.slope });
	return succeed({
		resistancePerMetre: fit.slope,
		resistancePerMetreUncertainty: fit.slopeUncertainty,
		leads: fit.intercept,
		leadsUncertainty: fit.interceptUncertainty,
		correlation: fit.correlation,
		scatter: fit.scatter,
	});
}

function isPossible(value: number): boolean {
	return Number.isFinite(value) && value >= 0;
}

function notNegative(...values: readonly number[]): void {
	for (const value of values)
		if (!(value >= 0)) throw new RangeError(`a resistance must not be negative, got ${value}`);
}
