import { combinedCovariance, contributions } from '#core/numeric/first-order.ts';
import { rootBetween } from '#core/numeric/root.ts';
import type { Amperes, Kelvin, Metres, Ohms, Watts } from '#core/quantity/unit.ts';
import { HotWire } from '#core/thermal/hot-wire.ts';
import { coldTemperature } from './heat-curve.ts';
import { operatingPoint } from './operating-point.ts';
import { seriesResistanceOf, type Setup } from './setup.ts';
import { uncertainInputs, withinRange, type InputName, type Model, type UncertainInput } from './uncertain-input.ts';

/** A predicted value with its uncertainty; the unit is that of the quantity. */
export interface Uncertain {
	readonly value: number;
	readonly standardUncertainty: number;
	/** twice the standard uncertainty: about 95 % */
	readonly expandedUncertainty: number;
	/** what it comes from, the largest first */
	readonly budget: readonly BudgetRow[];
}

export interface BudgetRow {
	readonly input: InputName;
	/** of the input, in its own unit */
	readonly standardUncertainty: number;
	/** what it does to the result, with its sign, in the unit of the result */
	readonly contribution: number;
	/** its part of the squared uncertainty, 0…1 */
	readonly share: number;
}

export interface PredictionUncertainty {
	/** in K */
	readonly temperature: Uncertain;
	/** in A */
	readonly current: Uncertain;
	/** in the wire, in W */
	readonly power: Uncertain;
	/** in W/m */
	readonly powerPerMetre: Uncertain;
	/** of the wire at 20 °C, in Ω */
	readonly resistanceCold: Uncertain;
	/** of the wire at its temperature, in Ω */
	readonly resistanceHot: Uncertain;
	/** the length that gives just the predicted temperature, in m; null while the supply holds its limit or the wire stays cold */
	readonly neededLength: Uncertain | null;
}

/**
 * Uncertainty of the operating point, to first order.
 *
 *   u²(y) = Σ [(y(x + u(x)) − y(x − u(x)))/2]²
 *
 * over independent inputs: resistance per metre of the reel, diameter, emissivity, the heat formulas, the voltage or
 * current of the supply, length and room. Each is shifted both ways and the whole set-up is solved again.
 *
 * @param setup no problem by `validateSetup`
 * @returns null when no current flows, or the wire would pass the end of its data
 * @see JCGM 100:2008 (GUM), 5.1.3 note 2 (from memory); checked against random draws in
 * tests/property/setup/uncertainty.test.ts
 */
export function predictionUncertainty(setup: Setup): PredictionUncertainty | null {
	const { state, current, isTemperatureInRange } = operatingPoint(setup);
	if (!isTemperatureInRange || current === 0) return null;
	const isHeld = state === 'holding-limit';
	const inputs = uncertainInputs(setup).filter(({ name }) => name !== (isHeld ? 'voltage' : 'current-limit'));
	const model: Model = { setup, heatFactor: 1 };
	const [temperature, flowing, power, powerPerMetre, hot, cold] = combine(model, inputs, (m) => {
		const p = predict(m, isHeld);
		const { length } = m.setup.wire;
		return [p.temperature, p.current, p.power, p.power / length, p.power / p.current ** 2, p.resistanceCold];
	});
	if (!temperature || !flowing || !power || !powerPerMetre || !hot || !cold) throw new RangeError('no result');
	const others = inputs.filter(({ name }) => name !== 'length');
	const isCold = temperature.value < setup.room.temperature + 5;
	const [neededLength] = isHeld || isCold ? [] : combine(model, others, (m) => [lengthFor(m, temperature.value)]);
	return {
		temperature,
		current: flowing,
		power,
		powerPerMetre,
		resistanceCold: cold,
		resistanceHot: hot,
		neededLength: neededLength ?? null,
	};
}

interface Predicted {
	readonly temperature: Kelvin;
	readonly current: Amperes;
	readonly power: Watts;
	readonly resistanceCold: Ohms;
}

/** What a model settles to, on the given side of the supply's crossover. */
export function predict(model: Model, isHeld: boolean): Predicted {
	const { supply, wire } = model.setup;
	const curve = curveOf(model.setup);
	const scale = Math.sqrt(model.heatFactor);
	const resistanceAt = (temperature: Kelvin) => curve.resistancePerMetre(temperature) * wire.length;
	const resistanceCold = resistanceAt(coldTemperature);
	const settleAt = (excess: (temperature: Kelvin) => number) =>
		excess(curve.hottest) < 0
			? curve.hottest
			: rootBetween(excess, { from: curve.room.temperature, to: curve.hottest, tolerance: 1e-7 });
	if (isHeld && supply.protection.kind === 'holds') {
		const current = supply.protection.limit;
		const temperature = settleAt((T) => scale * curve.currentAt(T) - current);
		return { temperature, current, power: current ** 2 * resistanceAt(temperature), resistanceCold };
	}
	const outside = seriesResistanceOf(model.setup);
	const temperature = settleAt(
		(T) => scale * curve.currentAt(T) * (outside + resistanceAt(T)) - supply.openCircuitVoltage,
	);
	const current = supply.openCircuitVoltage / (outside + resistanceAt(temperature));
	return { temperature, current, power: current ** 2 * resistanceAt(temperature), resistanceCold };
}

function lengthFor(model: Model, temperature: Kelvin): Metres {
	const curve = curveOf(model.setup);
	const current = Math.sqrt(model.heatFactor) * curve.currentAt(temperature);
	const resistance = model.setup.supply.openCircuitVoltage / current - seriesResistanceOf(model.setup);
	return resistance / curve.resistancePerMetre(temperature);
}

// made anew: the shifted wires are used once and would only push others out of the kept ones
function curveOf({ wire, room }: Setup): HotWire {
	const { material, diameter, emissivity } = wire;
	return new HotWire({ material, diameter, ...(emissivity === undefined ? {} : { emissivity }) }, room);
}

function combine(
	model: Model,
	inputs: readonly UncertainInput[],
	solve: (model: Model) => readonly number[],
): readonly Uncertain[] {
	const byResult = contributions(
		inputs.map((input) => ({
			standardUncertainty: input.standardUncertainty,
			// the end of a range may cut one shift off
			up: withinRange(input, input.standardUncertainty),
			down: withinRange(input, -input.standardUncertainty),
		})),
		({ input, by }) => solve(inputs[input]?.shifted(model, by) ?? model),
	);
	return solve(model).map((value, index) => {
		const parts = byResult[index] ?? [];
		const rows = inputs.map(({ name, standardUncertainty }, input) => ({
			input: name,
			standardUncertainty,
			contribution: parts[input] ?? NaN,
		}));
		const variance = combinedCovariance(parts, parts);
		const standardUncertainty = Math.sqrt(variance);
		const budget = rows
			.map((row) => ({ ...row, share: variance === 0 ? 0 : row.contribution ** 2 / variance }))
			.sort((a, b) => b.share - a.share);
		return { value, standardUncertainty, expandedUncertainty: 2 * standardUncertainty, budget };
	});
}
