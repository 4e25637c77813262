import { allLessons } from '#course/lesson/library.server.ts';
import { allExercises, theCupboard } from '#course/practice/library.server.ts';
import { error } from '@sveltejs/kit';
import type { EntryGenerator, PageServerLoad } from './$types.js';

export const entries: EntryGenerator = () => allLessons().map(({ slug }) => ({ slug }));

export const load: PageServerLoad = ({ params }) => {
	const lesson = allLessons().find(({ slug }) => slug === params.slug);
	if (lesson === undefined) error(404);
	const exercises = lesson.worked.own.map((id) => {
		const found = allExercises().find(({ exercise }) => exercise.id === id);
		if (found === undefined) throw new Error(`lesson ${lesson.number} asks for exercise ${id}, which is not there`);
		// worked answers are for the tests; a page that carried them would give the marking away
		return { ...found.exercise, answers: [] };
	});
	return { lesson, exercises, cupboard: theCupboard() };
};
