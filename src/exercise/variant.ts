import { evaluate } from '#core/expression/evaluate.ts';
import { Random } from '#core/numeric/random.ts';
import type { Cupboard } from './cupboard.ts';
import { itemsOf, propertyOf } from './cupboard-item.ts';
import { readUnitText } from './unit-text.ts';
import type { Condition, CupboardSlot, Exercise, Given, ItemStep, Step } from './exercise.ts';

/** One exercise with its numbers. */
export interface Variant {
	readonly exercise: string;
	readonly seed: string;
	/** SI, by symbol: every given, hidden ones too */
	readonly givens: Readonly<Record<string, number>>;
	/** the numbers as shown, in the unit of the given, by symbol */
	readonly shown: Readonly<Record<string, number>>;
	/** cupboard items drawn, by slot */
	readonly items: Readonly<Partial<Record<CupboardSlot, string>>>;
	/** SI, by symbol: the model value of every number step */
	readonly expected: Readonly<Record<string, number>>;
	/** the right option or item of every choice step */
	readonly choices: Readonly<Record<string, string>>;
	/** items that may be chosen, with the property they are chosen by, SI; by step */
	readonly candidates: Readonly<Record<string, readonly { readonly id: string; readonly value: number }[]>>;
}

/** Draws thrown away before an exercise is said to have no variant. */
const tries = 400;

/**
 * Draws the numbers of an exercise. The same exercise, seed and cupboard always give the same variant.
 *
 * @throws RangeError when none of 400 draws is allowed by the exercise's own keep-out rules
 */
export function drawVariant(exercise: Exercise, seed: string, cupboard: Cupboard): Variant {
	for (let attempt = 0; attempt < tries; attempt += 1) {
		const random = new Random(`${exercise.id}/${seed}/${attempt}`);
		const items: Partial<Record<CupboardSlot, string>> = {};
		for (const slot of slotsOf(exercise)) {
			const allowed = exercise.allowed[slot];
			const found = itemsOf(cupboard, slot).filter(({ id }) => allowed === undefined || allowed.includes(id));
			if (found.length === 0) throw new RangeError(`exercise ${exercise.id}: nothing in the cupboard for ${slot}`);
			items[slot] = random.pick(found).id;
		}
		const variant = settle(exercise, seed, cupboard, items, (given) => drawNumber(given, random));
		if (variant && isAllowed(exercise, variant)) return variant;
	}
	throw new RangeError(`exercise ${exercise.id}: no variant for seed ${seed} in ${tries} draws`);
}

/** The variant of the exercise's own sample, with some of its numbers and items changed. */
export function sampleVariant(
	exercise: Exercise,
	cupboard: Cupboard,
	change: {
		readonly values?: Readonly<Record<string, number>>;
		readonly items?: Readonly<Record<string, string>>;
	} = {},
): Variant {
	const values = { ...exercise.sample.values, ...change.values };
	const items = { ...exercise.sample.items, ...change.items };
	const variant = settle(exercise, 'sample', cupboard, items, (given) => values[given.symbol], values);
	if (!variant) throw new RangeError(`exercise ${exercise.id}: the sample has no solution`);
	return variant;
}

function settle(
	exercise: Exercise,
	seed: string,
	cupboard: Cupboard,
	items: Readonly<Partial<Record<CupboardSlot, string>>>,
	draw: (given: Given) => number | undefined,
	fixed: Readonly<Record<string, number>> = {},
): Variant | undefined {
	const givens: Record<string, number> = {};
	const shown: Record<string, number> = {};
	for (const given of exercise.givens) {
		const factor = readUnitText(given.unit)?.factor ?? 1;
		const number = fixed[given.symbol] ?? numberOf(given, cupboard, items, givens, factor, draw);
		if (number === undefined || !Number.isFinite(number)) return undefined;
		shown[given.symbol] = number;
		givens[given.symbol] = tidy(number * factor);
	}
	return solve(exercise, cupboard, { exercise: exercise.id, seed, givens, shown, items });
}

function numberOf(
	given: Given,
	cupboard: Cupboard,
	items: Readonly<Partial<Record<CupboardSlot, string>>>,
	givens: Readonly<Record<string, number>>,
	factor: number,
	draw: (given: Given) => number | undefined,
): number | undefined {
	const { source } = given;
	if (source.kind === 'value') return source.value;
	if (source.kind === 'cupboard') {
		const value = propertyOf(cupboard, source.slot, items[source.slot] ?? '', source.property);
		return value === undefined ? undefined : tidy(value / factor);
	}
	if (source.kind === 'derived') {
		const exact = evaluate(source.formula, (symbol) => givens[symbol]) / factor;
		return tidy(Math.round(exact / source.step) * source.step);
	}
	return draw(given);
}

function drawNumber({ source }: Given, random: Random): number | undefined {
	if (source.kind === 'list') return random.pick(source.values);
	if (source.kind !== 'range') return undefined;
	const count = Math.floor((source.to - source.from) / source.step + 1e-9) + 1;
	return tidy(source.from + random.below(count) * source.step);
}

function solve(
	exercise: Exercise,
	cupboard: Cupboard,
	drawn: Pick<Variant, 'exercise' | 'seed' | 'givens' | 'shown' | 'items'>,
): Variant | undefined {
	const expected: Record<string, number> = {};
	const choices: Record<string, string> = {};
	const candidates: Record<string, readonly { id: string; value: number }[]> = {};
	const valueOf = (symbol: string): number | undefined => expected[symbol] ?? drawn.givens[symbol];
	for (const step of exercise.steps) {
		if (step.kind === 'number') {
			const value = evaluate(step.relations[0].formula, valueOf);
			if (!Number.isFinite(value)) return undefined;
			expected[step.find] = value;
			continue;
		}
		if (step.kind === 'item') candidates[step.find] = candidatesFor(step, exercise, cupboard);
		const choice = chooseFor(step, valueOf, candidates[step.find] ?? []);
		if (choice === undefined) return undefined;
		choices[step.find] = choice;
	}
	return { ...drawn, expected, choices, candidates };
}

function candidatesFor(step: ItemStep, exercise: Exercise, cupboard: Cupboard) {
	const allowed = exercise.allowed[step.slot];
	return itemsOf(cupboard, step.slot)
		.filter(({ id }) => allowed === undefined || allowed.includes(id))
		.flatMap(({ id }) => {
			const value = propertyOf(cupboard, step.slot, id, step.property);
			return value === undefined ? [] : [{ id, value }];
		});
}

/** What a choice step should come out as for these numbers; undefined when no option fits. */
export function chooseFor(
	step: Exclude<Step, { kind: 'number' }>,
	valueOf: (symbol: string) => number | undefined,
	candidates: readonly { readonly id: string; readonly value: number }[],
): string | undefined {
	if (step.kind === 'choice') return step.options.find(({ when }) => holds(when, valueOf))?.id;
	const wanted = valueOf(step.nearest);
	if (wanted === undefined || !(wanted > 0)) return undefined;
	const distance = (value: number) => Math.abs(Math.log(value / wanted));
	return candidates.toSorted((a, b) => distance(a.value) - distance(b.value))[0]?.id;
}

/** Whether a condition holds; false when a quantity in it is unknown. Equal within rounding counts as equal. */
export function holds(
	{ left, comparison, right }: Condition,
	valueOf: (symbol: string) => number | undefined,
): boolean {
	const [a, b] = [evaluate(left, valueOf), evaluate(right, valueOf)];
	const isEqual = Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));
	if (comparison === '<') return a < b && !isEqual;
	if (comparison === '>') return a > b && !isEqual;
	return comparison === '<=' ? a < b || isEqual : a > b || isEqual;
}

function isAllowed(exercise: Exercise, variant: Variant): boolean {
	const valueOf = (symbol: string): number | undefined => variant.expected[symbol] ?? variant.givens[symbol];
	return !exercise.keepOut.some((condition) => holds(condition, valueOf)) && hasDistinctAnswers(exercise, variant);
}

// a right answer that is 1 or stays the same when squared hides a slip
function hasDistinctAnswers(exercise: Exercise, variant: Variant): boolean {
	return exercise.wanted.every((find) => {
		const value = variant.expected[find];
		if (value === undefined) return true;
		const clash = exercise.slips.some(({ step, relation }) => {
			if (step !== find || !relation) return false;
			const wrong = evaluate(relation.formula, (symbol) => variant.expected[symbol] ?? variant.givens[symbol]);
			return Math.abs(wrong / value - 1) < 0.04;
		});
		return !clash && Math.abs(value - 1) > 0.04;
	});
}

function slotsOf(exercise: Exercise): readonly CupboardSlot[] {
	const named = exercise.givens.flatMap(({ source }) => (source.kind === 'cupboard' ? [source.slot] : []));
	return [...new Set(named)];
}

function tidy(value: number): number {
	return Number(value.toPrecision(12));
}
