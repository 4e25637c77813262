import * as v from 'valibot';

/** Sets one piece of Markdown; throws with the reason when it cannot be set. */
export type Typesetter = (markdown: string) => string;

const plain = v.pipe(v.string(), v.trim(), v.nonEmpty('empty'));
const positive = v.pipe(v.number(), v.gtValue(0, 'not-positive'));
const id = v.pipe(v.string(), v.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'not-an-id'));
/** a misconception or a slip by its number in the course */
const code = v.pipe(v.string(), v.regex(/^[MS]\d{1,2}$/, 'not-a-code'));

/**
 * What a lesson's front matter holds. Every text is limited Markdown and leaves the schema as the typesetter
 * returns it: HTML for pages, itself for tests.
 */
export function lessonSchema(typeset: Typesetter) {
	const text = v.pipe(
		plain,
		v.check((markdown) => !/<[a-z!/?]/i.test(markdown), 'raw-html'),
		v.rawTransform(({ dataset, addIssue, NEVER }) => {
			try {
				return typeset(dataset.value);
			} catch (reason) {
				addIssue({ message: reason instanceof Error ? reason.message : 'cannot-be-set' });
				return NEVER;
			}
		}),
	);
	const rightChoice = v.strictObject({ id, text, right: v.literal(true), brief: text, reason: text });
	/** the idea in the learner's words, that it fails, what the bench shows, the better rule */
	const wrongChoice = v.strictObject({ id, text, code, idea: text, fails: text, bench: text, rule: text });
	const choice = v.strictObject({ id, text, right: v.optional(v.literal(true)), code: v.optional(code), reply: text });
	const question = v.strictObject({
		question: plain,
		choices: v.pipe(
			v.array(choice),
			v.minLength(3, 'too-few-choices'),
			v.maxLength(4, 'too-many-choices'),
			v.check((choices) => choices.filter(({ right }) => right).length === 1, 'not-one-right'),
		),
	});
	const rows = v.strictObject({ know: text, relation: text, putIn: text, result: text, sense: text });
	const sample = v.variant('kind', [
		v.strictObject({ kind: v.literal('ohm'), voltage: positive, current: positive, resistance: positive }),
		v.strictObject({
			kind: v.literal('length'),
			reading: positive,
			leads: v.number(),
			material: plain,
			diameterMillimetres: positive,
			resistancePerMetre: positive,
			lengthMillimetres: positive,
		}),
	]);
	const watch = v.variant('demo', [
		v.strictObject({
			demo: v.literal('find-resistance'),
			task: text,
			meter: text,
			supply: plain,
			voltage: positive,
			limit: positive,
			wish: positive,
			resistances: v.pipe(v.array(positive), v.length(3, 'not-three')),
		}),
		v.strictObject({
			demo: v.literal('measure-length'),
			task: text,
			meter: text,
			supply: plain,
			voltage: positive,
			reel: plain,
			material: plain,
			diameterMillimetres: positive,
			leads: positive,
			lengths: v.pipe(v.array(positive), v.length(6, 'not-six')),
		}),
	]);
	return v.strictObject({
		title: plain,
		minutes: v.pipe(positive, v.integer()),
		outcome: plain,
		skills: v.array(v.pipe(v.string(), v.regex(/^K\d{1,2}$/, 'not-a-skill'))),
		caution: v.strictObject({
			signal: v.picklist(['notice', 'caution', 'warning', 'danger']),
			sign: v.picklist(['general', 'electricity', 'hot-surface', 'sharp', 'battery']),
			hazard: text,
			consequence: text,
			instruction: text,
		}),
		predict: v.strictObject({
			question: plain,
			choices: v.pipe(
				v.array(v.union([rightChoice, wrongChoice])),
				v.minLength(3, 'too-few-choices'),
				v.maxLength(4, 'too-many-choices'),
				v.check((choices) => choices.filter((entry) => 'right' in entry).length === 1, 'not-one-right'),
			),
		}),
		watch,
		saw: v.strictObject({
			/** the reading asked about: ohms put in, or metres of wire with 0 for probes together */
			asks: v.pipe(v.number(), v.minValue(0)),
			...question.entries,
		}),
		why: v.strictObject({ relation: text, says: text, read: v.pipe(v.array(question), v.maxLength(2)) }),
		worked: v.strictObject({
			example: v.strictObject({ task: text, rows, prompt: question, sample }),
			half: v.strictObject({
				task: text,
				rows,
				/** the row the learner writes */
				blank: v.picklist(['relation', 'putIn']),
				ask: text,
				/** letters that may be typed, with their values in SI units */
				letters: v.record(v.string(), v.number()),
				answer: plain,
				/** what the learner's own number would do on the bench */
				consequence: v.picklist(['current', 'length']),
				slips: v.array(v.strictObject({ formula: plain, code, reply: text })),
				sample,
			}),
			/** the own exercises by their numbers, in order */
			own: v.pipe(
				v.array(v.pipe(v.string(), v.regex(/^\d+\.\d+$/, 'not-an-exercise'))),
				v.minLength(1, 'no-own-exercise'),
				v.maxLength(3, 'too-many-exercises'),
			),
		}),
		lookBack: v.strictObject({ from: plain, ...question.entries }),
	});
}

export type LessonRecord = v.InferOutput<ReturnType<typeof lessonSchema>>;
export type LessonQuestion = LessonRecord['worked']['example']['prompt'];
export type WorkedRowName = keyof LessonRecord['worked']['example']['rows'];
export type LessonSample = LessonRecord['worked']['example']['sample'];
export type Watch = LessonRecord['watch'];

/** A lesson as a page needs it. */
export interface Lesson extends LessonRecord {
	readonly slug: string;
	readonly number: number;
	/** three or four sentences that explain, as HTML */
	readonly prose: string;
}
