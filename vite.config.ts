import { sveltekit } from '@sveltejs/kit/vite';
import { defineConfig } from 'vitest/config';

export default defineConfig({
	plugins: [sveltekit()],
	server: { fs: { strict: true } },
	test: {
		include: ['tests/{unit,property,published}/**/*.test.ts'],
		environment: 'node',
	},
});
