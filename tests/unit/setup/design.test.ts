import { describe, expect, it } from 'vitest';
import { materials } from '#core/material/materials.ts';
import { checkDesign, searchDesigns, type Cupboard, type Design } from '#core/setup/design.ts';
import { stillRoom } from '#core/thermal/room.ts';
import { reel40, screwPair, setupWith, supplies } from '#tests/support/shed.ts';

const celsius = (temperature: number) => temperature + 273.15;
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
