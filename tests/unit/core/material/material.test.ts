import { describe, expect, test } from 'vitest';
import {
	conductivityAt,
	fromCelsius,
	isPropertyKnownAt,
	isResistanceKnownAt,
	resistanceRatioAt,
	resistivityAt,
	specificHeatAt,
	thinWireLimitFor,
} from '#core/material/material.ts';
import { isMaterialId, materialIds, materials } from '#core/material/materials.ts';
import { sources } from '#core/material/sources.ts';

const all = materialIds.map((id) => materials[id]);
const nichrome = materials['nicr-80-20'];

describe.each(all)('$designation', (material) => {
	test('is found under its own id', () => {
		expect(materials[material.id]).toBe(material);
		expect(isMaterialId(material.id)).toBe(true);
	});

	test('has a resistance of one at 20 °C, and every table rises in temperature', () => {
		expect(resistanceRatioAt(material, fromCelsius(20))).toBe(1);
		for (const { temperature } of [material.resistanceRatio, material.specificHeat, material.conductivity]) {
			expect([...temperature]).toEqual([...new Set(temperature)].sort((a, b) => a - b));
		}
	});

	test('holds its physics: emissivities within their range, melting above the limit, positive numbers', () => {
		for (const { value, min, max } of [material.emissivity.oxidised, material.emissivity.clean]) {
			expect(0 < min && min <= value && value <= max && max < 1).toBe(true);
		}
		expect(material.limit.value).toBeLessThanOrEqual(material.elementMaximum.value);
		expect(material.elementMaximum.value).toBeLessThan(material.melting.from);
		expect(material.resistivity.tolerance).toBeGreaterThan(0);
		expect(material.resistivity.tolerance).toBeLessThan(0.2);
		expect(isResistanceKnownAt(material, material.limit.value)).toBe(true);
	});

	test('names a known source for every number', () => {
		const named = [...JSON.stringify(material).matchAll(/"source":\[([^\]]*)\]/g)].map(([, keys]) => keys ?? '');
		expect(named.length).toBeGreaterThanOrEqual(10);
		for (const keys of named) {
			const list = keys.split(',').map((key) => key.replaceAll('"', ''));
			expect(list.filter((key) => !Object.hasOwn(sources, key))).toEqual([]);
		}
	});
});

test('every source is used by some material', () => {
	const text = JSON.stringify(all);
	expect(Object.keys(sources).filter((key) => !text.includes(`"${key}"`))).toEqual([]);
});

test('resistivity is the value at 20 °C times the ratio', () => {
	expect(resistivityAt(nichrome, fromCelsius(20))).toBe(1.09e-6);
	expect(resistivityAt(nichrome, fromCelsius(600))).toBeCloseTo(1.09e-6 * 1.038, 15);
});

test('resistance goes on straight past its table and says that it is not known there', () => {
	const steel = materials['soft-steel'];
	expect(resistanceRatioAt(steel, fromCelsius(0))).toBeLessThan(1);
	expect(isResistanceKnownAt(steel, fromCelsius(0))).toBe(true);
	expect(resistanceRatioAt(nichrome, fromCelsius(1300))).toBeGreaterThan(1.063);
	expect(isResistanceKnownAt(nichrome, fromCelsius(1201))).toBe(false);
});

test('heat capacity and conductivity hold their end values past their tables and say so', () => {
	expect(specificHeatAt(nichrome, 2000)).toBe(545);
	expect(isPropertyKnownAt(nichrome.specificHeat, 2000)).toBe(false);
	expect(conductivityAt(nichrome, fromCelsius(27))).toBe(12);
});

test('a thinner wire lasts less, and a wire thicker than the table has no remark', () => {
	expect(thinWireLimitFor(nichrome, 0.25e-3)).toBe(fromCelsius(925));
	expect(thinWireLimitFor(nichrome, 0.5e-3)).toBe(fromCelsius(1000));
	expect(thinWireLimitFor(nichrome, 5e-3)).toBeUndefined();
});

test('a temperature that does not exist throws', () => {
	expect(() => resistanceRatioAt(nichrome, 0)).toThrow(RangeError);
	expect(() => specificHeatAt(nichrome, Number.NaN)).toThrow(RangeError);
});

test('a word that is no material is told from one that is', () => {
	expect(isMaterialId('toString')).toBe(false);
	expect(isMaterialId('w')).toBe(true);
});
