import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readContentFile } from '#exercise/content-file.ts';
import { cupboardSchema } from '#exercise/cupboard.ts';
import { Bench } from '#ui/bench/bench.svelte.ts';

const file = 'src/content/cupboard.yaml';
const read = readContentFile(readFileSync(file, 'utf8'), file, cupboardSchema);
if (!read.ok) throw new Error(JSON.stringify(read.problems));
const cupboard = read.value.data;

/** 12 V and 5 A typed in, CrAl 25 5 of AWG 28. */
function typedBench(): Bench {
	const bench = new Bench(() => cupboard);
	bench.chooseSupply('typed');
	bench.setVoltage(12);
	bench.setCurrentLimit(5);
	bench.chooseReel('typed');
	bench.chooseMaterial('cral-25-5');
	bench.setSize({ system: 'awg', value: 28 });
	return bench;
}

function ready(bench: Bench): Bench {
	for (const { id } of bench.checks) bench.doCheck(id);
	return bench;
}

test('a wished current decides the length: 12 V and 3 A make 4 Ω in the loop', () => {
	const bench = typedBench();
	bench.wish('current', 3);
	expect(bench.point.current).toBeCloseTo(3, 6);
	// 4 Ω less the 0.035 Ω of the leads
	expect(bench.point.resistanceHot).toBeCloseTo(3.965, 4);
	expect(bench.point.power).toBeCloseTo(9 * 3.965, 2);
	expect(bench.settings.length).toBeGreaterThan(0.21);
	expect(bench.settings.length).toBeLessThan(0.23);
});

test('what was wished is kept when another part is chosen', () => {
	const bench = typedBench();
	bench.wish('current', 2);
	const before = bench.settings.length;
	bench.setVoltage(6);
	expect(bench.point.current).toBeCloseTo(2, 6);
	expect(bench.settings.length).toBeLessThan(before);
});

test('a length that was touched last stays, and the current follows', () => {
	const bench = typedBench();
	bench.setLength(0.3);
	const before = bench.point.current;
	bench.setVoltage(6);
	expect(bench.settings.length).toBe(0.3);
	expect(bench.point.current).toBeLessThan(before);
});

test('a wish that cannot be met leaves the bench as it was', () => {
	const bench = typedBench();
	bench.wish('current', 2);
	const before = bench.settings;
	bench.wish('current', 50);
	expect(bench.wishProblem?.problem.code).toBe('over-limit');
	expect(bench.settings).toBe(before);
});

test('the switch does nothing before the bench check', () => {
	const bench = typedBench();
	bench.switchOn();
	expect(bench.isOn).toBe(false);
	expect(bench.halt).toEqual({ code: 'refused', refusal: { code: 'check' } });
	ready(bench).switchOn();
	expect(bench.isOn).toBe(true);
});

test('moving the clip on a live wire switches it off and says why', () => {
	const bench = ready(typedBench());
	bench.wish('current', 2);
	bench.switchOn();
	bench.moveClip(10);
	expect(bench.isOn).toBe(false);
	expect(bench.halt).toEqual({ code: 'moved-live' });
	expect(bench.live.current).toBe(0);
});

test('the voltage may be turned while on: the wire stays as long as it is', () => {
	const bench = ready(typedBench());
	bench.wish('current', 2);
	bench.switchOn();
	const { length } = bench.settings;
	bench.setVoltage(10);
	expect(bench.isOn).toBe(true);
	expect(bench.settings.length).toBe(length);
	expect(bench.settings.wish.kind).toBe('length');
});

test('a wire that would pass its limit is refused, and turning the voltage up to there switches off', () => {
	const bench = ready(typedBench());
	bench.setCurrentLimit(20);
	bench.setVoltage(4);
	bench.setLength(0.15);
	bench.switchOn();
	expect(bench.isOn).toBe(true);
	bench.setVoltage(24);
	expect(bench.isOn).toBe(false);
	expect(bench.halt?.code === 'refused' && bench.halt.refusal.code).toBe('over-limit');
});

test('an unfused short is refused with its current, before the bench check is asked for', () => {
	const bench = new Bench(() => cupboard);
	bench.chooseSupply('P5');
	bench.setLength(0.02);
	bench.switchOn();
	expect(bench.isOn).toBe(false);
	const refusal = bench.halt?.code === 'refused' ? bench.halt.refusal : undefined;
	expect(refusal?.code).toBe('short');
	// 12.7 V over 0.030 Ω, 0.035 Ω and 20 mm of wire at 8.67 Ω/m
	expect(refusal?.code === 'short' && refusal.wouldPass).toBeCloseTo(12.7 / (0.03 + 0.035 + 0.02 * 8.67), 0);
});

test('a fitted fuse opens on the same short, and no current flows', () => {
	const bench = ready(new Bench(() => cupboard));
	bench.chooseSupply('P5');
	bench.setLength(0.02);
	for (const { id } of bench.checks) bench.doCheck(id);
	bench.switchOn();
	expect(bench.supplyState).toBe('fuse-open');
	expect(bench.live.current).toBe(0);
});

test('the wire warms in true time and settles where the heat balance says', () => {
	const bench = ready(typedBench());
	bench.wish('current', 2);
	bench.switchOn();
	bench.advance(0.1);
	const early = bench.temperature;
	expect(early).toBeGreaterThan(bench.setup.room.temperature);
	expect(early).toBeLessThan(bench.point.temperature - 50);
	for (let frame = 0; frame < 600; frame += 1) bench.advance(0.1);
	expect(bench.temperature).toBeCloseTo(bench.point.temperature, 0);
	bench.switchOff();
	for (let frame = 0; frame < 3000; frame += 1) bench.advance(0.1);
	expect(bench.temperature).toBeCloseTo(bench.setup.room.temperature, 0);
});

test('only a live bench can be noted', () => {
	const bench = ready(typedBench());
	bench.noteIt();
	expect(bench.log).toHaveLength(0);
	bench.switchOn();
	bench.advance(0.5);
	bench.noteIt();
	expect(bench.log).toHaveLength(1);
	const [reading] = bench.log;
	expect(reading?.power).toBeCloseTo((reading?.voltage ?? 0) * (reading?.current ?? 0), 6);
});

test('thinner wire of the same metal is hotter at the same current', () => {
	const bench = typedBench();
	bench.wish('current', 1);
	const thick = bench.point.temperature;
	bench.setSize({ system: 'awg', value: 36 });
	expect(bench.point.current).toBeCloseTo(1, 6);
	expect(bench.point.temperature).toBeGreaterThan(thick + 400);
});
