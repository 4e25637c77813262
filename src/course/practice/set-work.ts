import * as v from 'valibot';
import type { DraftStore } from '#course/draft.ts';

const states = v.picklist(['right', 'right-with-help']);
const schema = v.object({
	/** state of each job that is done, by its place in the set */
	done: v.fallback(v.record(v.string(), states), {}),
	/** how often fresh numbers were asked for, by the place of the job */
	fresh: v.fallback(v.record(v.string(), v.number()), {}),
});

/** How far one drawn set is. */
export type SetWork = Readonly<v.InferOutput<typeof schema>>;

export const freshWork: SetWork = { done: {}, fresh: {} };

/** Reads what was kept of a drawn set; anything unreadable begins afresh. */
export function readWork(drafts: DraftStore, set: string, seed: string): SetWork {
	try {
		return v.parse(schema, JSON.parse(drafts.read(keyOf(set, seed)) ?? '{}'));
	} catch {
		return freshWork;
	}
}

export function writeWork(drafts: DraftStore, set: string, seed: string, work: SetWork): void {
	drafts.write(keyOf(set, seed), JSON.stringify(work));
}

/** The seed a set was last drawn with on this device. */
export function lastSeed(drafts: DraftStore, set: string): string | undefined {
	const seed = drafts.read(`practice/${set}/last`);
	return seed !== undefined && isSeed(seed) ? seed : undefined;
}

export function keepSeed(drafts: DraftStore, set: string, seed: string): void {
	drafts.write(`practice/${set}/last`, seed);
}

/** Whether a text from an address may serve as a seed. */
export function isSeed(text: string): boolean {
	return /^[a-z0-9]{1,16}$/u.test(text);
}

function keyOf(set: string, seed: string): string {
	return `practice/${set}/${seed}`;
}
