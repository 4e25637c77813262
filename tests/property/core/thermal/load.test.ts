import fc from 'fast-check';
import { expect, test } from 'vitest';
import { foamCutPower, foamCutSpeed, seamPower, seamTime, type FoamCut, type Seam } from '#core/thermal/load.ts';
import { meltables, type Meltable } from '#core/thermal/meltable.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const plastics = fc.constantFrom<Meltable>(...Object.values(meltables));
const cuts: fc.Arbitrary<FoamCut> = fc.record({
	foam: plastics,
	diameter: number(0.1e-3, 1e-3),
	room: number(263, 313),
});
const seams: fc.Arbitrary<Seam> = fc.record({
	plastic: plastics,
	kind: fc.constantFrom('film' as const, 'sheet' as const),
	width: number(1e-3, 10e-3),
	thickness: number(20e-6, 5e-3),
	room: number(263, 313),
});

test('power for the speed a power gives is that power, and the far ends of one are the near ends of the other', () => {
	fc.assert(
		fc.property(cuts, number(1, 200), (cut, power) => {
			const speed = foamCutSpeed(cut, power);
			expect(foamCutPower(cut, speed.value).value / power).toBeCloseTo(1, 9);
			expect(foamCutPower(cut, speed.least).most / power).toBeCloseTo(1, 9);
			expect(foamCutPower(cut, speed.most).least / power).toBeCloseTo(1, 9);
		}),
	);
});

test('time for the power a time needs is that time', () => {
	fc.assert(
		fc.property(seams, number(0.2, 60), (seam, time) => {
			const power = seamPower(seam, time);
			expect(seamTime(seam, power.value).value / time).toBeCloseTo(1, 9);
			expect(seamTime(seam, power.most).most / time).toBeCloseTo(1, 9);
		}),
	);
});

test('every estimate lies between its ends', () => {
	fc.assert(
		fc.property(cuts, seams, number(1, 200), (cut, seam, power) => {
			for (const { value, least, most } of [foamCutSpeed(cut, power), seamTime(seam, power)]) {
				expect(least).toBeGreaterThan(0);
				expect(least).toBeLessThan(value);
				expect(value).toBeLessThan(most);
			}
		}),
	);
});

test('a thicker wire or a colder room cuts slower, in proportion to the width of the cut', () => {
	fc.assert(
		fc.property(cuts, number(1, 200), (cut, power) => {
			const { value } = foamCutSpeed(cut, power);
			expect(foamCutSpeed({ ...cut, diameter: 2 * cut.diameter }, power).value / value).toBeCloseTo(0.5, 9);
			expect(foamCutSpeed({ ...cut, room: cut.room - 5 }, power).value).toBeLessThan(value);
		}),
	);
});
