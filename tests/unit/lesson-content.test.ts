import { readingLimit, shownReading } from '#core/electric/meter.ts';
import { isMaterialId, materials } from '#core/material/materials.ts';
import { coldResistancePerMetre, heldSupply, ohmmeters } from '#course/lesson/demo.ts';
import { checkHalf, formulaValue } from '#course/lesson/half-check.ts';
import { parseLesson } from '#course/lesson/parse.ts';
import type { Lesson, LessonSample } from '#course/lesson/schema.ts';
import { lessonFiles } from '#tests/support/lesson-file.ts';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { parse } from 'yaml';

const lessons: readonly Lesson[] = lessonFiles.map(({ path, source }) => {
	const outcome = parseLesson(source, path, (markdown) => markdown);
	if (!outcome.ok) throw new Error(outcome.problems.map(({ path: place, found }) => `${place}: ${found}`).join('\n'));
	return outcome.value;
});

const named = (slug: string) => {
	const lesson = lessons.find((candidate) => candidate.slug === slug);
	if (lesson === undefined) throw new Error(`no lesson ${slug}`);
	return lesson;
};
const third = named('solve-for-resistance');
const fourth = named('measure-and-find-the-length');

/** A number as the lesson prints it: to three figures. */
const printed = (value: number) => Number(value.toPrecision(3));

function reckoned(sample: LessonSample): number {
	if (sample.kind === 'ohm') return sample.voltage / sample.current;
	if (!isMaterialId(sample.material)) throw new Error(sample.material);
	const perMetre = coldResistancePerMetre(materials[sample.material], sample.diameterMillimetres / 1000);
	expect(printed(perMetre)).toBe(sample.resistancePerMetre);
	// exercises reckon with the reel's label as it stands
	return (1000 * (sample.reading - sample.leads)) / sample.resistancePerMetre;
}

test.each(
	lessons.flatMap(({ slug, worked }) => [
		{ slug, which: 'worked', sample: worked.example.sample, rows: worked.example.rows },
		{ slug, which: 'half-worked', sample: worked.half.sample, rows: worked.half.rows },
	]),
)('the $which example of $slug prints what the core reckons', ({ sample, rows }) => {
	const result = sample.kind === 'ohm' ? sample.resistance : sample.lengthMillimetres;
	expect(printed(reckoned(sample))).toBe(result);
	const figures = sample.kind === 'ohm' ? result.toFixed(2) : String(result);
	expect(rows.result).toContain(figures);
});

test.each(lessons.map(({ slug, worked }) => ({ slug, half: worked.half })))(
	'the idea step of $slug takes its own answer and knows each slip',
	({ half }) => {
		expect(checkHalf(half, half.answer).kind).toBe('right');
		for (const slip of half.slips) expect(checkHalf(half, slip.formula)).toMatchObject({ kind: 'slip', slip });
	},
);

test.each(lessons.map(({ slug, worked }) => ({ slug, half: worked.half })))(
	'no slip of $slug lies nearer than four per cent to the answer',
	({ half }) => {
		const answer = formulaValue(half, half.answer);
		for (const { formula } of half.slips) {
			expect(Math.abs(formulaValue(half, formula) - answer) / answer).toBeGreaterThan(0.04);
		}
	},
);

test.each(['R = V/I', 'U/I', '5.0 V / 750 mA', '5/0.75 = 6.67 Ω', '5,0/0,75', '6R67'])(
	'the idea step of lesson 3 takes %s',
	(typed) => {
		expect(checkHalf(third.worked.half, typed).kind).toBe('right');
	},
);

test.each(['6.2 - 0.3', '6.2 Ω – 0.3 Ω = 5.9 Ω', 'R = 5.9 ohm', 'R_read - R_leads'])(
	'the idea step of lesson 4 takes %s',
	(typed) => {
		expect(checkHalf(fourth.worked.half, typed).kind).toBe('right');
	},
);

test('text without a value is not judged', () => {
	expect(checkHalf(third.worked.half, 'no idea').kind).toBe('unread');
	expect(checkHalf(third.worked.half, '').kind).toBe('unread');
});

test('the readings that lesson 3 tells are those of its bench', () => {
	const { watch } = third;
	if (watch.demo !== 'find-resistance') throw new Error('lesson 3 has another bench');
	const readings = watch.resistances.map((resistance) => heldSupply(watch, resistance));
	// 12 V on 12, 3 and 1.5 Ω by hand: 1 A, 4 A, and 8 A asked of a supply that holds 5 A at 5 · 1.5 = 7.5 V
	expect(readings).toEqual([
		{ current: 1, voltage: 12, isHoldingLimit: false },
		{ current: 4, voltage: 12, isHoldingLimit: false },
		{ current: 5, voltage: 7.5, isHoldingLimit: true },
	]);
	const quartered = third.predict.choices.find(({ id }) => id === 'quartered');
	expect(quartered && 'bench' in quartered && quartered.bench).toMatch(/8\sA.*5\sA.*7\.5\sV/);
});

test('554 mm of the wire in lesson 4 reads 5.1 Ω through its leads', () => {
	const { watch } = fourth;
	if (watch.demo !== 'measure-length' || !isMaterialId(watch.material)) throw new Error('lesson 4 has another bench');
	const perMetre = coldResistancePerMetre(materials[watch.material], watch.diameterMillimetres / 1000);
	expect(shownReading(ohmmeters.MT, watch.leads + 0.554 * perMetre)).toBe(5.1);
	expect(shownReading(ohmmeters.MT, watch.leads)).toBe(0.3);
	expect(watch.lengths).toContain(554);
});

test('the ohmmeters of the bench are those of the store cupboard', () => {
	const cupboard: unknown = parse(readFileSync('src/content/cupboard.yaml', 'utf8'));
	expect(cupboard).toMatchObject({
		meters: expect.arrayContaining([
			expect.objectContaining({ id: 'MT', step: 0.1 }),
			expect.objectContaining({ id: 'MH', step: 0.01 }),
		]),
	});
	// ±(0.8 % of 4.8 Ω + 2 steps) and ±(0.5 % of 4.80 Ω + 3 steps), reckoned by hand
	expect(readingLimit(ohmmeters.MT, 4.8)).toBeCloseTo(0.2384, 10);
	expect(readingLimit(ohmmeters.MH, 4.8)).toBeCloseTo(0.054, 10);
});

test('a held supply refuses a resistance that is not above zero', () => {
	expect(() => heldSupply({ voltage: 12, limit: 5 }, 0)).toThrow(RangeError);
	expect(heldSupply({ voltage: 12, limit: 5 }, undefined).current).toBe(0);
});
