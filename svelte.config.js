import adapter from '@sveltejs/adapter-static';

/** @type {import('@sveltejs/kit').Config} */
export default {
	compilerOptions: { runes: true },
	kit: {
		adapter: adapter({ pages: 'build', assets: 'build', fallback: '404.html', strict: true }),
		paths: { relative: true },
		// the gallery has no link in the menu
		prerender: { entries: ['*', '/gallery'], handleHttpError: 'fail', handleMissingId: 'fail' },
		version: { pollInterval: 0 },
		// style attributes are needed by set formulas and by prerendered sizes; style sheets and scripts stay strict
		csp: {
			mode: 'hash',
			directives: {
				'default-src': ['self'],
				'script-src': ['self'],
				'style-src': ['self'],
				'style-src-attr': ['unsafe-inline'],
				'img-src': ['self', 'data:'],
				'font-src': ['self'],
				'connect-src': ['self'],
				'worker-src': ['self'],
				'manifest-src': ['self'],
				'object-src': ['none'],
				'base-uri': ['none'],
				'form-action': ['none'],
			},
		},
	},
};
