import { readUnitText } from '#exercise/unit-text.ts';
import { sameUnitKind } from '#exercise/dimension-check.ts';
import type { NumberStep } from '#exercise/exercise.ts';
import { quantityKinds } from '#exercise/quantity-kind.ts';
import { powerOfTenBetween } from '#exercise/slip/power-of-ten.ts';
import type { StatedValue } from './claim.ts';
import { isClose } from './tolerance.ts';

/** How a stated value stands against what it should be. */
export interface Judgement {
	/** SI, in the unit it was written or has to be judged in */
	readonly value: number;
	readonly isClose: boolean;
	readonly unit: 'right' | 'missing' | 'other-kind' | 'prefix';
}

/** Whether a step's result is a pure number, which needs no unit. */
export function isPure(step: NumberStep): boolean {
	return quantityKinds[step.quantity].unit === '1';
}

/**
 * Judges every form in which a value was written. It counts when one form is right; the unit is that of the last form.
 *
 * @param isFinal a final result without a unit is judged in the unit of the model answer; a middle value in whichever
 * of SI or the step's unit makes it right
 */
export function judge(
	stated: readonly StatedValue[],
	expectations: readonly number[],
	step: NumberStep,
	isFinal: boolean,
): Judgement | undefined {
	const judged = stated.map((form) => judgeForm(form, expectations, step, isFinal));
	const last = judged.at(-1);
	const right = judged.find((form) => form.isClose);
	if (!last || !right) return last;
	const hasUnit = judged.some((form) => form.isClose && form.unit === 'right');
	// a bare number followed by the same with its unit is one answer; a right value then wrongly changed keeps its mark
	if (last.isClose) return { ...last, unit: hasUnit && last.unit === 'missing' ? 'right' : last.unit };
	// a middle value is what it was changed into last
	if (!isFinal && last.unit === 'right' && stated.at(-1)?.unit !== undefined) return last;
	// changed wrongly into the unit asked for: the value is wrong; into another: only the unit
	const isAsked = stated.at(-1)?.factor === (readUnitText(step.unit)?.factor ?? 1);
	if (isFinal && isAsked && stated.at(-1)?.unit !== undefined) return last;
	return { ...right, unit: last.unit === 'right' ? 'prefix' : last.unit };
}

function judgeForm(form: StatedValue, expectations: readonly number[], step: NumberStep, isFinal: boolean): Judgement {
	const model = readUnitText(step.unit)?.factor ?? 1;
	const margin = (step.margin ?? 0) * model * (1 + 1e-9);
	const fits = (factor: number) =>
		expectations.some(
			(expected) => isClose({ ...form, factor }, expected) || Math.abs(form.number * factor - expected) <= margin,
		);
	if (form.unit === undefined) {
		const factors = isFinal && !isPure(step) ? [model] : [model, 1];
		const factor = factors.find(fits) ?? factors[0] ?? 1;
		return { value: form.number * factor, isClose: fits(factor), unit: isPure(step) ? 'right' : 'missing' };
	}
	if (!sameUnitKind(form.unit, step.unit)) {
		return { value: form.number * model, isClose: fits(model), unit: 'other-kind' };
	}
	// a decimal multiple of the unit asked for is that unit; hours for minutes are not
	const isOther = isFinal && !isDecimal(form.factor / model);
	if (isOther && fits(form.factor)) return { value: form.number * form.factor, isClose: false, unit: 'right' };
	if (fits(form.factor)) return { value: form.number * form.factor, isClose: true, unit: 'right' };
	// right number, wrong prefix: the unit goes, the value stays
	const isPrefix = [model, 1].some(
		(factor) => fits(factor) && powerOfTenBetween(form.factor, factor, 1e-9) !== undefined,
	);
	if (isFinal && isPrefix) return { value: form.number * form.factor, isClose: true, unit: 'prefix' };
	return { value: form.number * form.factor, isClose: false, unit: 'right' };
}

function isDecimal(ratio: number): boolean {
	const power = Math.log10(ratio);
	return Math.abs(power - Math.round(power)) < 1e-9;
}
