import type { LessonProgress, ProgressStore } from './progress.ts';

/** Keeps work until the page is closed: for tests, and where the browser refuses storage. */
export class MemoryProgressStore implements ProgressStore {
	readonly isKept = false;
	readonly #lessons = new Map<string, LessonProgress>();

	async read(lesson: string): Promise<LessonProgress | undefined> {
		return this.#lessons.get(lesson);
	}

	async write(lesson: string, progress: LessonProgress): Promise<void> {
		this.#lessons.set(lesson, structuredClone(progress));
	}

	async all(): Promise<ReadonlyMap<string, LessonProgress>> {
		return new Map(this.#lessons);
	}
}
