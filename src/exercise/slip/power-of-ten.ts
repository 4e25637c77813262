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
	if (isLength && (size === 2 || (size === 1 && /^[cm]m$/u.test(step.unit)))) return 'centimetre-slip';
	if (size === 3 && (units.includes('mm') || isLength)) return 'millimetres-left-in';
	if (size === 3 && units.some((unit) => unit.startsWith('k'))) return 'kilo-slip';
	return 'exponent-slip';
}

/** The name of a slip in one number of a working: copied wrongly, or left in another unit. */
export function leafSlip(
	fault:
		| { readonly kind: 'miscopied' }
		| { readonly kind: 'own-unit' }
		| { readonly kind: 'power-of-ten'; readonly power: number },
	symbol: string,
	exercise: Exercise,
): SlipName {
	const unit = symbolsOf(exercise).find(({ name }) => name === symbol)?.unit ?? '';
	if (fault.kind === 'miscopied') return 'miscopied-number';
	if (fault.kind === 'own-unit') {
		if (unit === 'in') return 'inch-slip';
		return /h$/u.test(unit) && unit.length > 1 ? 'ampere-hours-mixed' : 'hours-for-seconds';
	}
	const size = Math.abs(fault.power);
	const si = siUnitOf(exercise, symbol);
	if (si === 'm^2') return size === 3 ? 'square-millimetres-by-thousand' : 'millimetres-left-in';
	if (/^m[AVΩW]$/u.test(unit)) return size === 3 ? 'milli-unconverted' : 'prefix-wrong-way';
	if (unit === 'g' && size === 3) return 'gram-kilogram-slip';
	if (si === 'm' && size === 2) return 'centimetre-slip';
	if (si === 'm' && size === 3) return 'millimetres-left-in';
	if (unit.startsWith('k') && size === 3) return 'kilo-slip';
	return 'miscopied-number';
}
