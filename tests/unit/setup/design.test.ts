import { describe, expect, it } from 'vitest';
import { materials } from '#core/material/materials.ts';
import { checkDesign, leastMargin, searchDesigns, type Brief, type Cupboard, type Design } from '#core/setup/design.ts';
import { withLength } from '#core/setup/setup.ts';
import { iceZero } from '#core/thermal/physical-constants.ts';
import { stillRoom } from '#core/thermal/room.ts';
import { reel40, screwPair, setupWith, supplies } from '#tests/support/shed.ts';

const celsius = (temperature: number) => temperature + iceZero;
const reel = (id: string, diameter: number) => ({ id, wire: { material: materials['nicr-80-20'], diameter } });
const cupboard: Cupboard = {
	supplies: [{ id: 'P4', supply: supplies.nickelPack }],
	reels: [reel('R-32', 0.32e-3), reel('R-40', 0.4e-3), reel('R-50', 0.5e-3)],
	leads: [{ id: 'LA', leads: screwPair }],
	room: stillRoom,
};

function failed({ checks }: Design): string[] {
	return checks.filter(({ holds }) => !holds).map((check) => (check.code === 'ceiling' ? check.part : check.code));
}

describe('the foam bow: 420 to 440 mm, 250 to 350 °C, 45 minutes on a nickel pack', () => {
	const brief = {
		length: { from: 0.42, to: 0.44 },
		temperature: { from: celsius(250), to: celsius(350) },
		runTime: 2700,
	};
	const designs = searchDesigns(cupboard, brief);

	it('is fulfilled by 0.40 mm alone', () => {
		expect(designs.filter(({ isFit }) => isFit).map(({ reelId }) => reelId)).toEqual(['R-40']);
		expect(designs[0]?.reelId).toBe('R-40');
	});

	it('rejects the thinner reel as too cool and the thicker as soon flat', () => {
		const why = Object.fromEntries(designs.map((design) => [design.reelId, failed(design)]));
		expect(why).toEqual({ 'R-40': [], 'R-32': ['temperature'], 'R-50': ['run-time'] });
	});
});

it('the sealing bar: 0.32 mm gives too little power, 0.50 mm passes the ceiling of the fuse', () => {
	const brief = {
		length: { from: 0.22, to: 0.22 },
		powerPerMetre: { from: 95, to: 125 },
		jobs: { count: 400, time: 3 },
	};
	const why = Object.fromEntries(searchDesigns(cupboard, brief).map((design) => [design.reelId, failed(design)]));
	expect(why['R-40']).toEqual([]);
	expect(why['R-32']).toEqual(['power-per-metre']);
	expect(why['R-50']).toContain('fuse');
});

it('sets the limit of a bench supply to what the cord tip needs', () => {
	const bench = { ...cupboard, supplies: [{ id: 'P1', supply: supplies.benchSupply, currentTo: 5 }] };
	const brief = { length: { from: 0.06, to: 0.06 }, temperature: { from: celsius(400), to: celsius(440) } };
	const design = searchDesigns(bench, brief).find(({ reelId }) => reelId === 'R-40');
	expect(design?.isFit).toBe(true);
	expect(design?.point.state).toBe('holding-limit');
	expect(design?.point.current).toBeCloseTo(2.6, 1);
});

it('says by how much a check fails', () => {
	const setup = setupWith({ wire: { ...reel40, length: 0.3 } });
	const [runs, length] = checkDesign(setup, { length: { from: 0.4, to: 0.5 } });
	expect(runs).toEqual({ code: 'runs', holds: true, state: 'on' });
	expect(length).toEqual({ code: 'length', holds: false, value: 0.3, band: { from: 0.4, to: 0.5 } });
});

it('misses no design that one of nine lengths in turn would give', () => {
	const every = Object.entries(supplies).map(([id, supply]) => ({ id, supply }));
	const shelf = { ...cupboard, supplies: every, reels: [...cupboard.reels, reel('R-25', 0.25e-3)] };
	const briefs: readonly Brief[] = [
		{ length: { from: 0.3, to: 0.9 }, temperature: { from: celsius(250), to: celsius(350) }, runTime: 2700 },
		{ length: { from: 0.2, to: 1.4 }, powerPerMetre: { from: 20, to: 60 }, mostCurrent: 2 },
		{ length: { from: 0.05, to: 0.5 }, temperature: { from: celsius(380), to: celsius(460) } },
	];
	for (const brief of briefs) {
		const { from, to } = brief.length;
		const designs = searchDesigns(shelf, brief);
		expect(designs).toHaveLength(every.length * 4);
		const fits = designs.filter(({ isFit }) => isFit).length;
		expect(fits).toBeGreaterThan(0);
		expect(fits).toBeLessThan(designs.length);
		for (const { setup, isFit } of designs) {
			const lengths = Array.from({ length: 9 }, (_, index) => from + ((to - from) * index) / 8);
			const isPossible = lengths.some((length) =>
				checkDesign(withLength(setup, length), brief).every(({ holds }) => holds),
			);
			expect(isFit).toBe(isPossible);
		}
	}
});

it('tells how much room the tightest check leaves', () => {
	const band = { from: 100, to: 200 };
	expect(leastMargin([{ code: 'temperature', holds: true, value: 150, band }])).toBeCloseTo(1);
	expect(leastMargin([{ code: 'temperature', holds: true, value: 110, band }])).toBeCloseTo(0.2);
	expect(leastMargin([{ code: 'temperature', holds: false, value: 90, band }])).toBeCloseTo(-0.2);
	const ceiling = { code: 'ceiling', holds: true, part: 'fuse', value: 3, most: 4 } as const;
	expect(leastMargin([{ code: 'temperature', holds: true, value: 150, band }, ceiling])).toBeCloseTo(0.25);
	expect(leastMargin([{ code: 'run-time', holds: true, value: 3600, least: 2700 }])).toBeCloseTo(0.25);
});
