import { expect, test } from 'vitest';
import { readSize, readTyped } from '#ui/bench/typed.ts';

const lengths = { unit: 'mm', least: 0.01, most: 10 };

test('a figure is taken with its unit or without', () => {
	expect(readTyped('550', lengths)).toEqual({ ok: true, value: 0.55 });
	expect(readTyped('55 cm', lengths)).toEqual({ ok: true, value: 0.55 });
	expect(readTyped('10', lengths)).toEqual({ ok: true, value: 0.01 });
});

test.each([
	['', 'empty'],
	['   ', 'empty'],
	['abc', 'not-a-number'],
	['0', 'zero'],
	['0.0 mm', 'zero'],
	['-5', 'negative'],
	['1', 'below'],
	['1e99', 'above'],
	['99999', 'above'],
	['5 V', 'unit'],
])('a figure that cannot be taken says why: "%s" is %s', (text, code) => {
	const read = readTyped(text, lengths);
	expect(read.ok ? 'taken' : read.problems[0]?.code).toBe(code);
});

test('a size is read in millimetres and by both gauges', () => {
	expect(readSize('0.4 mm')).toEqual({ ok: true, value: { system: 'mm', value: 0.4 } });
	expect(readSize('AWG 28')).toEqual({ ok: true, value: { system: 'awg', value: 28 } });
	expect(readSize('30 SWG')).toEqual({ ok: true, value: { system: 'swg', value: 30 } });
});

test('a size the bench does not take is told from one that cannot be read', () => {
	expect(readSize('AWG 2')).toEqual({ ok: false, problems: [{ code: 'size-range' }] });
	expect(readSize('40 mm')).toEqual({ ok: false, problems: [{ code: 'size-range' }] });
	expect(readSize('thick')).toEqual({ ok: false, problems: [{ code: 'size' }] });
});
