import { evaluate } from '#core/expression/evaluate.ts';
import { partsOf } from '#core/expression/expression.ts';
import type { Exercise, Step } from '#exercise/exercise.ts';
import { chooseFor, type Variant } from '#exercise/variant.ts';
import type { Claim } from './claim.ts';
import { isClose, isNear } from './tolerance.ts';

type ChoiceStep = Exclude<Step, { kind: 'number' }>;

/** A choice found in the words of an answer, and whether it is right. */
export interface MarkedChoice {
	readonly step: ChoiceStep;
	readonly chosen?: string;
	/** right for the learner's own numbers */
	readonly isRight: boolean;
	/** right for the numbers of the model */
	readonly isModel: boolean;
	readonly expected?: string;
}

function choiceSteps(exercise: Exercise): readonly ChoiceStep[] {
	return exercise.steps.flatMap((step) => (step.kind === 'number' ? [] : [step]));
}

/** Marks every choice: by the option that was picked on the page, else by the words of the answer. */
export function markChoices(
	exercise: Exercise,
	variant: Variant,
	text: string,
	picked: Readonly<Record<string, string>>,
	valueOf: (symbol: string) => number | undefined,
): readonly MarkedChoice[] {
	return choiceSteps(exercise).map((step) => {
		const chosen = picked[step.find] ?? choiceIn(text, step, variant);
		const expected = variant.choices[step.find];
		const own = chooseFor(step, valueOf, variant.candidates[step.find] ?? []);
		return {
			step,
			isModel: chosen !== undefined && chosen === expected,
			isRight: chosen !== undefined && (chosen === own || chosen === expected),
			...(chosen === undefined ? {} : { chosen }),
			...(expected === undefined ? {} : { expected }),
		};
	});
}

/** Whether a claim works out what a choice is held against, such as 0.8 times the label. */
export function isSideOfChoice(
	{ works, stated }: Claim,
	exercise: Exercise,
	valueOf: (symbol: string) => number | undefined,
): boolean {
	const last = stated.at(-1);
	const [work] = works;
	if (!last || !work) return false;
	return choiceSteps(exercise)
		.flatMap((step) => (step.kind === 'choice' ? step.options : []))
		.flatMap(({ when }) => [when.left, when.right])
		.filter((side) => partsOf(side).length > 0)
		.map((side) => evaluate(side, valueOf))
		.some((value) => isClose(last, value) && isNear(evaluate(work, valueOf), value));
}

/** The option named last in a text; of options named at one place, the one in the most words. */
function choiceIn(text: string, step: ChoiceStep, variant: Variant): string | undefined {
	const plain = text.toLowerCase();
	const found = optionWords(step, variant).flatMap(({ id, word }) => {
		const at = lastPlace(plain, word);
		return at < 0 ? [] : [{ id, at, end: at + word.length }];
	});
	const outer = found.filter(
		(one) =>
			!found.some(
				(other) =>
					other !== one && other.at <= one.at && other.end >= one.end && other.end - other.at > one.end - one.at,
			),
	);
	return outer.toSorted((a, b) => a.at - b.at).at(-1)?.id;
}

function lastPlace(text: string, word: string): number {
	for (let at = text.lastIndexOf(word); at >= 0; at = at === 0 ? -1 : text.lastIndexOf(word, at - 1)) {
		const isWhole = !/[\p{L}\d]/u.test(text.charAt(at - 1)) && !/[\p{L}\d]/u.test(text.charAt(at + word.length));
		if (isWhole) return at;
	}
	return -1;
}

function optionWords(step: ChoiceStep, variant: Variant): readonly { readonly id: string; readonly word: string }[] {
	if (step.kind === 'choice') return step.options.flatMap(({ id, words }) => words.map((word) => ({ id, word })));
	return (variant.candidates[step.find] ?? []).flatMap(({ id }) => itemWords(id).map((word) => ({ id, word })));
}

function itemWords(id: string): readonly string[] {
	const small = id.toLowerCase();
	return [small, small.replace('-', ''), small.replace('-', ' '), small.replace('-', '\u2011')];
}

/** The text with the names of cupboard items blanked out, so that R-40 is not read as R − 40. */
export function withoutItems(text: string, items: readonly string[]): string {
	const ids = items.filter((id) => /\d/u.test(id)).map((id) => id.replace('-', '[-\u2011 ]?'));
	if (ids.length === 0) return text;
	return text.replace(new RegExp(`(?<![\\p{L}\\d])(?:${ids.join('|')})(?![\\p{L}\\d.,])`, 'giu'), (found) =>
		' '.repeat(found.length),
	);
}
