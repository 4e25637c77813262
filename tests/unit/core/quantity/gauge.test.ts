import { expect, test } from 'vitest';
import { awgDiameter, parseGauge, swgDiameter } from '#core/quantity/gauge.ts';

test.each([
	['AWG 28', 'awg', awgDiameter(28)],
	['28 AWG', 'awg', awgDiameter(28)],
	['awg28', 'awg', awgDiameter(28)],
	['#28 AWG', 'awg', awgDiameter(28)],
	['SWG 24', 'swg', swgDiameter(24)],
	['0.40 mm', 'diameter', 0.4e-3],
	['0,4', 'diameter', 0.4e-3],
	['⌀ 0.40', 'diameter', 0.4e-3],
	['400 µm', 'diameter', 0.4e-3],
	['0.016 in', 'diameter', 0.4064e-3],
])('%s is a wire size', (typed, system, diameter) => {
	const read = parseGauge(typed);
	expect(read.ok && read.value.system).toBe(system);
	expect(read.ok && read.value.diameter).toBeCloseTo(diameter, 12);
});

test('numbers outside the gauge, diameters outside a wire and other units are refused with the facts', () => {
	expect(parseGauge('AWG 99')).toMatchObject({ problems: [{ code: 'no-such-gauge', system: 'awg', from: 0, to: 50 }] });
	expect(parseGauge('99 mm')).toMatchObject({ problems: [{ code: 'diameter-out-of-range' }] });
	expect(parseGauge('5 A')).toMatchObject({ problems: [{ code: 'dimension' }] });
	expect(parseGauge('1,250')).toMatchObject({ problems: [{ code: 'ambiguous-number' }] });
	expect(parseGauge('')).toMatchObject({ problems: [{ code: 'empty' }] });
});

test('a gauge number of ours that does not exist throws', () => {
	expect(() => awgDiameter(51)).toThrow(RangeError);
	expect(() => awgDiameter(2.5)).toThrow(RangeError);
	expect(() => swgDiameter(-1)).toThrow(RangeError);
});
