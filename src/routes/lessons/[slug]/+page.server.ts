import { allLessons } from '#course/lesson/library.server.ts';
import { error } from '@sveltejs/kit';

export function entries() {
	return allLessons().map(({ slug }) => ({ slug }));
}

export function load({ params }) {
	const lesson = allLessons().find(({ slug }) => slug === params.slug);
	if (lesson === undefined) error(404);
	return { lesson };
}
