import fc from 'fast-check';
import { expect, it } from 'vitest';
import { readCupboard } from '#tests/support/content.ts';
import { readAddress, writeAddress } from '#ui/choose/address.ts';
import { readBrief, textsOf, type BriefSettings } from '#ui/choose/brief.ts';
import { presetNames, presets } from '#ui/choose/presets.ts';
import { zeroCelsius } from '#ui/bench/settings.ts';

const cupboard = readCupboard();
const foamBow = writeAddress(presets.foamBow);

it('the foam bow is written in °C, mm and minutes', () => {
	expect(foamBow).toBe('?v=1&w=t&s=P4&a=250&b=350&f=420&g=440&r=45&t=20');
});

it('each preset comes back from its address', () => {
	for (const name of presetNames) {
		const read = readAddress(writeAddress(presets[name]), cupboard);
		const brief = read?.ok ? read.value : undefined;
		expect(brief?.supply).toBe(presets[name].supply);
		expect(brief && textsOf(brief)).toEqual(textsOf(presets[name]));
	}
});

it('any brief comes back from its address as the same address', () => {
	const tenths = (least: number, most: number) => fc.integer({ min: least * 10, max: most * 10 }).map((n) => n / 10);
	const briefs = fc
		.record({
			temperatures: fc.tuple(tenths(70, 1300), tenths(0, 90)),
			lengths: fc.tuple(tenths(10, 5000), tenths(0, 4000)),
			runTime: fc.option(tenths(1, 9000), { nil: undefined }),
			mostCurrent: fc.option(tenths(1, 20), { nil: undefined }),
			room: tenths(-20, 60),
			supply: fc.constantFrom('any', ...cupboard.supplies.map(({ id }) => id)),
		})
		.map(({ temperatures: [from, more], lengths: [shortest, longer], runTime, mostCurrent, room, supply }) => {
			const brief: BriefSettings = {
				aim: 'temperature',
				from: from + zeroCelsius,
				to: from + more + zeroCelsius,
				shortest: shortest / 1000,
				longest: (shortest + longer) / 1000,
				room: room + zeroCelsius,
				supply,
				...(runTime === undefined ? {} : { runTime: runTime * 60 }),
				...(mostCurrent === undefined ? {} : { mostCurrent }),
			};
			return brief;
		});
	fc.assert(
		fc.property(briefs, (brief) => {
			const address = writeAddress(brief);
			const read = readAddress(address, cupboard);
			expect(read?.ok && writeAddress(read.value)).toBe(address);
		}),
	);
});

it('an address without a brief is none, and a damaged one names its part', () => {
	expect(readAddress('', cupboard)).toBeNull();
	expect(readAddress('?x=1', cupboard)).toBeNull();
	const problem = (query: string) => {
		const read = readAddress(query, cupboard);
		return read === null || read.ok ? read : read.problems[0];
	};
	expect(problem(foamBow.replace('v=1', 'v=2'))).toEqual({ code: 'version' });
	expect(problem(foamBow.replace('w=t', 'w=z'))).toEqual({ code: 'part', part: 'aim' });
	expect(problem(foamBow.replace('P4', 'P99'))).toEqual({ code: 'part', part: 'supply' });
	expect(problem(foamBow.replace('a=250', 'a=hot'))).toEqual({ code: 'part', part: 'from' });
	expect(problem(foamBow.replace('g=440', 'g=400'))).toEqual({ code: 'part', part: 'longest' });
	expect(problem(foamBow.replace('&t=20', ''))).toEqual({ code: 'part', part: 'room' });
});

it('a brief tells every field that is wrong at once', () => {
	const texts = { ...textsOf(presets.foamBow), from: 'warm', longest: '100', runTime: '-3', mostCurrent: '' };
	const read = readBrief(texts, { aim: 'temperature', supply: 'any' });
	expect(read.ok ? [] : read.problems.map(({ field, problem }) => [field, problem.code])).toEqual([
		['from', 'not-a-number'],
		['runTime', 'negative'],
		['longest', 'order'],
	]);
});

it('a wire that shall be colder than its room is refused', () => {
	const texts = { ...textsOf(presets.foamBow), from: '5', to: '15' };
	const read = readBrief(texts, { aim: 'temperature', supply: 'any' });
	expect(read.ok ? [] : read.problems).toEqual([{ field: 'to', problem: { code: 'cold' } }]);
});
