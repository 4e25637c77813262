import { describe, expect, test } from 'vitest';
import { markAnswer } from '#exercise/marking/mark.ts';
import { promptOf } from '#exercise/prompt.ts';
import { parsePracticeSet } from '#exercise/schema.ts';
import { drawVariant, holds, sampleVariant } from '#exercise/variant.ts';
import { readCupboard, readExerciseFiles } from '#tests/support/content.ts';
import { readdirSync, readFileSync } from 'node:fs';

const cupboard = readCupboard();
const seeds = Array.from({ length: 60 }, (_, index) => `seed-${index}`);

// Expected values: the sample of each exercise in the course outline (worked by hand there)
test.each([
	['2.2', { I: 2 }],
	['3.1', { R: 4.8 }],
	['3.2', { R: 6.67 }],
	['3.3', { R: 5, off: 0.042 }],
	['4.1', { R: 4.8, L: 0.554 }],
	['4.2', { "R'": 8.67 }],
	['4.3', { L_cut: 0.594, R_read: 5.45 }],
])('the sample of %s comes out as the outline says', (id, expected) => {
	const found = readExerciseFiles().find(({ exercise }) => exercise.id === id);
	if (!found) throw new Error(`no exercise ${id}`);
	const variant = sampleVariant(found.exercise, cupboard);
	for (const [symbol, value] of Object.entries(expected)) {
		expect(Math.abs((variant.expected[symbol] ?? 0) / value - 1)).toBeLessThan(0.01);
	}
});

describe.each(readExerciseFiles())('$file', ({ exercise }) => {
	test('sixty seeds give variants that keep out of what is ruled out', () => {
		for (const seed of seeds) {
			const variant = drawVariant(exercise, seed, cupboard);
			const valueOf = (symbol: string) => variant.expected[symbol] ?? variant.givens[symbol];
			expect(exercise.keepOut.filter((condition) => holds(condition, valueOf))).toEqual([]);
			expect(drawVariant(exercise, seed, cupboard)).toEqual(variant);
			expect(
				promptOf(exercise, variant).filter((part) => part.kind === 'value' && !Number.isFinite(part.value)),
			).toEqual([]);
		}
	});

	test('seeds give different variants', () => {
		const variants = new Set(seeds.map((seed) => JSON.stringify(drawVariant(exercise, seed, cupboard).givens)));
		expect(variants.size).toBeGreaterThan(12);
	});

	test('the model values of every variant get full marks, and an empty answer none', () => {
		for (const seed of seeds) {
			const variant = drawVariant(exercise, seed, cupboard);
			const lines = exercise.steps.map((step) => {
				if (step.kind === 'number')
					return `${step.find} = ${Number((variant.expected[step.find] ?? 0).toPrecision(5))} ${si(step.quantity)}`;
				if (step.kind === 'item') return variant.choices[step.find] ?? '';
				return step.options.find(({ id }) => id === variant.choices[step.find])?.words[1] ?? '';
			});
			const options = { decimalSign: '.', voltageLetter: 'V' } as const;
			const marking = markAnswer(exercise, variant, lines.join('\n'), options);
			expect({ seed, text: lines, ...marking.score, isRight: marking.isRight }).toEqual({
				seed,
				text: lines,
				got: marking.score.of,
				of: marking.score.of,
				isRight: true,
			});
			expect(markAnswer(exercise, variant, '', options).score.got).toBe(0);
		}
	});
});

function si(quantity: string): string {
	const units: Readonly<Record<string, string>> = {
		current: 'A',
		length: 'm',
		ratio: '',
		'resistance-per-length': 'Ω/m',
	};
	return units[quantity] ?? 'Ω';
}

test('practice sets draw on exercises that exist', () => {
	const known = readExerciseFiles().map(({ exercise }) => exercise.id);
	const files = readdirSync('src/content/practice').filter((name) => name.endsWith('.yaml'));
	expect(files.length).toBeGreaterThan(1);
	for (const file of files) {
		const set = parsePracticeSet(readFileSync(`src/content/practice/${file}`, 'utf8'), file);
		if (!set.ok) throw new Error(JSON.stringify(set.problems));
		expect(set.value.from.filter((id) => !known.includes(id))).toEqual([]);
	}
});
