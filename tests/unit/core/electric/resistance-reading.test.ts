import { describe, expect, it } from 'vitest';
import { fourWireReading, resistancePerMetreFromReadings, twoWireReading } from '#core/electric/resistance-reading.ts';

// a meter of 0.8 % + 3 steps of 0.1 Ω, as many handheld ones: common practice, no source
const ohmmeter = { step: 0.1, relativeLimit: 0.008, steps: 3 };
const millivolts = { step: 0.1e-3, relativeLimit: 0.005, steps: 2 };
const ammeter = { step: 0.001, relativeLimit: 0.01, steps: 3 };

describe('over two wires', () => {
	it('0.5 Ω behind 0.2 Ω of leads reads 0.7 Ω, two fifths too much', () => {
		const found = twoWireReading(ohmmeter, { resistance: 0.5, leads: 0.2 });
		expect(found.shown).toBe(0.7);
		expect(found.methodError).toBeCloseTo(0.2, 12);
		// 0.008 · 0.7 + 3 · 0.1
		expect(found.limit).toBeCloseTo(0.3056, 12);
		expect(found.uncertainty).toBeCloseTo(0.3056 / Math.sqrt(3), 12);
	});

	it('refuses what cannot be', () => {
		expect(() => twoWireReading(ohmmeter, { resistance: -1, leads: 0 })).toThrow(RangeError);
		expect(() => twoWireReading(ohmmeter, { resistance: 1, leads: Number.NaN })).toThrow(RangeError);
	});
});

describe('over four wires', () => {
	it('0.5 Ω at 1 A reads 0.5 Ω, whatever the leads', () => {
		const found = fourWireReading({ voltmeter: millivolts, ammeter }, { resistance: 0.5, current: 1, senseLeads: 0.2 });
		expect(found.shown).toBeCloseTo(0.5, 12);
		// (0.005 · 0.5 + 2 · 0.0001)/1 + 0.5 · (0.01 + 0.003)/1
		expect(found.limit).toBeCloseTo(0.0092, 12);
		expect(found.uncertainty).toBeCloseTo(Math.hypot(0.0027, 0.0065) / Math.sqrt(3), 12);
	});

	it('a voltmeter of 10 kΩ takes a tenth of a wire of 1.111 kΩ', () => {
		const fine = { step: 1e-9, relativeLimit: 0, steps: 0 };
		const found = fourWireReading(
			{ voltmeter: fine, ammeter: fine },
			{ resistance: 10000 / 9, current: 1e-3, voltmeterResistance: 1e4 },
		);
		expect(found.shown).toBeCloseTo(1000, 3);
	});

	it('needs a current the ammeter shows', () => {
		expect(() => fourWireReading({ voltmeter: millivolts, ammeter }, { resistance: 1, current: 1e-5 })).toThrow(
			RangeError,
		);
	});
});

describe('ohms per metre from readings', () => {
	it('finds 10 Ω/m and 0.2 Ω of leads on a straight line, without doubt', () => {
		const found = resistancePerMetreFromReadings(
			[0.2, 0.5, 0.8, 1].map((length) => ({ length, resistance: 0.2 + 10 * length })),
		);
		if (!found.ok) throw new Error('no fit');
		expect(found.value.resistancePerMetre).toBeCloseTo(10, 9);
		expect(found.value.leads).toBeCloseTo(0.2, 9);
		expect(found.value.scatter).toBeCloseTo(0, 9);
		expect(found.value.resistancePerMetreUncertainty).toBeCloseTo(0, 9);
	});

	const at = (length: number, resistance: number) => ({ length, resistance });
	it.each([
		{ readings: [], problems: [{ code: 'too-few-readings', found: 0, least: 3 }] },
		{ readings: [at(0.1, 1), at(0.2, 2)], problems: [{ code: 'too-few-readings', found: 2, least: 3 }] },
		{ readings: [at(0.5, 5), at(0.5, 5.1), at(0.5, 5)], problems: [{ code: 'one-length-only', length: 0.5 }] },
		{
			readings: [at(-0.1, 1), at(0.2, Number.NaN), at(0.3, 3)],
			problems: [
				{ code: 'reading-not-possible', index: 0 },
				{ code: 'reading-not-possible', index: 1 },
			],
		},
		{ readings: [at(0.1, 3), at(0.2, 2), at(0.3, 1)], problems: [{ code: 'does-not-rise' }] },
	])('tells $problems.0.code', ({ readings, problems }) => {
		expect(resistancePerMetreFromReadings(readings)).toMatchObject({ ok: false, problems });
	});
});
