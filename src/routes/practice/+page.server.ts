import { allExercises, allSets } from '#course/practice/library.server.ts';
import type { PageServerLoad } from './$types.js';

export const load: PageServerLoad = () => {
	const known = new Set(allExercises().map(({ exercise }) => exercise.id));
	return {
		sets: allSets()
			.filter(({ from }) => from.some((id) => known.has(id)))
			.map(({ id, title, after, items }) => ({ id, title, after, items })),
	};
};
