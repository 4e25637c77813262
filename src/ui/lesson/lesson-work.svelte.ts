import {
	freshProgress,
	partCount,
	type LessonProgress,
	type NotedReading,
	type ProgressStore,
	type Sureness,
} from '#course/progress/progress.ts';
import type { Lesson } from '#course/lesson/schema.ts';
import { createContext } from 'svelte';

/** The work of one learner in one lesson; everything in it is kept as it is changed. */
export class LessonWork {
	readonly lesson: Lesson;
	/** true once kept work has been read; until then the sheet stands as printed */
	isReady = $state(false);
	isKept = $state(true);
	#record = $state<LessonProgress>(structuredClone(freshProgress));
	#store: ProgressStore | undefined;
	#saving: Promise<void> = Promise.resolve();

	readonly isPredicted = $derived(this.#record.judged.includes('predict'));
	readonly predicted = $derived.by(() =>
		this.lesson.predict.choices.find(({ id }) => id === this.#record.chosen['predict']),
	);
	readonly hasSaid = $derived(this.isRight('saw'));

	constructor(lesson: Lesson) {
		this.lesson = lesson;
	}

	get part(): number {
		return this.#record.part;
	}

	get sureness(): Sureness | undefined {
		return this.#record.sureness;
	}

	get readings(): readonly NotedReading[] {
		return this.#record.readings;
	}

	async recall(store: ProgressStore): Promise<void> {
		this.#store = store;
		this.isKept = store.isKept;
		const kept = await store.read(this.lesson.slug);
		if (kept) this.#record = structuredClone(kept);
		this.isReady = true;
	}

	goTo(part: number): void {
		this.#record.part = Math.min(partCount, Math.max(1, part));
		this.#keep();
	}

	chosen(question: string): string | undefined {
		return this.#record.chosen[question];
	}

	/** Takes an answer, which must be handed over afresh; a locked prediction stays as it is. */
	choose(question: string, choice: string): void {
		if (question === 'predict' && this.isPredicted) return;
		this.#record.chosen[question] = choice;
		this.#record.judged = this.#record.judged.filter((name) => name !== question);
		this.#keep();
	}

	beSure(sureness: Sureness): void {
		if (this.isPredicted) return;
		this.#record.sureness = sureness;
		this.#keep();
	}

	typed(field: string): string {
		return this.#record.typed[field] ?? '';
	}

	type(field: string, text: string): void {
		this.#record.typed[field] = text;
		this.#keep();
	}

	isJudged(question: string): boolean {
		return this.#record.judged.includes(question);
	}

	/** Hands an answer over; a prediction cannot be changed after that. */
	judge(question: string): void {
		if (!this.isJudged(question)) this.#record.judged.push(question);
		this.#keep();
	}

	/** Takes a verdict back, because the answer is being changed. */
	reopen(question: string): void {
		if (!this.isJudged(question)) return;
		this.#record.judged = this.#record.judged.filter((name) => name !== question);
		this.#keep();
	}

	/** True when what was seen has been said rightly. */
	isRight(question: 'saw'): boolean {
		const choice = this.lesson[question].choices.find(({ id }) => id === this.#record.chosen[question]);
		return this.isJudged(question) && choice?.right === true;
	}

	note(reading: NotedReading): void {
		this.#record.readings = [...this.#record.readings, reading];
		this.#keep();
	}

	strikeOut(): void {
		this.#record.readings = this.#record.readings.slice(0, -1);
		this.#keep();
	}

	#keep(): void {
		const store = this.#store;
		if (store === undefined) return;
		const record = $state.snapshot(this.#record);
		// a store that fails later (full, or cleared by the browser) must not stop the lesson
		this.#saving = this.#saving
			.then(() => store.write(this.lesson.slug, record))
			.catch(() => {
				this.isKept = false;
			});
	}
}

export const [getLessonWork, setLessonWork] = createContext<LessonWork>();
