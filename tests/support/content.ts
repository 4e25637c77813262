import { readdirSync, readFileSync } from 'node:fs';
import type { Cupboard } from '#exercise/cupboard.ts';
import type { Exercise } from '#exercise/exercise.ts';
import { parseCupboard, parseExercise } from '#exercise/schema.ts';

export function readCupboard(): Cupboard {
	const cupboard = parseCupboard(readFileSync('src/content/cupboard.yaml', 'utf8'), 'src/content/cupboard.yaml');
	if (!cupboard.ok) throw new Error(JSON.stringify(cupboard.problems, undefined, '\t'));
	return cupboard.value;
}

export function readExerciseFiles(): readonly { readonly file: string; readonly exercise: Exercise }[] {
	return readdirSync('src/content/lessons', { recursive: true, encoding: 'utf8' })
		.filter((name) => name.endsWith('.yaml'))
		.map((name) => `src/content/lessons/${name}`)
		.toSorted()
		.map((file) => {
			const exercise = parseExercise(readFileSync(file, 'utf8'), file);
			if (!exercise.ok) throw new Error(JSON.stringify(exercise.problems, undefined, '\t'));
			return { file, exercise: exercise.value };
		});
}
