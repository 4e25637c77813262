import type { Exercise } from '#exercise/exercise.ts';
import type { Variant } from '#exercise/variant.ts';
import { markChoices, withoutItems, type MarkedChoice } from './choice.ts';
import { readClaims, type Reading } from './claim.ts';
import { figuresMark, figuresSlip } from './figures.ts';
import { isPure } from './judge.ts';
import type { FoundSlip, MarkedFinal, MarkedLine, MarkedStep, Marking, MarkOptions, Remark } from './marking.ts';
import { Progress } from './progress.ts';
import type { StepProgress } from './step-progress.ts';
import { answerVocabulary } from './vocabulary.ts';

/** An answer longer than this is cut off, with a remark. */
export const answerLimit = { characters: 2000, lines: 40 } as const;

/**
 * Marks a worked answer. Marks are only added: a method mark and an accuracy mark for each step, one for each choice,
 * one for the unit of the result. Values within 1 %, or rightly rounded to two or more figures, count as right; a value
 * that follows from an own earlier wrong one counts as carried forward. Never throws, whatever the text.
 *
 * @param options `choices`: options picked on the page, by step; they go before the words of the answer
 */
export function markAnswer(exercise: Exercise, variant: Variant, text: string, options: MarkOptions): Marking {
	const product = markOnce(exercise, variant, text, options, 'product');
	if (!/\d·\d/u.test(text)) return product;
	// British print raises the decimal point; the reading that earns more is the one that was meant
	const decimal = markOnce(exercise, variant, text, options, 'decimal');
	return decimal.score.got > product.score.got ? decimal : product;
}

function markOnce(
	exercise: Exercise,
	variant: Variant,
	text: string,
	options: MarkOptions,
	raisedPoint: 'product' | 'decimal',
): Marking {
	const kept = text.slice(0, answerLimit.characters).split('\n').slice(0, answerLimit.lines).join('\n');
	const items = Object.values(variant.candidates).flatMap((list) => list.map(({ id }) => id));
	const plain = withoutItems(kept, items);
	const vocabulary = answerVocabulary(exercise, plain);
	const read = (part: string) => readClaims(part, vocabulary, { decimalSign: options.decimalSign, raisedPoint });
	const standing = read(blank(plain, crossedOut));
	const progress = goThrough(exercise, variant, standing);
	const struck = read(outside(plain, crossedOut));
	// crossed out and not replaced: marked
	const isReplaced = struck.claims.length === 0 || progress.steps.some(({ isAttempted }) => isAttempted);
	const marked = isReplaced ? progress : goThrough(exercise, variant, struck);
	const reading = isReplaced ? standing : struck;
	const picked = options.choices ?? {};
	const words = blank(kept, crossedOut);
	const choices = markChoices(exercise, variant, words, picked, marked.valueOf);
	const finals = exercise.wanted.map((find) => finalOf(find, marked, choices));
	const unit = unitMark(exercise, marked, finals);
	const steps = exercise.steps.map((step) => stepOf(step.find, marked, choices));
	const sum = steps.reduce(
		(got, step) => got + Number(step.method) + Number(step.accuracy) + Number(step.figures ?? 0),
		0,
	);
	const of = steps.reduce(
		(points, { kind, figures }) => points + (kind === 'number' ? 2 : 1) + Number(figures !== undefined),
		0,
	);
	// the unit is never the only mark earned
	const hasUnit = unit === true && sum > 0;
	return {
		lines: linesOf(marked, isReplaced ? struck : undefined, reading, kept),
		steps,
		...(unit === undefined ? {} : { unit: hasUnit }),
		finals,
		slips: slipsOf(exercise, marked, choices, finals),
		remarks: remarksOf(exercise, marked, reading, text, finals),
		questions: reading.ambiguous.map(({ span, readings }) => ({
			code: 'ambiguous-number',
			span,
			text: kept.slice(span.start, span.end),
			readings,
		})),
		score: { got: sum + Number(hasUnit), of: of + Number(unit !== undefined) },
		isRight: finals.every(({ isRight }) => isRight) && choices.every(({ isModel }) => isModel),
		...benchOf(exercise, marked),
	};
}

const crossedOut = /~~[^~]*~~/gu;

function blank(text: string, pattern: RegExp): string {
	return text.replace(pattern, (found) => found.replace(/[^\n]/gu, ' '));
}

function outside(text: string, pattern: RegExp): string {
	let kept = '';
	let end = 0;
	for (const match of text.matchAll(pattern)) {
		kept += blank(text.slice(end, match.index), /[^\n]+/gu) + match[0].replaceAll('~', ' ');
		end = match.index + match[0].length;
	}
	return kept;
}

function goThrough(exercise: Exercise, variant: Variant, reading: Reading): Progress {
	const progress = new Progress(exercise, variant);
	reading.claims.forEach((claim, index) => progress.take(claim, index === reading.claims.length - 1));
	return progress;
}

function stepOf(find: string, { steps, modelOf }: Progress, choices: readonly MarkedChoice[]): MarkedStep {
	const choice = choices.find(({ step }) => step.find === find);
	if (choice) {
		return {
			find,
			kind: choice.step.kind,
			isAttempted: choice.chosen !== undefined,
			method: choice.isRight,
			accuracy: false,
			carriedForward: choice.isRight && !choice.isModel,
			...(choice.chosen === undefined ? {} : { chosen: choice.chosen }),
			...(choice.expected === undefined ? {} : { expectedChoice: choice.expected }),
			...(choice.chosen !== undefined && !choice.isRight ? { slip: 'choice-outside-limit' as const } : {}),
		};
	}
	const progress = steps.find(({ step }) => step.find === find);
	const expected = modelOf(find);
	const figures = progress && figuresMark(progress);
	return {
		find,
		kind: 'number',
		isAttempted: progress?.isAttempted ?? false,
		method: progress?.method ?? false,
		accuracy: progress?.accuracy ?? false,
		carriedForward: progress?.carriedForward ?? false,
		...(figures === undefined ? {} : { figures }),
		...(progress?.value === undefined ? {} : { value: progress.value }),
		...(expected === undefined ? {} : { expected }),
		...(progress?.slip ? { slip: progress.slip.names[0] } : {}),
	};
}

function finalOf(find: string, { steps }: Progress, choices: readonly MarkedChoice[]): MarkedFinal {
	const choice = choices.find(({ step }) => step.find === find);
	if (choice) {
		const { isModel, chosen } = choice;
		const isRight = { isValueRight: isModel, isUnitRight: true, isRight: isModel };
		return { find, ...isRight, ...(chosen === undefined ? {} : { chosen }) };
	}
	const progress = steps.find(({ step }) => step.find === find);
	const isStated = progress?.isStated ?? false;
	const isValueRight = isStated && progress !== undefined && progress.accuracy && !progress.carriedForward;
	const isUnitRight = isStated && progress?.unit === 'right';
	return {
		find,
		isValueRight,
		isUnitRight,
		isRight: isValueRight && isUnitRight,
		...(isStated && progress?.value !== undefined ? { value: progress.value } : {}),
		...(progress?.unitText === undefined ? {} : { unit: progress.unitText }),
	};
}

// each wanted result that was given must have its unit
function unitMark(exercise: Exercise, { steps }: Progress, finals: readonly MarkedFinal[]): boolean | undefined {
	const withUnit = steps.filter(({ step }) => exercise.wanted.includes(step.find) && !isPure(step));
	if (withUnit.length === 0) return undefined;
	const given = withUnit.filter(({ isStated }) => isStated);
	return (
		given.length > 0 &&
		given.every(({ step }) => finals.some(({ find, isUnitRight }) => find === step.find && isUnitRight))
	);
}

function slipsOf(
	exercise: Exercise,
	{ steps }: Progress,
	choices: readonly MarkedChoice[],
	finals: readonly MarkedFinal[],
): readonly FoundSlip[] {
	const found: FoundSlip[] = steps.flatMap(({ slip, accuracy, method }) =>
		slip && !(accuracy && method) ? [slip] : [],
	);
	for (const progress of steps) {
		if (!exercise.wanted.includes(progress.step.find) || !progress.isStated) continue;
		const name = unitSlip(progress, finals);
		const value = progress.value === undefined ? {} : { value: progress.value };
		const rounding = figuresSlip(progress);
		if (name && progress.accuracy) found.push({ names: [name], step: progress.step.find, isSeen: true, ...value });
		if (rounding) found.push({ names: [rounding], step: progress.step.find, isSeen: true, ...value });
	}
	for (const { step, chosen, isRight } of choices) {
		if (chosen !== undefined && !isRight) {
			found.push({ names: ['choice-outside-limit'], step: step.find, isSeen: true });
		}
	}
	const isShown = steps.every((step) => step.hasWork || !step.isAttempted);
	if (exercise.mustShowSteps && !isShown) {
		const last = steps.findLast(({ hasWork, isAttempted }) => isAttempted && !hasWork);
		if (last) found.push({ names: ['working-not-shown'], step: last.step.find, isSeen: true });
	}
	const lastWanted = steps.findLast(({ step }) => exercise.wanted.includes(step.find));
	const started = steps.some(({ isAttempted, isStated }) => isAttempted && isStated);
	if (found.length === 0 && started && lastWanted && !lastWanted.isStated) {
		found.push({ names: ['stopped-early'], step: lastWanted.step.find, isSeen: true });
	}
	return found;
}

function unitSlip({ unit }: StepProgress, finals: readonly MarkedFinal[]) {
	if (finals.length === 0) return undefined;
	if (unit === 'missing') return 'unit-missing';
	if (unit === 'other-kind') return 'unit-wrong-kind';
	return unit === 'prefix' ? 'prefix-on-right-number' : undefined;
}

function linesOf(
	{ results }: Progress,
	struck: Reading | undefined,
	reading: Reading,
	text: string,
): readonly MarkedLine[] {
	const lines = results.map(({ claim, verdict, find }): MarkedLine => {
		const words = text.slice(claim.span.start, claim.span.end);
		return {
			span: claim.span,
			text: words,
			understood: claim.members,
			verdict,
			...(find === undefined ? {} : { find }),
		};
	});
	const crossed = (struck?.claims ?? []).map(({ span, members }): MarkedLine => {
		return { span, text: text.slice(span.start, span.end), understood: members, verdict: 'crossed-out' };
	});
	const unread = reading.unread.map((span): MarkedLine => {
		return { span, text: text.slice(span.start, span.end), understood: [], verdict: 'not-understood' };
	});
	return [...lines, ...crossed, ...unread].toSorted((a, b) => a.span.start - b.span.start);
}

function remarksOf(
	exercise: Exercise,
	{ steps, relationOnly, results }: Progress,
	reading: Reading,
	text: string,
	finals: readonly MarkedFinal[],
): readonly Remark[] {
	const lines = text.split('\n').length;
	const isLong = text.length > answerLimit.characters || lines > answerLimit.lines;
	const wantedSteps = steps.filter(({ step }) => exercise.wanted.includes(step.find));
	const hasWork = steps.some((step) => step.hasWork);
	return [
		...(isLong ? [{ code: 'too-long', characters: text.length, lines } as const] : []),
		...relationOnly.map(({ span }) => ({ code: 'relation-only', span }) as const),
		...results.flatMap(({ claim, find }) => {
			const last = claim.stated.at(-1);
			const isFinal = wantedSteps.some(({ step }) => step.find === find);
			if (!last || !isFinal || last.figures < 5 || last.figures > 14) return [];
			return [{ code: 'too-many-figures', span: last.span, figures: last.figures } as const];
		}),
		...results.flatMap(({ claim }) => (claim.isRunOn ? [{ code: 'run-on-equals', span: claim.span } as const] : [])),
		...(!hasWork && finals.some(({ isValueRight, value }) => isValueRight && value !== undefined)
			? [{ code: 'working-not-shown' } as const]
			: []),
		...steps.flatMap(({ step, value }) =>
			value !== undefined && value <= 0 && !isPure(step)
				? [{ code: 'impossible-value', step: step.find, value } as const]
				: [],
		),
		...reading.unread.map((span) => ({ code: 'not-read', span, text: text.slice(span.start, span.end) }) as const),
	];
}

function benchOf(exercise: Exercise, { steps }: Progress): Pick<Marking, 'bench'> {
	const last = steps.findLast(
		({ step, value, isStated }) =>
			exercise.wanted.includes(step.find) && isStated && value !== undefined && !isPure(step),
	);
	return last?.value === undefined ? {} : { bench: { find: last.step.find, value: last.value } };
}
