import { plainSuperscript } from './characters.ts';
import { dimensions, multiplyDimensions, raiseDimension, type Dimension } from './dimension.ts';
import { namedUnits, prefixes, prefixWords, type NamedUnit } from './unit-table.ts';

/** A unit as typed, worked out: SI value = number · factor + zero. */
export interface Unit {
	readonly factor: number;
	readonly dimension: Dimension;
	/** Zero of the scale in K; 0 for all but °C and °F. */
	readonly zero: number;
}

export type UnitReading =
	{ readonly ok: true; readonly unit: Unit } | { readonly ok: false; readonly start: number; readonly end: number };

interface Cursor {
	readonly text: string;
	place: number;
}

const one: Unit = { factor: 1, dimension: dimensions.number, zero: 0 };

/**
 * Reads a whole unit: symbols or words joined by ·, *, a space, / or “per”, with exponents and brackets, from
 * left to right, as in `Ω·mm²/m`, `W/(m K)`, `ohm per metre`, `W m^-2`.
 *
 * @param text plain text (see characters.ts)
 * @param temperatureFirst read a lone `C` as °C, where a temperature is asked for
 * @returns the unit, or the part of the text nobody knows
 */
export function readUnit(text: string, temperatureFirst = false): UnitReading {
	const trimmed = text.trim();
	if (temperatureFirst && /^(?:c|deg(?:rees?)?\.? ?c|degrees?|deg|°)$/i.test(trimmed)) return readUnit('°C');
	if (temperatureFirst && /^k$/i.test(trimmed)) return readUnit('K');
	if (trimmed === '1') return { ok: true, unit: one };
	const cursor: Cursor = {
		text: text.replace(/degrees? (?=[cf])|deg\.? (?=[cf]\b)/gi, (match) => '°'.padStart(match.length)),
		place: 0,
	};
	const unit = readProduct(cursor, 0);
	if (unit === undefined || cursor.place < text.length) return unknownPart(cursor);
	return { ok: true, unit };
}

function unknownPart({ text, place }: Cursor): UnitReading {
	const rest = text.slice(place);
	const length = /^\s*[^\s·*×/()^]+/.exec(rest)?.[0].length ?? Math.max(1, rest.length);
	const lead = rest.length - rest.trimStart().length;
	return { ok: false, start: Math.min(text.length, place + lead), end: Math.min(text.length, place + length) };
}

function readProduct(cursor: Cursor, depth: number): Unit | undefined {
	if (depth > 4) return undefined;
	let result = one;
	let factors = 0;
	for (;;) {
		const before = cursor.place;
		const operator = take(cursor, /^\s*(?:·|\*(?!\*)|×|\/|per\b)?\s*/i) ?? '';
		const isDivided = /[/p]/i.test(operator);
		if (cursor.place >= cursor.text.length || cursor.text.charAt(cursor.place) === ')') {
			if (operator.trim() !== '') cursor.place = before;
			break;
		}
		if (factors === 0 && /[·*×]/.test(operator)) {
			cursor.place = before;
			return undefined;
		}
		const factor = readPower(cursor, depth);
		if (factor === undefined) return undefined;
		result = combine(result, isDivided ? raise(factor, -1) : factor);
		factors++;
	}
	return factors > 0 ? result : undefined;
}

function readPower(cursor: Cursor, depth: number): Unit | undefined {
	const start = cursor.place;
	const base = readFactor(cursor, depth);
	if (base === undefined) return undefined;
	const exponent = take(cursor, /^(?:(?:\^|\*\*)\(?[+-]?\d\)?|[⁺⁻]?[¹²³⁴]|[23](?!\d))/);
	if (exponent === undefined) return base;
	const value = Number(plainSuperscript(exponent).replace(/[\^*()]/g, ''));
	if (!Number.isInteger(value) || Math.abs(value) > 4) {
		cursor.place = start;
		return undefined;
	}
	return raise(base, value);
}

function readFactor(cursor: Cursor, depth: number): Unit | undefined {
	const start = cursor.place;
	if (take(cursor, /^\(/) !== undefined) {
		const inner = readProduct(cursor, depth + 1);
		if (inner === undefined) return undefined;
		if (take(cursor, /^\s*\)/) === undefined) return undefined;
		return inner;
	}
	if (take(cursor, /^1(?=\s*\/)/) !== undefined) return one;
	const name = take(cursor, /^(?:°\s?[CF]\b|''|["'′%]|[\p{L}µΩ]+)/iu);
	if (name === undefined) return undefined;
	const unit = lookUp(name.replace(/\s/g, ''));
	if (unit !== undefined) return unit;
	// two symbols run together: Ωmm, Wm
	const first = [...name.matchAll(/[ΩWJNV]/g)].map((match) => name.slice(0, match.index + 1));
	const head = first.find((part) => part.length < name.length && lookUp(part) && lookUp(name.slice(part.length)));
	cursor.place = start + (head?.length ?? 0);
	return head === undefined ? undefined : lookUp(head);
}

function lookUp(name: string): Unit | undefined {
	return bySymbol(name) ?? byPrefixedSymbol(name) ?? byWord(name.toLowerCase());
}

function bySymbol(name: string): Unit | undefined {
	const found = namedUnits.find((unit) => unit.symbol === name || unit.otherSymbols.includes(name));
	return found && plainUnit(found, 1);
}

function byPrefixedSymbol(name: string): Unit | undefined {
	const prefix = name.charAt(0);
	const rest = name.slice(1);
	const found = namedUnits.find(
		(unit) => unit.prefixes.includes(prefix) && (unit.symbol === rest || unit.otherSymbols.includes(rest)),
	);
	const factor = prefix === 'K' ? prefixes['k'] : prefixes[prefix];
	return found && factor !== undefined ? plainUnit(found, factor) : undefined;
}

function byWord(name: string): Unit | undefined {
	const found = namedUnits.find((unit) => unit.words.includes(name));
	if (found) return plainUnit(found, 1);
	for (const [word, factor] of Object.entries(prefixWords)) {
		const prefixed = namedUnits.find((unit) => unit.prefixes !== '' && unit.words.includes(name.slice(word.length)));
		if (name.startsWith(word) && prefixed) return plainUnit(prefixed, factor);
	}
	return undefined;
}

function plainUnit({ factor, dimension, zero }: NamedUnit, prefix: number): Unit {
	return { factor: factor * prefix, dimension, zero: zero ?? 0 };
}

/** In a product a degree is a step of temperature, so the zero of its scale does not matter. */
function combine(a: Unit, b: Unit): Unit {
	if (a === one) return b;
	return { factor: a.factor * b.factor, dimension: multiplyDimensions(a.dimension, b.dimension), zero: 0 };
}

function raise(a: Unit, exponent: number): Unit {
	if (exponent === 1) return a;
	return { factor: a.factor ** exponent, dimension: raiseDimension(a.dimension, exponent), zero: 0 };
}

function take(cursor: Cursor, pattern: RegExp): string | undefined {
	const match = pattern.exec(cursor.text.slice(cursor.place));
	if (match === null) return undefined;
	cursor.place += match[0].length;
	return match[0];
}
