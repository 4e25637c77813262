import { describe, expect, it } from 'vitest';
import { materials } from '#core/material/materials.ts';
import { operatingPoint } from '#core/setup/operating-point.ts';
import { clipPair, noLeads, reel40, screwPair, setupWith, supplies, wireOf } from '#tests/support/shed.ts';

// constantan changes by less than one in a hundred, so plain sums hold for it
const steady = { material: materials['cuni-44'], diameter: 0.7e-3, length: 1 };

describe('a supply that cannot deliver', () => {
	it('sags: 6.2 V with 0.80 ohms inside gives 2.21 A and 4.43 V on 2.0 ohms', () => {
		const point = operatingPoint(setupWith({ supply: supplies.fourAA, wire: wireOf(2, steady) }));
		expect(point.state).toBe('on');
		expect(point.current / 2.214).toBeCloseTo(1, 2);
		expect(point.postsVoltage / 4.429).toBeCloseTo(1, 2);
	});

	it('holds its limit: 12 V and 3 A on 2.5 ohms gives 3 A and 7.5 V', () => {
		const supply = { ...supplies.benchSupply, protection: { kind: 'holds', limit: 3 } } as const;
		const point = operatingPoint(setupWith({ supply, wire: wireOf(2.5, steady) }));
		expect(point.state).toBe('holding-limit');
		expect(point.current).toBe(3);
		expect(point.postsVoltage / 7.5).toBeCloseTo(1, 1);
		expect(point.askedCurrent / 4.8).toBeCloseTo(1, 1);
		expect(point.facts).toMatchObject([{ code: 'held-at', limit: 3 }]);
	});

	it('trips: asked for 6 A the brick lets nothing through', () => {
		const point = operatingPoint(setupWith({ supply: supplies.brick, wire: wireOf(2, steady) }));
		expect(point).toMatchObject({ state: 'tripped', current: 0, temperature: 293.15, power: 0 });
		expect(point.facts).toMatchObject([{ cause: 'hot-current', behaviour: 'retries', tripAbove: 5.5 }]);
	});

	it('says when only the cold current trips it', () => {
		const steel = { material: materials['soft-steel'], diameter: 0.4e-3, length: 1 };
		const supply = { ...supplies.adaptor, openCircuitVoltage: 4 };
		const point = operatingPoint(setupWith({ supply, wire: steel }));
		expect(point.facts).toMatchObject([{ code: 'tripped-by', cause: 'inrush', behaviour: 'latches' }]);
		expect(point.askedCurrent).toBeLessThan(3.3);
		expect(point.inrushCurrent).toBeGreaterThan(3.3);
	});
});

describe('a fuse', () => {
	const lead = (length: number) => setupWith({ supply: supplies.sealedLead, wire: { ...reel40, length } });

	it('opens in a short and says how soon', () => {
		const point = operatingPoint(lead(0.002));
		expect(point).toMatchObject({ state: 'fuse-open', current: 0 });
		expect(point.facts).toMatchObject([{ code: 'fuse-opened-by', cause: 'hot-current', within: 0.02 }]);
	});

	it('opens by the cold current of a metal that resists little until it is hot', () => {
		const supply = { ...supplies.sealedLead, openCircuitVoltage: 11, fuse: { rating: 2.5 } };
		const steel = { material: materials['soft-steel'], diameter: 0.4e-3, length: 1 };
		const point = operatingPoint(setupWith({ supply, wire: steel }));
		expect(point.askedCurrent).toBeLessThan(2.1 * 2.5);
		expect(point.facts).toMatchObject([{ code: 'fuse-opened-by', cause: 'inrush', within: 0.3 }]);
	});

	it('may hold one and a half times its rating', () => {
		const point = operatingPoint(setupWith({ supply: supplies.fourAA, wire: { ...reel40, length: 0.06 } }));
		expect(point.state).toBe('on');
		expect(point.fuse?.gate).toBe('holds-an-hour');
	});
});

describe('a bare battery', () => {
	const bare = { openCircuitVoltage: 12.7, internalResistance: 0.03, protection: { kind: 'none' } } as const;

	it('is not shorted on the bench; only the number is shown', () => {
		const point = operatingPoint(setupWith({ supply: bare, wire: { ...reel40, length: 0.001 } }));
		expect(point).toMatchObject({ state: 'refused-short', current: 0, temperature: 293.15 });
		expect(point.facts[0]?.code).toBe('short-on-bare-battery');
	});

	it('still feeds an ordinary wire', () => {
		expect(operatingPoint(setupWith({ supply: bare, leads: screwPair })).state).toBe('on');
	});

	it('runs for the usable charge over the current, then is flat', () => {
		const setup = setupWith({ supply: supplies.nickelPack, leads: screwPair });
		const { runTime, current } = operatingPoint(setup);
		expect(runTime).toBeCloseTo((0.8 * 7200) / current, 9);
		expect(operatingPoint(setup, { usedCharge: 5760 })).toMatchObject({ state: 'flat', current: 0 });
	});
});

it('passes nothing while it is off', () => {
	expect(operatingPoint(setupWith(), { isOn: false })).toMatchObject({ state: 'off', current: 0, postsVoltage: 0 });
});

it('lists the ceilings, the tightest first', () => {
	const setup = setupWith({ supply: { ...supplies.adaptor, fuse: { rating: 2 } }, leads: clipPair });
	const kinds = operatingPoint(setup).binding.map(({ kind, ceiling }) => `${kind} ${ceiling.toFixed(1)}`);
	expect(kinds.slice(0, 3)).toEqual(['fuse 1.6', 'supply 2.4', 'leads 2.4']);
	expect(kinds[3]).toMatch(/^wire/);
});

it('tells a wire beyond its data and over its limit', () => {
	const supply = { ...supplies.benchSupply, protection: { kind: 'holds', limit: 50 } } as const;
	const point = operatingPoint(setupWith({ supply, wire: { ...reel40, length: 0.1 }, leads: noLeads }));
	expect(point.isTemperatureInRange).toBe(false);
	expect(['over-limit', 'burnt-through']).toContain(point.wireState);
});

it('throws above 24 V and without a length', () => {
	const supply = { ...supplies.benchSupply, openCircuitVoltage: 24.1 };
	expect(() => operatingPoint(setupWith({ supply }))).toThrow(RangeError);
	expect(() => operatingPoint(setupWith({ wire: { ...reel40, length: 0 } }))).toThrow(RangeError);
});
