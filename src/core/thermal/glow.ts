import type { CandelasPerSquareMetre, Kelvin, Metres } from '#core/quantity/unit.ts';
import { cie1931 } from './cie-1931.ts';
import { boltzmannConstant, iceZero, luminousEfficacy, planckConstant, speedOfLight } from './physical-constants.ts';
import { requireWithin } from './range.ts';

/** CIE 1931 tristimulus values; Y is the luminance in cd/m². */
export interface Tristimulus {
	readonly X: number;
	readonly Y: CandelasPerSquareMetre;
	readonly Z: number;
}

/** Three channels, red, green, blue, each 0…1. */
export type Channels = readonly [red: number, green: number, blue: number];

/**
 * Spectral radiance of a black body: L = (2 h c²/λ⁵)/(exp(h c/(λ k T)) − 1).
 *
 * @param wavelength in m, 1e-7…1e-3
 * @param temperature in K, 1…20 000
 * @returns W/(m² sr m), exact
 * @throws RangeError outside these ranges
 * @see M. Planck, Ann. Phys. 309 (1901) 553; checked in tests/published/core/thermal/glow.test.ts
 */
export function blackBodyRadiance(wavelength: Metres, temperature: Kelvin): number {
	requireWithin('Wavelength', wavelength, 1e-7, 1e-3, 'm');
	requireWithin('Temperature', temperature, 1, 20_000, 'K');
	const exponent = (planckConstant * speedOfLight) / (wavelength * boltzmannConstant * temperature);
	return (2 * planckConstant * speedOfLight ** 2) / wavelength ** 5 / Math.expm1(exponent);
}

/**
 * Colour and luminance of a grey glowing surface: XYZ = 683 Σ ε L(λ, T)(x̄, ȳ, z̄) Δλ over 360–830 nm, Δλ = 5 nm.
 *
 * @param temperature in K, 1…20 000
 * @param emissivity 0…1, the same at every wavelength, so it leaves the chromaticity alone
 * @throws RangeError outside these ranges
 * @see CIE 15; checked in tests/published/core/thermal/glow.test.ts
 */
export function glowTristimulus(temperature: Kelvin, emissivity: number): Tristimulus {
	requireWithin('Emissivity', emissivity, 0, 1, '');
	let X = 0;
	let Y = 0;
	let Z = 0;
	for (const [nanometres, x, y, z] of cie1931) {
		const radiance = blackBodyRadiance(nanometres * 1e-9, temperature);
		X += radiance * x;
		Y += radiance * y;
		Z += radiance * z;
	}
	const scale = luminousEfficacy * emissivity * 5e-9;
	return { X: X * scale, Y: Y * scale, Z: Z * scale };
}

/** Luminance of a grey surface in cd/m². @throws RangeError as glowTristimulus */
export function glowLuminance(temperature: Kelvin, emissivity: number): CandelasPerSquareMetre {
	return glowTristimulus(temperature, emissivity).Y;
}

/** Chromaticity x, y of a black body. @throws RangeError as glowTristimulus */
export function blackBodyChromaticity(temperature: Kelvin): { readonly x: number; readonly y: number } {
	const { X, Y, Z } = glowTristimulus(temperature, 1);
	return { x: X / (X + Y + Z), y: Y / (X + Y + Z) };
}

/**
 * Linear sRGB from XYZ; channels outside 0…1 are out of gamut and stay as they come out.
 *
 * @see IEC 61966-2-1:1999; checked in tests/published/core/thermal/glow.test.ts
 */
export function linearSrgb({ X, Y, Z }: Tristimulus): Channels {
	return [
		3.2406 * X - 1.5372 * Y - 0.4986 * Z,
		-0.9689 * X + 1.8758 * Y + 0.0415 * Z,
		0.0557 * X - 0.204 * Y + 1.057 * Z,
	];
}

/**
 * sRGB encoding of one linear channel: 12.92 c up to 0.0031308, above 1.055 c^(1/2.4) − 0.055.
 *
 * @param linear 0…1
 * @throws RangeError outside that range
 * @see IEC 61966-2-1:1999; checked in tests/published/core/thermal/glow.test.ts
 */
export function encodeSrgb(linear: number): number {
	requireWithin('Linear channel', linear, 0, 1, '');
	return linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055;
}

/** Above this the eye sees glow paler than it is: up to 15 % white, growing over 250 K. */
const palesFrom = 950 + iceZero;

/**
 * Hue of the glow on a screen, as 8-bit sRGB: negative channels cut, scaled so that the largest is full.
 *
 * @param temperature in K, 600…4000
 * @param options with `pale`, up to 15 % white is mixed in between 950 and 1200 °C
 * @throws RangeError outside that range
 */
export function glowHue(temperature: Kelvin, options: { readonly pale?: boolean } = {}): Channels {
	requireWithin('Temperature', temperature, 600, 4000, 'K');
	const [red, green, blue] = linearSrgb(glowTristimulus(temperature, 1));
	const most = Math.max(red, green, blue);
	const white = options.pale === true ? 0.15 * Math.min(1, Math.max(0, (temperature - palesFrom) / 250)) : 0;
	const channel = (linear: number) =>
		Math.round(255 * encodeSrgb(white + (1 - white) * Math.min(1, Math.max(0, linear / most))));
	return [channel(red), channel(green), channel(blue)];
}

/** Draper point: first visible red in the dark. Source: J. W. Draper, Phil. Mag. 1847, 345–359 (977 °F). */
export const draperPoint: Kelvin = 525 + iceZero;

/** Where the drawn glow is at full strength. */
const fullGlow: Kelvin = 1200 + iceZero;

/**
 * How strongly to draw the glow: logarithm of luminance, 0 at 525 °C and below, 1 at 1200 °C and above.
 *
 * @param temperature in K, 1…20 000
 */
export function glowStrength(temperature: Kelvin): number {
	if (temperature <= draperPoint) return 0;
	const least = Math.log(glowLuminance(draperPoint, 1));
	const share = (Math.log(glowLuminance(temperature, 1)) - least) / (Math.log(glowLuminance(fullGlow, 1)) - least);
	return Math.min(1, share);
}

/** How light the room is; it moves the temperature at which glow is first seen. */
export type RoomLight = 'shaded' | 'lit' | 'bright';

/** First visible glow. Shaded: Draper 1847; lit and bright: workshop experience, no source. */
export const glowThreshold: Readonly<Record<RoomLight, Kelvin>> = {
	shaded: draperPoint,
	lit: 600 + iceZero,
	bright: 650 + iceZero,
};
