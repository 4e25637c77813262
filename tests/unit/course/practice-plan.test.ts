import { readFileSync, readdirSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { planSet, relationOf, type PoolEntry } from '#course/practice/plan.ts';
import { isSeed, freshWork, readWork, writeWork } from '#course/practice/set-work.ts';
import { memoryDrafts } from '#course/draft.ts';
import { parseExercise, parsePracticeSet } from '#exercise/schema.ts';

const lessons = 'src/content/lessons';
const pool: readonly PoolEntry[] = readdirSync(lessons).flatMap((folder) =>
	readdirSync(`${lessons}/${folder}`)
		.filter((name) => name.endsWith('.yaml'))
		.map((name) => {
			const parsed = parseExercise(readFileSync(`${lessons}/${folder}/${name}`, 'utf8'), name);
			if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
			return { exercise: parsed.value, lesson: Number.parseInt(folder) };
		}),
);
const sets = readdirSync('src/content/practice').map((name) => {
	const parsed = parsePracticeSet(readFileSync(`src/content/practice/${name}`, 'utf8'), name);
	if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
	return parsed.value;
});
const seeds = fc.stringMatching(/^[a-z0-9]{1,8}$/);
const byId = (id: string) => pool.find(({ exercise }) => exercise.id === id);

test('every set draws as many jobs as it says, all from exercises that exist', () => {
	expect(sets.map(({ id }) => id)).toEqual(['B', 'C']);
	for (const set of sets) {
		expect(set.from.filter((id) => !byId(id))).toEqual([]);
		const jobs = planSet(
			pool.filter(({ exercise }) => set.from.includes(exercise.id)),
			{ count: set.items, after: set.after, seed: 'x1' },
		);
		expect(jobs).toHaveLength(set.items);
	}
});

test('no relation comes twice running, whatever the seed', () => {
	fc.assert(
		fc.property(seeds, fc.constantFrom(...sets), (seed, set) => {
			const entries = pool.filter(({ exercise }) => set.from.includes(exercise.id));
			const relations = planSet(entries, { count: set.items, after: set.after, seed }).map(({ exercise }) => {
				const entry = byId(exercise);
				return entry && relationOf(entry.exercise);
			});
			return relations.every((relation, index) => index === 0 || relation !== relations[index - 1]);
		}),
	);
});

test('at least a third of the jobs come from earlier lessons', () => {
	fc.assert(
		fc.property(seeds, fc.constantFrom(...sets), (seed, set) => {
			const entries = pool.filter(({ exercise }) => set.from.includes(exercise.id));
			const jobs = planSet(entries, { count: set.items, after: set.after, seed });
			const early = jobs.filter(({ exercise }) => (byId(exercise)?.lesson ?? 99) < set.after);
			return early.length * 3 >= jobs.length;
		}),
	);
});

test('the same seed draws the same set', () => {
	fc.assert(
		fc.property(seeds, (seed) => {
			const order = { count: 10, after: 3, seed };
			expect(planSet(pool, order)).toEqual(planSet(pool, order));
		}),
	);
});

test('what is done in a set is read back, and nonsense begins afresh', () => {
	const drafts = memoryDrafts();
	writeWork(drafts, 'b', 'k3', { done: { '0': 'right' }, fresh: { '1': 2 } });
	expect(readWork(drafts, 'b', 'k3')).toEqual({ done: { '0': 'right' }, fresh: { '1': 2 } });
	drafts.write('practice/b/k4', '{"done":');
	expect(readWork(drafts, 'b', 'k4')).toEqual(freshWork);
});

test('only short plain words from an address serve as seeds', () => {
	expect(['k3f9', 'A', '', 'a b', '../x', 'a'.repeat(17)].map(isSeed)).toEqual([
		true,
		false,
		false,
		false,
		false,
		false,
	]);
});
