import { allLessons } from '#course/lesson/library.server.ts';

export function load() {
	return { lessons: allLessons().map(({ slug, number, title, minutes }) => ({ slug, number, title, minutes })) };
}
