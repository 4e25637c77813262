import { expect, test } from 'vitest';
import { memoryDrafts, storedDrafts } from '#course/draft.ts';

function mapStorage() {
	const kept = new Map<string, string>();
	return {
		kept,
		getItem: (key: string) => kept.get(key) ?? null,
		setItem: (key: string, value: string) => void kept.set(key, value),
		removeItem: (key: string) => void kept.delete(key),
	};
}

test('a draft is read back by another page on the same device', () => {
	const storage = mapStorage();
	storedDrafts(storage).write('b/3.1', 'R = 12/2.5');
	expect(storedDrafts(storage).read('b/3.1')).toBe('R = 12/2.5');
	expect(storedDrafts(storage).read('b/3.2')).toBeUndefined();
});

test('a removed draft is gone', () => {
	const drafts = storedDrafts(mapStorage());
	drafts.write('a', 'x');
	drafts.remove('a');
	expect(drafts.read('a')).toBeUndefined();
});

test('where storage is refused, a draft lasts until the page is closed', () => {
	const refuse = () => {
		throw new DOMException('full', 'QuotaExceededError');
	};
	const drafts = storedDrafts({ getItem: refuse, setItem: refuse, removeItem: refuse });
	drafts.write('a', 'x');
	expect(drafts.read('a')).toBe('x');
	drafts.remove('a');
	expect(drafts.read('a')).toBeUndefined();
});

test('memory drafts say that they are not kept', () => {
	expect(memoryDrafts().isKept).toBe(false);
});
