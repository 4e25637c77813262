import { MemoryProgressStore } from '#course/progress/memory-store.ts';
import { freshProgress, lessonProgressSchema, lessonState, type LessonProgress } from '#course/progress/progress.ts';
import { openProgressStore } from '#course/progress/indexed-store.ts';
import * as v from 'valibot';
import { expect, test } from 'vitest';

const begun: LessonProgress = { ...freshProgress, part: 3, chosen: { predict: 'halved' }, judged: ['predict'] };

test('a lesson nobody opened is new, one with a choice begun, one answered to its end done', () => {
	expect(lessonState(undefined)).toBe('new');
	expect(lessonState(freshProgress)).toBe('new');
	expect(lessonState(begun)).toBe('begun');
	expect(lessonState({ ...begun, judged: ['predict', 'lookBack'] })).toBe('done');
});

test('the memory store gives back what was written, lesson by lesson', async () => {
	const store = new MemoryProgressStore();
	await store.write('one', begun);
	expect(await store.read('one')).toEqual(begun);
	expect(await store.read('two')).toBeUndefined();
	expect([...(await store.all()).keys()]).toEqual(['one']);
});

test('what is written is a copy, so that later changes do not leak in', async () => {
	const store = new MemoryProgressStore();
	const typed: Record<string, string> = { wish: '4' };
	await store.write('one', { ...begun, typed });
	typed['wish'] = '5';
	expect((await store.read('one'))?.typed['wish']).toBe('4');
});

test('where the browser has no database the work is kept in memory, and the store says so', async () => {
	const store = await openProgressStore();
	expect(store.isKept).toBe(false);
	await store.write('one', begun);
	expect(await store.read('one')).toEqual(begun);
});

test('kept work with an unreadable field loses that field alone', () => {
	const read = v.parse(lessonProgressSchema, { ...begun, part: 99, sureness: 'very', typed: { wish: '4' } });
	expect(read).toEqual({ ...begun, part: 1, sureness: undefined, typed: { wish: '4' } });
});
