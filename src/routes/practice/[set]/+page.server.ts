import { error } from '@sveltejs/kit';
import { allExercises, allSets, theCupboard } from '#course/practice/library.server.ts';
import type { EntryGenerator, PageServerLoad } from './$types.js';

export const entries: EntryGenerator = () => allSets().map(({ id }) => ({ set: id.toLowerCase() }));

export const load: PageServerLoad = ({ params }) => {
	const set = allSets().find(({ id }) => id.toLowerCase() === params.set);
	if (!set) error(404);
	const pool = allExercises()
		.filter(({ exercise }) => set.from.includes(exercise.id))
		// worked answers are for the tests; a page that carried them would give the marking away
		.map(({ exercise, lesson }) => ({ exercise: { ...exercise, answers: [] }, lesson }));
	return { set, pool, cupboard: theCupboard() };
};
