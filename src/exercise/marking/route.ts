import { evaluate } from '#core/expression/evaluate.ts';
import type { Expression } from '#core/expression/expression.ts';
import { Random } from '#core/numeric/random.ts';
import type { Exercise, NumberStep } from '#exercise/exercise.ts';
import { mutantsOf } from '#exercise/slip/mutate.ts';
import type { SlipName } from '#exercise/slip/slip-name.ts';
import type { Variant } from '#exercise/variant.ts';

export type Values = Readonly<Record<string, number>>;

/** The exercise gone through with one formula wrong. */
export interface WrongRoute {
	readonly name: SlipName;
	readonly step: string;
	readonly formula: Expression;
	/** what every symbol comes out as, at each trial point */
	readonly points: readonly Values[];
}

/**
 * Trial points: sets of numbers that fit the relations of the exercise but no others. A working that gives the right
 * number at all of them is the right formula, however it is written.
 */
export interface Routes {
	readonly steps: readonly NumberStep[];
	readonly right: readonly Values[];
	readonly wrong: readonly WrongRoute[];
	/** what each wrong formula gives with the numbers of the variant, SI */
	readonly results: readonly Values[];
}

export function routesOf(exercise: Exercise, variant: Variant): Routes {
	const steps = exercise.steps.filter((step) => step.kind === 'number');
	const random = new Random(`routes/${exercise.id}`);
	const draws = [1, 2, 3].map(() =>
		Object.fromEntries(
			// between the given number and 1.25 times it, so that differences keep their sign
			Object.entries(variant.givens).map(([symbol, value]) => [symbol, value * (1 + 0.25 * random.next())]),
		),
	);
	const wrong = steps.flatMap((step) =>
		mutantsOf(step, exercise).map(({ name, formula }) => ({ name, step: step.find, formula })),
	);
	return {
		steps,
		right: draws.map((givens) => solve(steps, givens)),
		wrong: wrong.map((route) => ({ ...route, points: draws.map((givens) => solve(steps, givens, route)) })),
		results: wrong.map((route) => solve(steps, variant.givens, route)),
	};
}

function solve(
	steps: readonly NumberStep[],
	givens: Values,
	wrong?: { readonly step: string; readonly formula: Expression },
): Values {
	const values: Record<string, number> = { ...givens };
	for (const step of steps) {
		const formula = wrong?.step === step.find ? wrong.formula : step.relations[0].formula;
		values[step.find] = evaluate(formula, (symbol) => values[symbol]);
	}
	return values;
}

/** The steps a step rests on, itself not included. */
export function inputsOf(step: NumberStep, steps: readonly NumberStep[]): ReadonlySet<string> {
	const found = new Set<string>();
	const visit = (node: Expression): void => {
		if (node.kind === 'symbol') {
			const inner = steps.find(({ find }) => find === node.name);
			if (!inner || found.has(inner.find)) return;
			found.add(inner.find);
			visit(inner.relations[0].formula);
		} else if ('left' in node) {
			visit(node.left);
			visit(node.right);
		} else if ('operand' in node) {
			visit(node.operand);
		}
	};
	visit(step.relations[0].formula);
	return found;
}
