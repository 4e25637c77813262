import type {
	JoulesPerKilogramKelvin,
	Kelvin,
	KilogramsPerCubicMetre,
	Pascals,
	WattsPerMetreKelvin,
} from '#core/quantity/unit.ts';
import { molarGasConstant } from './physical-constants.ts';
import { requireWithin } from './range.ts';

/** Dry air at one temperature and pressure. */
export interface Air {
	readonly density: KilogramsPerCubicMetre;
	/** dynamic viscosity in Pa s */
	readonly viscosity: number;
	readonly conductivity: WattsPerMetreKelvin;
	readonly specificHeat: JoulesPerKilogramKelvin;
	/** in m²/s */
	readonly kinematicViscosity: number;
	/** thermal diffusivity in m²/s */
	readonly diffusivity: number;
	readonly prandtl: number;
}

/** Where the formulas below were fitted; pressure as far as air stays an ideal gas for our purpose. */
export const airRange = { temperature: [200, 2000], pressure: [10_000, 200_000] } as const;

/** Molar mass of dry air in kg/mol. Source: Lemmon et al. 2000, as below. */
const molarMass = 0.02896546;

/** Collision integral Ω(T/103.3 K) of the dilute-gas viscosity. Source: Lemmon & Jacobsen 2004, table 2. */
function collisionIntegral(temperature: Kelvin): number {
	const x = Math.log(temperature / 103.3);
	return Math.exp(0.431 + x * (-0.4623 + x * (0.08406 + x * (0.005341 - x * 0.00331))));
}

/**
 * Dynamic viscosity of dilute air: μ = 0.0266958 √(M T)/(σ² Ω), in µPa s with M in g/mol and σ in nm.
 *
 * @param temperature in K, 100…2000
 * @returns viscosity in Pa s, within 1 % near room temperature
 * @throws RangeError outside that range
 * @see Lemmon & Jacobsen, Int. J. Thermophys. 25 (2004) 21–69; checked in tests/published/core/thermal/air.test.ts
 */
export function airViscosity(temperature: Kelvin): number {
	requireWithin('Air temperature', temperature, 100, airRange.temperature[1], 'K');
	return (1e-6 * 0.0266958 * Math.sqrt(28.9586 * temperature)) / (0.36 ** 2 * collisionIntegral(temperature));
}

/**
 * Thermal conductivity of dilute air: k = 1.308 μ + 1.405 τ^−1.1 − 1.036 τ^−0.3 in mW/(m K), τ = 132.6312 K/T.
 *
 * @param temperature in K, 100…2000
 * @returns conductivity in W/(m K), within 2 % near room temperature and 5 % above 1000 K
 * @throws RangeError outside that range
 * @see Lemmon & Jacobsen, Int. J. Thermophys. 25 (2004) 21–69; checked in tests/published/core/thermal/air.test.ts
 */
export function airConductivity(temperature: Kelvin): WattsPerMetreKelvin {
	const tau = 132.6312 / temperature;
	return 1e-3 * (1.308e6 * airViscosity(temperature) + 1.405 * tau ** -1.1 - 1.036 * tau ** -0.3);
}

/** Heat capacity of one harmonic vibration, over R, at x = θ/T. */
function vibration(x: number): number {
	return (x ** 2 * Math.exp(x)) / Math.expm1(x) ** 2;
}

/**
 * Ideal-gas specific heat of air at constant pressure.
 *
 * @param temperature in K, 200…2000
 * @returns specific heat in J/(kg K)
 * @throws RangeError outside that range
 * @see Lemmon et al., J. Phys. Chem. Ref. Data 29 (2000) 331; checked in tests/published/core/thermal/air.test.ts
 */
export function airSpecificHeat(temperature: Kelvin): JoulesPerKilogramKelvin {
	const T = temperature;
	requireWithin('Air temperature', T, airRange.temperature[0], airRange.temperature[1], 'K');
	const w = 11580.4 / T;
	const overR =
		3.490888032 +
		2.395525583e-6 * T +
		7.172111248e-9 * T ** 2 -
		3.115413101e-13 * T ** 3 +
		0.223806688 * T ** -1.5 +
		0.791309509 * vibration(3364.011 / T) +
		0.212236768 * vibration(2242.45 / T) +
		(0.197938904 * (2 / 3) * w ** 2 * Math.exp(-w)) / ((2 / 3) * Math.exp(-w) + 1) ** 2;
	return (overR * 8.31451) / molarMass;
}

/**
 * Dry air as an ideal gas: ρ = p M/(R T), ν = μ/ρ, α = k/(ρ cp), Pr = μ cp/k.
 *
 * @param state temperature in K, 200…2000; pressure in Pa, 10 000…200 000
 * @returns all properties in SI units
 * @throws RangeError outside these ranges
 * @see airViscosity, airConductivity, airSpecificHeat; checked in tests/published/core/thermal/air.test.ts
 */
export function airAt(state: { readonly temperature: Kelvin; readonly pressure: Pascals }): Air {
	const { temperature, pressure } = state;
	requireWithin('Air pressure', pressure, airRange.pressure[0], airRange.pressure[1], 'Pa');
	const specificHeat = airSpecificHeat(temperature);
	const viscosity = airViscosity(temperature);
	const conductivity = airConductivity(temperature);
	const density = (pressure * molarMass) / (molarGasConstant * temperature);
	return {
		density,
		viscosity,
		conductivity,
		specificHeat,
		kinematicViscosity: viscosity / density,
		diffusivity: conductivity / (density * specificHeat),
		prandtl: (viscosity * specificHeat) / conductivity,
	};
}
