import { readdirSync, readFileSync } from 'node:fs';

/** Every lesson file of the site with its text. */
export const lessonFiles = readdirSync('src/content/lessons')
	.map((folder) => `src/content/lessons/${folder}/lesson.en.md`)
	.filter((path) =>
		readdirSync('src/content/lessons', { recursive: true, encoding: 'utf8' }).some((name) => path.endsWith(name)),
	)
	.map((path) => ({ path, source: readFileSync(path, 'utf8') }));
