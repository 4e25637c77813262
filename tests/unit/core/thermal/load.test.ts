import { describe, expect, it } from 'vitest';
import { foamCutPower, foamCutSpeed, heatToGiveWay, seamPower, seamTime } from '#core/thermal/load.ts';
import { meltables, meltableSources, type Meltable } from '#core/thermal/meltable.ts';

const room = 293.15;
const all: readonly Meltable[] = Object.values(meltables);

describe('what is melted', () => {
	it.each(all)('$id: every value lies inside its own range and has a source', (plastic) => {
		for (const { value, least, most } of [
			plastic.density,
			plastic.specificHeat,
			plastic.meltingHeat,
			plastic.givesWayAt,
		]) {
			expect(least).toBeLessThanOrEqual(value);
			expect(value).toBeLessThanOrEqual(most);
		}
		expect(plastic.source.map((key) => meltableSources[key].citation)).not.toContain('');
		expect(plastic.source.length).toBeGreaterThan(0);
	});
});

// sums by hand from the table, no source
describe('a cut through foam of 20 kg/m³ with a wire of 0.4 mm', () => {
	const cut = { foam: meltables['expanded-polystyrene'], diameter: 0.4e-3, room };

	it('needs 195 kJ for each kilogram: 1500 J/(kg K) over 130 K', () => {
		expect(heatToGiveWay(cut.foam, room).value).toBeCloseTo(195e3, 6);
	});

	it('at 3 mm/s takes 23.4 W/m: 1.2 mm of cut, 0.6 of the heat into the foam', () => {
		// 0.003 · 1.2e-3 · 20 · 195e3/0.6
		expect(foamCutPower(cut, 0.003).value).toBeCloseTo(23.4, 9);
	});

	it('stands still without power', () => {
		expect(foamCutSpeed(cut, 0)).toEqual({ value: 0, least: 0, most: 0 });
		expect(foamCutPower(cut, 0)).toEqual({ value: 0, least: 0, most: 0 });
	});

	it('refuses negative numbers, no wire and a room that melts the foam', () => {
		expect(() => foamCutPower(cut, -1)).toThrow(RangeError);
		expect(() => foamCutSpeed(cut, Number.NaN)).toThrow(RangeError);
		expect(() => foamCutSpeed({ ...cut, diameter: 0 }, 10)).toThrow(RangeError);
		expect(() => foamCutSpeed({ ...cut, room: 400 }, 10)).toThrow(RangeError);
	});
});

describe('a seam of two films of 50 µm, 3 mm wide', () => {
	const seam = { plastic: meltables['pe-ld'], kind: 'film', width: 3e-3, thickness: 100e-6, room } as const;

	it('takes 311 J for each metre, so 622 W/m for half a second', () => {
		// 3e-3 · 100e-6 · 920 · (2400 · 95 + 110e3)/0.3 = 310.96
		expect(seamPower(seam, 1).value).toBeCloseTo(310.96, 6);
		expect(seamPower(seam, 0.5).value).toBeCloseTo(621.92, 6);
		expect(seamTime(seam, 310.96).value).toBeCloseTo(1, 9);
	});

	it('refuses no time, no power and no film', () => {
		expect(() => seamPower(seam, 0)).toThrow(RangeError);
		expect(() => seamTime(seam, 0)).toThrow(RangeError);
		expect(() => seamTime({ ...seam, thickness: 0 }, 10)).toThrow(RangeError);
	});
});
