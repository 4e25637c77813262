import { createServer } from 'node:http';
import { join } from 'node:path';
import sirv from 'sirv';
import { root } from './prepare.mjs';

/** What a meta element cannot say: the rest of the content policy stands in each page. */
const headers = {
	'Content-Security-Policy': "frame-ancestors 'self'",
	'X-Content-Type-Options': 'nosniff',
	'Referrer-Policy': 'no-referrer',
	'Permissions-Policy': 'camera=(), geolocation=(), microphone=()',
};

/**
 * Serves the built site. A port that is taken is reported and the next one tried, twenty at most.
 * @param {{ port: number, host: string, isStrict?: boolean, onport?: (port: number) => void }} options
 * @returns {Promise<{ port: number, close: () => void }>}
 */
export function serve({ port, host, isStrict = false, onport = () => undefined }) {
	const files = sirv(join(root, 'build'), { etag: true, setHeaders });
	const notFound = sirv(join(root, 'build'), { single: '404.html', setHeaders });
	const server = createServer((request, response) => {
		files(request, response, () => {
			response.statusCode = 404;
			notFound(request, response, () => response.end());
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
		server.on('listening', () => {
			onport(trying);
			resolve({ port: trying, close: () => server.close() });
		});
		server.listen(trying, host);
	});
}

/** @param {import('node:http').ServerResponse} response */
function setHeaders(response) {
	for (const [name, value] of Object.entries(headers)) response.setHeader(name, value);
	if (response.req.url?.includes('/_app/immutable/'))
		response.setHeader('Cache-Control', 'public, max-age=31536000, immutable');
	else response.setHeader('Cache-Control', 'no-cache');
}
