import type { Vocabulary } from '#core/expression/expression.ts';
import { normalise } from '#core/expression/token.ts';
import type { Exercise } from '#exercise/exercise.ts';
import { quantityKinds } from '#exercise/quantity-kind.ts';
import { symbolsOf } from '#exercise/symbols.ts';
import { readUnitText } from '#exercise/unit-text.ts';

/** Letters a learner brought in; they stand for whatever was written after their first equals sign. */
export const freePrefix = '?';

/**
 * What names mean in an answer: the letters of the exercise, any usual letter for a quantity that is there once, and
 * letters the learner defines by an equals sign.
 */
export function answerVocabulary(exercise: Exercise, text: string): Vocabulary {
	const names = new Map<string, string>();
	const symbols = symbolsOf(exercise);
	for (const { name } of symbols) names.set(name, name);
	for (const symbol of symbols) {
		const letters: readonly string[] = quantityKinds[symbol.quantity].letters;
		for (const letter of letters) {
			const rivals = symbols.filter(({ quantity }) => spells(quantity, letter));
			if (rivals.length === 1 && !names.has(letter)) names.set(letter, symbol.name);
		}
	}
	// "v/i" in small letters, where no other quantity is meant by them
	for (const [letter, name] of [...names]) {
		const small = letter.toLowerCase();
		if (!names.has(small) && small.length === 1 && /[uvi]/u.test(small)) names.set(small, name);
	}
	const defined = normalise(text).matchAll(/(?<![\p{L}\d.,])(\p{L}(?:_?[\p{L}\d₀-₉]{1,6})?'?)\s*(?::=|=|≈)/gu);
	for (const [, name = ''] of defined) {
		if (!names.has(name) && !ordinaryWords.has(name.toLowerCase())) names.set(name, freePrefix + name);
	}
	// πr², 2πrL: letters of a formula known to everyone
	for (const [, name = ''] of normalise(text).matchAll(
		/(?:π|pi)\s*[·*×]?\s*([rdD])(?![\p{L}\d])|(?<![\p{L}\d])([rdD])(?=²|\^2)/gu,
	)) {
		if (name !== '' && !names.has(name)) names.set(name, freePrefix + name);
	}
	if (/πrL|πrℓ|πrl/u.test(text) && !names.has('r')) names.set('r', `${freePrefix}r`);
	return { symbol: (name) => names.get(name), unit: readUnitText };
}

const ordinaryWords = new Set([
	'so',
	'is',
	'then',
	'and',
	'or',
	'gives',
	'ohm',
	'ohms',
	'volt',
	'volts',
	'amp',
	'amps',
	'pi',
	'sqrt',
]);

function spells(quantity: keyof typeof quantityKinds, letter: string): boolean {
	const letters: readonly string[] = quantityKinds[quantity].letters;
	return letters.includes(letter);
}
