import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readContentFile } from '#exercise/content-file.ts';
import { cupboardSchema } from '#exercise/cupboard.ts';
import { benchChart, sweepFor } from '#ui/bench/bench-chart.ts';
import { Bench } from '#ui/bench/bench.svelte.ts';

const file = 'src/content/cupboard.yaml';
const read = readContentFile(readFileSync(file, 'utf8'), file, cupboardSchema);
if (!read.ok) throw new Error(JSON.stringify(read.problems));
const cupboard = read.value.data;

function chartOf(bench: Bench, quantity: 'power' | 'temperature' = 'power', unit: 'mm' | 'inch' = 'mm') {
	return benchChart(bench, sweepFor(bench.setup), quantity, unit);
}

test('off is pencil with a hollow point, on is ink with a live one', () => {
	const bench = new Bench(() => cupboard, { checksDone: ['tile', 'paper'] });
	expect(chartOf(bench).view.series[0]?.mark).toBe('pencil');
	expect(chartOf(bench).view.operatingPoint?.isLive).toBe(false);
	bench.switchOn();
	expect(chartOf(bench).view.series[0]?.mark).toBe('ink');
	expect(chartOf(bench).view.operatingPoint?.isLive).toBe(true);
});

test('the operating point lies on the line', () => {
	const bench = new Bench(() => cupboard);
	bench.setLength(0.4);
	const { view } = chartOf(bench);
	const points = view.series[0]?.points ?? [];
	const after = points.findIndex(({ x }) => x >= 400);
	const here = view.operatingPoint?.y ?? 0;
	expect(here).toBeLessThanOrEqual(points[after - 1]?.y ?? 0);
	expect(here).toBeGreaterThanOrEqual(points[after]?.y ?? Infinity);
});

test('lengths at which a fuse would open are marked as over a limit and not drawn', () => {
	const bench = new Bench(() => cupboard);
	bench.chooseSupply('P5');
	const { view } = chartOf(bench);
	const [band] = view.bands ?? [];
	expect(band?.label).toBe('over a limit');
	expect(band?.from).toBe(0);
	expect(view.series[0]?.points.every(({ x }) => x >= (band?.to ?? 0))).toBe(true);
});

test('the summary is made from the points shown', () => {
	const { view, summary } = chartOf(new Bench(() => cupboard));
	const last = view.series[0]?.points.at(-1);
	expect(summary).toContain(view.y.write(last?.y ?? 0));
	expect(summary).toContain('to 600 mm');
});

test('lengths in inches when they are chosen', () => {
	const { view } = chartOf(new Bench(() => cupboard), 'temperature', 'inch');
	expect(view.x.unit).toBe('in');
	expect(view.operatingPoint?.x).toBeCloseTo(553 / 25.4, 6);
});
