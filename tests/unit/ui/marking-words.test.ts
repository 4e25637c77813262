import { expect, test } from 'vitest';
import { slipNames } from '#exercise/slip/slip-name.ts';
import { text } from '#ui/text/en.ts';

// the names of the catalogue of slips the course is written after, in its order
const catalogue =
	'quotient-inverted product-for-quotient quotient-for-product unlike-quantities-added wire-formula-misarranged ' +
	'current-not-squared voltage-squared-times-resistance voltage-not-squared current-squared-over-resistance ' +
	'wrong-thing-squared root-not-taken halved-for-root brackets-lost milli-unconverted prefix-wrong-way ' +
	'square-millimetres-by-thousand millimetres-left-in centimetre-slip inch-slip kilo-slip ampere-hours-mixed ' +
	'hours-minutes-mixed hours-for-seconds kilowatt-hours-misconverted charge-over-power exponent-slip ' +
	'gram-kilogram-slip diameter-as-radius radius-not-squared quarter-pi-left-out halved-twice wrong-surface ' +
	'gauge-order-reversed diameter-scaled-linearly limit-for-current choice-outside-limit ' +
	'open-circuit-voltage-under-load internal-resistance-forgotten sign-reversed leads-not-subtracted leads-added ' +
	'leads-subtracted-twice series-rule-for-parallel parallel-rule-for-series parallel-unfinished ' +
	'current-split-equally current-held-fixed current-used-up voltage-shared-in-parallel total-for-per-metre ' +
	'multiplied-by-length fraction-ignored fraction-inverted load-left-out drop-for-terminal-voltage ' +
	'source-voltage-for-drop one-strand-only average-for-parallel celsius-in-fourth-power ' +
	'kelvin-added-to-difference cold-for-hot temperature-for-rise one-left-out temperature-law-misbuilt ' +
	'final-temperature-for-rise fourth-power-of-difference surroundings-ignored rounded-early too-few-figures ' +
	'too-many-figures rounded-wrong-way unit-missing unit-wrong-kind prefix-on-right-number arithmetic-slip ' +
	'miscopied-number two-answers working-not-shown right-by-wrong-working stopped-early ' +
	'resistivity-for-resistance factor-left-out';

const words = new Map<string, { readonly said: string; readonly move: string }>(Object.entries(text.marking.everySlip));
const sentencesOf = (said: string) => said.split(/(?<=[.?:])\s+/u);

test('every slip of the catalogue, and every slip the marking can name, has its words', () => {
	const named = catalogue.split(' ');
	expect(named).toHaveLength(82);
	expect([...named, ...slipNames].filter((name) => !words.has(name))).toEqual([]);
});

test('no sentence on a slip is longer than fifteen words, and none raises its voice', () => {
	const all = [...words.values()].flatMap(({ said, move }) => [said, move]);
	const long = all.flatMap(sentencesOf).filter((sentence) => sentence.split(/\s+/u).length > 15);
	expect(long).toEqual([]);
	expect(all.filter((said) => said.includes('!') || /\bsimply\b/iu.test(said))).toEqual([]);
	expect(all.filter((said) => !/[.?]$/u.test(said))).toEqual([]);
});

test('no two slips say the same', () => {
	const said = [...words.values()].map((slip) => `${slip.said} ${slip.move}`);
	expect(new Set(said).size).toBe(said.length);
});

test('the set is counted in words', () => {
	expect(text.practice.toGo('c', 4)).toBe('Set C, four to go');
	expect(text.practice.toGo('c', 0)).toBe('Set C, done');
});
