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
	},
});
