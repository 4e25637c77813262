import { mkdtempSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, expect, test, vi } from 'vitest';
import { serve } from '#launch/serve.mjs';

const folder = mkdtempSync(join(tmpdir(), 'served-'));
writeFileSync(join(folder, '404.html'), 'That sheet is not in the drawer.');
const host = 'localhost';
const closing: (() => void)[] = [];
afterEach(() => closing.splice(0).forEach((close) => close()));

async function takenPort(): Promise<number> {
	const blocker = createServer();
	closing.push(() => blocker.close());
	await new Promise<void>((resolve) => blocker.listen(0, host, resolve));
	const address = blocker.address();
	if (address === null || typeof address === 'string') throw new Error('no port was given');
	return address.port;
}

test('a port that is taken is reported and gives way to a later one', async () => {
	const said = vi.spyOn(console, 'log').mockReturnValue(undefined);
	const taken = await takenPort();
	const site = await serve({ folder, port: taken, host });
	closing.push(site.close);
	expect(site.port).toBeGreaterThan(taken);
	expect(said).toHaveBeenCalledWith(`Port ${taken} is taken; trying ${taken + 1}.`);
});

test('a strict port that is taken is refused', async () => {
	await expect(serve({ folder, port: await takenPort(), host, isStrict: true })).rejects.toThrow('EADDRINUSE');
});

test('an unknown address gets its page as 404, forbids framing by others and guessing of types', async () => {
	const site = await serve({ folder, port: await takenPort(), host });
	closing.push(site.close);
	const answer = await fetch(`http://${host}:${site.port}/no-such-sheet`);
	expect(answer.status).toBe(404);
	expect(await answer.text()).toContain('not in the drawer');
	expect(answer.headers.get('content-security-policy')).toBe("frame-ancestors 'self'");
	expect(answer.headers.get('x-content-type-options')).toBe('nosniff');
});
