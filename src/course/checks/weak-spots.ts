import type { Had } from '#core/material/sources.ts';
import { fromCelsius } from '#core/material/material.ts';
import { materials } from '#core/material/materials.ts';
import type { Kelvin } from '#core/quantity/unit.ts';
import { nusseltHorizontalCylinderFujii } from '#core/thermal/convection.ts';
import { HotWire } from '#core/thermal/hot-wire.ts';
import { wireProfile } from '#core/thermal/profile.ts';
import { stillRoom, type Room } from '#core/thermal/room.ts';

/** Model minus data as shares of the data: mean and root of the mean square. */
export interface Spread {
	readonly mean: number;
	readonly rms: number;
}

/** How far the heat model lies from a body of measurements, as found when the model was chosen. */
export interface MeasuredSpread {
	readonly against: string;
	readonly count: number;
	readonly heatLoss?: Spread;
	readonly current?: Spread;
	readonly had: Had;
}

/**
 * The comparison behind the stated uncertainty: long level wires in still air, nickel-chromium with emissivity 0.88
 * where radiation counts. The tables' own figures are not kept here; the spread is cited.
 */
export const measuredSpreads = [
	{
		against: 'Table of currents for nickel-chromium wire, 0.13–0.81 mm, 200–1100 °C',
		count: 170,
		heatLoss: { mean: 0.005, rms: 0.071 },
		current: { mean: 0.002, rms: 0.036 },
		had: 'looked-up',
	},
	{
		against: 'Handbook table of currents for nickel-chromium wire, 0.10–1.2 mm, rises of 500 and 1000 K',
		count: 26,
		heatLoss: { mean: -0.016, rms: 0.1 },
		current: { mean: -0.009, rms: 0.052 },
		had: 'looked-up',
	},
	{
		against: 'A second handbook table of currents for nickel-chromium wire, 0.08–1.5 mm, 200–1100 °C',
		count: 234,
		current: { mean: -0.004, rms: 0.036 },
		had: 'from-memory',
	},
	{
		against: 'A third handbook table of the same kind',
		count: 147,
		current: { mean: 0.041, rms: 0.054 },
		had: 'from-memory',
	},
	{
		against: 'Platinum wires up to 1900 K, Langmuir 1912, convection only',
		count: 25,
		heatLoss: { mean: -0.048, rms: 0.064 },
		had: 'from-memory',
	},
	{
		against: 'Platinum wires 0.03–0.36 mm, 100–300 °C, Ayrton and Kilgour 1892 (tube and ends add loss)',
		count: 18,
		heatLoss: { mean: -0.08, rms: 0.09 },
		had: 'from-memory',
	},
	{
		against: 'Wires 0.1–1.3 mm, Hatton, James and Swire 1970',
		count: 23,
		heatLoss: { mean: 0.008, rms: 0.057 },
		had: 'from-memory',
	},
	{
		against: 'Morgan’s fit of all data up to 1975, rise of 40 K',
		count: 11,
		heatLoss: { mean: 0.04, rms: 0.06 },
		had: 'looked-up',
	},
	{
		against: 'A numerical solution of the air flow by first principles, 0.05–1.5 mm, 100–1200 °C, convection only',
		count: 54,
		heatLoss: { mean: 0.015, rms: 0.019 },
		had: 'derived',
	},
] as const satisfies readonly MeasuredSpread[];

/** Nusselt numbers of the numerical solution at Pr 0.70 and a small rise. */
const numericalNusselt = [
	{ rayleigh: 1e-4, nusselt: 0.401 },
	{ rayleigh: 1e-3, nusselt: 0.474 },
	{ rayleigh: 1e-2, nusselt: 0.577 },
	{ rayleigh: 0.1, nusselt: 0.731 },
	{ rayleigh: 1, nusselt: 0.971 },
	{ rayleigh: 10, nusselt: 1.357 },
	{ rayleigh: 100, nusselt: 1.995 },
] as const;

/** The law of convection against the numerical solution, reckoned here. */
export function lawAgainstSolution(): Spread & { readonly count: number } {
	const shares = numericalNusselt.map(
		({ rayleigh, nusselt }) => nusseltHorizontalCylinderFujii({ rayleigh, prandtl: 0.7 }) / nusselt - 1,
	);
	const average = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
	return { count: shares.length, mean: average(shares), rms: Math.sqrt(average(shares.map((share) => share ** 2))) };
}

/** What one thing the model cannot know does to the temperature, at an unchanged current. */
export interface Misjudgement {
	readonly cause: 'surface-brighter' | 'surface-blacker' | 'draught-faint' | 'draught-light' | 'upright' | 'short';
	/** temperatures in K, one for each planned temperature; missing where the wire would leave its curve */
	readonly reached: readonly (Kelvin | undefined)[];
}

/** Planned temperatures of the wire below. */
export const plannedTemperatures: readonly Kelvin[] = [300, 600, 900].map(fromCelsius);

/** Nickel-chromium 0.32 mm, level, oxidised, in still air: a usual reel. */
const usualWire = { material: materials['nicr-80-20'], diameter: 0.32e-3 } as const;

/** A short piece of wire, in m. */
const shortLength = 0.06;

/** Temperatures really reached when the wire is driven for the planned ones and one assumption is wrong. */
export function misjudgements(): readonly Misjudgement[] {
	const planned = new HotWire(usualWire, stillRoom);
	const { min, max } = usualWire.material.emissivity.oxidised;
	const reached = (change: Partial<HotWire['wire']>, room: Room = stillRoom) => {
		const real = new HotWire({ ...usualWire, ...change }, room);
		return plannedTemperatures.map((temperature) => {
			const found = real.temperatureAt(planned.currentAt(temperature));
			return found.isInRange ? found.temperature : undefined;
		});
	};
	return [
		{ cause: 'surface-brighter', reached: reached({ emissivity: min }) },
		{ cause: 'surface-blacker', reached: reached({ emissivity: max }) },
		{ cause: 'draught-faint', reached: reached({}, { ...stillRoom, draught: 0.1 }) },
		{ cause: 'draught-light', reached: reached({}, { ...stillRoom, draught: 0.5 }) },
		{ cause: 'upright', reached: reached({ orientation: 'upright' }) },
		{ cause: 'short', reached: plannedTemperatures.map((temperature) => meanBetweenClips(planned, temperature)) },
	];
}

/** Average over a piece of `shortLength` between clips at room temperature, at the current for this temperature. */
function meanBetweenClips(wire: HotWire, temperature: Kelvin): Kelvin {
	const clipTemperature = wire.room.temperature;
	return wireProfile(wire, { length: shortLength, clipTemperature, drive: wire.currentAt(temperature) }).mean;
}
