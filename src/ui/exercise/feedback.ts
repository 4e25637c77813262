import { writeNumber } from '#core/quantity/write.ts';
import type { Exercise } from '#exercise/exercise.ts';
import type { FoundSlip, MarkedStep, Marking } from '#exercise/marking/marking.ts';
import { readUnitText } from '#exercise/unit-text.ts';
import { text } from '#ui/text/en.ts';
import { twinAfterTries } from './attempt.svelte.ts';

/** Stands in a sentence for the letter of the quantity it speaks of. */
export const letterMark = '\u0001';

/** A sentence, and the quantity whose letter stands in it. */
export interface Sentence {
	readonly text: string;
	readonly find?: string;
}

export interface Feedback {
	readonly word: string;
	/** where it went off, or what holds */
	readonly verdict: readonly Sentence[];
	/** what to do next */
	readonly move: readonly Sentence[];
}

const words = text.marking;

/** Verdict and next move in words; the first try says where, the second which slip, the third points to the twin. */
export function feedbackOn(
	exercise: Exercise,
	marking: Marking,
	{ tries, isHelped }: { readonly tries: number; readonly isHelped: boolean },
): Feedback {
	if (marking.questions.length > 0) return { word: words.word.question, verdict: [], move: [] };
	if (marking.isRight) {
		return {
			word: isHelped ? words.word.helped : words.word.right,
			verdict: [],
			move: [{ text: isHelped ? words.moves.fresh : words.moves.next }],
		};
	}
	const unit = unitTrouble(exercise, marking);
	const slips = tries >= 2 && !unit ? marking.slips.slice(0, 2) : [];
	return {
		word: words.word.notYet,
		verdict: [
			...(unit ? [unit] : [...whereItWentOff(marking), ...bareNumber(exercise, marking)]),
			...slips.map(saidOf),
		],
		move: moveAfter(marking, slips, tries, unit !== undefined),
	};
}

function unitTrouble(exercise: Exercise, { finals, steps }: Marking): Sentence | undefined {
	if (!steps.every(isDone)) return undefined;
	const final = finals.find(({ isValueRight, isUnitRight }) => isValueRight && !isUnitRight);
	const step = exercise.steps.find(({ find }) => find === final?.find);
	if (final?.value === undefined || step?.kind !== 'number') return undefined;
	const number = writeNumber(final.value / (readUnitText(step.unit)?.factor ?? 1), { figures: 3 });
	if (final.unit !== undefined && final.unit !== '') return { text: words.unitWrong };
	return { text: words.numberRightUnitMissing(number, step.unit) };
}

// a number without its unit is read in the unit of the job, which may be millimetres
function bareNumber(exercise: Exercise, { finals }: Marking): readonly Sentence[] {
	const bare = finals.find(({ value, unit, isValueRight }) => value !== undefined && !unit && !isValueRight);
	const step = exercise.steps.find(({ find }) => find === bare?.find);
	if (step?.kind !== 'number' || step.unit === '' || readUnitText(step.unit)?.factor === 1) return [];
	return [{ text: words.readWithoutUnit(step.unit) }];
}

function whereItWentOff(marking: Marking): readonly Sentence[] {
	const { steps, lines, remarks } = marking;
	const lost = steps.findIndex((step) => !isDone(step));
	const step = steps[lost];
	if (!step) return [{ text: words.moves.again }];
	if (lines.every(({ understood }) => understood.length === 0)) return [{ text: words.nothingRead }];
	if (step.kind !== 'number') return [{ text: step.isAttempted ? words.choiceWrong : words.choiceMissing }];
	if (!step.isAttempted) {
		if (remarks.some(({ code }) => code === 'relation-only')) return [{ text: words.onlyRelation }];
		if (lines.every(({ verdict }) => verdict !== 'wrong'))
			return [{ text: words.missing(letterMark), find: step.find }];
	}
	const sentence = lost === 0 ? words.wentOffAtOnce : words.wentOff;
	const carried = steps.find(({ carriedForward }) => carriedForward);
	return [
		{ text: sentence(letterMark), find: step.find },
		...(carried ? [{ text: words.carriedOn(letterMark), find: carried.find }] : []),
	];
}

function moveAfter(
	{ lines, slips: all }: Marking,
	slips: readonly FoundSlip[],
	tries: number,
	isUnit: boolean,
): readonly Sentence[] {
	const twin: readonly Sentence[] = tries >= twinAfterTries ? [{ text: words.moves.twin }] : [];
	if (lines.every(({ understood }) => understood.length === 0)) return [{ text: words.moves.write }, ...twin];
	if (isUnit) {
		const name = all.find(({ names }) => names[0].startsWith('unit') || names[0].startsWith('prefix'))?.names[0];
		return [{ text: words.slip[name ?? 'unit-missing'].move }, ...twin];
	}
	const [first] = slips;
	return [{ text: first ? words.slip[first.names[0]].move : words.moves.again }, ...twin];
}

/** A slip in words; where the number alone cannot tell two apart, both are offered. */
function saidOf({ names, isSeen }: FoundSlip): Sentence {
	const [first, second] = names;
	if (isSeen || second === undefined) {
		return { text: isSeen ? words.slip[first].said : `${words.maybe}${words.slip[first].said}` };
	}
	return { text: `${words.maybe}${words.slip[first].said} ${words.or}${words.slip[second].said}` };
}

/** Whether a step has all its marks. */
export function isDone({ kind, method, accuracy }: MarkedStep): boolean {
	return method && (kind !== 'number' || accuracy);
}
