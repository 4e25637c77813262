import type { Cupboard } from '#exercise/cupboard.ts';
import type { ContentProblem } from '#exercise/exercise.ts';
import { parseCupboard, parseExercise, parsePracticeSet, type PracticeSet } from '#exercise/schema.ts';
import type { Outcome } from '#core/outcome.ts';
import type { PoolEntry } from './plan.ts';

const exerciseFiles = import.meta.glob<string>('/src/content/lessons/*/*.yaml', {
	query: '?raw',
	import: 'default',
	eager: true,
});
const setFiles = import.meta.glob<string>('/src/content/practice/*.yaml', {
	query: '?raw',
	import: 'default',
	eager: true,
});
const cupboardFiles = import.meta.glob<string>('/src/content/cupboard.yaml', {
	query: '?raw',
	import: 'default',
	eager: true,
});

/** Every exercise with the number of its lesson. Stops the build with file, line and column when one has a fault. */
export function allExercises(): readonly PoolEntry[] {
	return Object.entries(exerciseFiles).map(([path, source]) => ({
		exercise: needed(parseExercise(source, path.slice(1))),
		lesson: Number(/\/(\d+)-[^/]*\/[^/]*$/u.exec(path)?.[1] ?? 0),
	}));
}

/** Every practice set, in order. */
export function allSets(): readonly PracticeSet[] {
	return Object.entries(setFiles)
		.map(([path, source]) => needed(parsePracticeSet(source, path.slice(1))))
		.toSorted((a, b) => a.id.localeCompare(b.id));
}

/** The store cupboard. */
export function theCupboard(): Cupboard {
	const [file] = Object.entries(cupboardFiles);
	if (!file) throw new RangeError('there is no src/content/cupboard.yaml');
	return needed(parseCupboard(file[1], file[0].slice(1)));
}

function needed<T>(outcome: Outcome<T, ContentProblem>): T {
	if (outcome.ok) return outcome.value;
	throw new Error(outcome.problems.map(described).join('\n'));
}

function described({ file, line, column, code, found, expected }: ContentProblem): string {
	return `${file}:${line}:${column} ${code}: ${found}${expected === undefined ? '' : `, expected ${expected}`}`;
}
