import { Random } from '#core/numeric/random.ts';
import type { Exercise } from '#exercise/exercise.ts';

/** An exercise a set may draw, and the lesson it belongs to. */
export interface PoolEntry {
	readonly exercise: Exercise;
	readonly lesson: number;
}

/** One job of a set: which exercise, and the seed of its numbers. */
export interface PlannedJob {
	readonly exercise: string;
	readonly seed: string;
}

/** What an exercise turns on: the relation of its idea step, by which two jobs count as alike. */
export function relationOf({ steps }: Exercise): string {
	const idea = steps.find(({ isIdea }) => isIdea) ?? steps.at(-1);
	return idea?.kind === 'number' ? idea.relations[0].text : (idea?.find ?? '');
}

/**
 * Draws the jobs of a set: never the same relation twice running where there are two to choose from, and a third of
 * the jobs from earlier lessons where the set has any. The same seed always draws the same jobs.
 */
export function planSet(
	pool: readonly PoolEntry[],
	{ count, after, seed }: { readonly count: number; readonly after: number; readonly seed: string },
): readonly PlannedJob[] {
	const random = new Random(`set/${seed}`);
	const used = new Map<string, number>();
	const jobs: { entry: PoolEntry; seed: string }[] = [];
	let early = 0;
	for (let index = 0; index < count; index += 1) {
		const last = jobs.at(-1);
		const unlike = pool.filter(({ exercise }) => !last || relationOf(exercise) !== relationOf(last.entry.exercise));
		const wantsEarly = early * 3 < index + 1;
		const group = unlike.filter(({ lesson }) => lesson < after === wantsEarly);
		const entry = leastUsed(group.length > 0 ? group : unlike.length > 0 ? unlike : pool, used, random);
		if (!entry) return [];
		if (entry.lesson < after) early += 1;
		used.set(entry.exercise.id, (used.get(entry.exercise.id) ?? 0) + 1);
		jobs.push({ entry, seed: `${seed}-${index + 1}` });
	}
	return jobs.map(({ entry, seed: numbers }) => ({ exercise: entry.exercise.id, seed: numbers }));
}

function leastUsed(
	entries: readonly PoolEntry[],
	used: ReadonlyMap<string, number>,
	random: Random,
): PoolEntry | undefined {
	const uses = ({ exercise }: PoolEntry): number => used.get(exercise.id) ?? 0;
	const least = Math.min(...entries.map(uses));
	const rare = entries.filter((entry) => uses(entry) === least);
	return rare.length === 0 ? undefined : random.pick(rare);
}
