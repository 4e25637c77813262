import { expect, it } from 'vitest';
import { materials } from '#core/material/materials.ts';
import { awgDiameter } from '#core/quantity/gauge.ts';
import { cautionsFor } from '#core/setup/caution.ts';
import { operatingPoint } from '#core/setup/operating-point.ts';
import { jobsFor, runTimeFor } from '#core/setup/run-time.ts';
import type { Setup } from '#core/setup/setup.ts';
import { solveWish } from '#core/setup/solve.ts';
import { clipPair, reel40, screwPair, setupWith, supplies } from '#tests/support/shed.ts';

function codes(setup: Setup): string[] {
	return cautionsFor(setup, operatingPoint(setup)).map(({ code }) => code);
}

const with12Volts = (length: number) => setupWith({ wire: { ...reel40, length } });

it('a warm wire of 40 °C needs no caution', () => {
	const supply = { ...supplies.benchSupply, openCircuitVoltage: 2.5 };
	expect(codes(setupWith({ supply, wire: { ...reel40, length: 1 } }))).toEqual([]);
});

it('a hot wire burns before it would light paper, and fumes later still', () => {
	expect(codes(with12Volts(0.9))).toEqual(['burn']);
	expect(codes(with12Volts(0.7))).toEqual(['burn', 'ignites-paper']);
	expect(codes(with12Volts(0.5))).toEqual(['burn', 'ignites-paper', 'fumes']);
});

it('tells a thin wire hotter than thin wire lasts, and the planning ceiling', () => {
	const wire = { material: materials['cral-25-5'], diameter: awgDiameter(28), length: 1 };
	const outcome = solveWish(setupWith({ wire }), { kind: 'resistance', value: 3 });
	if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
	const bold = setupWith({ wire: { ...wire, length: outcome.value.length * 0.99 } });
	expect(codes(bold)).toEqual(['burn', 'ignites-paper', 'fumes', 'thin-wire', 'over-supply']);
});

it('a bare battery is a danger, shorted or not', () => {
	const bare = { openCircuitVoltage: 12.7, internalResistance: 0.03, protection: { kind: 'none' } } as const;
	const [worst] = cautionsFor(setupWith({ supply: bare }), operatingPoint(setupWith({ supply: bare })));
	expect(worst).toMatchObject({ code: 'no-fuse', level: 'danger' });
	expect(worst?.code === 'no-fuse' ? worst.wouldPass : 0).toBeCloseTo(12.7 / 0.03, 9);
	const link = setupWith({ supply: bare, wire: { ...reel40, length: 0.002 } });
	expect(codes(link)).toEqual(['short-circuit', 'short-wire']);
});

it('tells leads and fuse that carry too much, cells that heat, and a charge soon gone', () => {
	const cells = setupWith({ supply: supplies.fourAA, leads: clipPair, wire: { ...reel40, length: 0.06 } });
	expect(codes(cells)).toEqual(expect.arrayContaining(['over-leads', 'over-fuse', 'battery-heat']));
	const small = { ...supplies.nickelPack, charge: { capacity: 1000, usableFraction: 0.8 } };
	expect(codes(setupWith({ supply: small }))).toContain('runs-flat');
});

it('tells a wire beyond its limit and a supply that stopped', () => {
	const strong = { ...supplies.benchSupply, protection: { kind: 'holds', limit: 9 } } as const;
	expect(codes(setupWith({ supply: strong, wire: { ...reel40, length: 0.1 } }))[0]).toMatch(/over-wire-limit|burnt/);
	expect(codes(setupWith({ supply: supplies.brick, wire: { ...reel40, length: 0.1 } }))).toEqual(['supply-stopped']);
});

it('a battery whose fuse would open is a danger, with the current that would flow', () => {
	const lead = { openCircuitVoltage: 12.7, internalResistance: 0.03, protection: { kind: 'none' } } as const;
	const wire = { material: materials['nicr-80-20'], diameter: 0.71e-3, length: 0.15 };
	const setup = setupWith({ supply: { ...lead, fuse: { rating: 6.3 } }, wire });
	const [worst] = cautionsFor(setup, operatingPoint(setup));
	expect(worst).toMatchObject({ code: 'fuse-opens', level: 'danger', rating: 6.3 });
	// 0.15 m of 2.75 Ω/m, the battery and the leads share 12.7 V; hot, the wire is at most a tenth more
	const cold = 12.7 / (0.15 * 2.75 + 0.03 + setup.leads.resistance);
	const wouldPass = worst?.code === 'fuse-opens' ? worst.wouldPass : 0;
	expect(wouldPass).toBeGreaterThan(cold * 0.88);
	expect(wouldPass).toBeLessThan(cold * 1.02);
});

it('compares the run time with the time wanted', () => {
	const setup = setupWith({ supply: supplies.nickelPack, leads: screwPair });
	const point = operatingPoint(setup);
	const result = runTimeFor(setup, point, 1800);
	expect(result?.lasts).toBe(point.runTime);
	expect(result?.isEnough).toBe(5760 / point.current >= 1800);
	expect(jobsFor(setup, point, 40)).toBe(Math.floor(5760 / (point.current * 40)));
	expect(runTimeFor(setupWith(), operatingPoint(setupWith()), 1)).toBeNull();
	expect(jobsFor(setupWith(), operatingPoint(setupWith()), 1)).toBeNull();
});
