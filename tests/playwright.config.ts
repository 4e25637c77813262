import { defineConfig, devices } from '@playwright/test';
import { fileURLToPath } from 'node:url';

const port = process.env['TEST_PORT'] ?? '5181';
const executablePath = process.env['CHROMIUM_PATH'];
const folder = (name: string) => fileURLToPath(new URL(name, import.meta.url));

export default defineConfig({
	testDir: '.',
	testMatch: '**/*.spec.ts',
	outputDir: folder('output/failures'),
	workers: 2,
	timeout: 60_000,
	forbidOnly: true,
	reporter: [['list'], ['json', { outputFile: folder('output/playwright.json') }]],
	use: {
		...devices['Desktop Chrome'],
		viewport: { width: 1280, height: 800 },
		baseURL: `http://127.0.0.1:${port}`,
		// pages must answer for themselves; the offline test allows the service worker
		serviceWorkers: 'block',
		launchOptions: {
			...(executablePath ? { executablePath } : {}),
			args: process.getuid?.() === 0 ? ['--no-sandbox'] : [],
		},
	},
	projects: ['browser', 'accessibility', 'visual'].map((name) => ({ name, testDir: folder(name) })),
	webServer: {
		command: 'node tests/support/serve-build.mjs',
		cwd: folder('..'),
		url: `http://127.0.0.1:${port}/`,
		env: { TEST_PORT: port },
		reuseExistingServer: false,
	},
});
