import { Random } from '#core/numeric/random.ts';
import type { Kelvin } from '#core/quantity/unit.ts';
import { operatingPoint } from './operating-point.ts';
import type { Setup } from './setup.ts';
import { uncertainInputs, withinRange, type Model, type UncertainInput } from './uncertain-input.ts';
import { predict } from './uncertainty.ts';

/** Temperatures found by drawing the inputs at random. */
export interface DrawnTemperature {
	readonly mean: Kelvin;
	readonly standardDeviation: number;
	/** the middle 95 % */
	readonly from: Kelvin;
	readonly to: Kelvin;
}

/**
 * The predicted temperature when every uncertain input is drawn from its distribution and the set-up is solved again:
 * the way of JCGM 101:2008 (from memory), to see whether the first-order uncertainty holds where the law bends.
 * The same seed gives the same result.
 *
 * @param plan draws at least 100; seed a whole number or text
 * @returns null when no current flows or the wire would pass the end of its data
 */
export function drawnTemperature(
	setup: Setup,
	plan: { draws: number; seed: number | string },
): DrawnTemperature | null {
	if (!(plan.draws >= 100)) throw new RangeError(`at least 100 draws are needed, got ${plan.draws}`);
	const { state, current, isTemperatureInRange } = operatingPoint(setup);
	if (!isTemperatureInRange || current === 0) return null;
	const random = new Random(plan.seed);
	const inputs = uncertainInputs(setup);
	const drawn = Array.from({ length: plan.draws }, () => {
		const model = inputs.reduce<Model>((m, input) => input.shifted(m, withinRange(input, shift(input, random))), {
			setup,
			heatFactor: 1,
		});
		return predict(model, state === 'holding-limit').temperature;
	}).sort((a, b) => a - b);
	const mean = drawn.reduce((sum, T) => sum + T, 0) / drawn.length;
	const variance = drawn.reduce((sum, T) => sum + (T - mean) ** 2, 0) / (drawn.length - 1);
	const at = (share: number) => drawn[Math.round(share * (drawn.length - 1))] ?? mean;
	return { mean, standardDeviation: Math.sqrt(variance), from: at(0.025), to: at(0.975) };
}

function shift({ shape, standardUncertainty }: UncertainInput, random: Random): number {
	if (shape === 'rectangular') return standardUncertainty * Math.sqrt(3) * (2 * random.next() - 1);
	// Box and Muller, 1958
	const radius = Math.sqrt(-2 * Math.log(1 - random.next()));
	return standardUncertainty * radius * Math.cos(2 * Math.PI * random.next());
}
