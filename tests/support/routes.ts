import { readdirSync } from 'node:fs';

/** Every page of the finished site, read from the build so that none can be forgotten. */
export const routes: readonly string[] = readdirSync('build', { recursive: true, encoding: 'utf8' })
	.filter((path) => /(^|\/)index\.html$/.test(path))
	.map((path) => `/${path.replace(/index\.html$/, '')}`)
	.sort();

/** A name for files made from a page. */
export function fileNameOf(route: string): string {
	return route.replaceAll(/^\/|\/$/g, '').replaceAll('/', '-') || 'front';
}
