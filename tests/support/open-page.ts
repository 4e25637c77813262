import type { Page } from '@playwright/test';

/** Opens a page and waits until its scripts have run, kept work is back and the faces are in. */
export async function openSettled(page: Page, route: string): Promise<void> {
	await page.goto(route, { waitUntil: 'networkidle' });
	await page.evaluate(() => document.fonts.ready.then(() => true));
}
