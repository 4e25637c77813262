import { MonotoneCurve } from '#core/numeric/interpolate.ts';
import type {
	JoulesPerKilogramKelvin,
	Kelvin,
	KilogramsPerCubicMetre,
	Metres,
	OhmMetres,
	PerKelvin,
	WattsPerMetreKelvin,
} from '#core/quantity/unit.ts';
import { iceZero } from '#core/thermal/physical-constants.ts';
import type { SourceKey } from './sources.ts';

export type MaterialId =
	| 'cral-25-5'
	| 'cral-20-5'
	| 'nicr-80-20'
	| 'nicr-70-30'
	| 'nicr-60-15'
	| 'cuni-44'
	| 'x5crni18-10'
	| 'x5crnimo17-12-2'
	| 'ni-99-2'
	| 'ti-grade-1'
	| 'w'
	| 'cu-etp'
	| 'soft-steel';

/** A number with where it comes from. */
export interface Sourced<T> {
	readonly value: T;
	readonly source: readonly SourceKey[];
	/** How the number was built, or what it stands in for. */
	readonly note?: string;
}

/** A property against temperature; between its points a monotone curve. */
export interface PropertyTable {
	readonly temperature: readonly Kelvin[];
	readonly value: readonly number[];
	readonly source: readonly SourceKey[];
	readonly note?: string;
}

/** Total hemispherical emissivity, 0…1, with the honest range. */
export interface Emissivity {
	readonly value: number;
	readonly min: number;
	readonly max: number;
	readonly source: readonly SourceKey[];
	readonly note?: string;
}

export interface Material {
	readonly id: MaterialId;
	/** Name by standard, for example `NiCr 80 20`. */
	readonly designation: string;
	readonly materialNumber: string;
	readonly family:
		'nickel-chromium' | 'iron-chromium-aluminium' | 'copper-nickel' | 'stainless-steel' | 'pure-metal' | 'steel';
	/** At 20 °C in Ω·m; tolerance is the ± limit of resistance per metre as a fraction. */
	readonly resistivity: Sourced<OhmMetres> & { readonly tolerance: number };
	/** R(T) / R(20 °C). */
	readonly resistanceRatio: {
		readonly temperature: readonly Kelvin[];
		readonly ratio: readonly number[];
		readonly source: readonly SourceKey[];
		readonly note?: string;
		/** Above this the row was continued by hand. */
		readonly doubtfulAbove?: Kelvin;
	};
	readonly density: Sourced<KilogramsPerCubicMetre>;
	readonly specificHeat: PropertyTable;
	readonly conductivity: PropertyTable;
	/** Mean coefficient from 20 °C up to `to`. */
	readonly expansion: Sourced<PerKelvin> & { readonly to: Kelvin };
	readonly emissivity: { readonly oxidised: Emissivity; readonly clean: Emissivity };
	readonly melting: { readonly from: Kelvin; readonly to: Kelvin; readonly source: readonly SourceKey[] };
	/** In air the bench refuses to go hotter. */
	readonly limit: Sourced<Kelvin>;
	/** Highest element temperature in air of thick wire by the standards, where one is known. */
	readonly elementMaximum: Sourced<Kelvin>;
	/** How hot a thin wire lasts: a remark, never a refusal. Diameters in m, from the thinnest; empty when unknown. */
	readonly thinWireLimit: {
		readonly rows: readonly { readonly upTo: Metres; readonly value: Kelvin }[];
		readonly source: readonly SourceKey[];
	};
	readonly hazards: readonly Hazard[];
}

/** What a person must be told before heating this metal. */
export type Hazard =
	'zinc-coating-fume' | 'burns-when-white-hot' | 'burns-away-in-air' | 'scales-off' | 'brittle-after-use';

/** Temperatures of a table printed in °C, in K. */
export function celsius(...temperatures: readonly number[]): readonly Kelvin[] {
	return temperatures.map((temperature) => temperature + iceZero);
}

export function fromCelsius(temperatureCelsius: number): Kelvin {
	return temperatureCelsius + iceZero;
}

const curves = new WeakMap<readonly number[], MonotoneCurve>();

function curve(x: readonly Kelvin[], y: readonly number[]): MonotoneCurve {
	const known = curves.get(y);
	if (known !== undefined) return known;
	const made = new MonotoneCurve(x, y);
	curves.set(y, made);
	return made;
}

/**
 * Resistance of a piece at temperature T as a multiple of its resistance at 20 °C.
 *
 * Between the points of the material's table a monotone cubic curve; beyond its ends the end slope goes on
 * straight, because a solver must be able to look past the table: ask `isResistanceKnownAt` before showing it.
 *
 * @param temperature in K, > 0
 * @throws RangeError when the temperature is not above 0 K
 */
export function resistanceRatioAt(material: Material, temperature: Kelvin): number {
	requireTemperature(temperature);
	const { temperature: x, ratio } = material.resistanceRatio;
	// steep metals would cross zero far below any workshop
	return Math.max(0.01, curve(x, ratio).continuedAt(temperature));
}

/** Whether the table covers this temperature; room temperatures a little below 20 °C count as covered. */
export function isResistanceKnownAt(material: Material, temperature: Kelvin): boolean {
	const { temperature: x, ratio } = material.resistanceRatio;
	return temperature >= fromCelsius(-20) && temperature <= curve(x, ratio).to;
}

/**
 * Resistivity of the wire at temperature T, referred to its dimensions at 20 °C: ρ(T) = ρ₂₀ · R(T)/R₂₀, in Ω·m.
 *
 * @throws RangeError when the temperature is not above 0 K
 */
export function resistivityAt(material: Material, temperature: Kelvin): OhmMetres {
	return material.resistivity.value * resistanceRatioAt(material, temperature);
}

/** Specific heat in J/(kg·K); beyond its table the end value is held. */
export function specificHeatAt(material: Material, temperature: Kelvin): JoulesPerKilogramKelvin {
	return propertyAt(material.specificHeat, temperature);
}

/** Thermal conductivity in W/(m·K); beyond its table the end value is held. */
export function conductivityAt(material: Material, temperature: Kelvin): WattsPerMetreKelvin {
	return propertyAt(material.conductivity, temperature);
}

export function isPropertyKnownAt(table: PropertyTable, temperature: Kelvin): boolean {
	return curve(table.temperature, table.value).covers(temperature);
}

/** The temperature a wire of this diameter lasts at, or undefined where nothing is known. */
export function thinWireLimitFor(material: Material, diameter: Metres): Kelvin | undefined {
	return material.thinWireLimit.rows.find((row) => diameter <= row.upTo)?.value;
}

function propertyAt(table: PropertyTable, temperature: Kelvin): number {
	requireTemperature(temperature);
	return curve(table.temperature, table.value).heldAt(temperature);
}

function requireTemperature(temperature: Kelvin): void {
	if (!(temperature > 0)) throw new RangeError(`temperature must be above 0 K, got ${temperature}`);
}
