import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import * as v from 'valibot';
import { MemoryProgressStore } from './memory-store.ts';
import { lessonProgressSchema, type LessonProgress, type ProgressStore } from './progress.ts';

interface LessonDatabase extends DBSchema {
	lessons: { key: string; value: unknown };
}

/** Keeps work in the browser's database; what cannot be read any more counts as not there. */
export class IndexedProgressStore implements ProgressStore {
	readonly isKept = true;
	readonly #database: IDBPDatabase<LessonDatabase>;

	constructor(database: IDBPDatabase<LessonDatabase>) {
		this.#database = database;
	}

	async read(lesson: string): Promise<LessonProgress | undefined> {
		return understood(await this.#database.get('lessons', lesson));
	}

	async write(lesson: string, progress: LessonProgress): Promise<void> {
		await this.#database.put('lessons', progress, lesson);
	}

	async all(): Promise<ReadonlyMap<string, LessonProgress>> {
		const keys = await this.#database.getAllKeys('lessons');
		const found = await Promise.all(keys.map(async (key) => ({ key, progress: await this.read(key) })));
		return new Map(found.flatMap(({ key, progress }) => (progress ? [[key, progress] as const] : [])));
	}
}

function understood(stored: unknown): LessonProgress | undefined {
	const result = v.safeParse(lessonProgressSchema, stored);
	return result.success ? result.output : undefined;
}

/** The browser's database, or memory when the browser refuses it. */
export async function openProgressStore(): Promise<ProgressStore> {
	try {
		const database = await openDB<LessonDatabase>('ohm-to-ember-lessons', 1, {
			upgrade: (fresh) => void fresh.createObjectStore('lessons'),
		});
		return new IndexedProgressStore(database);
	} catch {
		return new MemoryProgressStore();
	}
}
