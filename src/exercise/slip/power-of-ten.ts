import { symbolsIn } from '#core/expression/expression.ts';
import type { Exercise, NumberStep } from '#exercise/exercise.ts';
import { siUnitOf, symbolsOf } from '#exercise/symbols.ts';
import type { SlipName } from './slip-name.ts';

/** The whole power of ten between two numbers, or undefined when they differ by anything else (or not at all). */
export function powerOfTenBetween(found: number, right: number, tolerance = 0.006): number | undefined {
	const ratio = found / right;
	if (!(ratio > 0) || !Number.isFinite(ratio)) return undefined;
	const power = Math.round(Math.log10(ratio));
	if (power === 0 || Math.abs(power) > 9) return undefined;
	return Math.abs(ratio / 10 ** power - 1) <= tolerance ? power : undefined;
}

/** The name of a slip that moved a step's value by a power of ten, from the units that stand in it. */
export function powerOfTenSlip(power: number, step: NumberStep, exercise: Exercise): SlipName {
	const inputs = symbolsIn(step.relations[0].formula);
	const units = symbolsOf(exercise)
		.filter(({ name }) => inputs.includes(name))
		.map(({ unit }) => unit);
	const size = Math.abs(power);
	const isLength = siUnitOf(exercise, step.find) === 'm';
	if (size === 6 && units.some((unit) => unit.startsWith('mm'))) return 'millimetres-left-in';
	const hasMilli = units.some((unit) => /^m[AVΩW]$/u.test(unit));
	if (hasMilli) return size === 3 ? 'milli-unconverted' : 'prefix-wrong-way';
	if (isLength && (size === 1 || size === 2)) return 'centimetre-slip';
	if (size === 3 && (units.includes('mm') || isLength)) return 'millimetres-left-in';
	if (size === 3 && units.some((unit) => unit.startsWith('k'))) return 'kilo-slip';
	return 'exponent-slip';
}
