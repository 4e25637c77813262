import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const order = ['core', 'exercise', 'course', 'ui', 'routes'];
const sources = order.flatMap((layer) =>
	readdirSync(`src/${layer}`, { recursive: true, encoding: 'utf8' })
		.filter((name) => /\.(ts|svelte)$/.test(name))
		.map((name) => ({ layer, path: `src/${layer}/${name}`, text: readFileSync(`src/${layer}/${name}`, 'utf8') })),
);
const imported = /(?:from|import)\s*\(?\s*'#(\w+)\//g;

test('each layer imports only itself and the layers to its left', () => {
	const wrong = sources.flatMap(({ layer, path, text }) =>
		[...text.matchAll(imported)]
			.filter(([, target]) => target !== 'content' && order.indexOf(target ?? '') > order.indexOf(layer))
			.map(([statement]) => `${path}: ${statement}`),
	);
	expect(sources.length).toBeGreaterThan(0);
	expect(wrong).toEqual([]);
});

test('no import climbs out of its folder, and core imports nothing but core', () => {
	const climbing = sources.filter(({ text }) => /from '\.\.\//.test(text)).map(({ path }) => path);
	const foreign = sources
		.filter(({ layer, text }) => layer === 'core' && /from '(?!#core\/|\.\/)/.test(text))
		.map(({ path }) => path);
	expect(climbing).toEqual([]);
	expect(foreign).toEqual([]);
});
