import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const developers = readFileSync('DEVELOPERS.md', 'utf8');
const readme = readFileSync('README.md', 'utf8');
const manifest: unknown = JSON.parse(readFileSync('package.json', 'utf8'));

test('every path that the documents name exists', () => {
	const named = [...`${developers}\n${readme}`.matchAll(/(?:`|\]\()((?:src|tests|static)\/?[\w./-]*)(?:`|\))/g)].map(
		([, path]) => path ?? '',
	);
	const generated = ['tests/output'];
	const missing = named.filter((path) => !generated.includes(path) && !existsSync(path));
	expect(named.length).toBeGreaterThan(10);
	expect(missing).toEqual([]);
});

test('every dependency stands in the list of reasons', () => {
	const { dependencies = {}, devDependencies = {} } = Object(manifest);
	const missing = Object.keys({ ...dependencies, ...devDependencies }).filter(
		(name) => !developers.includes(`\`${name}\``),
	);
	expect(missing).toEqual([]);
});
