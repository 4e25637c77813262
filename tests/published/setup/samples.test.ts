import { describe, expect, it } from 'vitest';
import { materials } from '#core/material/materials.ts';
import { operatingPoint } from '#core/setup/operating-point.ts';
import { predictionUncertainty, type Uncertain } from '#core/setup/uncertainty.ts';
import { screwPair, setupWith, supplies } from '#tests/support/shed.ts';

const nickelChromium = (diameter: number, length: number) => ({ material: materials['nicr-80-20'], diameter, length });

// reckoned by hand-written sums apart from this code, on the same heat balance, and printed to the figures given
describe('samples of the course, worked out apart from this code', () => {
	const bow = (diameter: number) => {
		const wire = nickelChromium(diameter, 0.42);
		return operatingPoint(setupWith({ supply: supplies.nickelPack, leads: screwPair, wire }));
	};

	it('foam bow: 420 mm of 0.40 mm on the nickel pack carries 1.91 A at about 280 °C for 50 minutes', () => {
		const { current, temperature, runTime } = bow(0.4e-3);
		expect(current).toBeCloseTo(1.91, 2);
		expect(Math.abs(temperature - 553.15)).toBeLessThanOrEqual(5);
		expect(Math.abs((runTime ?? 0) / 60 - 50)).toBeLessThanOrEqual(0.5);
	});

	it('foam bow: 0.32 mm reaches 230 °C only, 0.50 mm lasts only 33 minutes', () => {
		expect(Math.abs(bow(0.32e-3).temperature - 503.15)).toBeLessThanOrEqual(5);
		expect(Math.abs((bow(0.5e-3).runTime ?? 0) / 60 - 33)).toBeLessThanOrEqual(0.5);
	});

	it('cord tip: 60 mm at 2.6 A is about 420 °C and needs 1.4 V', () => {
		const supply = { ...supplies.benchSupply, protection: { kind: 'holds', limit: 2.6 } } as const;
		const point = operatingPoint(setupWith({ supply, leads: screwPair, wire: nickelChromium(0.4e-3, 0.06) }));
		expect(point.state).toBe('holding-limit');
		expect(point.resistanceHot).toBeCloseTo(0.54, 2);
		expect(point.postsVoltage).toBeCloseTo(1.4, 1);
		expect(Math.abs(point.temperature - 693.15)).toBeLessThanOrEqual(5);
	});

	it('cord tip: the adaptor would be asked for 9 A and cuts out', () => {
		const point = operatingPoint(
			setupWith({ supply: supplies.adaptor, leads: screwPair, wire: nickelChromium(0.4e-3, 0.06) }),
		);
		expect(point.state).toBe('tripped');
		expect(Math.abs(point.askedCurrent - 9)).toBeLessThanOrEqual(0.5);
	});

	it('cord tip: four cells are asked for one and a half times their fuse, which may hold', () => {
		const { fuse } = operatingPoint(setupWith({ supply: supplies.fourAA, wire: nickelChromium(0.4e-3, 0.06) }));
		expect(fuse?.ratio).toBeCloseTo(1.5, 1);
	});
});

// logarithmic sensitivities of the rise of CrAl 25 5, 0.25 mm, ε 0.70, reckoned apart from this code on the same heat
// balance; the diameter here keeps R′, so it is the one for d plus twice the one for ρ
describe('sensitivities of the rise of a wire at a held current', () => {
	it.each([
		{ current: 0.7, rise: 171, toCurrent: 1.58, toDiameter: -1.9, toResistivity: 0.79 },
		{ current: 1.8, rise: 651, toCurrent: 1.19, toDiameter: -1.5, toResistivity: 0.6 },
		{ current: 2.6, rise: 975, toCurrent: 0.98, toDiameter: -1.3, toResistivity: 0.49 },
	])('$current A', ({ current, rise, toCurrent, toDiameter, toResistivity }) => {
		const supply = {
			openCircuitVoltage: 24,
			internalResistance: 0,
			protection: { kind: 'holds', limit: current },
		} as const;
		const wire = { material: materials['cral-25-5'], diameter: 0.25e-3, length: 0.1, emissivity: 0.7 };
		const result = predictionUncertainty(setupWith({ supply, wire }));
		if (result === null) throw new Error('nothing flows');
		const found = result.temperature.value - 293.15;
		expect(Math.abs(found / rise - 1)).toBeLessThan(0.01);
		const sensitivity = (input: string, value: number) => logarithmic(result.temperature, input, found, value);
		expect(Math.abs(sensitivity('current-limit', current) - toCurrent)).toBeLessThan(0.03);
		expect(Math.abs(sensitivity('resistance-per-metre', 1) - toResistivity)).toBeLessThan(0.03);
		expect(Math.abs(sensitivity('heat-model', 1) + toResistivity)).toBeLessThan(0.03);
		expect(Math.abs(sensitivity('diameter', 0.25e-3) - (toDiameter + 2 * toResistivity))).toBeLessThan(0.04);
	});
});

function logarithmic({ budget }: Uncertain, input: string, rise: number, value: number): number {
	const row = budget.find((r) => r.input === input);
	if (row === undefined) throw new Error(`no ${input}`);
	return (row.contribution / row.standardUncertainty) * (value / rise);
}
