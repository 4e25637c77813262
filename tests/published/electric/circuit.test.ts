import { expect, it } from 'vitest';
import { batteryRunTime } from '#core/electric/battery.ts';
import {
	loopCurrent,
	parallelResistance,
	resistancePower,
	seriesResistance,
	sourceFromReadings,
	terminalVoltage,
} from '#core/electric/circuit.ts';
import { wireArea, wireLength, wireResistance } from '#core/electric/wire.ts';

// numbers looked up in the source text of each book; values here in SI units
const college20 = "College Physics 2e (OpenStax), chapter 20 Electric Current, Resistance, and Ohm's Law";
const college21 = 'College Physics 2e (OpenStax), chapter 21 Circuits and DC Instruments';
const university9 = 'University Physics Volume 2 (OpenStax), chapter 9 Current and Resistance';
const university10 = 'University Physics Volume 2 (OpenStax), chapter 10 Direct-Current Circuits';
const schoolBook = 'Physics (OpenStax, high-school text), chapter 19 Electrical Circuits';

interface Published {
	readonly source: string;
	readonly item: string;
	readonly asked: string;
	readonly found: number;
	readonly expected: number;
	/** half a unit of the last printed figure, in the unit of `expected` */
	readonly tolerance: number;
}

const loop = (sourceVoltage: number, internalResistance: number, loadResistance: number) => {
	const current = loopCurrent({ sourceVoltage, seriesResistance: internalResistance, loadResistance });
	return {
		current,
		voltage: terminalVoltage({ sourceVoltage, internalResistance, current }),
		power: resistancePower({ current, resistance: loadResistance }),
	};
};
const fresh = loop(12, 0.1, 0.5);
const aged = loop(12, 0.5, 0.5);
const bulb = loop(1.58, 0.1, 2.3);
const starter = loop(12, 0.01, 0.05);
const corroded = loop(12, 0.01 + 0.09, 0.05);
const inRow = loopCurrent({ sourceVoltage: 12, seriesResistance: 0, loadResistance: seriesResistance([1, 6, 13]) });

const published: readonly Published[] = [
	row(college20, 'Problems & Exercises 44', 'a: power in the good lead', power(5, 0.06), 1.5, 0.005),
	row(college20, 'Problems & Exercises 44', 'b: power in the thin lead', power(5, 0.3), 7.5, 0.005),
	row(college20, 'Example 20.7', 'power of the hot lamp', power(2.5, 12 / 2.5), 30, 0.05),
	row(college20, 'Example 20.7', 'current at switch-on', loop(12, 0, 0.35).current, 34.3, 0.05),
	row(college20, 'Example 20.7', 'power at switch-on', loop(12, 0, 0.35).power, 411, 0.5),
	row(college20, 'Problems & Exercises 85', 'a: power into the short', loop(220, 0, 0.25).power, 194e3, 500),
	row(college20, 'Problems & Exercises 85', 'b: current', loop(220, 0, 0.25).current, 880, 0.5),
	row(college20, 'Problems & Exercises 54', 'running time', runTime(3600, 1 / 1.58), 5688, 18),
	row(university10, 'Additional Problem 73', 'a: time in series', runTime(10_800, 1.5 / 900), 6.48e6, 18e3),
	row(university10, 'Additional Problem 73', 'b: time in parallel', runTime(10_800, 1.5 / 100), 7.2e5, 1800),
	row(college21, 'Example 21.4', 'a: terminal voltage, 10.0 Ω', loop(12, 0.1, 10).voltage, 11.9, 0.05),
	row(college21, 'Example 21.4', 'b: terminal voltage, 0.500 Ω', fresh.voltage, 10, 0.05),
	row(college21, 'Example 21.4', 'c: power, 0.500 Ω', fresh.power, 200, 0.5),
	row(college21, 'Example 21.4', 'd: current, aged', aged.current, 12, 0.05),
	row(college21, 'Example 21.4', 'd: terminal voltage, aged', aged.voltage, 6, 0.005),
	row(college21, 'Example 21.4', 'd: power, aged', aged.power, 72, 0.05),
	row(college21, 'Problems & Exercises 16', 'terminal voltage', terminal(3, 2, 0.3e-3), 2.9994, 5e-5),
	row(college21, 'Problems & Exercises 21', 'current', bulb.current, 0.658, 0.0005),
	row(college21, 'Problems & Exercises 21', 'power in the bulb', bulb.power, 0.997, 0.0005),
	row(college21, 'Problems & Exercises 23', 'a: current', starter.current, 200, 0.5),
	row(college21, 'Problems & Exercises 23', 'b: voltage at the motor', starter.voltage, 10, 0.05),
	row(college21, 'Problems & Exercises 23', 'c: power', starter.power, 2000, 5),
	row(college21, 'Problems & Exercises 23', 'd: current, corroded', corroded.current, 80, 0.05),
	row(college21, 'Problems & Exercises 23', 'd: voltage, corroded', corroded.current * 0.05, 4, 0.05),
	row(college21, 'Problems & Exercises 23', 'd: power, corroded', corroded.power, 320, 0.5),
	row(
		college21,
		'Problems & Exercises 25 (a)',
		'internal resistance',
		sourceFromReadings({ first: { voltage: 12, current: 0 }, second: { voltage: 10, current: 5 } }).internalResistance,
		0.4,
		0.0005,
	),
	row(university10, 'Problem 25', 'a: internal resistance', charging().internalResistance, 0.4, 0.0005),
	row(university10, 'Problem 25', 'b: heat inside', power(10, charging().internalResistance), 40, 0.05),
	row(college21, 'Example 21.1', 'a: total resistance', seriesResistance([1, 6, 13]), 20, 0.05),
	row(college21, 'Example 21.1', 'b: current', inRow, 0.6, 0.0005),
	row(college21, 'Example 21.1', 'd: power in the third', power(inRow, 13), 4.68, 0.005),
	row(college21, 'Example 21.2', 'a: combined resistance', parallelResistance([1, 6, 13]), 0.804, 0.0005),
	row(college21, 'Example 21.2', 'b: total current', 12 / parallelResistance([1, 6, 13]), 14.92, 0.01),
	row(college21, 'Problems & Exercises 1', 'b: ten in parallel', parallelResistance(ten(275)), 27.5, 0.05),
	row(college21, 'Problems & Exercises 1', 'a: ten in series', seriesResistance(ten(275)), 2750, 5),
	row(schoolBook, 'section 19.3, three in parallel', 'resistance', parallelResistance([10, 25, 15]), 4.84, 0.005),
	// the book goes on with its resistance rounded to 40 Ω
	row(university9, 'Problem 57', 'length of 2.08 mm² wire', length(40, 2.08e-6, 1e-6), 83, 0.5),
];

it.each(published)('$source, $item, $asked', ({ found, expected, tolerance }) => {
	expect(Math.abs(found - expected)).toBeLessThanOrEqual(tolerance * (1 + 1e-9));
});

// Lessons In Electric Circuits, Volume I – DC (T. R. Kuphaldt), fifth edition, chapter 12, specific resistance:
// 2300 ft of 14-gauge copper, 10.09 Ω·cmil/ft and 4107 cmil
it('Lessons In Electric Circuits I, chapter 12: 5.651 ohms for 2300 feet of 14 gauge', () => {
	const mil = 25.4e-6;
	const area = 4107 * wireArea(mil);
	const resistivity = (10.09 * wireArea(mil)) / 0.3048;
	expect(wireResistance({ length: 2300 * 0.3048, area, resistivity })).toBeCloseTo(5.651, 3);
});

// College Physics 2e, chapter 20, Problems & Exercises 58 prints 25.5 W for the power; that number is I R, in volts
it('College Physics 2e, chapter 20, Problems & Exercises 58: the printed 25.5 is the current not squared', () => {
	const resistance = wireResistance({ length: 1000, area: wireArea(9.266e-3), resistivity: 1.72e-8 });
	expect(100 * resistance).toBeCloseTo(25.5, 1);
	expect(power(100, resistance) / 25.5).toBeCloseTo(100, 0);
});

function row(
	source: string,
	item: string,
	asked: string,
	found: number,
	expected: number,
	tolerance: number,
): Published {
	return { source, item, asked, found, expected, tolerance };
}

function power(current: number, resistance: number): number {
	return resistancePower({ current, resistance });
}

function runTime(capacity: number, current: number): number {
	return batteryRunTime({ capacity, usableFraction: 1 }, current);
}

function terminal(sourceVoltage: number, internalResistance: number, current: number): number {
	return terminalVoltage({ sourceVoltage, internalResistance, current });
}

/** A battery of 12 V that shows 16 V while 10 A flow in. */
function charging(): { internalResistance: number; sourceVoltage: number } {
	return sourceFromReadings({ first: { voltage: 12, current: 0 }, second: { voltage: 16, current: -10 } });
}

function length(resistance: number, area: number, resistivity: number): number {
	return wireLength({ resistance, area, resistivity });
}

function ten(resistance: number): readonly number[] {
	return Array.from({ length: 10 }, () => resistance);
}
