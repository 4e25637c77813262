import { existsSync, readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { join } from 'node:path';
import sirv from 'sirv';

/** What a meta element cannot say: the rest of the content policy stands in each page. */
const headers = {
	'Content-Security-Policy': "frame-ancestors 'self'",
	'X-Content-Type-Options': 'nosniff',
	'Referrer-Policy': 'no-referrer',
	'Permissions-Policy': 'camera=(), geolocation=(), microphone=()',
};

/**
 * Serves a built site as any plain file host would: folders end in a slash, an unknown address gets 404.html.
 * A port that is taken is reported and the next one tried, twenty at most; a strict one is not given up.
 * @param {{ folder: string, port: number, host: string, isStrict?: boolean }} options
 * @returns {Promise<{ port: number, close: () => void }>}
 */
export function serve({ folder, port, host, isStrict = false }) {
	const files = sirv(folder, { etag: true, setHeaders: setCaching });
	const notFound = join(folder, '404.html');
	const server = createServer((request, response) => {
		for (const [name, value] of Object.entries(headers)) response.setHeader(name, value);
		files(request, response, () => {
			response.writeHead(404, { 'Content-Type': 'text/html; charset=utf-8', 'Cache-Control': 'no-cache' });
			response.end(existsSync(notFound) ? readFileSync(notFound) : 'Not found');
		});
	});
	const last = isStrict ? port : port + 20;
	return new Promise((resolve, reject) => {
		let trying = port;
		server.on('error', (/** @type {NodeJS.ErrnoException} */ error) => {
			if (error.code !== 'EADDRINUSE' || trying >= last) return reject(error);
			console.log(`Port ${trying} is taken; trying ${trying + 1}.`);
			server.listen(++trying, host);
		});
		server.on('listening', () => resolve({ port: trying, close: () => server.close() }));
		server.listen(trying, host);
	});
}

/**
 * @param {import('node:http').ServerResponse} response
 * @param {string} path
 */
function setCaching(response, path) {
	const isLasting = path.includes('/_app/immutable/');
	response.setHeader('Cache-Control', isLasting ? 'public, max-age=31536000, immutable' : 'no-cache');
}
