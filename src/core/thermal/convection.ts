import { requireWithin } from './range.ts';

/** A correlation with the range it was stated for, so lesson, tooltip and test read one object. */
export interface NaturalConvectionLaw {
	readonly id: string;
	readonly tex: string;
	readonly source: string;
	readonly validity: { readonly rayleigh: readonly [number, number] };
	/** reference temperature T∞ + factor (T − T∞) for the properties of air */
	readonly referenceFactor: number;
	readonly evaluate: (numbers: { readonly rayleigh: number; readonly prandtl: number }) => number;
}

function requireNumbers(numbers: { rayleigh: number; prandtl: number }, range: readonly [number, number]): void {
	requireWithin('Rayleigh number', numbers.rayleigh, range[0], range[1], '');
	requireWithin('Prandtl number', numbers.prandtl, 0.5, 10, '');
}

/** The formula of Fujii, Fujii & Honda without its range, for any Ra > 0. */
export function fujiiFormula(Ra: number, Pr: number): number {
	const c = 0.671 / (1 + (0.492 / Pr) ** (9 / 16)) ** (4 / 9);
	const n = 1 / 4 + 1 / (10 + 5 * Ra ** 0.175);
	return 2 / Math.log(1 + 3.3 / (c * Ra ** n));
}

/**
 * Mean Nusselt number of a long horizontal cylinder in still fluid, after Fujii, Fujii & Honda. The law of this site.
 *
 *   2/Nu = ln(1 + 3.3/(c Raⁿ)),  n = 1/4 + 1/(10 + 5 Ra^0.175),  c = 0.671/[1 + (0.492/Pr)^(9/16)]^(4/9)
 *
 * @param numbers Rayleigh number on the diameter, 1e-10…1e7; Prandtl number, 0.5…10
 * @returns Nusselt number on the diameter, within about 3 % of a laminar numerical solution for hot wires in air
 * @throws RangeError outside these ranges
 * @see T. Fujii, Me. Fujii, T. Honda, 7th Int. Heat Transfer Conf., Munich 1982, vol. 6, 311–316 (coefficients from
 *      memory, confidence 0.85); checked in tests/published/core/thermal/convection.test.ts
 */
export function nusseltHorizontalCylinderFujii(numbers: { rayleigh: number; prandtl: number }): number {
	requireNumbers(numbers, fujii.validity.rayleigh);
	return fujiiFormula(numbers.rayleigh, numbers.prandtl);
}

export const fujii = {
	id: 'fujii',
	tex: String.raw`\frac{2}{\mathrm{Nu}} = \ln\left(1 + \frac{3.3}{c\,\mathrm{Ra}^{n}}\right)`,
	source: 'T. Fujii, Me. Fujii, T. Honda, 7th Int. Heat Transfer Conf., Munich 1982, vol. 6, 311–316',
	validity: { rayleigh: [1e-10, 1e7] },
	referenceFactor: 0.62,
	evaluate: nusseltHorizontalCylinderFujii,
} as const satisfies NaturalConvectionLaw;

const morganRows = [
	{ below: 1e-2, C: 0.675, n: 0.058 },
	{ below: 1e2, C: 1.02, n: 0.148 },
	{ below: 1e4, C: 0.85, n: 0.188 },
	{ below: 1e7, C: 0.48, n: 0.25 },
	{ below: Infinity, C: 0.125, n: 0.333 },
] as const;

/**
 * Mean Nusselt number of a long horizontal cylinder in still fluid, after Morgan: Nu = C Raⁿ in five stretches.
 *
 * @param numbers Rayleigh number on the diameter, 1e-10…1e12, properties at the film temperature; Prandtl number
 * @returns Nusselt number on the diameter; the stretches do not quite join
 * @throws RangeError outside these ranges
 * @see V. T. Morgan, Adv. Heat Transfer 11 (1975) 199–264; checked in tests/published/core/thermal/convection.test.ts
 */
export function nusseltHorizontalCylinderMorgan(numbers: { rayleigh: number; prandtl: number }): number {
	requireNumbers(numbers, morgan.validity.rayleigh);
	const row = morganRows.find(({ below }) => numbers.rayleigh < below) ?? morganRows[4];
	return row.C * numbers.rayleigh ** row.n;
}

export const morgan = {
	id: 'morgan',
	tex: String.raw`\mathrm{Nu} = C\,\mathrm{Ra}^{n}`,
	source: 'V. T. Morgan, Adv. Heat Transfer 11 (1975) 199–264',
	validity: { rayleigh: [1e-10, 1e12] },
	referenceFactor: 0.5,
	evaluate: nusseltHorizontalCylinderMorgan,
} as const satisfies NaturalConvectionLaw;

/**
 * Mean Nusselt number of a long horizontal cylinder in still fluid, after Churchill & Chu.
 *
 *   Nu = {0.60 + 0.387 Ra^(1/6)/[1 + (0.559/Pr)^(9/16)]^(8/27)}²
 *
 * @param numbers Rayleigh number on the diameter, 1e-5…1e12, properties at the film temperature; Prandtl number
 * @returns Nusselt number on the diameter; 8–16 % low for wires between Ra 0.1 and 100
 * @throws RangeError outside these ranges
 * @see S. W. Churchill, H. H. S. Chu, Int. J. Heat Mass Transfer 18 (1975) 1049–1053;
 *      checked in tests/published/core/thermal/convection.test.ts
 */
export function nusseltHorizontalCylinderChurchillChu(numbers: { rayleigh: number; prandtl: number }): number {
	requireNumbers(numbers, churchillChu.validity.rayleigh);
	const { rayleigh: Ra, prandtl: Pr } = numbers;
	return (0.6 + (0.387 * Ra ** (1 / 6)) / (1 + (0.559 / Pr) ** (9 / 16)) ** (8 / 27)) ** 2;
}

export const churchillChu = {
	id: 'churchill-chu',
	tex: String.raw`\mathrm{Nu} = \left\{0.60 + \frac{0.387\,\mathrm{Ra}^{1/6}}{[1 + (0.559/\mathrm{Pr})^{9/16}]^{8/27}}\right\}^2`,
	source: 'S. W. Churchill, H. H. S. Chu, Int. J. Heat Mass Transfer 18 (1975) 1049–1053',
	validity: { rayleigh: [1e-5, 1e12] },
	referenceFactor: 0.5,
	evaluate: nusseltHorizontalCylinderChurchillChu,
} as const satisfies NaturalConvectionLaw;
