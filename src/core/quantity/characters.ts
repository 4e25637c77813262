import type { Span } from '#core/outcome.ts';

/** Typed text with look-alike characters made one, and the place each character came from. */
export interface PlainText {
	readonly text: string;
	/** Index in the typed text of each character, and at the end its length. */
	readonly origin: readonly number[];
}

/**
 * Makes characters that look or mean alike the same: minus signs, spaces, ohm and kelvin signs, both micros,
 * full-width and Arabic digits, primes and quotation marks. Superscripts stay, and zero-width characters go.
 */
export function plainText(typed: string): PlainText {
	let text = '';
	const origin: number[] = [];
	for (let i = 0; i < typed.length; i++) {
		const plain = plainCharacter(typed.charAt(i));
		for (const character of plain) {
			text += character;
			origin.push(i);
		}
	}
	origin.push(typed.length);
	return { text, origin };
}

/** The stretch of typed text behind a stretch of plain text. */
export function typedSpan({ origin }: PlainText, start: number, end: number): Span {
	const first = origin[start] ?? 0;
	const last = end > start ? (origin[end - 1] ?? first) + 1 : first;
	return { start: first, end: last };
}

/** A number in superscript digits as plain digits: `⁻⁶` is `-6`. */
export function plainSuperscript(text: string): string {
	return [...text].map((character) => superscripts[character] ?? character).join('');
}

export const superscripts: Readonly<Record<string, string>> = {
	'⁰': '0',
	'¹': '1',
	'²': '2',
	'³': '3',
	'⁴': '4',
	'⁵': '5',
	'⁶': '6',
	'⁷': '7',
	'⁸': '8',
	'⁹': '9',
	'⁻': '-',
	'⁺': '+',
};

const alike: Readonly<Record<string, string>> = {
	'\u2212': '-',
	'\u2013': '-',
	'\u2012': '-',
	'\u2010': '-',
	'\u2011': '-',
	'\uFF0D': '-',
	'\uFF0B': '+',
	'\uFF0E': '.',
	'\uFF0C': ',',
	'\u066B': '\u066B',
	'\u066C': "'",
	'\u2019': "'",
	'\u2018': "'",
	'\u02B9': '′',
	'\u2126': 'Ω',
	'\u212A': 'K',
	'\u03BC': 'µ',
	'\u2103': '°C',
	'\u2109': '°F',
	º: '°',
	'˚': '°',
	'\u22C5': '·',
	'\u2219': '·',
	'\u2022': '·',
	'\u2027': '·',
	'\u2215': '/',
	'\u2044': '/',
	'\u2236': ':',
	'\u201C': '"',
	'\u201D': '"',
	'\u2033': '"',
	'\uFF05': '%',
	'\u2715': '×',
	'\u2A2F': '×',
};

function plainCharacter(character: string): string {
	const known = alike[character];
	if (known !== undefined) return known;
	if (/[\u200B-\u200F\u2060\uFEFF\u00AD]/u.test(character)) return '';
	if (/\s/u.test(character)) return ' ';
	const code = character.charCodeAt(0);
	for (const zero of [0xff10, 0x0660, 0x06f0]) {
		if (code >= zero && code <= zero + 9) return String(code - zero);
	}
	return character;
}
