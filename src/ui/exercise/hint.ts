import { build, replaceNodes, symbolsIn, type Expression } from '#core/expression/expression.ts';
import type { Exercise, NumberStep } from '#exercise/exercise.ts';
import type { Marking } from '#exercise/marking/marking.ts';
import { readUnitText } from '#exercise/unit-text.ts';
import type { Variant } from '#exercise/variant.ts';
import { isDone } from './feedback.ts';

/** The step a hint should speak of: the first one that is not done, else the one with the idea. */
export function hintStep(exercise: Exercise, marking: Marking | undefined): NumberStep | undefined {
	const steps = exercise.steps.filter((step) => step.kind === 'number');
	const open = marking?.steps.find((step) => step.kind === 'number' && !isDone(step))?.find;
	return (
		steps.find(({ find }) => find === open) ?? (marking ? steps.find(({ isIdea }) => isIdea) : steps[0]) ?? steps[0]
	);
}

/** Letters of the step's relation, in order. */
export function neededFor(step: NumberStep): readonly string[] {
	return symbolsIn(step.relations[0].formula);
}

/** The step's formula with numbers put in for the letters that have one; the others stay letters. */
export function putIn(
	step: NumberStep,
	exercise: Exercise,
	variant: Variant,
	found: (symbol: string) => number | undefined,
): Expression {
	return replaceNodes(step.relations[0].formula, (node) => {
		if (node.kind !== 'symbol') return undefined;
		const given = exercise.givens.find(({ symbol }) => symbol === node.name);
		const shown = given && variant.shown[given.symbol];
		if (given && shown !== undefined) return inUnit(shown, given.unit);
		const value = found(node.name);
		const before = exercise.steps.find(({ find }) => find === node.name);
		if (value === undefined || before?.kind !== 'number') return undefined;
		return inUnit(round(value / (readUnitText(before.unit)?.factor ?? 1)), before.unit);
	});
}

/** A number in its unit as a piece of a formula. */
export function inUnit(value: number, unit: string): Expression {
	const number = build.number(value);
	if (unit === '') return number;
	const nowhere = { start: 0, end: 0 };
	return { kind: 'in-unit', span: nowhere, operand: number, unit: { text: unit, factor: 1, span: nowhere } };
}

/** Four figures: one more than results are shown with. */
export function round(value: number): number {
	return Number(value.toPrecision(4));
}
