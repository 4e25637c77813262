// `npm start`: install what is missing, build, serve, print the address.
import { join } from 'node:path';
import { installDependencies, requireNode, root, runPackage } from './prepare.mjs';

requireNode();
installDependencies();
console.log('Building the site …');
if (!runPackage('vite', 'vite', ['build', '--logLevel', 'error'])) {
	console.error('The site could not be built: the lines above say which file and why.');
	process.exit(1);
}
const { serve } = await import('./serve.mjs');
const port = Number(process.env.PORT ?? 4400);
if (!Number.isInteger(port) || port < 1 || port > 65_000) {
	console.error(`PORT is "${process.env.PORT}". Give a whole number from 1 to 65000, or leave it out for 4400.`);
	process.exit(1);
}
const host = process.env.HOST ?? 'localhost';
const site = await serve({ folder: join(root, 'build'), port, host });
console.log(`\nOhm to Ember is ready: http://${host}:${site.port}/\nStop it with Ctrl-C.`);
