import { expect, test } from '@playwright/test';

test.use({ serviceWorkers: 'allow' });

test('without network the site opens, moves between pages and says that work is kept', async ({ page, context }) => {
	await page.goto('/');
	await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
	await context.setOffline(true);
	await expect(page.getByText('No network. Everything works; your work is saved here.')).toBeVisible();
	await page.reload();
	await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
	await expect(page.getByText('No network.')).toBeVisible();
	await page.getByRole('link', { name: 'Settings' }).click();
	await expect(page.getByRole('heading', { level: 1, name: 'Settings' })).toBeVisible();
	await page.goto('/settings');
	await expect(page.getByRole('heading', { level: 1, name: 'Settings' })).toBeVisible();
	expect(await page.evaluate(() => document.fonts.check('18px "Source Sans 3 Variable"'))).toBe(true);
	await context.setOffline(false);
	await expect(page.getByText('No network.')).toBeHidden();
});

test('without network a page that was never opened is there, and a missing one says so', async ({ page, context }) => {
	await page.goto('/');
	await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
	await context.setOffline(true);
	await page.goto('/gallery/');
	await expect(page.getByRole('heading', { level: 1, name: 'Gallery of parts' })).toBeVisible();
	await page.goto('/no-such-sheet/');
	await expect(page.getByText('That sheet is not in the drawer.')).toBeVisible();
});

test('without network lessons and practice open from their lists, and so does the bench', async ({ page, context }) => {
	await page.goto('/');
	await page.evaluate(() => navigator.serviceWorker.ready.then(() => true));
	await context.setOffline(true);
	const menu = page.getByRole('navigation', { name: 'Pages' });
	await menu.getByRole('link', { name: 'Lessons' }).click();
	await page.locator('main').getByRole('link').first().click();
	await expect(page.getByRole('button', { name: /^Next part: 2/ })).toBeVisible();
	await menu.getByRole('link', { name: 'Practice' }).click();
	await expect(page.getByRole('heading', { level: 1, name: 'Practice' })).toBeVisible();
	await menu.getByRole('link', { name: 'Bench' }).click();
	await expect(page.getByRole('button', { name: 'Switch on' })).toBeVisible();
});
