// Plain JavaScript without dependencies: this runs on a fresh checkout, before anything is installed.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const stamp = join(root, 'node_modules', '.installed-from');
const oldestNode = [20, 19];

/**
 * Runs a program in the project's folder with its output on this terminal.
 * @param {string} program
 * @param {readonly string[]} args
 * @param {NodeJS.ProcessEnv} [env]
 * @returns {boolean} whether it ended well
 */
export function run(program, args, env = {}) {
	const shell = process.platform === 'win32' && program !== process.execPath;
	const ended = spawnSync(program, args, { cwd: root, stdio: 'inherit', shell, env: { ...process.env, ...env } });
	return ended.status === 0;
}

/**
 * Runs the program that an installed package brings.
 * @param {string} packageName
 * @param {string} program name under "bin" in its package.json
 * @param {readonly string[]} args
 * @param {NodeJS.ProcessEnv} [env]
 */
export function runPackage(packageName, program, args, env) {
	const folder = join(root, 'node_modules', ...packageName.split('/'));
	const { bin } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
	return run(process.execPath, [join(folder, typeof bin === 'string' ? bin : bin[program]), ...args], env);
}

/** Stops with a sentence when this Node.js is too old. */
export function requireNode() {
	const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
	const [oldestMajor = 0, oldestMinor = 0] = oldestNode;
	if (major > oldestMajor || (major === oldestMajor && minor >= oldestMinor)) return;
	console.error(
		`This needs Node.js ${oldestNode.join('.')} or newer; here is ${process.versions.node}. Install a newer one.`,
	);
	process.exit(1);
}

/** Installs the dependencies when they are missing or when package-lock.json has changed since. */
export function installDependencies() {
	const wanted = createHash('sha256')
		.update(readFileSync(join(root, 'package-lock.json')))
		.digest('hex');
	if (existsSync(stamp) && readFileSync(stamp, 'utf8') === wanted) return;
	console.log('Installing the dependencies (once, and again when package-lock.json changes) …');
	const npm = process.env.npm_execpath;
	const args = ['ci', '--no-audit', '--no-fund', '--loglevel=error'];
	if (!(npm?.endsWith('.js') ? run(process.execPath, [npm, ...args]) : run('npm', args))) {
		console.error('The dependencies could not be installed. Is the npm registry within reach? Then try again.');
		process.exit(1);
	}
	writeFileSync(stamp, wanted);
}
