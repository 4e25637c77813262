import { describe, expect, test } from 'vitest';
import { materials } from '#core/material/materials.ts';
import { HotWire } from '#core/thermal/hot-wire.ts';
import { stillRoom } from '#core/thermal/room.ts';

/*
 * Handbook table of nickel-chromium wire by Imperial Standard Wire Gauge: current in A for a rise of 500 and of
 * 1000 K. Read on an engineering data site on 2026-11-25, table "Nickel-Chromium Heater Wire – Temperature Rise vs.
 * Amps". It does not say how it was measured, and most currents have two figures, so a row may be 15 % off; the
 * root mean square over all rows is the sharper test. Rows above 2 mm are outside the model.
 */
const rows: readonly { swg: number; millimetres: number; for500: number; for1000: number }[] = [
	{ swg: 16, millimetres: 1.626, for500: 19, for1000: 40 },
	{ swg: 18, millimetres: 1.219, for500: 13, for1000: 27 },
	{ swg: 20, millimetres: 0.914, for500: 8.5, for1000: 18 },
	{ swg: 22, millimetres: 0.711, for500: 6.3, for1000: 13 },
	{ swg: 24, millimetres: 0.559, for500: 4.5, for1000: 9.5 },
	{ swg: 26, millimetres: 0.457, for500: 3.5, for1000: 7.0 },
	{ swg: 28, millimetres: 0.376, for500: 2.7, for1000: 5.5 },
	{ swg: 30, millimetres: 0.315, for500: 2.2, for1000: 4.5 },
	{ swg: 32, millimetres: 0.274, for500: 1.9, for1000: 3.5 },
	{ swg: 34, millimetres: 0.234, for500: 1.6, for1000: 3.0 },
	{ swg: 36, millimetres: 0.193, for500: 1.3, for1000: 2.3 },
	{ swg: 38, millimetres: 0.152, for500: 1.0, for1000: 1.7 },
	{ swg: 40, millimetres: 0.122, for500: 0.8, for1000: 1.4 },
	{ swg: 42, millimetres: 0.102, for500: 0.65, for1000: 1.1 },
];

function deviations({ millimetres, for500, for1000 }: (typeof rows)[number]): readonly number[] {
	const wire = { material: materials['nicr-80-20'], diameter: millimetres * 1e-3, emissivity: 0.88 };
	const hot = new HotWire(wire, stillRoom);
	const current = (rise: number) => hot.currentAt(stillRoom.temperature + rise);
	return [current(500) / for500 - 1, current(1000) / for1000 - 1];
}

describe('handbook currents of nickel-chromium wire', () => {
	test.each(rows)('SWG $swg, $millimetres mm: $for500 A for 500 K and $for1000 A for 1000 K', (row) => {
		for (const deviation of deviations(row)) expect(Math.abs(deviation)).toBeLessThan(0.15);
	});

	test('over all rows the model is 7 % off at most, root mean square, and 3 % in the mean', () => {
		const all = rows.flatMap(deviations);
		const rms = Math.sqrt(all.reduce((sum, deviation) => sum + deviation ** 2, 0) / all.length);
		const mean = all.reduce((sum, deviation) => sum + deviation, 0) / all.length;
		expect(rms).toBeLessThan(0.07);
		expect(Math.abs(mean)).toBeLessThan(0.03);
	});
});
