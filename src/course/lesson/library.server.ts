import { describeProblem } from './describe.ts';
import { parseLesson } from './parse.ts';
import type { Lesson } from './schema.ts';
import { typeset } from './typeset.ts';

const files = import.meta.glob<string>('/src/content/lessons/*/lesson.en.md', {
	query: '?raw',
	import: 'default',
	eager: true,
});

/** Every lesson there is, in order. Stops the build with file and line when one has a fault. */
export function allLessons(): readonly Lesson[] {
	const outcomes = Object.entries(files).map(([path, source]) => parseLesson(source, path.slice(1), typeset));
	const problems = outcomes.flatMap((outcome) => (outcome.ok ? [] : outcome.problems));
	if (problems.length > 0) throw new Error(problems.map(describeProblem).join('\n'));
	return outcomes.flatMap((outcome) => (outcome.ok ? [outcome.value] : [])).sort((a, b) => a.number - b.number);
}
