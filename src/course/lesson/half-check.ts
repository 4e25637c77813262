import { readChains } from '#core/expression/chain.ts';
import { evaluate } from '#core/expression/evaluate.ts';
import type { Expression, Vocabulary } from '#core/expression/expression.ts';
import { parseExpression } from '#core/expression/parse.ts';
import { readUnitText } from '#exercise/unit-text.ts';
import type { LessonRecord } from './schema.ts';

export type HalfWorked = LessonRecord['worked']['half'];

/** How a typed idea step was taken. `value` is what the learner's formula comes to, in SI units. */
export type HalfVerdict =
	| { readonly kind: 'right'; readonly value: number }
	| { readonly kind: 'slip'; readonly value: number; readonly slip: HalfWorked['slips'][number] }
	| { readonly kind: 'other'; readonly value: number }
	| { readonly kind: 'unread' };

/**
 * Judges the idea step of a half-worked example by its value, so that letters, numbers and any order pass alike.
 *
 * @param typed free text, for example "R = U/I" or "5 V / 750 mA"
 * @param decimalSign the sign of the page; the other one is read too where it can mean nothing else
 */
export function checkHalf(half: HalfWorked, typed: string, decimalSign: '.' | ',' = '.'): HalfVerdict {
	const vocabulary = vocabularyOf(half);
	const valueOf = (symbol: string) => half.letters[symbol];
	const members = readChains(typed, vocabulary, { decimalSign }).chains.flatMap((chain) => chain.members);
	const value = members
		.map((member) => evaluate(member, valueOf))
		.filter(Number.isFinite)
		.at(-1);
	if (value === undefined) return { kind: 'unread' };
	const isNear = (expected: number) => Math.abs(value - expected) <= 0.01 * Math.abs(expected);
	if (isNear(formulaValue(half, half.answer))) return { kind: 'right', value };
	const slip = half.slips.find(({ formula }) => isNear(formulaValue(half, formula)));
	return slip ? { kind: 'slip', value, slip } : { kind: 'other', value };
}

/** The value of a formula written in the content. @throws RangeError when it cannot be read or has no value */
export function formulaValue(half: HalfWorked, formula: string): number {
	const parsed = parseExpression(formula, vocabularyOf(half));
	const value = parsed.ok ? valueIn(half, parsed.value) : Number.NaN;
	if (!Number.isFinite(value)) throw new RangeError(`half-worked example: "${formula}" has no value`);
	return value;
}

function valueIn(half: HalfWorked, formula: Expression): number {
	return evaluate(formula, (symbol) => half.letters[symbol]);
}

function vocabularyOf(half: HalfWorked): Vocabulary {
	// R alone is what is looked for: it may be written, and has no value
	const symbols = new Set([...Object.keys(half.letters), 'R']);
	return { symbol: (name) => (symbols.has(name) ? name : undefined), unit: readUnitText };
}
