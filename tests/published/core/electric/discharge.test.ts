import { expect, test } from 'vitest';
import { ampereHours, type Cell } from '#core/electric/cell/cell.ts';
import { cells } from '#core/electric/cell/cells.ts';
import { packSource } from '#core/electric/cell/pack.ts';
import { currentLoad, discharge, powerLoad, resistanceLoad } from '#core/electric/discharge.ts';
import { parallelResistance, seriesResistance } from '#core/electric/circuit.ts';

const college = "College Physics 2e (OpenStax), chapter 20 Electric Current, Resistance, and Ohm's Law; looked up";
const university = 'University Physics Volume 2 (OpenStax), chapter 10 Direct-Current Circuits; looked up';
const bookCell = cellOfBook(1.5, 3);

/** The cell of a textbook: one voltage, no resistance, one capacity in A·h. */
function cellOfBook(voltage: number, capacity: number): Cell {
	return {
		id: 'book',
		designation: 'of the book',
		chemistry: 'alkaline-manganese',
		cellsInside: 1,
		openCircuit: { charge: [0, 1], voltage: [voltage, voltage], source: ['COMMON'] },
		resistance: { charge: [1], value: [0], least: [0], most: [0], source: ['COMMON'] },
		capacity: { current: [1], charge: ampereHours(capacity), source: ['COMMON'] },
		cutOff: { value: 0.5, source: ['COMMON'] },
	};
}

const hours = (cell: Cell, load: Parameters<typeof discharge>[1]) =>
	discharge({ cell, series: 1, parallel: 1 }, load).runTime / 3600;

const nickel = 'encyclopedia text on nickel-metal hydride cells; looked up, secondary reprint';
const underLoad = (current: number) => {
	const { voltage, resistance } = packSource({ cell: cells.hr6, series: 1, parallel: 1 }, 0.5);
	return voltage - current * resistance;
};

const lithium = discharge({ cell: cells.inr18650, series: 1, parallel: 1, spread: 'least' }, currentLoad(0.125));
const leadAcid = discharge({ cell: cells['lead-acid-12v'], series: 1, parallel: 1 }, currentLoad(4.2));

test.each([
	{
		source: college,
		item: 'Problems 54: hours of a 1 W bulb',
		found: hours(cellOfBook(1.58, 1), powerLoad(1)),
		expected: 1.58,
		tolerance: 0.005,
	},
	{
		source: university,
		item: 'Additional Problem 73a: hours in series',
		found: hours(bookCell, resistanceLoad(seriesResistance([300, 300, 300]))),
		expected: 1800,
		tolerance: 0.5,
	},
	{
		source: university,
		item: 'Additional Problem 73b: hours in parallel',
		found: hours(bookCell, resistanceLoad(parallelResistance([300, 300, 300]))),
		expected: 200,
		tolerance: 0.5,
	},
	{ source: nickel, item: 'half empty at 0.5 A, in V', found: underLoad(0.5), expected: 1.25, tolerance: 0.03 },
	{ source: nickel, item: 'at 1 A, in V', found: underLoad(1), expected: 1.2, tolerance: 0.04 },
	{ source: nickel, item: 'at 2 A, in V', found: underLoad(2), expected: 1.15, tolerance: 0.04 },
	{
		source:
			'nominal voltage of lithium-ion cells with a layered oxide, 3.6 to 3.7 V on labels; common practice, no source',
		item: 'mean voltage over a discharge in 20 h, in V',
		found: lithium.deliveredEnergy / lithium.deliveredCharge,
		expected: 3.65,
		tolerance: 0.1,
	},
	{
		source: "Peukert's law t = H (C/(I H))^k with k = 1.2 to 1.3 for H = 20 h; common practice, no source",
		item: 'hours of 7 A·h at 4.2 A, within both ends',
		found: leadAcid.runTime / 3600,
		expected: (20 * (7 / (4.2 * 20)) ** 1.2 + 20 * (7 / (4.2 * 20)) ** 1.3) / 2,
		tolerance: 0.112,
	},
])('$item ($source)', ({ found, expected, tolerance }) => {
	expect(Math.abs(found - expected)).toBeLessThanOrEqual(tolerance);
});
