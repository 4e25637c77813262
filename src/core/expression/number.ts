import type { Span } from '#core/outcome.ts';

/** A number found in a text, before any unit. `code` marks the letter-and-digit code of resistors: its unit is the ohm. */
export interface ReadNumber {
	readonly value: number;
	readonly figures: number;
	readonly span: Span;
	readonly otherReading?: number;
	readonly isResistorCode?: true;
}

export interface NumberReading {
	/** the decimal sign of the page */
	readonly decimalSign: '.' | ',';
	/** whether 2·5 is read as 2.5 (British print) or as a product */
	readonly raisedPoint?: 'decimal' | 'product';
}

// L is 10⁻³ because M is taken for mega: IEC 60062
const codeLetters: Readonly<Record<string, number>> = { L: 1e-3, R: 1, K: 1e3, k: 1e3, M: 1e6, G: 1e9 };
const fractions: Readonly<Record<string, number>> = {
	'½': 0.5,
	'¼': 0.25,
	'¾': 0.75,
	'⅓': 1 / 3,
	'⅔': 2 / 3,
	'⅛': 0.125,
};
const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹';

const resistorCode = /(\d{1,3})([LRKkMG])(\d{1,3})(?![\p{L}\d])/uy;
const mixedFraction = /(\d{1,4})?\s?([½¼¾⅓⅔⅛])/uy;
const spacedFraction = /(\d{1,3}) (\d{1,2})\/(\d{1,2})(?![\d.,/])/uy;
const grouped = /\d{1,3}(?:([ '’])\d{3})(?:\1\d{3})*(?![\d])(?:[.,]\d+)?/uy;
const marked = /\d+(?:[.,]\d+)+|\d+[.,]?(?!\d)|[.,]\d+|\d+/uy;
const raised = /\d+·\d+/uy;
const exponent = /(?:[eE]([-+]?\d{1,3})|\s?EE\s?([-+]?\d{1,3}))(?![\d\p{L}])/uy;
const timesTen =
	/\s?(?:[×xX*·⋅])\s?10(?:\s?(?:\^|\*\*)\s?(?:\(\s?([-+]?\d{1,3})\s?\)|([-+]?\d{1,3}))|([⁻⁺]?[⁰¹²³⁴⁵⁶⁷⁸⁹]{1,3}))/uy;

/** The number that starts exactly at `start` of an already normalised text, or undefined. */
export function readNumberAt(
	text: string,
	start: number,
	decimalSign: '.' | ',',
	reading: NumberReading,
): ReadNumber | undefined {
	const code = matchAt(resistorCode, text, start);
	if (code) {
		const digits = `${code[1]}${code[3]}`;
		const value = Number(`${code[1]}.${code[3]}`) * (codeLetters[code[2] ?? ''] ?? 1);
		return { value, figures: countFigures(digits), span: spanOf(code, start), isResistorCode: true };
	}
	const fraction = matchAt(mixedFraction, text, start);
	if (fraction) {
		const value = Number(fraction[1] ?? 0) + (fractions[fraction[2] ?? ''] ?? 0);
		return { value, figures: 15, span: spanOf(fraction, start) };
	}
	const spaced = matchAt(spacedFraction, text, start);
	if (spaced && Number(spaced[2]) < Number(spaced[3])) {
		const value = Number(spaced[1]) + Number(spaced[2]) / Number(spaced[3]);
		return { value, figures: 15, span: spanOf(spaced, start) };
	}
	const mantissa = readMantissa(text, start, decimalSign, reading);
	return mantissa && withPowerOfTen(text, mantissa);
}

function readMantissa(
	text: string,
	start: number,
	decimalSign: '.' | ',',
	reading: NumberReading,
): ReadNumber | undefined {
	const point = reading.raisedPoint === 'decimal' ? matchAt(raised, text, start) : undefined;
	if (point) return plain(point[0].replace('·', '.'), spanOf(point, start));
	const groups = matchAt(grouped, text, start);
	if (groups) return plain(groups[0].replace(/[ '’]/gu, '').replace(',', '.'), spanOf(groups, start));
	const match = matchAt(marked, text, start);
	if (!match) return undefined;
	const span = spanOf(match, start);
	const written = match[0];
	const marks = written.replace(/\d/gu, '');
	if (marks.length === 0) return plain(written, span);
	// a mark with nothing behind it ends a sentence unless the text runs on: "5." is 5
	if (/[.,]$/u.test(written)) {
		const isInFormula = /^\s?[-+*/×÷=^)]/u.test(text.slice(span.end, span.end + 2));
		return plain(written.slice(0, -1), { start, end: isInFormula ? span.end : span.end - 1 });
	}
	if (marks.length > 1) return readManyMarks(written, span);
	if (marks !== decimalSign && /^[1-9]\d{0,2}[.,]\d{3}$/u.test(written)) {
		const group = plain(written.replace(/[.,]/u, ''), span);
		return { ...group, otherReading: Number(written.replace(',', '.')) };
	}
	return plain(written.replace(',', '.'), span);
}

// 1,234,567 and 1,234.5: all marks but a last, different one are groups
function readManyMarks(written: string, span: Span): ReadNumber | undefined {
	const last = Math.max(written.lastIndexOf('.'), written.lastIndexOf(','));
	const lastMark = written.charAt(last);
	const head = written.slice(0, last);
	if (head.includes(lastMark)) {
		const groups = written.split(lastMark);
		if (groups.slice(1).every((group) => /^\d{3}$/u.test(group))) return plain(groups.join(''), span);
		// two numbers run together, as in a date: only the first piece is a number
		const first = groups[0] ?? '';
		return plain(first, { start: span.start, end: span.start + first.length });
	}
	return plain(`${head.replace(/[.,]/gu, '')}.${written.slice(last + 1)}`, span);
}

function withPowerOfTen(text: string, mantissa: ReadNumber): ReadNumber {
	const tail = matchAt(exponent, text, mantissa.span.end) ?? matchAt(timesTen, text, mantissa.span.end);
	if (!tail) return mantissa;
	const power = Number(plainDigits(tail[1] ?? tail[2] ?? tail[3] ?? '0'));
	const end = mantissa.span.end + tail[0].length;
	const { otherReading, ...rest } = mantissa;
	const scaled = Number(`${mantissa.value}e${power}`);
	const value = Number.isNaN(scaled) ? mantissa.value * 10 ** power : scaled;
	const moved = { ...rest, value, span: { start: mantissa.span.start, end } };
	return otherReading === undefined ? moved : { ...moved, otherReading: otherReading * 10 ** power };
}

/** Superscript digits and signs as plain ones. */
export function plainDigits(text: string): string {
	return [...text]
		.map((sign) => {
			if (sign === '⁻') return '-';
			if (sign === '⁺') return '+';
			const digit = superscripts.indexOf(sign);
			return digit < 0 ? sign : String(digit);
		})
		.join('');
}

function plain(digits: string, span: Span): ReadNumber {
	return { value: Number(digits), figures: countFigures(digits), span };
}

/** Significant figures of a decimal numeral as written: leading zeros do not count, trailing zeros do. */
export function countFigures(digits: string): number {
	const figures = digits.replace(/\D/gu, '').replace(/^0+/u, '');
	return Math.max(1, figures.length);
}

function matchAt(pattern: RegExp, text: string, start: number): RegExpExecArray | undefined {
	pattern.lastIndex = start;
	return pattern.exec(text) ?? undefined;
}

function spanOf(match: RegExpExecArray, start: number): Span {
	return { start, end: start + match[0].length };
}
