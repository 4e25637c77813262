import { plainSuperscript } from './characters.ts';

export type DecimalSign = '.' | ',';

/** A number found in plain text, and how it was written. */
export interface ReadNumber {
	readonly value: number;
	/** Where it ends in the plain text. */
	readonly end: number;
	/** Figures written, from the first that is not zero. */
	readonly figures: number;
}

export type NumberReading =
	| { readonly kind: 'number'; readonly number: ReadNumber }
	/** One mark before exactly three digits: it may part the decimals or the thousands. */
	| { readonly kind: 'ambiguous'; readonly readings: readonly [number, number]; readonly end: number }
	| { readonly kind: 'none' };

const none: NumberReading = { kind: 'none' };

const simpleFractions: Readonly<Record<string, number>> = {
	'½': 1 / 2,
	'¼': 1 / 4,
	'¾': 3 / 4,
	'⅓': 1 / 3,
	'⅔': 2 / 3,
	'⅕': 1 / 5,
	'⅛': 1 / 8,
	'⅜': 3 / 8,
	'⅝': 5 / 8,
	'⅞': 7 / 8,
};

/**
 * Reads the number that begins at a place of plain text: `4.8`, `4,8`, `1 200`, `1.2×10^-3`, `3e-7`, `3/4`, `2½`.
 *
 * @param text plain text (see characters.ts)
 * @param start where the number or its sign begins
 * @param decimalSign the decimal sign of the page
 */
export function readNumberAt(text: string, start: number, decimalSign: DecimalSign): NumberReading {
	const sign = /^[+-]? ?/.exec(text.slice(start))?.[0] ?? '';
	const isNegative = sign.startsWith('-');
	const reading = readUnsigned(text, start + sign.length, decimalSign);
	if (!isNegative) return reading;
	if (reading.kind === 'number') return number({ ...reading.number, value: -reading.number.value });
	if (reading.kind === 'ambiguous') {
		return { ...reading, readings: [-reading.readings[0], -reading.readings[1]] };
	}
	return reading;
}

function readUnsigned(text: string, start: number, decimalSign: DecimalSign): NumberReading {
	const bare = /^(?:EE?|10) ?(?:\^|\*\*|(?=[⁻⁺⁰¹²³⁴-⁹]))/.test(text.slice(start))
		? readExponent(`×${text.slice(start)}`)
		: undefined;
	if (bare !== undefined) return number({ value: 10 ** bare.exponent, end: start + bare.length - 1, figures: 1 });
	const lone = simpleFractions[text.charAt(start)];
	if (lone !== undefined) return number({ value: lone, end: start + 1, figures: 3 });
	const written = writtenDigits(text.slice(start));
	if (written === undefined) return none;
	const mantissa = readMantissa(written, decimalSign);
	if (mantissa === undefined) return none;
	const end = start + written.length;
	const exponent = readExponent(text.slice(end));
	if (exponent !== undefined) {
		// grouped thousands never carry a power of ten
		const value = Number(`${mantissa.plain}e${exponent.exponent}`);
		return number({ value, end: end + exponent.length, figures: figuresOf(mantissa.plain) });
	}
	if (mantissa.grouped !== undefined) {
		return { kind: 'ambiguous', readings: [Number(mantissa.plain), Number(mantissa.grouped)], end };
	}
	const value = Number(mantissa.plain);
	return withFraction(text, { value, end, figures: figuresOf(mantissa.plain) });
}

/** The longest run of digits, decimal signs and digit groups that makes one number. */
function writtenDigits(text: string): string | undefined {
	const grouped = /^\d{1,3}(?:[ ']\d{3})+(?:[.,\u066B]\d+(?: \d+)*)?(?![\d])/.exec(text)?.[0];
	if (grouped !== undefined) return grouped;
	const raised = /^\d+·\d+(?![\d]|[.,^]| ?\*\*|[⁻⁺⁰¹²³⁴-⁹])/.exec(text)?.[0];
	if (raised !== undefined) return raised;
	return /^(?:\d[\d.,\u066B]*(?: \d{3}(?= \d{3}|(?![\d]))(?<=[.,]\d{3} \d{3}))*|[.,\u066B]\d+)/.exec(text)?.[0];
}

interface Mantissa {
	/** Digits with a point for the decimals. */
	readonly plain: string;
	/** The other reading, when the mark may part thousands. */
	readonly grouped?: string;
}

function readMantissa(written: string, decimalSign: DecimalSign): Mantissa | undefined {
	const isGroupedBySpace = /^\d{1,3}[ ']/.test(written);
	const digits = written.replace(/[ ']/g, '').replace(/[·\u066B]/, '.');
	if (/^\d+$/.test(digits)) return { plain: digits };
	const marks = digits.replace(/\d/g, '');
	if (marks.length === 1) {
		const [before = '', after = ''] = digits.split(/[.,]/);
		const plain = `${before === '' ? '0' : before}.${after === '' ? '0' : after}`;
		const isClear =
			isGroupedBySpace ||
			after.length !== 3 ||
			marks === decimalSign ||
			!/^[1-9]\d{0,2}$/.test(before) ||
			/[·\u066B]/.test(written) ||
			written.includes(' ');
		return isClear ? { plain } : { plain, grouped: before + after };
	}
	const last = marks.at(-1);
	if (isGroupedBySpace || last === undefined) return undefined;
	const isAllSame = new Set(marks).size === 1;
	const group = marks.charAt(0) === '.' ? '\\.' : ',';
	const whole = isAllSame ? digits : digits.slice(0, digits.lastIndexOf(last));
	if (!new RegExp(`^\\d{1,3}(?:${group}\\d{3})+$`).test(whole)) return undefined;
	const integer = whole.replace(/[.,]/g, '');
	return { plain: isAllSame ? integer : `${integer}.${digits.slice(digits.lastIndexOf(last) + 1) || '0'}` };
}

/** The power of ten after a mantissa: e-3, EE -3, ×10^-3, ·10⁻³, *10**-3. */
function readExponent(text: string): { readonly exponent: number; readonly length: number } | undefined {
	const match =
		/^(?: ?EE? ?|e)([+-]?\d{1,4})(?!\d)/.exec(text) ??
		/^ ?[×x*·X] ?10 ?(?:\^|\*\*) ?\(? ?([+-]? ?\d{1,4})(?!\d) ?\)?/.exec(text) ??
		/^ ?[×x*·X] ?10([⁻⁺]?[⁰¹²³⁴-⁹]{1,4})/.exec(text);
	const written = match?.[1];
	if (match === null || written === undefined) return undefined;
	return { exponent: Number(plainSuperscript(written).replace(/ /g, '')), length: match[0].length };
}

function withFraction(text: string, whole: ReadNumber): NumberReading {
	const rest = text.slice(whole.end);
	const sign = /^ ?([½¼¾⅓⅔⅕⅛⅜⅝⅞])/.exec(rest);
	const simple = simpleFractions[sign?.[1] ?? ''];
	if (sign !== null && simple !== undefined && Number.isInteger(whole.value)) {
		return number({ value: whole.value + simple, end: whole.end + sign[0].length, figures: 3 });
	}
	const mixed = /^ (\d{1,6}) ?\/ ?(\d{1,6})(?![\d.,])/.exec(rest);
	if (mixed !== null && Number.isInteger(whole.value) && Number(mixed[2]) > 0) {
		const value = whole.value + Number(mixed[1]) / Number(mixed[2]);
		return number({ value, end: whole.end + mixed[0].length, figures: 3 });
	}
	const over = /^ ?\/ ?(\d+(?:[.,]\d+)?)(?![\d.,])/.exec(rest);
	const divisor = Number((over?.[1] ?? '').replace(',', '.'));
	// "3/1 m" is a number over a number; "4.8 1/m" is not reached here
	if (over !== null && divisor > 0) {
		return number({
			value: whole.value / divisor,
			end: whole.end + over[0].length,
			figures: Math.max(3, whole.figures),
		});
	}
	return number(whole);
}

function figuresOf(plain: string): number {
	return Math.max(1, plain.replace('.', '').replace(/^0+/, '').length);
}

function number(read: ReadNumber): NumberReading {
	return { kind: 'number', number: read };
}
