import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readContentFile } from '#exercise/content-file.ts';
import { cupboardSchema } from '#exercise/cupboard.ts';
import { readAddress, writeAddress } from '#ui/bench/address.ts';
import { standardSettings, type BenchSettings } from '#ui/bench/settings.ts';

const file = 'src/content/cupboard.yaml';
const read = readContentFile(readFileSync(file, 'utf8'), file, cupboardSchema);
if (!read.ok) throw new Error(JSON.stringify(read.problems));
const cupboard = read.value.data;

const typedBench: BenchSettings = {
	...standardSettings,
	supply: 'typed',
	voltage: 12,
	currentLimit: 5,
	reel: 'typed',
	material: 'cral-25-5',
	size: { system: 'awg', value: 28 },
	length: 0.2231,
	wish: { kind: 'current', value: 3 },
};

function restored(settings: BenchSettings): BenchSettings {
	const found = readAddress(writeAddress(settings), cupboard);
	if (found === null || !found.ok) throw new Error(JSON.stringify(found));
	return found.value;
}

test('a bench comes back from its own address', () => {
	expect(restored(standardSettings)).toEqual(standardSettings);
	expect(restored(typedBench)).toEqual(typedBench);
});

test('a wished temperature comes back in kelvin', () => {
	const wish = { kind: 'temperature', value: 573.15 } as const;
	expect(restored({ ...standardSettings, wish }).wish.value).toBeCloseTo(573.15, 6);
});

test('an address fits on one line of a message', () => {
	expect(writeAddress(typedBench).length).toBeLessThan(120);
});

test('an address without a bench is none, not a fault', () => {
	expect(readAddress('', cupboard)).toBeNull();
	expect(readAddress('?utm=1', cupboard)).toBeNull();
});

test('an address of another version is told', () => {
	expect(readAddress('?v=2&s=P1', cupboard)).toEqual({ ok: false, problems: [{ code: 'version', found: '2' }] });
});

test.each([
	['supply', 's', 'P99'],
	['voltage', 'u', '1e99'],
	['voltage', 'u', '-3'],
	['limit', 'i', 'NaN'],
	['reel', 'w', '__proto__'],
	['length', 'l', '0'],
	['length', 'l', 'Infinity'],
	['leads', 'c', '<img>'],
	['room', 't', '400'],
	['kept', 'k', 'x9'],
])('a damaged part is named: %s, %s=%s', (part, key, value) => {
	const parts = new URLSearchParams(writeAddress(standardSettings));
	parts.set(key, value);
	const found = readAddress(`?${parts}`, cupboard);
	expect(found?.ok).toBe(false);
	expect(found?.ok === false && found.problems.map((problem) => 'part' in problem && problem.part)).toEqual([part]);
});

test('a truncated address is a fault and never half a bench', () => {
	const whole = writeAddress(typedBench);
	for (let end = 5; end < whole.lastIndexOf('k='); end += 1) {
		const found = readAddress(whole.slice(0, end), cupboard);
		expect(found?.ok, whole.slice(0, end)).toBe(false);
	}
});

test('no text at all makes reading fail', () => {
	fc.assert(
		fc.property(fc.string(), (text) => {
			const found = readAddress(`?v=1&${text}`, cupboard);
			return found !== null;
		}),
	);
});
