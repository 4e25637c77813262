import type { Kelvin, Metres, SquareMetres, Watts, WattsPerMetre } from '#core/quantity/unit.ts';
import { stefanBoltzmann } from './physical-constants.ts';
import { requireWithin } from './range.ts';

/** The grey, convex surface that radiates. */
export interface RadiatingSurface {
	/** total hemispherical, 0…1 */
	readonly emissivity: number;
	readonly area: SquareMetres;
	readonly temperature: Kelvin;
}

/**
 * Heat a grey, convex surface loses by radiation to large surroundings.
 *
 *   P = ε σ A (T⁴ − Tₛ⁴)
 *
 * @param surface emissivity 0…1; area in m², 0 or more; temperature in K, 1…5000
 * @param surroundings temperature of the walls in K, 1…5000
 * @returns power in W, negative when the walls are hotter; exact for a grey body, ε itself is rarely known to 0.1
 * @throws RangeError outside these ranges
 * @see Incropera et al., Fundamentals of Heat and Mass Transfer, 6th ed., eq. 1.7;
 *      checked in tests/published/core/thermal/radiation.test.ts
 */
export function radiatedPower(surface: RadiatingSurface, surroundings: Kelvin): Watts {
	const { emissivity, area, temperature } = surface;
	requireWithin('Emissivity', emissivity, 0, 1, '');
	requireWithin('Area', area, 0, Number.MAX_VALUE, 'm²');
	requireWithin('Surface temperature', temperature, 1, 5000, 'K');
	requireWithin('Temperature of the surroundings', surroundings, 1, 5000, 'K');
	return emissivity * stefanBoltzmann * area * (temperature ** 4 - surroundings ** 4);
}

/**
 * Heat one metre of round wire loses by radiation in a large room: q′ = ε σ π d (T⁴ − Tₛ⁴).
 *
 * @param wire emissivity 0…1; diameter in m; temperature in K
 * @param surroundings temperature of the walls in K
 * @returns W/m, negative when the walls are hotter
 * @throws RangeError as radiatedPower
 */
export function radiatedPerMetre(
	wire: { readonly emissivity: number; readonly diameter: Metres; readonly temperature: Kelvin },
	surroundings: Kelvin,
): WattsPerMetre {
	return radiatedPower({ ...wire, area: Math.PI * wire.diameter }, surroundings);
}
