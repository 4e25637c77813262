import { allLessons } from '#course/lesson/library.server.ts';

export function load() {
	return {
		lessons: allLessons().map(({ slug, number, title, minutes, outcome }) => ({
			slug,
			number,
			title,
			minutes,
			outcome,
		})),
	};
}
