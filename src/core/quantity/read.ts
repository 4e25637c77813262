import { fail, succeed, type Outcome, type Span } from '#core/outcome.ts';
import { plainText, typedSpan, type PlainText } from './characters.ts';
import { dimensions, isSameDimension, type Dimension } from './dimension.ts';
import { readNumberAt, type DecimalSign } from './read-number.ts';
import { readResistanceCode } from './resistance-code.ts';
import { readUnit, type Unit } from './read-unit.ts';

/** A typed quantity in SI. */
export interface Quantity {
	/** In the SI unit of the dimension; temperatures in K. */
	readonly value: number;
	readonly dimension: Dimension;
	/** The unit as typed, or undefined when the default unit was taken. */
	readonly unit: string | undefined;
	/** The number as typed, before the unit was applied. */
	readonly number: number;
	/** SI value of one of the unit read: a learner's wrong prefix can be told by it. */
	readonly unitFactor: number;
	/** Figures written, from the first that is not zero. */
	readonly figures: number;
	readonly span: Span;
}

export type ReadProblem =
	| { readonly code: 'empty'; readonly span: Span }
	| { readonly code: 'not-a-number'; readonly span: Span; readonly text: string }
	| { readonly code: 'unit-unknown'; readonly span: Span; readonly text: string }
	| { readonly code: 'unit-missing'; readonly span: Span }
	| { readonly code: 'dimension'; readonly span: Span; readonly expected: Dimension; readonly found: Dimension }
	| {
			readonly code: 'ambiguous-number';
			readonly span: Span;
			readonly text: string;
			/** Read with decimals, and read with thousands. */
			readonly readings: readonly [number, number];
	  }
	| { readonly code: 'too-large'; readonly span: Span; readonly limit: number }
	| { readonly code: 'too-long'; readonly span: Span; readonly limit: number };

export interface ReadOptions {
	/** The decimal sign of the page; a point when not given. */
	readonly decimalSign?: DecimalSign;
	/** Taken when no unit is typed, for example `mm`; it also says which dimension is expected. */
	readonly defaultUnit?: string;
	/** The dimension expected; anything goes when neither this nor a default unit is given. */
	readonly dimension?: Dimension;
}

export const longestText = 200;
export const largestValue = 1e30;

/**
 * Reads what a person typed for one quantity: a number in any common way of writing and a unit.
 * Never throws on a text.
 *
 * @throws RangeError only when the default unit is not a unit, which is a mistake of ours
 */
export function readQuantity(typed: string, options: ReadOptions = {}): Outcome<Quantity, ReadProblem> {
	const whole = { start: 0, end: typed.length };
	if (typed.length > longestText) return fail({ code: 'too-long', span: whole, limit: longestText });
	const plain = plainText(typed.normalize('NFC').length === typed.length ? typed.normalize('NFC') : typed);
	const start = /^ *(?:(?:≈|~|ca\.?|about|approx\.?) *)?/i.exec(plain.text)?.[0].length ?? 0;
	const end = plain.text.trimEnd().length;
	if (start >= end) return fail({ code: 'empty', span: whole });
	const fallback = options.defaultUnit === undefined ? undefined : ownUnit(options.defaultUnit);
	const expected = options.dimension ?? fallback?.dimension;
	return readPart({ plain, start, end, expected, fallback, decimalSign: options.decimalSign ?? '.' });
}

interface Part {
	readonly plain: PlainText;
	readonly start: number;
	readonly end: number;
	readonly expected: Dimension | undefined;
	readonly fallback: Unit | undefined;
	readonly decimalSign: DecimalSign;
}

function readPart(part: Part): Outcome<Quantity, ReadProblem> {
	const { plain, start, end, expected, fallback } = part;
	const text = plain.text.slice(0, end);
	const whole = typedSpan(plain, start, end);
	const code = readResistanceCode(text.slice(start), expected);
	if (code !== undefined) {
		return checked(part, { value: code.value, figures: code.figures }, ohm, text.slice(start));
	}
	const clock = readClock(text.slice(start));
	if (clock !== undefined) return checked(part, { value: clock.value, figures: 3 }, clock.unit, clock.symbol);
	const reading = readNumberAt(text, start, part.decimalSign);
	if (reading.kind === 'none') return fail({ code: 'not-a-number', span: whole, text: text.slice(start) });
	if (reading.kind === 'ambiguous') {
		const span = typedSpan(plain, start, reading.end);
		return fail({ code: 'ambiguous-number', span, text: text.slice(start, reading.end), readings: reading.readings });
	}
	const { number } = reading;
	const rest = text.slice(number.end);
	if (rest.trim() === '') {
		if (fallback !== undefined) return checked(part, number, fallback, undefined);
		const isPure = expected !== undefined && isSameDimension(expected, dimensions.number);
		if (isPure) return checked(part, number, pure, undefined);
		return fail({ code: 'unit-missing', span: whole });
	}
	const compound = readCompound(rest, part.decimalSign);
	if (compound !== undefined) {
		const value = number.value * compound.first.factor + Math.sign(number.value || 1) * compound.more;
		return checked(part, { value: value / compound.first.factor, figures: 3 }, compound.first, compound.symbol);
	}
	const unit = readUnit(rest, expected !== undefined && isSameDimension(expected, dimensions.temperature));
	if (!unit.ok) {
		const span = typedSpan(plain, number.end + unit.start, number.end + unit.end);
		const unknown = rest.slice(unit.start, unit.end);
		if (/^ *[\d.,×*·]/.test(rest)) return fail({ code: 'not-a-number', span: whole, text: text.slice(start) });
		return fail({ code: 'unit-unknown', span, text: unknown.trim() || rest.trim() });
	}
	return checked(part, number, unit.unit, rest.trim());
}

function checked(
	{ plain, start, end, expected }: Part,
	number: { readonly value: number; readonly figures: number },
	unit: Unit,
	symbol: string | undefined,
): Outcome<Quantity, ReadProblem> {
	const span = typedSpan(plain, start, end);
	if (expected !== undefined && !isSameDimension(unit.dimension, expected)) {
		return fail({ code: 'dimension', span, expected, found: unit.dimension });
	}
	const value = number.value * unit.factor + unit.zero;
	if (!(Math.abs(value) <= largestValue)) return fail({ code: 'too-large', span, limit: largestValue });
	return succeed({
		value,
		dimension: unit.dimension,
		unit: symbol,
		number: number.value,
		unitFactor: unit.factor,
		figures: number.figures,
		span,
	});
}

const ohm: Unit = { factor: 1, dimension: dimensions.resistance, zero: 0 };
const pure: Unit = { factor: 1, dimension: dimensions.number, zero: 0 };
const minute: Unit = { factor: 60, dimension: dimensions.time, zero: 0 };
const hour: Unit = { factor: 3600, dimension: dimensions.time, zero: 0 };

/** 1:30 h, 2:15 min. */
function readClock(text: string): { readonly value: number; readonly unit: Unit; readonly symbol: string } | undefined {
	const match = /^(\d{1,3}):([0-5]\d) ?(h|min)$/.exec(text);
	if (match === null) return undefined;
	const unit = match[3] === 'h' ? hour : minute;
	return { value: Number(match[1]) + Number(match[2]) / 60, unit, symbol: match[3] ?? '' };
}

/** 1 h 30 min, 5 ft 6 in: a second, smaller unit of the same kind. */
function readCompound(
	rest: string,
	decimalSign: DecimalSign,
): { readonly first: Unit; readonly more: number; readonly symbol: string } | undefined {
	const match = /^ ?(h|hr|hours?|min|minutes?|ft|feet|'|′) ?(?=\d)/.exec(rest);
	if (match === null) return undefined;
	const first = readUnit(match[1] ?? '');
	const second = readNumberAt(rest, match[0].length, decimalSign);
	if (!first.ok || second.kind !== 'number') return undefined;
	const unit = readUnit(rest.slice(second.number.end));
	const isSmaller = unit.ok && unit.unit.factor < first.unit.factor;
	if (!isSmaller || !isSameDimension(unit.unit.dimension, first.unit.dimension)) return undefined;
	return { first: first.unit, more: second.number.value * unit.unit.factor, symbol: rest.trim() };
}

function ownUnit(symbol: string): Unit {
	const reading = readUnit(plainText(symbol).text);
	if (!reading.ok) throw new RangeError(`the default unit ${symbol} is not a unit`);
	return reading.unit;
}

/** The unit behind a symbol this site writes itself. @throws RangeError when there is none */
export const unitOf: (symbol: string) => Unit = ownUnit;
