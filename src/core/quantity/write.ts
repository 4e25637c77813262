import type { DecimalSign } from './read-number.ts';
import { unitOf } from './read.ts';

export interface WriteOptions {
	/** Significant figures, 1…15; three when not given. */
	readonly figures?: number;
	/** A point when not given. */
	readonly decimalSign?: DecimalSign;
	/** Fixed figures after the decimal sign, in place of significant figures. */
	readonly decimals?: number;
	/** Keep the unit as given, without choosing a prefix. */
	readonly keepUnit?: boolean;
	/** How lengths given in `m` are written. */
	readonly lengthUnit?: 'mm' | 'inch';
}

export interface WrittenQuantity {
	readonly number: string;
	/** Empty for a pure number. */
	readonly unit: string;
	readonly text: string;
}

/** Between groups of three digits: a narrow no-break space. */
export const narrowSpace = '\u202F';

/** Between a number and its unit: a no-break space of full width, as the narrow one nearly vanishes in our text face. */
export const unitSpace = '\u00A0';

/** Prefixes tried for each unit, with the smallest number they are written for. */
const choices: Readonly<Record<string, readonly (readonly [symbol: string, from: number])[]>> = {
	m: [
		['km', 1e4],
		['m', 1],
		['mm', 1e-5],
		['µm', 0],
	],
	Ω: prefixed('Ω'),
	A: prefixed('A'),
	V: prefixed('V'),
	W: prefixed('W'),
	J: prefixed('J'),
	C: prefixed('C'),
	s: [
		['s', 0.1],
		['ms', 1e-4],
		['µs', 0],
	],
	'Ω/m': prefixed('Ω/m'),
	'W/m': prefixed('W/m'),
	'Ω·m': [
		['Ω·m', 0.1],
		['mΩ·m', 1e-4],
		['µΩ·m', 1e-7],
		['nΩ·m', 0],
	],
};

function prefixed(symbol: string): readonly (readonly [string, number])[] {
	return [
		[`M${symbol}`, 1e6],
		[`k${symbol}`, 1e3],
		[symbol, 0.1],
		[`m${symbol}`, 1e-4],
		[`µ${symbol}`, 0],
	];
}

/**
 * Writes an SI value with the unit given, as `4.80 Ω` or `554 mm`; see quantityParts.
 *
 * @param value SI value, temperatures in K even for `°C`
 * @param unit a unit as readQuantity takes it; `m`, `Ω`, `A`, `V`, `W`, `J`, `C`, `s`, `Ω/m`, `W/m`, `Ω·m` get the
 * prefix that suits the value, every other unit is kept; an empty text or `1` writes a pure number
 * @throws RangeError for a value that is not finite, an unknown unit or figures outside 1…15
 */
export function writeQuantity(value: number, unit: string, options: WriteOptions = {}): string {
	return quantityParts(value, unit, options).text;
}

/** The parts of a written quantity, for typesetting number and unit apart. */
export function quantityParts(value: number, unit: string, options: WriteOptions = {}): WrittenQuantity {
	if (!Number.isFinite(value)) throw new RangeError(`cannot write ${value} ${unit}`);
	const symbol = options.lengthUnit === 'inch' && unit === 'm' ? 'in' : unit;
	if (symbol === '' || symbol === '1') {
		const number = writeNumber(value, options);
		return { number, unit: '', text: number };
	}
	const figures = options.figures ?? 3;
	const chosen = options.keepUnit === true ? symbol : suitedUnit(value, symbol, figures);
	const { factor, zero } = unitOf(chosen);
	const number = writeNumber(clean((value - zero) / factor), options);
	return { number, unit: chosen, text: `${number}${unitSpace}${chosen}` };
}

function suitedUnit(value: number, symbol: string, figures: number): string {
	const tried = choices[symbol];
	if (tried === undefined || value === 0) return symbol;
	// rounding first, so that 0.9996 m is 1.00 m and not 1000 mm
	const rounded = Math.abs(Number(value.toPrecision(Math.min(15, Math.max(1, figures)))));
	return tried.find(([, from]) => rounded >= from)?.[0] ?? symbol;
}

/**
 * Writes a number with significant figures: digits in groups of three from five digits on, powers of ten outside
 * 0.0001…9 999 999, U+2212 for minus.
 *
 * @throws RangeError for a number that is not finite, or figures outside 1…15
 */
export function writeNumber(value: number, options: WriteOptions = {}): string {
	const figures = options.figures ?? 3;
	if (!Number.isFinite(value)) throw new RangeError(`cannot write ${value}`);
	if (!Number.isInteger(figures) || figures < 1 || figures > 15)
		throw new RangeError(`figures are 1 to 15, got ${figures}`);
	const sign = options.decimalSign ?? '.';
	const size = Math.abs(value);
	if (options.decimals !== undefined) return withSign(value, grouped(size.toFixed(options.decimals), sign));
	if (size === 0) return '0';
	const exponential = size.toExponential(figures - 1);
	const [mantissa = '', power = ''] = exponential.split('e');
	const exponent = Number(power);
	if (exponent < -4 || exponent > 6) {
		return withSign(value, `${mantissa.replace('.', sign)}${narrowSpace}×${narrowSpace}10${superscript(exponent)}`);
	}
	const plain = Number(exponential).toFixed(Math.max(0, figures - 1 - exponent));
	return withSign(value, grouped(plain, sign));
}

/**
 * A value with its uncertainty, as `1.00 ± 0.06`: the uncertainty with one figure, two where the first is a 1, and the
 * value rounded at the same place. Common practice, no source.
 *
 * @param uncertainty > 0, in the unit of the value
 * @throws RangeError for a value that is not finite or an uncertainty that is not above zero
 */
export function writeUncertain(value: number, uncertainty: number, decimalSign: DecimalSign = '.'): string {
	if (!(uncertainty > 0) || !Number.isFinite(uncertainty)) throw new RangeError(`no uncertainty: ${uncertainty}`);
	const [leading = 0, power = 0] = uncertainty.toExponential(1).split('e').map(Number);
	const place = leading < 2 ? power - 1 : power;
	const step = 10 ** Math.max(0, place);
	const write = (number: number) => writeNumber(Math.round(number / step) * step, { decimals: 0, decimalSign });
	if (place >= 0) return `${write(value)} ± ${write(uncertainty)}`;
	const options = { decimals: -place, decimalSign };
	return `${writeNumber(value, options)} ± ${writeNumber(uncertainty, options)}`;
}

function grouped(plain: string, sign: DecimalSign): string {
	const [whole = '', decimals] = plain.split('.');
	const parted = whole.length < 5 ? whole : whole.replace(/\B(?=(?:\d{3})+$)/g, narrowSpace);
	return decimals === undefined ? parted : `${parted}${sign}${decimals}`;
}

function withSign(value: number, written: string): string {
	const isZero = !/[1-9]/.test(written);
	return value < 0 && !isZero ? `\u2212${written}` : written;
}

function superscript(exponent: number): string {
	const digits = '⁰¹²³⁴⁵⁶⁷⁸⁹';
	return (
		(exponent < 0 ? '⁻' : '') + [...String(Math.abs(exponent))].map((digit) => digits.charAt(Number(digit))).join('')
	);
}

/** Takes off the last binary digits a division by a unit factor leaves, so that 0.55 m is 550 mm. */
function clean(value: number): number {
	return Number(value.toPrecision(15));
}
