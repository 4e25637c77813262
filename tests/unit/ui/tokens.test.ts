import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { contrast } from '#tests/support/contrast.ts';

const themes = ['light', 'dark'] as const;
const sheet = readFileSync('src/ui/style/tokens.css', 'utf8');
const tokens = new Map(
	[...sheet.matchAll(/--([\w-]+):\s*(?:light-dark\((#\w+), (#\w+)\)|(#\w+));/g)].map(
		([, name = '', light, dark, both]) => [name, { light: light ?? both ?? '', dark: dark ?? both ?? '' }],
	),
);
function colour(name: string, theme: (typeof themes)[number]): string {
	const found = tokens.get(name);
	if (!found) throw new RangeError(`no colour token ${name}`);
	return found[theme];
}

test('the contrast formula gives the ratios WCAG itself names', () => {
	expect(contrast('#ffffff', '#000000')).toBeCloseTo(21, 10);
	expect(contrast('#777777', '#ffffff')).toBeLessThan(4.5);
	expect(contrast('#767676', '#ffffff')).toBeGreaterThan(4.5);
});

// the design's table: [figure, ground, light, dark]
const designed = [
	['ink', 'wash', 12.8, 11.8],
	['rule', 'sheet', 1.5, 1.4],
	['edge', 'sheet', 4.0, 4.1],
	['edge', 'film', 3.7, 4.5],
	['edge', 'wash', 3.4, 3.5],
	['ink', 'sheet', 15.3, 13.8],
	['ink', 'film', 14.1, 15.3],
	['ink-2', 'sheet', 8.5, 9.1],
	['ink-2', 'film', 7.8, 10.1],
	['pencil', 'sheet', 6.1, 7.2],
	['pencil', 'film', 5.6, 8.0],
	['ember', 'sheet', 6.5, 7.0],
	['ember', 'film', 6.0, 7.8],
	['sheet', 'ember-fill', 5.0, 5.5],
	['link', 'sheet', 9.0, 8.7],
	['link', 'film', 8.3, 9.7],
	['tile-text', 'tile', 12.8, 16.3],
	['tile-ember', 'tile', 6.5, 8.3],
	['sign-black', 'tape', 10.6, 13.0],
	['series-1', 'sheet', 5.3, 13.5],
	['series-2', 'sheet', 9.3, 3.6],
	['series-3', 'sheet', 3.4, 13.2],
	['series-4', 'sheet', 3.3, 6.1],
	['series-5', 'sheet', 14.5, 3.7],
] as const;

describe.each(designed)('%s on %s', (figure, ground, light, dark) => {
	test.each([
		['light', light],
		['dark', dark],
	] as const)('has the designed contrast in the %s theme', (theme, ratio) => {
		expect(contrast(colour(figure, theme), colour(ground, theme))).toBeCloseTo(ratio, 1);
	});
});

test.each(themes)('text is readable on every ground, in the %s theme', (theme) => {
	const weak = ['ink', 'ink-2', 'pencil', 'link', 'ember'].flatMap((figure) =>
		['film', 'sheet', 'wash']
			.filter((ground) => contrast(colour(figure, theme), colour(ground, theme)) < 4.5)
			.map((ground) => `${figure} on ${ground}`),
	);
	expect(weak).toEqual([]);
});

test.each(themes)('edges of fields, chart lines and the wire are visible, in the %s theme', (theme) => {
	const pairs = [
		['edge', 'film'],
		['edge', 'sheet'],
		['edge', 'wash'],
		['tile-wire', 'tile'],
		...[1, 2, 3, 4, 5].map((place) => [`series-${place}`, 'sheet']),
	];
	const weak = pairs.filter(([figure = '', ground = '']) => contrast(colour(figure, theme), colour(ground, theme)) < 3);
	expect(weak).toEqual([]);
});
