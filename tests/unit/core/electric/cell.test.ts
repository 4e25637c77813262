import { describe, expect, it } from 'vitest';
import { capacityAt, cellResistanceAt, openCircuitVoltageAt } from '#core/electric/cell/cell.ts';
import { cells } from '#core/electric/cell/cells.ts';
import { heatPerCell, packCapacity, packCutOff, packSource } from '#core/electric/cell/pack.ts';
import { cellSources } from '#core/electric/cell/sources.ts';

const all = Object.values(cells);

describe('every cell', () => {
	it.each(all)('$id: rest voltage rises with charge and ends above its cut-off', ({ openCircuit, cutOff }) => {
		const { charge, voltage } = openCircuit;
		expect([charge[0], charge.at(-1)]).toEqual([0, 1]);
		expect(voltage.every((value, i) => i === 0 || value > (voltage[i - 1] ?? Infinity))).toBe(true);
		expect(voltage.at(-1)).toBeGreaterThan(cutOff.value);
	});

	it.each(all)('$id: the usual resistance lies inside its range', ({ resistance }) => {
		resistance.value.forEach((value, i) => {
			expect(value).toBeGreaterThanOrEqual(resistance.least[i] ?? Infinity);
			expect(value).toBeLessThanOrEqual(resistance.most[i] ?? 0);
		});
	});

	it.each(all)('$id: a higher current fetches less charge, though the cell is emptied sooner', ({ capacity }) => {
		const { current, charge } = capacity;
		charge.forEach((value, i) => {
			if (i === 0) return;
			expect(value).toBeLessThan(charge[i - 1] ?? 0);
			expect(value / (current[i] ?? 0)).toBeLessThan((charge[i - 1] ?? 0) / (current[i - 1] ?? 1));
		});
	});

	it.each(all)('$id: every source it names is listed, and every number has one', (cell) => {
		for (const { source } of [cell.openCircuit, cell.resistance, cell.capacity, cell.cutOff]) {
			expect(source.length).toBeGreaterThan(0);
			for (const key of source) expect(cellSources[key].citation).not.toBe('');
		}
	});

	it('a block of six has six times the rest voltage of its cell', () => {
		cells['6lr61'].openCircuit.voltage.forEach((value, i) => {
			expect(value).toBeCloseTo(6 * (cells.lr6.openCircuit.voltage[i] ?? 0), 9);
		});
	});
});

describe('reading a cell', () => {
	it('gives the table at its points', () => {
		expect(openCircuitVoltageAt(cells.lr6, 0.5)).toBe(1.35);
		expect(cellResistanceAt(cells.lr6, 1)).toBe(0.15);
		expect(cellResistanceAt(cells.lr6, 0.5, 'most')).toBe(0.4);
		expect(capacityAt(cells.lr6, 0.5)).toBe(1.4 * 3600);
	});

	it('holds resistance and capacity beyond the ends of their tables', () => {
		expect(cellResistanceAt(cells.lr6, 0)).toBe(0.7);
		expect(capacityAt(cells.lr6, 0)).toBe(2.8 * 3600);
		expect(capacityAt(cells.lr6, 5)).toBe(0.8 * 3600);
	});

	it('refuses a charge outside 0 … 1 and a negative current', () => {
		for (const charge of [-0.001, 1.001, Number.NaN]) {
			expect(() => openCircuitVoltageAt(cells.hr6, charge)).toThrow(RangeError);
			expect(() => cellResistanceAt(cells.hr6, charge)).toThrow(RangeError);
		}
		expect(() => capacityAt(cells.hr6, -1)).toThrow(RangeError);
	});
});

describe('a pack', () => {
	const pack = { cell: cells.hr6, series: 4, parallel: 2, contacts: 0.04 };

	it('adds voltages in a row and shares the current between rows', () => {
		// four times 1.42 V; four times 0.05 Ω halved, and the contacts
		expect(packSource(pack, 1).voltage).toBeCloseTo(5.68, 12);
		expect(packSource(pack, 1).resistance).toBeCloseTo(0.14, 12);
		expect(packCutOff(pack)).toBe(4);
		// 4 A is 2 A a row: twice 1.85 A·h
		expect(packCapacity(pack, 4)).toBeCloseTo(2 * 1.85 * 3600, 9);
	});

	it('heats each cell by its own share: 2 A in 0.05 Ω is 0.2 W', () => {
		expect(heatPerCell(pack, { charge: 0.5, current: 4 })).toBeCloseTo(0.2, 12);
	});

	it('is made of whole cells and of contacts that resist', () => {
		expect(() => packSource({ ...pack, series: 0 }, 1)).toThrow(RangeError);
		expect(() => packCapacity({ ...pack, parallel: 1.5 }, 1)).toThrow(RangeError);
		expect(() => packCutOff({ ...pack, contacts: -0.1 })).toThrow(RangeError);
	});
});
