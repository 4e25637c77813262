import type { Span } from '#core/outcome.ts';
import { plainDigits, readNumberAt, type NumberReading, type ReadNumber } from './number.ts';

export type Token =
	| { readonly kind: 'number'; readonly span: Span; readonly number: ReadNumber }
	| { readonly kind: 'word'; readonly span: Span; readonly text: string }
	| { readonly kind: 'operator'; readonly span: Span; readonly text: Operator }
	| { readonly kind: 'relation'; readonly span: Span; readonly text: '=' | '<' | '>' | '<=' | '>=' }
	| { readonly kind: 'break'; readonly span: Span; readonly text: string };

export type Operator = '+' | '-' | '*' | '/' | '^' | '(' | ')' | '√' | '∥';

const operators: Readonly<Record<string, Operator>> = {
	'+': '+',
	'-': '-',
	'*': '*',
	'×': '*',
	'·': '*',
	'⋅': '*',
	'•': '*',
	'/': '/',
	'÷': '/',
	'∕': '/',
	':': '/',
	'^': '^',
	'(': '(',
	'[': '(',
	'{': '(',
	')': ')',
	']': ')',
	'}': ')',
	'√': '√',
	'∥': '∥',
};
const relations: readonly (readonly [string, '=' | '<' | '>' | '<=' | '>='])[] = [
	['<=>', '='],
	['-->', '='],
	['==>', '='],
	['->', '='],
	['=>', '='],
	[':=', '='],
	['==', '='],
	['<=', '<='],
	['>=', '>='],
	['=', '='],
	['≈', '='],
	['≅', '='],
	['→', '='],
	['⇒', '='],
	['⟹', '='],
	['~', '='],
	['≤', '<='],
	['≥', '>='],
	['<', '<'],
	['>', '>'],
];
const wordAt = /(?:[\p{L}°℃Ω%‰∆]|[𝓔ℰ])[\p{L}°₀-₉]*(?:_\{?[\p{L}\d]+\}?|\d+(?![\p{L}.,]))?['′’]?(?:_[\p{L}\d]+)?/uy;
const spokenAt = /(?:divided by|multiplied by|times)(?![\p{L}\d])|per(?=\s*[\d.(])/iuy;
const superscriptAt = /[⁻⁺]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+/uy;
const spaceAt = /[ \t]+/uy;

/**
 * The same text, code unit for code unit, with look-alike signs made one: minus signs, odd spaces, full-width digits,
 * micro and ohm signs. Spans in the result are spans in the original.
 */
export function normalise(text: string): string {
	return text
		.replace(/[−–—‒]/gu, '-')
		.replace(/[\u00a0\u2000-\u200d\u202f\u205f\u2060\u3000\ufeff\t\v\f]/gu, ' ')
		.replace(/\r/gu, ' ')
		.replace(/[！-～]/gu, (sign) => String.fromCharCode(sign.charCodeAt(0) - 0xfee0))
		.replace(/\u2126/gu, 'Ω')
		.replace(/\u03bc/gu, 'µ')
		.replace(/[ʹ´`′]/gu, "'")
		.replace(/∙/gu, '·');
}

/** Cuts a normalised text into tokens. Every sign that means nothing here becomes a break; nothing is thrown away. */
export function tokenise(text: string, reading: NumberReading): readonly Token[] {
	const tokens: Token[] = [];
	const decimalSign = decimalSignOf(text, reading.decimalSign);
	let at = 0;
	while (at < text.length) {
		const space = matchAt(spaceAt, text, at);
		if (space) {
			at += space.length;
			continue;
		}
		const token = tokenAt(text, at, decimalSign, reading, tokens);
		tokens.push(...token);
		at = token.at(-1)?.span.end ?? at + 1;
	}
	return tokens;
}

function tokenAt(
	text: string,
	at: number,
	decimalSign: '.' | ',',
	reading: NumberReading,
	before: readonly Token[],
): readonly Token[] {
	const number = readNumberAt(text, at, decimalSign, reading);
	if (number) return [{ kind: 'number', span: number.span, number }];
	const raised = matchAt(superscriptAt, text, at);
	if (raised) return superscript(raised, at);
	for (const [written, meaning] of relations) {
		if (text.startsWith(written, at)) {
			return [{ kind: 'relation', span: { start: at, end: at + written.length }, text: meaning }];
		}
	}
	for (const [written, meaning] of [
		['**', '^'],
		['||', '∥'],
		['//', '∥'],
	] as const) {
		if (text.startsWith(written, at)) return [{ kind: 'operator', span: { start: at, end: at + 2 }, text: meaning }];
	}
	// "R: 4.8 Ω" names a value, "U : I" divides
	if (text.charAt(at) === ':' && before.at(-1)?.kind === 'word' && before.at(-1)?.span.end === at) {
		return [{ kind: 'relation', span: { start: at, end: at + 1 }, text: '=' }];
	}
	const operator = operators[text.charAt(at)];
	if (operator) return [{ kind: 'operator', span: { start: at, end: at + 1 }, text: operator }];
	// 2.5x4: a lone x behind something that can be multiplied
	if (/[xX]/u.test(text.charAt(at)) && isValueEnd(before.at(-1)) && !/[\p{L}_]/u.test(text.charAt(at + 1))) {
		return [{ kind: 'operator', span: { start: at, end: at + 1 }, text: '*' }];
	}
	const spoken = matchAt(spokenAt, text, at);
	if (spoken) {
		return [
			{ kind: 'operator', span: { start: at, end: at + spoken.length }, text: /^[dp]/iu.test(spoken) ? '/' : '*' },
		];
	}
	const word = matchAt(wordAt, text, at);
	if (word) return [{ kind: 'word', span: { start: at, end: at + word.length }, text: word }];
	const width = (text.codePointAt(at) ?? 0) > 0xffff ? 2 : 1;
	return [{ kind: 'break', span: { start: at, end: at + width }, text: text.slice(at, at + width) }];
}

function isValueEnd(token: Token | undefined): boolean {
	return token?.kind === 'number' || token?.kind === 'word' || (token?.kind === 'operator' && token.text === ')');
}

function superscript(written: string, at: number): readonly Token[] {
	const span = { start: at, end: at + written.length };
	const number = { value: Number(plainDigits(written)), figures: 15, span };
	return [
		{ kind: 'operator', span, text: '^' },
		{ kind: 'number', span, number },
	];
}

// 2,5 V beside 1,234 A shows which sign is the decimal one
function decimalSignOf(text: string, pageSign: '.' | ','): '.' | ',' {
	const certain = (sign: string) =>
		new RegExp(`(?<![\\d.,])(?:\\d+[${sign}](?:\\d{1,2}|\\d{4,})|0[${sign}]\\d+)(?![\\d.,]\\d|\\d)`, 'u');
	const hasPoint = certain('.').test(text);
	const hasComma = certain(',').test(text);
	if (hasPoint === hasComma) return pageSign;
	return hasPoint ? '.' : ',';
}

function matchAt(pattern: RegExp, text: string, at: number): string | undefined {
	pattern.lastIndex = at;
	return pattern.exec(text)?.[0];
}
