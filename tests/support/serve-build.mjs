import { createServer } from 'node:http';
import { readFileSync } from 'node:fs';
import sirv from 'sirv';

// serves the finished site as any plain file host would: folders end in a slash, unknown addresses get 404.html
const port = Number(process.env['TEST_PORT'] ?? 5181);
const files = sirv('build', { dev: true });
createServer((request, response) => {
	files(request, response, () => {
		response.writeHead(404, { 'content-type': 'text/html; charset=utf-8' });
		response.end(readFileSync('build/404.html'));
	});
}).listen(port, '127.0.0.1', () => console.log(`http://127.0.0.1:${port}/`));
