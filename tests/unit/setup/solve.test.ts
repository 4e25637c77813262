import { describe, expect, it } from 'vitest';
import { materials } from '#core/material/materials.ts';
import { awgDiameter } from '#core/quantity/gauge.ts';
import { solveWish, type Solution, type Wish } from '#core/setup/solve.ts';
import type { Setup } from '#core/setup/setup.ts';
import { iceZero } from '#core/thermal/physical-constants.ts';
import { clipPair, setupWith, supplies } from '#tests/support/shed.ts';

const fine = { material: materials['cral-25-5'], diameter: awgDiameter(28), length: 0.3 };
const hair = { ...fine, diameter: awgDiameter(36) };
const toCelsius = (kelvin: number) => kelvin - iceZero;

function solved(setup: Setup, wish: Wish): Solution {
	const outcome = solveWish(setup, wish);
	if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
	return outcome.value;
}

function codes(setup: Setup, wish: Wish): string[] {
	const outcome = solveWish(setup, wish);
	return outcome.ok ? [] : outcome.problems.map(({ code }) => code);
}

// plain sums and common practice, no source
describe('a wish on 12 V and CrAl 25 5 of AWG 28', () => {
	it('for 3 A needs 4 ohms hot, some 22 cm, gives 36 W and glows', () => {
		const { resistanceHot, length, point } = solved(setupWith({ wire: fine }), { kind: 'current', value: 3 });
		expect(resistanceHot).toBeCloseTo(4, 6);
		expect(length).toBeGreaterThan(0.21);
		expect(length).toBeLessThan(0.23);
		expect(point.power).toBeCloseTo(36, 6);
		expect(toCelsius(point.temperature)).toBeGreaterThan(525);
	});

	it('for 3 ohms draws 4 A', () => {
		const { current } = solved(setupWith({ wire: fine }), { kind: 'resistance', value: 3 });
		expect(current).toBeCloseTo(4, 6);
	});

	it('for 1 A stays grey and would not brown paper, while the same ampere makes AWG 36 glow', () => {
		const grey = solved(setupWith({ wire: fine }), { kind: 'current', value: 1 });
		expect(toCelsius(grey.temperature)).toBeLessThan(230);
		const glowing = solved(setupWith({ wire: hair }), { kind: 'current', value: 1 });
		expect(toCelsius(glowing.temperature)).toBeGreaterThan(525);
	});
});

describe('resistance for a wished current', () => {
	it.each([
		[5, 2, 2.5],
		[4.5, 1, 4.5],
		[12, 2.5, 4.8],
	])('%d V at %d A wants %d ohms', (openCircuitVoltage, value, expected) => {
		const supply = { ...supplies.benchSupply, openCircuitVoltage };
		expect(solved(setupWith({ supply }), { kind: 'current', value }).resistanceHot).toBeCloseTo(expected, 6);
	});
});

describe('a wish that cannot be', () => {
	const one: Wish = { kind: 'current', value: 1 };

	it('says each reason by its code', () => {
		expect(codes(setupWith(), { ...one, value: 0 })).toEqual(['not-positive']);
		expect(codes(setupWith(), { ...one, value: NaN })).toEqual(['not-positive']);
		expect(codes(setupWith({ supply: { ...supplies.benchSupply, openCircuitVoltage: 24.1 } }), one)).toEqual([
			'over-24-volts',
		]);
		expect(codes(setupWith({ supply: { ...supplies.benchSupply, openCircuitVoltage: 0 } }), one)).toEqual([
			'no-voltage',
		]);
		expect(codes(setupWith(), { kind: 'current', value: 5.1 })).toContain('over-limit');
		expect(codes(setupWith(), { kind: 'length', value: 0.009 })).toEqual(['too-short']);
		expect(codes(setupWith(), { kind: 'length', value: 51 })).toEqual(['too-long']);
		expect(codes(setupWith(), { kind: 'temperature', value: 290 })).toEqual(['below-room']);
		expect(codes(setupWith(), { kind: 'temperature', value: 1400 })).toEqual(['over-wire-limit']);
	});

	it('names leads and fuse whose rating is passed', () => {
		const outcome = solveWish(setupWith({ supply: supplies.sealedLead, leads: clipPair }), {
			kind: 'current',
			value: 6.4,
		});
		const parts = outcome.ok ? [] : outcome.problems.flatMap((p) => (p.code === 'over-limit' ? [p.part] : []));
		expect(parts).toEqual(['leads', 'fuse']);
	});

	it('says that no length will do when supply and leads resist too much', () => {
		const weak = { ...supplies.benchSupply, openCircuitVoltage: 6, internalResistance: 3 };
		const outcome = solveWish(setupWith({ supply: weak }), { kind: 'current', value: 2.5 });
		expect(outcome).toMatchObject({ ok: false, problems: [{ code: 'no-length', most: 2, seriesResistance: 3 }] });
	});

	it('names the greatest power, a quarter of voltage squared over resistance', () => {
		const outcome = solveWish(setupWith({ supply: supplies.fourAA }), { kind: 'power', value: 13 });
		expect(outcome).toMatchObject({ ok: false, problems: [{ code: 'over-greatest-power' }] });
		if (outcome.ok || outcome.problems[0]?.code !== 'over-greatest-power') throw new Error('no problem told');
		expect(outcome.problems[0].most).toBeCloseTo(6.2 ** 2 / 3.2, 9);
	});
});

it('takes the smaller of two currents that give a power', () => {
	// 6.2 I − 0.8 I² = 6 has the roots 1.134 and 6.616 A
	const { current } = solved(setupWith({ supply: supplies.fourAA }), { kind: 'power', value: 6 });
	expect(current).toBeCloseTo((6.2 - Math.sqrt(6.2 ** 2 - 4 * 0.8 * 6)) / 1.6, 6);
});

it('remarks a current over the planning ceiling and a wire that does not start', () => {
	const bold = solved(setupWith({ supply: supplies.brick }), { kind: 'current', value: 4.5 });
	expect(bold.remarks).toMatchObject([{ code: 'over-ceiling', part: 'supply', ceiling: 4 }]);
	const steel = { material: materials['soft-steel'], diameter: 0.4e-3, length: 1 };
	const cold = solved(setupWith({ supply: supplies.adaptor, wire: steel }), { kind: 'current', value: 2.6 });
	expect(cold.remarks.at(-1)).toMatchObject({ code: 'does-not-start', state: 'tripped' });
});
