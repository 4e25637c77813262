import { symbolsIn, type Expression } from '#core/expression/expression.ts';
import type { Exercise, NumberStep } from './exercise.ts';
import type { Variant } from './variant.ts';

/** A line of a worked solution: the relation, the numbers in it, and the result. */
export interface SolutionLine {
	readonly find: string;
	readonly relation: string;
	readonly formula: Expression;
	/** SI, by symbol: what goes into the formula */
	readonly inputs: Readonly<Record<string, number>>;
	readonly unit: string;
	/** SI; left out where the learner is to work it out */
	readonly result?: number;
	readonly isIdea: boolean;
}

/** One step of help with one step of an exercise; the page words it, and opens one rung at a time. */
export type Hint =
	/** which givens matter, and which do not */
	| {
			readonly rung: 'look';
			readonly find: string;
			readonly needed: readonly string[];
			readonly unneeded: readonly string[];
	  }
	| { readonly rung: 'relation'; readonly find: string; readonly relation: string; readonly formula: Expression }
	/** the line with numbers, the result blank */
	| { readonly rung: 'set-out'; readonly find: string; readonly line: SolutionLine }
	/** a choice: what has to be compared */
	| {
			readonly rung: 'compare';
			readonly find: string;
			readonly conditions: readonly string[];
			readonly nearest?: string;
	  }
	/** the whole exercise with other numbers, solved */
	| { readonly rung: 'twin'; readonly find: string };

/**
 * The ladder of help for every step, lowest rung first.
 *
 * @param own the learner's own earlier values, SI; they go before the model's in the line that is set out
 */
export function hintsFor(
	exercise: Exercise,
	variant: Variant,
	own: Readonly<Record<string, number>> = {},
): Readonly<Record<string, readonly Hint[]>> {
	const valueOf = (symbol: string) => own[symbol] ?? variant.expected[symbol] ?? variant.givens[symbol];
	return Object.fromEntries(
		exercise.steps.map((step): readonly [string, readonly Hint[]] => {
			const { find } = step;
			if (step.kind === 'choice') {
				const conditions = step.options.map(({ when }) => when.text);
				return [
					find,
					[
						{ rung: 'compare', find, conditions },
						{ rung: 'twin', find },
					],
				];
			}
			if (step.kind === 'item') {
				return [
					find,
					[
						{ rung: 'compare', find, conditions: [], nearest: step.nearest },
						{ rung: 'twin', find },
					],
				];
			}
			const [{ text, formula }] = step.relations;
			const needed = symbolsIn(formula);
			const visible = exercise.givens.filter(({ isHidden }) => !isHidden);
			const unneeded = visible.filter(({ isUnneeded }) => isUnneeded).map(({ symbol }) => symbol);
			// on the ladder the result stays blank
			const line = lineOf(step, (symbol) => (symbol === find ? undefined : valueOf(symbol)));
			return [
				find,
				[
					{ rung: 'look', find, needed, unneeded },
					{ rung: 'relation', find, relation: text, formula },
					{ rung: 'set-out', find, line },
					{ rung: 'twin', find },
				],
			];
		}),
	);
}

/** The model solution of a variant, line by line, for a worked example or a worked twin. */
export function solutionOf(exercise: Exercise, variant: Variant): readonly SolutionLine[] {
	const valueOf = (symbol: string) => variant.expected[symbol] ?? variant.givens[symbol];
	return exercise.steps.flatMap((step) => (step.kind === 'number' ? [lineOf(step, valueOf)] : []));
}

function lineOf(step: NumberStep, valueOf: (symbol: string) => number | undefined): SolutionLine {
	const [{ text, formula }] = step.relations;
	const inputs = symbolsIn(formula).flatMap((symbol): readonly (readonly [string, number])[] => {
		const value = valueOf(symbol);
		return value === undefined ? [] : [[symbol, value]];
	});
	const result = valueOf(step.find);
	return {
		find: step.find,
		relation: text,
		formula,
		inputs: Object.fromEntries(inputs),
		unit: step.unit,
		isIdea: step.isIdea,
		...(result === undefined ? {} : { result }),
	};
}

/** A seed for the worked twin of a variant: other numbers, and the same ones each time it is opened. */
export function twinSeed(variant: Variant): string {
	return `${variant.seed}/twin`;
}
