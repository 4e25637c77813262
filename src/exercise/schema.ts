import * as v from 'valibot';
import { cupboardSchema, type Cupboard } from './cupboard.ts';
import { readContentFile } from './content-file.ts';
import type { ContentProblem, Exercise } from './exercise.ts';
import { buildExercise } from './build-exercise.ts';
import { fail, succeed, type Outcome } from '#core/outcome.ts';

const name = v.pipe(v.string(), v.minLength(1), v.maxLength(24));
const words = v.pipe(v.string(), v.minLength(1), v.maxLength(2000));
const slot = v.picklist(['reel', 'supply', 'leads', 'meter']);
const property = v.picklist(['label', 'diameter', 'voltage', 'internalResistance', 'limit', 'resistance', 'rating']);
const finite = v.pipe(v.number(), v.finite());
const positive = v.pipe(finite, v.gtValue(0));

const given = v.strictObject({
	symbol: name,
	quantity: name,
	unit: v.string(),
	from: v.optional(finite),
	to: v.optional(finite),
	step: v.optional(positive),
	values: v.optional(v.pipe(v.array(finite), v.minLength(1))),
	value: v.optional(finite),
	derived: v.optional(words),
	cupboard: v.optional(v.strictObject({ slot, property })),
	unneeded: v.optional(v.boolean()),
	hidden: v.optional(v.boolean()),
});

const option = v.strictObject({ id: name, label: words, words: v.array(words), when: words });

const step = v.strictObject({
	find: name,
	quantity: v.optional(name),
	unit: v.optional(v.string()),
	relation: v.optional(words),
	relations: v.optional(v.pipe(v.array(words), v.minLength(1))),
	options: v.optional(v.pipe(v.array(option), v.minLength(2))),
	item: v.optional(v.strictObject({ slot, property, nearest: name })),
	margin: v.optional(positive),
	figures: v.optional(v.pipe(v.number(), v.integer(), v.minValue(2), v.maxValue(6))),
	idea: v.optional(v.boolean()),
});

const answer = v.strictObject({
	text: v.string(),
	values: v.optional(v.record(v.string(), finite)),
	items: v.optional(v.record(v.string(), v.string())),
	marks: v.record(v.string(), v.picklist(['MA', 'M', 'A', 'D', '-'])),
	unit: v.boolean(),
	right: v.boolean(),
	slips: v.optional(v.array(v.string())),
});

const exerciseSchema = v.strictObject({
	format: v.literal(1),
	id: name,
	title: words,
	skills: v.pipe(v.array(v.pipe(v.string(), v.regex(/^K\d{1,2}$/u))), v.minLength(1)),
	prompt: words,
	showSteps: v.optional(v.boolean()),
	allowed: v.optional(v.record(slot, v.array(v.string()))),
	givens: v.pipe(v.array(given), v.minLength(1), v.maxLength(12)),
	steps: v.pipe(v.array(step), v.minLength(1), v.maxLength(8)),
	wanted: v.pipe(v.array(name), v.minLength(1)),
	keepOut: v.optional(v.array(words)),
	sense: words,
	slips: v.optional(v.array(v.strictObject({ name: v.string(), step: name, relation: v.optional(words) }))),
	caution: v.strictObject({
		signal: v.picklist(['danger', 'warning', 'caution']),
		hazard: words,
		consequence: words,
		instruction: words,
	}),
	sample: v.strictObject({
		values: v.record(v.string(), finite),
		items: v.optional(v.record(v.string(), v.string())),
	}),
	answers: v.pipe(v.array(answer), v.minLength(1)),
});

export type WrittenExercise = v.InferOutput<typeof exerciseSchema>;
export type WrittenGiven = v.InferOutput<typeof given>;
export type WrittenStep = v.InferOutput<typeof step>;

/** Reads an exercise file strictly: unknown keys, wrong types, undefined symbols and unlike units are all reported. */
export function parseExercise(yamlText: string, fileName: string): Outcome<Exercise, ContentProblem> {
	const file = readContentFile(yamlText, fileName, exerciseSchema);
	return file.ok ? buildExercise(file.value.data, file.value.locate) : file;
}

/** Reads the file of the store cupboard; every id may stand only once. */
export function parseCupboard(yamlText: string, fileName: string): Outcome<Cupboard, ContentProblem> {
	const file = readContentFile(yamlText, fileName, cupboardSchema);
	if (!file.ok) return file;
	const seen = new Set<string>();
	const problems: ContentProblem[] = [];
	for (const part of ['supplies', 'leads', 'meters', 'reels'] as const) {
		file.value.data[part].forEach(({ id }, index) => {
			if (seen.has(id)) problems.push(file.value.locate('duplicate', [part, index, 'id'], id));
			seen.add(id);
		});
	}
	return problems.length > 0 ? fail(...problems) : succeed(file.value.data);
}

const practiceSetSchema = v.strictObject({
	format: v.literal(1),
	id: name,
	title: words,
	after: v.pipe(v.number(), v.integer()),
	items: v.pipe(v.number(), v.integer(), v.minValue(1)),
	from: v.pipe(v.array(name), v.minLength(1)),
});

/** A practice set: how many items are drawn, and from which exercises; offered after a lesson. */
export type PracticeSet = Readonly<v.InferOutput<typeof practiceSetSchema>>;

/** Reads the file of a practice set. */
export function parsePracticeSet(yamlText: string, fileName: string): Outcome<PracticeSet, ContentProblem> {
	const file = readContentFile(yamlText, fileName, practiceSetSchema);
	return file.ok ? succeed(file.value.data) : file;
}
