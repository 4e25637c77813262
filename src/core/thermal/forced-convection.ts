import { requireWithin } from './range.ts';

/** The second branch of Collis & Williams, 44 < Re < 140, and the first, 0.02 < Re < 44. */
export const collisWilliamsValidity = { reynolds: [0.02, 140] } as const;

/** Churchill & Bernstein state Re Pr > 0.2. */
export const churchillBernsteinValidity = { peclet: [0.2, Infinity] } as const;

/** 0 below `from`, 1 above `to`, without a kink between. */
function smoothStep(value: number, from: number, to: number): number {
	const t = Math.min(1, Math.max(0, (value - from) / (to - from)));
	return t * t * (3 - 2 * t);
}

function collisWilliamsFormula(Re: number, loading: number): number {
	// the two branches differ by 0.1 % at Re 44: joined over 38…44 so the heat loss has no step
	const share = smoothStep(Re, 38, 44);
	const nusselt = (1 - share) * (0.24 + 0.56 * Re ** 0.45) + share * 0.48 * Re ** 0.51;
	return nusselt * loading ** 0.17;
}

/**
 * Nusselt number of a fine wire across a stream of air, after Collis & Williams.
 *
 *   Nu = (A + B Reⁿ)(Tm/T∞)^0.17;  0.02 < Re < 44: A 0.24, B 0.56, n 0.45;  44 < Re < 140: A 0, B 0.48, n 0.51
 *
 * @param flow Reynolds number on the diameter at film properties, 0.02…140; film over air temperature, 0.5…5
 * @returns Nusselt number on the diameter
 * @throws RangeError outside these ranges
 * @see D. C. Collis, M. J. Williams, J. Fluid Mech. 6 (1959) 357–384 (coefficients from memory, confidence 0.9);
 *      checked in tests/published/core/thermal/convection.test.ts
 */
export function nusseltFineWireCollisWilliams(flow: { reynolds: number; filmOverAir: number }): number {
	const [from, to] = collisWilliamsValidity.reynolds;
	requireWithin('Reynolds number', flow.reynolds, from, to, '');
	requireWithin('Film over air temperature', flow.filmOverAir, 0.5, 5, '');
	return collisWilliamsFormula(flow.reynolds, flow.filmOverAir);
}

/**
 * Nusselt number of a cylinder across a stream, after Churchill & Bernstein.
 *
 *   Nu = 0.3 + 0.62 Re^½ Pr^⅓/[1 + (0.4/Pr)^⅔]^¼ · [1 + (Re/282000)^(5/8)]^(4/5)
 *
 * @param flow Reynolds number on the diameter, film properties, 0…1e7; Prandtl number 0.5…10; Re Pr above 0.2
 * @returns Nusselt number on the diameter, within about 20 %
 * @throws RangeError outside these ranges
 * @see S. W. Churchill, M. Bernstein, J. Heat Transfer 99 (1977) 300–306;
 *      checked in tests/published/core/thermal/convection.test.ts
 */
export function nusseltCylinderChurchillBernstein(flow: { reynolds: number; prandtl: number }): number {
	const { reynolds: Re, prandtl: Pr } = flow;
	requireWithin('Reynolds number', Re, 0, 1e7, '');
	requireWithin('Prandtl number', Pr, 0.5, 10, '');
	requireWithin('Reynolds times Prandtl number', Re * Pr, churchillBernsteinValidity.peclet[0], 1e8, '');
	const laminar = (0.62 * Re ** 0.5 * Pr ** (1 / 3)) / (1 + (0.4 / Pr) ** (2 / 3)) ** (1 / 4);
	return 0.3 + laminar * (1 + (Re / 282_000) ** (5 / 8)) ** (4 / 5);
}

/**
 * Nusselt number of a wire in a cross-draught of any strength: Collis & Williams, handed over to Churchill &
 * Bernstein between Re 100 and 140; below Re 0.02 it falls to nothing in proportion (our own continuation), so that
 * the smallest draught changes nothing by a step.
 *
 * @param flow Reynolds number, 0 or more; Prandtl number; film over air temperature
 * @returns Nusselt number on the diameter
 * @throws RangeError as the two laws it joins
 */
export function nusseltCrossDraught(flow: { reynolds: number; prandtl: number; filmOverAir: number }): number {
	const { reynolds, filmOverAir } = flow;
	const [least, most] = collisWilliamsValidity.reynolds;
	if (reynolds < least) return (collisWilliamsFormula(least, filmOverAir) * reynolds) / least;
	if (reynolds >= most) return nusseltCylinderChurchillBernstein(flow);
	const fine = collisWilliamsFormula(reynolds, filmOverAir);
	const share = smoothStep(reynolds, 100, most);
	return share === 0 ? fine : (1 - share) * fine + share * nusseltCylinderChurchillBernstein(flow);
}

/**
 * Natural convection and a cross-draught together: Nu = (Nu_N⁴ + Nu_F⁴)^¼.
 *
 * @param parts Nusselt numbers of either alone, 0 or more
 * @see usual blending for mixed convection across a cylinder, exponent 3 to 4 (from memory)
 */
export function nusseltMixed(parts: { natural: number; forced: number }): number {
	return (parts.natural ** 4 + parts.forced ** 4) ** (1 / 4);
}
