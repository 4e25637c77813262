import { expect, test } from 'vitest';
import { hashText, mixWord, Random } from '#core/numeric/random.ts';

// FNV-1a, 32 bit: test vectors of the reference code by Fowler, Noll and Vo (from memory)
test.each([
	['', 0x811c9dc5],
	['a', 0xe40c292c],
	['foobar', 0xbf9cf968],
])('the hash of %j is the published one', (text, hash) => expect(hashText(text)).toBe(hash));

// MurmurHash3_x86_32 of the empty key is its finaliser applied to the seed: published values for seeds 0, 1 and 2³² − 1 (from memory)
test.each([
	[0, 0],
	[1, 0x514e28b7],
	[0xffffffff, 0x81f16f39],
])('the finaliser of %d is the published one', (word, mixed) => expect(mixWord(word)).toBe(mixed));

test('the same seed gives the same numbers, another seed others', () => {
	const draw = (seed: string) => {
		const random = new Random(seed);
		return [1, 2, 3].map(() => random.nextWord());
	};
	expect(draw('a')).toEqual(draw('a'));
	expect(draw('a')).not.toEqual(draw('b'));
});

test('numbers fill the interval evenly', () => {
	const random = new Random('even');
	const counts = [0, 0, 0, 0];
	for (let draw = 0; draw < 8000; draw += 1) {
		const box = random.below(4);
		counts[box] = (counts[box] ?? 0) + 1;
	}
	for (const count of counts) expect(Math.abs(count - 2000)).toBeLessThan(200);
});

test('drawing below nothing is a mistake of ours', () => {
	expect(() => new Random(1).below(0)).toThrow(RangeError);
	expect(() => new Random(1).pick([])).toThrow(RangeError);
});
