import type { Handle } from '@sveltejs/kit';

/** Faces every page uses at once; Greek, quantity letters and set formulas come when a page needs them. */
const facesOfEveryPage = /(source-sans-3|commissioner)-latin-/;

export const handle: Handle = ({ event, resolve }) =>
	resolve(event, {
		preload: ({ type, path }) => type === 'js' || type === 'css' || (type === 'font' && facesOfEveryPage.test(path)),
	});
