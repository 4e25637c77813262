import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { run, runPackage } from '#launch/prepare.mjs';

const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];
const windowsFolders = [process.env.PROGRAMFILES, process.env['PROGRAMFILES(X86)'], process.env.LOCALAPPDATA];
const onWindows = ['Google\\Chrome\\Application\\chrome.exe', 'Microsoft\\Edge\\Application\\msedge.exe'];
const onMac = ['Google Chrome', 'Chromium', 'Microsoft Edge'];

/** @returns {readonly string[]} where a browser of the right family usually stands on this system */
function usualPlaces() {
	if (process.platform === 'win32')
		return windowsFolders.flatMap((folder) => (folder ? onWindows.map((name) => join(folder, name)) : []));
	if (process.platform === 'darwin') return onMac.map((name) => `/Applications/${name}.app/Contents/MacOS/${name}`);
	return (process.env.PATH ?? '').split(delimiter).flatMap((folder) => names.map((name) => join(folder, name)));
}

/**
 * Finds a browser for the tests, in this order: the one named by CHROMIUM_PATH, an installed one,
 * Playwright's own (downloaded when possible), Debian's package when the machine allows it.
 * @returns {Promise<string>} path of the program
 */
export async function findBrowser() {
	const named = process.env.CHROMIUM_PATH;
	if (named) {
		if (existsSync(named)) return named;
		throw new Error(`CHROMIUM_PATH is "${named}", but no file is there.`);
	}
	const installed = usualPlaces().find((path) => existsSync(path));
	if (installed) return installed;
	const { chromium } = await import('@playwright/test');
	const downloaded = chromium.executablePath();
	if (existsSync(downloaded)) return downloaded;
	console.log('No browser found; downloading one for the tests …');
	if (runPackage('@playwright/test', 'playwright', ['install', 'chromium']) && existsSync(downloaded))
		return downloaded;
	if (process.platform === 'linux' && process.getuid?.() === 0) {
		console.log('The download failed; installing the system package …');
		if (run('apt-get', ['update', '-qq']) && run('apt-get', ['install', '-y', '-qq', 'chromium'])) {
			const packaged = usualPlaces().find((path) => existsSync(path));
			if (packaged) return packaged;
		}
	}
	throw new Error('No browser for the tests. Install Chromium or Chrome, or set CHROMIUM_PATH to one, and run again.');
}
