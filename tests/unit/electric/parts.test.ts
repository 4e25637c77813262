import { describe, expect, it } from 'vitest';
import { batteryRunTime, jobsPerCharge, usableCharge } from '#core/electric/battery.ts';
import {
	greatestPower,
	loopCurrent,
	parallelResistance,
	seriesResistance,
	sourceFromReadings,
	terminalVoltage,
} from '#core/electric/circuit.ts';
import { fuseVerdict, smallestFuse } from '#core/electric/fuse.ts';
import { readingLimit, readingUncertainty, shownReading } from '#core/electric/meter.ts';
import { heldCurrent, ratedCurrent, tripCurrent } from '#core/electric/supply.ts';
import { wireArea, wireLength, wireResistance, wireResistancePerMetre } from '#core/electric/wire.ts';
import { supplies } from '#tests/support/shed.ts';

// figures here are sums by hand with the labels of the shed, no source
describe('a loop', () => {
	it('shorts a sealed lead battery with 397 A and 4.7 kW inside it', () => {
		const current = loopCurrent({ sourceVoltage: 12.7, seriesResistance: 0.03, loadResistance: 0.002 });
		expect(current).toBeCloseTo(396.9, 1);
		expect(current ** 2 * 0.03).toBeCloseTo(4725, 0);
	});

	it('gives 2.21 A and 4.43 V on 2.0 ohms from 6.2 V with 0.80 ohms inside', () => {
		const current = loopCurrent({ sourceVoltage: 6.2, seriesResistance: 0.8, loadResistance: 2 });
		expect(current).toBeCloseTo(2.214, 3);
		expect(terminalVoltage({ sourceVoltage: 6.2, internalResistance: 0.8, current })).toBeCloseTo(4.429, 3);
	});

	it('passes no current without voltage, and no end of current without resistance', () => {
		expect(loopCurrent({ sourceVoltage: 0, seriesResistance: 0, loadResistance: 0 })).toBe(0);
		expect(loopCurrent({ sourceVoltage: 1, seriesResistance: 0, loadResistance: 0 })).toBe(Infinity);
	});

	it('finds 0.80 ohms and 6.20 V from two readings', () => {
		const found = sourceFromReadings({
			first: { voltage: 6, current: 0.25 },
			second: { voltage: 5.2, current: 1.25 },
		});
		expect(found.internalResistance).toBeCloseTo(0.8, 12);
		expect(found.sourceVoltage).toBeCloseTo(6.2, 12);
	});

	it('yields most power when the load equals the resistance inside', () => {
		const current = loopCurrent({ sourceVoltage: 6.2, seriesResistance: 0.8, loadResistance: 0.8 });
		expect(greatestPower({ sourceVoltage: 6.2, seriesResistance: 0.8 })).toBeCloseTo(current ** 2 * 0.8, 12);
	});

	it('refuses what cannot be', () => {
		expect(() => loopCurrent({ sourceVoltage: 1, seriesResistance: -1, loadResistance: 1 })).toThrow(RangeError);
		expect(() => seriesResistance([1, NaN])).toThrow(RangeError);
		expect(() => parallelResistance([])).toThrow(RangeError);
		const reading = { voltage: 6, current: 1 };
		expect(() => sourceFromReadings({ first: reading, second: reading })).toThrow(RangeError);
	});

	it('is shorted by one short among parts side by side', () => {
		expect(parallelResistance([5, 0])).toBe(0);
	});
});

describe('a wire', () => {
	it('of 1.09 microohm metres and 0.32 mm has 13.6 ohms a metre', () => {
		expect(wireResistancePerMetre({ resistivity: 1.09e-6, diameter: 0.32e-3 })).toBeCloseTo(13.55, 2);
	});

	it('of 8.67 ohms a metre needs 554 mm for 4.80 ohms', () => {
		expect(wireLength({ resistance: 4.8, area: 1, resistivity: 8.67 })).toBeCloseTo(0.5536, 4);
	});

	it('needs an area, a resistivity and no negative length', () => {
		expect(wireResistance({ length: 0, area: 1, resistivity: 1 })).toBe(0);
		expect(() => wireArea(0)).toThrow(RangeError);
		expect(() => wireResistance({ length: -1, area: 1, resistivity: 1 })).toThrow(RangeError);
		expect(() => wireResistance({ length: 1, area: 0, resistivity: 1 })).toThrow(RangeError);
		expect(() => wireLength({ resistance: 1, area: 1, resistivity: 0 })).toThrow(RangeError);
	});
});

describe('a fuse', () => {
	it.each([
		[1, 'within-rating', undefined],
		[1.5, 'holds-an-hour', undefined],
		[2, 'undecided', undefined],
		[2.1, 'opens', 1800],
		[2.75, 'opens', 3],
		[4, 'opens', 0.3],
		[10, 'opens', 0.02],
	])('at %d times its rating: %s', (ratio, gate, within) => {
		const verdict = fuseVerdict({ rating: 2, current: 2 * ratio });
		expect(verdict.gate).toBe(gate);
		expect('within' in verdict ? verdict.within : undefined).toBe(within);
	});

	it('is the smallest from 1.25 times the current up to the rating of the leads', () => {
		expect(smallestFuse({ current: 2.5, leadsRating: 5 })).toBe(3.15);
		expect(smallestFuse({ current: 4, leadsRating: 5 })).toBe(5);
		expect(smallestFuse({ current: 2.5, leadsRating: 3 })).toBeNull();
		expect(smallestFuse({ current: 1, leadsRating: 5, atHand: [4, 2] })).toBe(2);
	});
});

describe('a battery', () => {
	const pack = { capacity: 7200, usableFraction: 0.8 };

	it('of 2.0 ampere-hours, 0.8 usable, lasts 54 minutes at 1.77 A and makes 81 cuts of 40 s', () => {
		expect(batteryRunTime(pack, 1.77) / 60).toBeCloseTo(54.2, 1);
		expect(jobsPerCharge(pack, { current: 1.77, time: 40 })).toBe(81);
	});

	it('makes a job that just fits', () => {
		expect(jobsPerCharge(pack, { current: 1, time: 5760 / 7 })).toBe(7);
	});

	it('lasts for ever at no current and refuses an impossible part', () => {
		expect(batteryRunTime(pack, 0)).toBe(Infinity);
		expect(() => usableCharge({ ...pack, usableFraction: 1.1 })).toThrow(RangeError);
	});
});

describe('a meter', () => {
	const tenths = { step: 0.1, relativeLimit: 0.008, steps: 2 };
	const hundredths = { step: 0.01, relativeLimit: 0.005, steps: 3 };

	it('shows whole steps', () => {
		expect(shownReading(tenths, 4.8433)).toBe(4.8);
		expect(shownReading(hundredths, 4.8433)).toBe(4.84);
	});

	it('is within a part of its reading and some steps', () => {
		expect(readingLimit(tenths, 4.8)).toBeCloseTo(0.2384, 12);
		expect(readingLimit(hundredths, 4.8)).toBeCloseTo(0.054, 12);
		expect(readingUncertainty(tenths, 4.8)).toBeCloseTo(0.2384 / 1.7320508, 6);
	});
});

it('each kind of supply has its own figures', () => {
	const figures = Object.values(supplies).map((s) => [ratedCurrent(s), tripCurrent(s), heldCurrent(s)]);
	expect(figures).toEqual([
		[5, null, 5],
		[5, 5.5, null],
		[null, null, null],
		[null, null, null],
		[null, null, null],
		[3, 3.3, null],
	]);
});
