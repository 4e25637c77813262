// The whole core as a browser would get it: every module, minified and gzipped.
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { root } from '#launch/prepare.mjs';

/**
 * @param {string} folder inside `src`
 * @returns {Promise<{ minified: number, gzipped: number }>} in bytes
 */
export async function bundledSize(folder) {
	const { build } = await import('vite');
	const modules = readdirSync(join(root, 'src', folder), { recursive: true, encoding: 'utf8' })
		.filter((name) => name.endsWith('.ts'))
		.sort();
	const entry = 'virtual:all';
	const source = modules // a name for each, as two modules may export the same word
		.map((name, index) => `export * as m${index} from '#${folder}/${name.replaceAll('\\', '/')}';`)
		.join('\n');
	const built = await build({
		root,
		configFile: false,
		logLevel: 'error',
		plugins: [
			{
				name: 'all-modules',
				resolveId: (/** @type {string} */ id) => (id.endsWith(entry) ? join(root, 'src', 'all-modules.ts') : undefined),
				load: (/** @type {string} */ id) => (id.endsWith('all-modules.ts') ? source : undefined),
			},
		],
		build: { write: false, minify: true, target: 'es2022', lib: { entry, formats: ['es'], fileName: 'all' } },
	});
	const chunks = (Array.isArray(built) ? built : [built]).flatMap((result) =>
		'output' in result ? result.output : [],
	);
	const code = chunks.map((chunk) => (chunk.type === 'chunk' ? chunk.code : '')).join('');
	return { minified: Buffer.byteLength(code), gzipped: gzipSync(code, { level: 9 }).length };
}
