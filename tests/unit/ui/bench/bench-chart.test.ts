import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readContentFile } from '#exercise/content-file.ts';
import { cupboardSchema } from '#exercise/cupboard.ts';
import { benchChart, sweepFor, type ChartQuantity } from '#ui/bench/bench-chart.ts';
import { Bench } from '#ui/bench/bench.svelte.ts';

const file = 'src/content/cupboard.yaml';
const read = readContentFile(readFileSync(file, 'utf8'), file, cupboardSchema);
if (!read.ok) throw new Error(JSON.stringify(read.problems));
const cupboard = read.value.data;

function chartOf(bench: Bench, quantity: ChartQuantity = 'power', unit: 'mm' | 'inch' = 'mm') {
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

test('a temperature past the end of its data is neither drawn nor told as a figure', () => {
	const bench = new Bench(() => cupboard);
	bench.chooseReel('G-28');
	bench.setLength(0.12);
	const { view, summary } = chartOf(bench, 'temperature');
	expect(view.operatingPoint).toBeUndefined();
	expect(view.series[0]?.points.every(({ y }) => y < 1200)).toBe(true);
	const start = view.series[0]?.points[0]?.x ?? 0;
	expect(start).toBeGreaterThan(120);
	expect(summary).toContain(`The wire would be beyond 1200 °C below ${view.x.write(start)}.`);
	expect(summary).toContain('Here, at 120 mm: beyond 1200 °C.');
});

test.each(['current', 'power-per-metre'] as const)(
	'a %s held at the limit of the supply is told as held',
	(quantity) => {
		const bench = new Bench(() => cupboard);
		bench.chooseReel('R-71');
		bench.setVoltage(3);
		bench.setCurrentLimit(3);
		bench.setLength(0.4);
		const { view, summary } = chartOf(bench, quantity);
		const points = view.series[0]?.points ?? [];
		const top = points[0]?.y ?? 0;
		const lastHeld = points.findLast(({ y }) => y > top * 0.9999);
		expect(summary).toContain(`Held at ${view.y.write(top)} up to ${view.x.write(lastHeld?.x ?? 0)}, `);
	},
);
