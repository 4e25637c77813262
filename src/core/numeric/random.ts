/**
 * A small seeded generator of pseudo-random numbers: the same seed always gives the same exercise.
 *
 * SplitMix32: a Weyl sequence of step 0x9E3779B9 followed by the 32-bit finaliser of MurmurHash3.
 * Not for secrets. Period 2³². The finaliser is public domain (A. Appleby, MurmurHash3, 2011; constants from memory).
 */
export class Random {
	#state: number;

	/** @param seed any text or whole number; text is hashed with 32-bit FNV-1a */
	constructor(seed: string | number) {
		this.#state = typeof seed === 'number' ? seed >>> 0 : hashText(seed);
	}

	/** The next whole number from 0 up to and including 2³² − 1. */
	nextWord(): number {
		this.#state = (this.#state + 0x9e3779b9) >>> 0;
		return mixWord(this.#state);
	}

	/** The next number in [0, 1). */
	next(): number {
		return this.nextWord() / 2 ** 32;
	}

	/** A whole number from 0 up to but not including `count`. @throws RangeError unless count is a whole number ≥ 1 */
	below(count: number): number {
		if (!Number.isInteger(count) || count < 1) throw new RangeError(`cannot draw below ${count}`);
		return Math.floor(this.next() * count);
	}

	/** One element of a list. @throws RangeError when the list is empty */
	pick<T>(list: readonly T[]): T {
		const index = this.below(list.length);
		const found = list.slice(index, index + 1);
		for (const item of found) return item;
		throw new RangeError('the list has a hole');
	}
}

/** The 32-bit finaliser of MurmurHash3: a bijection on whole numbers below 2³². */
export function mixWord(word: number): number {
	let mixed = word >>> 0;
	mixed = Math.imul(mixed ^ (mixed >>> 16), 0x85ebca6b);
	mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
	return (mixed ^ (mixed >>> 16)) >>> 0;
}

/**
 * 32-bit FNV-1a over the UTF-8 octets of a text.
 * Offset basis 2166136261, prime 16777619 (Fowler, Noll, Vo; RFC 9923, constants from memory).
 */
export function hashText(text: string): number {
	let hash = 2166136261;
	for (const octet of utf8(text)) hash = Math.imul(hash ^ octet, 16777619);
	return hash >>> 0;
}

function* utf8(text: string): Generator<number> {
	for (const character of text) {
		const code = character.codePointAt(0) ?? 0;
		if (code < 0x80) yield code;
		else if (code < 0x800) yield* [0xc0 | (code >> 6), 0x80 | (code & 63)];
		else if (code < 0x10000) yield* [0xe0 | (code >> 12), 0x80 | ((code >> 6) & 63), 0x80 | (code & 63)];
		else yield* [0xf0 | (code >> 18), 0x80 | ((code >> 12) & 63), 0x80 | ((code >> 6) & 63), 0x80 | (code & 63)];
	}
}
