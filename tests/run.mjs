// `npm test`: install what is missing, a browser included, then run every check and print the totals.
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { installDependencies, requireNode, root, runPackage } from '#launch/prepare.mjs';

requireNode();
installDependencies();
const { findBrowser } = await import('#tests/support/browser.mjs');
const output = join(root, 'tests', 'output');
rmSync(output, { recursive: true, force: true });
mkdirSync(output, { recursive: true });

/** @typedef {{ name: string, passed: number, failed: number, skipped: number, seconds: number }} Row */
/** @type {Row[]} */
const rows = [];

/**
 * @param {string} name
 * @param {() => boolean} step
 * @param {() => { passed: number, failed: number, skipped: number }} [read] counts from the runner's own report
 */
function check(name, step, read) {
	console.log(`\n── ${name}`);
	const start = Date.now();
	const isGood = step();
	const counts = counted(isGood, read);
	rows.push({ name, ...counts, seconds: Math.round((Date.now() - start) / 1000) });
	return isGood;
}

/**
 * @param {boolean} isGood
 * @param {(() => { passed: number, failed: number, skipped: number }) | undefined} read
 */
function counted(isGood, read) {
	const whole = { passed: isGood ? 1 : 0, failed: isGood ? 0 : 1, skipped: 0 };
	if (!read) return whole;
	try {
		const counts = read();
		if (!isGood && counts.failed === 0) counts.failed = 1;
		return isGood && counts.passed === 0 ? { ...counts, failed: 1 } : counts;
	} catch {
		return { ...whole, passed: 0, failed: 1 };
	}
}

/** @returns {Promise<number>} a port that nothing listens on */
function freePort() {
	return new Promise((resolve) => {
		const probe = createServer().listen(0, '127.0.0.1', () => {
			const address = probe.address();
			probe.close(() => resolve(typeof address === 'object' && address ? address.port : 5181));
		});
	});
}

/** @param {string} name */
const report = (name) => JSON.parse(readFileSync(join(output, name), 'utf8'));

const sync = () => runPackage('@sveltejs/kit', 'svelte-kit', ['sync']);
/** @param {string} project */
const types = (project) => runPackage('typescript', 'tsc', ['-p', project]);
check('types', () => sync() && runPackage('svelte-check', 'svelte-check', ['--fail-on-warnings', '--output', 'human']));
check('types of core', () => types('src/core/tsconfig.json'));
check('types of exercise', () => types('src/exercise/tsconfig.json'));
check('lint', () => runPackage('eslint', 'eslint', ['.', '--max-warnings', '0']));
check('format', () => runPackage('prettier', 'prettier', ['--check', '--log-level', 'warn', '.']));
check(
	'unit, property, published',
	() =>
		runPackage('vitest', 'vitest', [
			'run',
			'--reporter=default',
			'--reporter=json',
			'--outputFile.json=tests/output/vitest.json',
		]),
	() => {
		const { numPassedTests, numFailedTests, numPendingTests, numTodoTests } = report('vitest.json');
		return { passed: numPassedTests, failed: numFailedTests, skipped: numPendingTests + numTodoTests };
	},
);
const isBuilt = check('build', () => runPackage('vite', 'vite', ['build', '--logLevel', 'warn']));
if (isBuilt) {
	const CHROMIUM_PATH = await findBrowser();
	const TEST_PORT = String(await freePort());
	check(
		'browser, accessibility, screenshots',
		() =>
			runPackage('@playwright/test', 'playwright', ['test', '-c', 'tests/playwright.config.ts'], {
				CHROMIUM_PATH,
				TEST_PORT,
			}),
		() => {
			const { expected, unexpected, flaky, skipped } = report('playwright.json').stats;
			return { passed: expected, failed: unexpected + flaky, skipped };
		},
	);
}

const total = { passed: 0, failed: 0, skipped: 0 };
console.log('\n── totals');
for (const row of rows) {
	total.passed += row.passed;
	total.failed += row.failed;
	total.skipped += row.skipped;
	console.log(
		`${row.name.padEnd(38)} ${row.passed} passed, ${row.failed} failed, ${row.skipped} skipped, ${row.seconds} s`,
	);
}
console.log(`\n${total.passed} passed, ${total.failed} failed, ${total.skipped} skipped`);
process.exit(total.failed === 0 ? 0 : 1);
