import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readContentFile } from '#exercise/content-file.ts';
import { cupboardSchema } from '#exercise/cupboard.ts';
import { Bench } from '#ui/bench/bench.svelte.ts';
import { remarksOn } from '#ui/bench/remarks.ts';

const file = 'src/content/cupboard.yaml';
const read = readContentFile(readFileSync(file, 'utf8'), file, cupboardSchema);
if (!read.ok) throw new Error(JSON.stringify(read.problems));
const cupboard = read.value.data;

const told = (bench: Bench) => remarksOn(bench).map(({ words }) => words);

function shortedBattery(): Bench {
	const bench = new Bench(() => cupboard);
	bench.chooseSupply('P5');
	bench.chooseReel('R-71');
	bench.setLength(0.15);
	return bench;
}

test('a short on a battery is a danger before power is on, with and without its fuse', () => {
	const bench = shortedBattery();
	expect(told(bench)[0]).toMatch(/^Danger\. With no fuse this would pass 2\d\.\d A.*burst.*Fit the fuse/);
	expect(bench.forecast.state).toBe('refused-short');
	bench.doCheck('tile');
	bench.doCheck('fuse');
	expect(told(bench)[0]).toMatch(/^Danger\. This would pass 2\d\.\d A, and the 6\.30 A fuse would open\..*Lengthen/);
	expect(bench.forecast.state).toBe('fuse-open');
	expect(bench.forecast.wouldPass).toBeGreaterThan(20);
});

test('a wire past the end of its data is not given a temperature', () => {
	const bench = new Bench(() => cupboard);
	bench.chooseReel('G-28');
	bench.setLength(0.12);
	expect(bench.point.isTemperatureInRange).toBe(false);
	expect(told(bench)).toContain('Danger. The wire would pass its limit of 1200 °C. Lengthen it or lower the voltage.');
});

test('a hot wire says to switch off only while it is on', () => {
	const bench = new Bench(() => cupboard, { checksDone: ['tile', 'paper'] });
	bench.switchOn();
	bench.advance(60);
	expect(told(bench)[0]).toMatch(/^Warning\. Hot now.*[Ss]witch off/);
	bench.switchOff();
	expect(told(bench)[0]).toMatch(/^Warning\. Still hot.*wait a minute/i);
	expect(told(bench)[0]).not.toMatch(/switch off/i);
});
