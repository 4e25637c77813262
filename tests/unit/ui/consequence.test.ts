import { expect, test } from 'vitest';
import { readFileSync } from 'node:fs';
import { parseCupboard, parseExercise } from '#exercise/schema.ts';
import { sampleVariant } from '#exercise/variant.ts';
import { consequenceOf } from '#ui/exercise/consequence.ts';
import { consequenceSentences } from '#ui/exercise/consequence-words.ts';

const lessons = 'src/content/lessons';
const cupboard = needed(parseCupboard(readFileSync('src/content/cupboard.yaml', 'utf8'), 'cupboard.yaml'));

function needed<T>(outcome: { readonly ok: true; readonly value: T } | { readonly ok: false }): T {
	if (!outcome.ok) throw new Error('unreadable content');
	return outcome.value;
}

function told(file: string, find: string, value: number): string {
	const exercise = needed(parseExercise(readFileSync(`${lessons}/${file}`, 'utf8'), file));
	const variant = sampleVariant(exercise, cupboard);
	const consequence = consequenceOf(exercise, variant, { find, value }, cupboard);
	if (!consequence) return '';
	return consequenceSentences(consequence, exercise)
		.map(({ text }) => text.replace(/\s/gu, ' '))
		.join(' ');
}

// 12 V wanted to drive 2.5 A: 30 Ω is the product, 0.208 Ω the quotient upside down
const ohms = '03-solve-for-resistance/1-volts-and-amperes.yaml';

test('the product in place of the quotient lets far less current through', () => {
	expect(told(ohms, 'R', 30)).toMatch(/^30\.0 Ω on 12\.0 V would let 0\.400 A through\. Wanted were 2\.50 A\./);
});

test('a resistance far too small drives the supply to its limit', () => {
	expect(told(ohms, 'R', 12 / 57.6)).toMatch(/would let 57\.6 A through\. The supply holds its limit, 5\.00 A/);
});

test('the right resistance lets the wished current through', () => {
	expect(told(ohms, 'R', 4.8)).toMatch(/^4\.80 Ω on 12\.0 V would let 2\.50 A through\. The wire/);
});

test('a current is told by the voltage it would need', () => {
	expect(told('02-choose-a-current/2-what-really-flows.yaml', 'I', 5)).toBe(
		'5.00 A through 6.00 Ω needs 30.0 V. The supply gives 12.0 V. That is more than it can give.',
	);
});

test('a length is told by what the ohmmeter would show on it', () => {
	// 5.1 Ω with 0.3 Ω of leads on 8.67 Ω/m: leads not taken off gives 588 mm
	expect(told('04-measure-and-find-the-length/1-take-off-the-leads.yaml', 'L', 5.1 / 8.67)).toBe(
		'With 588 mm of R-40 the meter would show 5.40 Ω. It showed 5.10 Ω.',
	);
});

test('nothing below zero is built', () => {
	expect(told(ohms, 'R', -3)).toBe('−3.00 Ω cannot be built. Nothing on the bench is below zero.');
});

test('every number of every exercise is told something', () => {
	const files = [
		ohms,
		'03-solve-for-resistance/2-milliamperes.yaml',
		'03-solve-for-resistance/3-check-the-loop.yaml',
		'04-measure-and-find-the-length/1-take-off-the-leads.yaml',
		'04-measure-and-find-the-length/2-which-reel.yaml',
		'04-measure-and-find-the-length/3-allow-for-the-clamps.yaml',
	];
	const silent = files.flatMap((file) => {
		const exercise = needed(parseExercise(readFileSync(`${lessons}/${file}`, 'utf8'), file));
		return exercise.steps
			.filter((step) => step.kind === 'number')
			.flatMap(({ find }) =>
				[1e-6, 0.01, 1, 1e6].filter((value) => told(file, find, value) === '').map(() => `${file} ${find}`),
			);
	});
	expect(silent).toEqual([]);
});
