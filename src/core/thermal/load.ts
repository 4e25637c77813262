import type { Kelvin, Metres, MetresPerSecond, Seconds, WattsPerMetre } from '#core/quantity/unit.ts';
import type { Estimate, Meltable } from './meltable.ts';

/**
 * Part of the wire's power that ends in the plastic: for a foam cut the rest goes up the kerf with the warm air, for a
 * seal or a bend most goes into jaws, cloth and air. Common practice, no source: hence the width.
 */
export const shareIntoLoad = {
	foam: { value: 0.6, least: 0.4, most: 0.9 },
	film: { value: 0.3, least: 0.1, most: 0.5 },
	sheet: { value: 0.2, least: 0.1, most: 0.4 },
} as const satisfies Record<string, Estimate>;

/** Width of the cut over the diameter of the wire: it melts foam on both sides. Common practice, no source. */
export const kerfOverDiameter: Estimate = { value: 3, least: 1.5, most: 6 };

/**
 * Heat that brings a plastic from room temperature to where it gives way.
 *
 *   q = c (T − Tₐ) + h
 *
 * The ends take every number at its worst at once, so the range is an outer one.
 *
 * @param room temperature in K, below where it gives way
 * @returns J/kg
 * @throws RangeError for a room hotter than that
 */
export function heatToGiveWay({ specificHeat, meltingHeat, givesWayAt }: Meltable, room: Kelvin): Estimate {
	if (!(room > 0 && room < givesWayAt.least)) throw new RangeError(`nothing is left to heat at ${room} K`);
	return each((end) => specificHeat[end] * (givesWayAt[end] - room) + meltingHeat[end]);
}

/** A hot wire drawn through foam. */
export interface FoamCut {
	readonly foam: Meltable;
	/** of the wire, in m, > 0 */
	readonly diameter: Metres;
	readonly room: Kelvin;
}

/**
 * Power per metre of wire in the foam that a cutting speed needs: the foam in the way of the cut is heated.
 *
 *   P′ = v b ρ q/k,  b = width of the cut, k = share into the foam
 *
 * @param speed in m/s, ≥ 0
 * @returns W/m
 * @throws RangeError outside the ranges
 */
export function foamCutPower(cut: FoamCut, speed: MetresPerSecond): Estimate {
	if (!(speed >= 0)) throw new RangeError(`a speed must not be negative, got ${speed}`);
	const energy = energyPerCutArea(cut);
	return each((end) => speed * energy[end]);
}

/**
 * The speed at which a wire melts its way through foam: v = P′ k/(b ρ q). Drawn faster it is dragged through cold foam
 * and bows; drawn slower it melts a wider cut.
 *
 * @param powerPerMetre in the wire, in W/m, ≥ 0
 * @returns m/s
 * @throws RangeError outside the ranges
 */
export function foamCutSpeed(cut: FoamCut, powerPerMetre: WattsPerMetre): Estimate {
	if (!(powerPerMetre >= 0)) throw new RangeError(`a power must not be negative, got ${powerPerMetre}`);
	const energy = energyPerCutArea(cut);
	return each((end) => powerPerMetre / energy[opposite[end]]);
}

/** Energy the wire spends on each square metre of cut, in J/m². */
function energyPerCutArea({ foam, diameter, room }: FoamCut): Estimate {
	requirePositive(diameter);
	const heat = heatToGiveWay(foam, room);
	return each(
		(end) => (kerfOverDiameter[end] * diameter * foam.density[end] * heat[end]) / shareIntoLoad.foam[opposite[end]],
	);
}

/** A band of film under a wire or ribbon, or a line of sheet beside one. */
export interface Seam {
	readonly plastic: Meltable;
	readonly kind: 'film' | 'sheet';
	/** of the heated band, in m, > 0 */
	readonly width: Metres;
	/** all layers together, in m, > 0 */
	readonly thickness: Metres;
	readonly room: Kelvin;
}

/**
 * Power per metre of wire that brings a band of film or sheet to where it seals or bends within a time.
 *
 *   P′ = b s ρ q/(k t)
 *
 * @param time in s, > 0
 * @returns W/m
 * @throws RangeError outside the ranges
 */
export function seamPower(seam: Seam, time: Seconds): Estimate {
	requirePositive(time);
	const energy = energyPerSeam(seam);
	return each((end) => energy[end] / time);
}

/** The time a power per metre needs for a seam, in s: t = b s ρ q/(k P′). @throws RangeError outside the ranges */
export function seamTime(seam: Seam, powerPerMetre: WattsPerMetre): Estimate {
	requirePositive(powerPerMetre);
	const energy = energyPerSeam(seam);
	return each((end) => energy[end] / powerPerMetre);
}

/** Energy the wire spends on each metre of seam, in J/m. */
function energyPerSeam({ plastic, kind, width, thickness, room }: Seam): Estimate {
	requirePositive(width, thickness);
	const heat = heatToGiveWay(plastic, room);
	const share: Estimate = shareIntoLoad[kind];
	return each((end) => (width * thickness * plastic.density[end] * heat[end]) / share[opposite[end]]);
}

const opposite = { value: 'value', least: 'most', most: 'least' } as const;

function each(of: (end: keyof Estimate) => number): Estimate {
	return { value: of('value'), least: of('least'), most: of('most') };
}

function requirePositive(...values: readonly number[]): void {
	for (const value of values) if (!(value > 0)) throw new RangeError(`a size or time must be above zero, got ${value}`);
}
