// `npm run bench`: ratios against a baseline measured in the same run, as a table and as JSON.
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { installDependencies, requireNode, root } from '#launch/prepare.mjs';
import { bundledSize } from './bundle.mjs';

requireNode();
installDependencies();
const { build } = await import('vite');
const outDir = join(root, 'node_modules', '.cache', 'bench');
mkdirSync(join(root, 'tests', 'output'), { recursive: true });
await build({
	root,
	configFile: false,
	logLevel: 'error',
	build: { ssr: join(root, 'tests', 'bench', 'suite.ts'), outDir, emptyOutDir: true, target: 'node20' },
});
const { suite } = await import(pathToFileURL(join(outDir, 'suite.js')).href);
const core = await bundledSize('core');
const kilobytes = (/** @type {number} */ bytes) => `${(bytes / 1000).toFixed(1)} kB`;
const rows = [
	...(await suite()),
	{
		name: 'the whole core, bundled and minified, then gzipped',
		ours: kilobytes(core.gzipped),
		baseline: `${kilobytes(core.minified)} minified`,
		ratio: (core.minified / core.gzipped).toPrecision(3),
		wanted: 'at most 20 kB',
	},
];
console.table(
	Object.fromEntries(
		rows.map((/** @type {import('./measure.ts').BenchRow} */ row) => [
			row.name,
			{ ours: row.ours, baseline: row.baseline, ratio: row.ratio, wanted: row.wanted },
		]),
	),
);
writeFileSync(join(root, 'tests', 'output', 'bench.json'), JSON.stringify(rows, null, '\t'));
console.log('Also as JSON in tests/output/bench.json');
