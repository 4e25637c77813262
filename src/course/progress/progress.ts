import * as v from 'valibot';

export const surenesses = ['guess', 'fairly', 'sure'] as const;
export type Sureness = (typeof surenesses)[number];
export const partCount = 7;

const reading = v.object({ x: v.number(), y: v.number(), label: v.optional(v.string(), '') });

/** Everything a learner chose, typed and noted in one lesson. */
export const lessonProgressSchema = v.object({
	/** the part last open, 1…7 */
	part: v.fallback(v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(partCount)), 1),
	sureness: v.fallback(v.optional(v.picklist(surenesses)), undefined),
	/** question → choice taken */
	chosen: v.fallback(v.record(v.string(), v.string()), {}),
	/** field → text as typed */
	typed: v.fallback(v.record(v.string(), v.string()), {}),
	/** questions whose answer was handed over, or a prediction that was locked */
	judged: v.fallback(v.array(v.string()), []),
	/** readings noted on the bench, oldest first */
	readings: v.fallback(v.array(reading), []),
});

export type LessonProgress = v.InferOutput<typeof lessonProgressSchema>;
export type NotedReading = LessonProgress['readings'][number];
export type LessonState = 'new' | 'begun' | 'done';

export const freshProgress = v.parse(lessonProgressSchema, {});

/** How far a lesson is: done once its last question has been answered. */
export function lessonState(progress: LessonProgress | undefined): LessonState {
	if (progress === undefined) return 'new';
	if (progress.judged.includes('lookBack')) return 'done';
	const isTouched = progress.part > 1 || Object.keys(progress.chosen).length > 0;
	return isTouched ? 'begun' : 'new';
}

/** Where the work of a learner is kept on this device. */
export interface ProgressStore {
	/** false when the work lasts only until the page is closed */
	readonly isKept: boolean;
	read(lesson: string): Promise<LessonProgress | undefined>;
	write(lesson: string, progress: LessonProgress): Promise<void>;
	/** every lesson with work in it, by its address */
	all(): Promise<ReadonlyMap<string, LessonProgress>>;
}
