import type { LessonProblem } from './parse.ts';

/** One line for whoever builds the site: where, what, and what to do. */
export function describeProblem({ code, file, line, column, path, found }: LessonProblem): string {
	return `${file}:${line}:${column} ${whatToDo(code, path, found)}`;
}

function whatToDo(code: LessonProblem['code'], path: string, found: string): string {
	switch (code) {
		case 'folder-name':
			return 'put the lesson into a folder named like 03-solve-for-resistance, as lesson.en.md';
		case 'front-matter-missing':
			return 'begin the file with a line of three dashes, the settings, and three dashes again';
		case 'yaml':
			return `mend the YAML here (${found})`;
		case 'schema':
			return `mend ${path || 'the settings'}: ${found}`;
		case 'prose':
			return `mend the text below the settings: ${found}`;
		default:
			return code satisfies never;
	}
}
