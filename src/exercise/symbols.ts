import type { Exercise } from './exercise.ts';
import { quantityKinds, type QuantityKindId } from './quantity-kind.ts';

/** A quantity of an exercise: given, or found by a step. */
export interface ExerciseSymbol {
	readonly name: string;
	readonly quantity: QuantityKindId;
	readonly unit: string;
	readonly isGiven: boolean;
}

/** Every quantity a learner can know of, givens first; hidden ones are left out. */
export function symbolsOf(exercise: Exercise): readonly ExerciseSymbol[] {
	const givens = exercise.givens
		.filter(({ isHidden }) => !isHidden)
		.map(({ symbol, quantity, unit }) => ({ name: symbol, quantity, unit, isGiven: true }));
	const found = exercise.steps.flatMap((step) =>
		step.kind === 'number' ? [{ name: step.find, quantity: step.quantity, unit: step.unit, isGiven: false }] : [],
	);
	return [...givens, ...found];
}

/** The SI unit of a quantity of the exercise; 1 for what is no quantity. */
export function siUnitOf(exercise: Exercise, symbol: string): string {
	const found = [...exercise.givens, ...exercise.steps].find(
		(part) => ('symbol' in part ? part.symbol : part.find) === symbol,
	);
	return found && 'quantity' in found ? quantityKinds[found.quantity].unit : '1';
}

export function kindOf(exercise: Exercise, symbol: string): QuantityKindId | undefined {
	const found = [...exercise.givens, ...exercise.steps].find(
		(part) => ('symbol' in part ? part.symbol : part.find) === symbol,
	);
	return found && 'quantity' in found ? found.quantity : undefined;
}
