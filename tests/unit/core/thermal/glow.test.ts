import { describe, expect, test } from 'vitest';
import { encodeSrgb, blackBodyRadiance, glowHue, glowLuminance, glowStrength } from '#core/thermal/glow.ts';
import { heatBand } from '#core/thermal/heat-band.ts';
import { iceZero } from '#core/thermal/physical-constants.ts';

const celsius = (temperature: number) => temperature + iceZero;

describe('the table the bench is drawn by, reckoned separately, emissivity 0.88', () => {
	test.each([
		{ at: 525, luminance: 0.007, hue: [255, 0, 0], strength: 0 },
		{ at: 600, luminance: 0.08, hue: [255, 0, 0], strength: 0.18 },
		{ at: 700, luminance: 1.2, hue: [255, 8, 0], strength: 0.39 },
		{ at: 800, luminance: 11.8, hue: [255, 45, 0], strength: 0.55 },
		{ at: 900, luminance: 78, hue: [255, 64, 0], strength: 0.69 },
		{ at: 1000, luminance: 386, hue: [255, 78, 0], strength: 0.81 },
		{ at: 1100, luminance: 1530, hue: [255, 90, 0], strength: 0.91 },
		{ at: 1200, luminance: 5070, hue: [255, 100, 0], strength: 1 },
	])('$at °C: $luminance cd/m², hue $hue, strength $strength', ({ at, luminance, hue, strength }) => {
		expect(Math.abs(glowLuminance(celsius(at), 0.88) / luminance - 1)).toBeLessThan(0.06);
		glowHue(celsius(at)).forEach((channel, index) => {
			expect(Math.abs(channel - (hue[index] ?? 0))).toBeLessThanOrEqual(1);
		});
		expect(Math.abs(glowStrength(celsius(at)) - strength)).toBeLessThan(0.0051);
	});
});

describe('drawing', () => {
	test('there is no glow below the Draper point and no more than full above 1200 °C', () => {
		expect(glowStrength(celsius(20))).toBe(0);
		expect(glowStrength(celsius(524))).toBe(0);
		expect(glowStrength(celsius(1500))).toBe(1);
	});

	test('paler hue mixes in white above 950 °C only', () => {
		expect(glowHue(celsius(949), { pale: true })).toEqual(glowHue(celsius(949)));
		const [red, , blue] = glowHue(celsius(1200), { pale: true });
		expect(red).toBe(255);
		expect(blue).toBe(Math.round(255 * encodeSrgb(0.15)));
	});

	test('luminance follows the emissivity, the hue does not', () => {
		expect(glowLuminance(1200, 0.5) / glowLuminance(1200, 1)).toBeCloseTo(0.5, 12);
	});

	test.each([599, 4001])('refuses a hue at %d K', (kelvin) => {
		expect(() => glowHue(kelvin)).toThrow(RangeError);
	});

	test.each([-0.1, 1.1])('refuses to encode %d', (linear) => {
		expect(() => encodeSrgb(linear)).toThrow(RangeError);
	});

	test('refuses wavelengths and temperatures outside its range', () => {
		expect(() => blackBodyRadiance(9e-8, 1000)).toThrow(RangeError);
		expect(() => blackBodyRadiance(5e-7, 0.5)).toThrow(RangeError);
		expect(() => glowLuminance(1000, 1.01)).toThrow(RangeError);
	});
});

describe('bands', () => {
	const limit = celsius(1100);
	test.each([
		{ at: 20, band: 'cold' },
		{ at: 40, band: 'warm' },
		{ at: 45, band: 'hot-no-glow' },
		{ at: 599, band: 'hot-no-glow' },
		{ at: 600, band: 'faint-red' },
		{ at: 700, band: 'dark-red' },
		{ at: 800, band: 'red' },
		{ at: 900, band: 'red' },
		{ at: 1000, band: 'orange' },
		{ at: 1100, band: 'orange' },
		{ at: 1101, band: 'over-limit' },
	])('$at °C is $band in a lit room', ({ at, band }) => {
		expect(heatBand(celsius(at), { limit })).toBe(band);
	});

	test('a shaded room shows the glow earlier and a bright one later', () => {
		expect(heatBand(celsius(530), { limit, light: 'shaded' })).toBe('faint-red');
		expect(heatBand(celsius(530), { limit, light: 'lit' })).toBe('hot-no-glow');
		expect(heatBand(celsius(630), { limit, light: 'bright' })).toBe('hot-no-glow');
	});
});
