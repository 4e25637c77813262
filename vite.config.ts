import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';

export default defineConfig({
	plugins: [sveltekit()],
	server: { fs: { strict: true } },
	// the content policy lets fonts come from files only
	build: { assetsInlineLimit: (path: string) => (/\.woff2?$/.test(path) ? false : undefined) },
	test: {
		include: ['tests/{unit,property,published}/**/*.test.ts'],
		environment: 'node',
		setupFiles: ['tests/support/property-seed.ts'],
		// a full stop for a test that hangs, not a measure of speed
		testTimeout: 120_000,
	},
});
