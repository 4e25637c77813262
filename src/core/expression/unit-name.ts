import type { Vocabulary, WrittenUnit } from './expression.ts';
import type { Token } from './token.ts';

/** How many unit symbols one unit may be made of, as in W/(m²·K⁴). */
const partLimit = 6;

// single letters that are quantities far more often than units in this subject
const rarelyUnits = new Set(['d', 't', 'l', 'L', 'r', 'q', 'ρ', 'T', 'S', 'P', 'e', 'E']);

// words of the sentence that happen to be unit symbols
const neverBehindUnits = new Set(['in', 'a', 'at', 'as', 's']);

interface Reading {
	readonly unit: WrittenUnit;
	/** index of the first token after the unit */
	readonly next: number;
}

/**
 * The unit that starts at a token, directly behind a number: Ω, mA, Ω/m, ohm per metre, Ω·mm²/m, A h.
 * The longest row of tokens that names a unit wins, but a spaced bar before a known quantity divides by that quantity.
 */
export function readUnit(tokens: readonly Token[], start: number, vocabulary: Vocabulary): Reading | undefined {
	const first = tokens[start];
	if (first?.kind !== 'word') return undefined;
	if (rarelyUnits.has(first.text) && vocabulary.symbol(first.text) !== undefined) return undefined;
	let best: Reading | undefined;
	let text = '';
	let at = start;
	for (let parts = 0; parts < partLimit; parts += 1) {
		const part = unitPart(tokens, at);
		if (!part) break;
		text += part.text;
		at = part.next;
		const found = vocabulary.unit(text);
		const end = tokens[at - 1]?.span.end ?? first.span.end;
		if (found) best = { unit: { text, factor: found.factor, span: { start: first.span.start, end } }, next: at };
		const joint = jointBetween(tokens, at, vocabulary);
		if (!joint) break;
		text += joint.text;
		at = joint.next;
	}
	return best;
}

function unitPart(tokens: readonly Token[], at: number): { readonly text: string; readonly next: number } | undefined {
	const token = tokens[at];
	if (token?.kind !== 'word') return undefined;
	const power = /^(\p{L}+)(\d)$/u.exec(token.text);
	if (power) return { text: `${power[1]}^${power[2]}`, next: at + 1 };
	const sign = tokens[at + 1];
	if (sign?.kind !== 'operator' || sign.text !== '^') return { text: token.text, next: at + 1 };
	const minus = tokens[at + 2];
	const hasMinus = minus?.kind === 'operator' && minus.text === '-';
	const number = tokens[hasMinus ? at + 3 : at + 2];
	if (number?.kind !== 'number' || !Number.isInteger(number.number.value)) return { text: token.text, next: at + 1 };
	return { text: `${token.text}^${hasMinus ? '-' : ''}${number.number.value}`, next: at + (hasMinus ? 4 : 3) };
}

function jointBetween(
	tokens: readonly Token[],
	at: number,
	vocabulary: Vocabulary,
): { readonly text: string; readonly next: number } | undefined {
	const token = tokens[at];
	const before = tokens[at - 1];
	if (!token || !before) return undefined;
	if (token.kind === 'word') {
		if (token.text === 'per' || token.text === 'pro') return { text: '/', next: at + 1 };
		if (neverBehindUnits.has(token.text)) return undefined;
		return vocabulary.symbol(token.text) === undefined ? { text: '·', next: at } : undefined;
	}
	if (token.kind !== 'operator' || (token.text !== '/' && token.text !== '*')) return undefined;
	const after = tokens[at + 1];
	if (after?.kind !== 'word') return undefined;
	const isSpaced = token.span.start > before.span.end && after.span.start > token.span.end;
	if (isSpaced && vocabulary.symbol(after.text) !== undefined) return undefined;
	return { text: token.text === '/' ? '/' : '·', next: at + 1 };
}
