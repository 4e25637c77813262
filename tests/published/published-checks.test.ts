import { describe, expect, test } from 'vitest';
import { runCheck } from '#course/checks/check.ts';
import { publishedChecks } from '#course/checks/checks.ts';
import { unreckonedChecks } from '#course/checks/unreckoned.ts';

// reckoned inside the tests, so that one that throws fails alone
const gates = publishedChecks.filter(({ confidence }) => confidence >= 0.9);
const shown = publishedChecks.filter(({ confidence }) => confidence < 0.9);

describe('every published value', () => {
	test('stands once, as a check or with the reason why not, numbered 1 to 104', () => {
		const numbers = [...publishedChecks, ...unreckonedChecks].map(({ number }) => number).sort((a, b) => a - b);
		expect(numbers).toEqual(Array.from({ length: 104 }, (_, index) => index + 1));
	});

	test('that is left out says why in a sentence', () => {
		expect(unreckonedChecks.filter(({ reason }) => !/^[A-Z].{20,}\.$/.test(reason))).toEqual([]);
	});
});

describe('within tolerance', () => {
	test.each(gates)('$number $id: $quantity, $item', (entry) => {
		const { ours, published, deviation, isWithin } = runCheck(entry);
		expect(isWithin, `${ours} against ${published}, off by ${deviation}`).toBe(true);
	});
});

describe('restated with less confidence: reckoned and shown, not judged', () => {
	test.each(shown)('$number $id: $quantity, $item', (entry) => {
		const { ours, isGate } = runCheck(entry);
		expect(isGate).toBe(false);
		expect([ours].flat().every(Number.isFinite)).toBe(true);
	});
});
