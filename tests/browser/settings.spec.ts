import { expect, test } from '@playwright/test';
import { fieldOf, openBench } from '#tests/support/bench.ts';

test('a dark theme is chosen, holds on another page and after loading again', async ({ page }) => {
	await page.emulateMedia({ colorScheme: 'light' });
	await page.goto('/settings/');
	const ground = () => page.evaluate(() => getComputedStyle(document.body).backgroundColor);
	expect(await ground()).toBe('rgb(241, 243, 238)');
	await page.getByRole('radio', { name: 'Dark', exact: true }).check();
	await expect.poll(ground).toBe('rgb(18, 23, 26)');
	await page.goto('/');
	await expect.poll(ground).toBe('rgb(18, 23, 26)');
	await page.reload();
	await expect.poll(ground).toBe('rgb(18, 23, 26)');
});

test('the letter U for voltage is written everywhere once chosen', async ({ page }) => {
	await page.goto('/gallery/');
	const quantities = page.getByRole('region', { name: 'Quantities' });
	await expect(quantities.getByText('V', { exact: true }).first()).toBeVisible();
	await page.goto('/settings/');
	await page.getByRole('radio', { name: /^U,/ }).check();
	await page.goto('/gallery/');
	await expect(quantities.getByText('U', { exact: true }).first()).toBeVisible();
	await expect(quantities.getByText('V', { exact: true }).first()).toBeHidden();
});

test('an own reel begins in the gauge chosen, at the number nearest to the reel before it', async ({ page }) => {
	await page.goto('/settings/');
	await page.getByRole('radio', { name: /AWG/ }).check();
	await openBench(page);
	await page.getByLabel('Which reel').selectOption('R-40');
	await page.getByLabel('Which reel').selectOption('typed');
	// AWG 26 is 0.0159 in, 0.404 mm (ASTM B258, from memory)
	await expect(fieldOf(page, 'Size')).toHaveValue('AWG 26');
	await expect(page.getByRole('group', { name: 'Reel' })).toContainText('(nearest AWG 26)');
});

test('the standard settings come back at one press, and the page says so', async ({ page }) => {
	await page.goto('/settings/');
	await page.getByRole('radio', { name: 'Inches' }).check();
	await page.getByRole('radio', { name: /AWG/ }).check();
	await page.getByRole('button', { name: 'Back to the standard settings' }).click();
	await expect(page.getByText('All settings are standard again.')).toBeVisible();
	await expect(page.getByRole('radio', { name: 'Millimetres', exact: true })).toBeChecked();
	await expect(page.getByRole('radio', { name: 'Diameter in millimetres' })).toBeChecked();
});

test('settings that cannot be read are passed over', async ({ page }) => {
	await page.addInitScript(() => localStorage.setItem('ohm-to-ember:settings', '{"theme":"loud","gauge":7'));
	await page.goto('/settings/');
	await expect(page.getByRole('radio', { name: 'As the device is set' })).toBeChecked();
	await expect(page.getByRole('radio', { name: 'Diameter in millimetres' })).toBeChecked();
});

test('settings can be worked by the keyboard alone', async ({ page }) => {
	await page.goto('/settings/');
	await page.keyboard.press('Tab');
	await expect(page.getByRole('link', { name: 'Skip to the work' })).toBeFocused();
	await page.keyboard.press('Enter');
	await page.keyboard.press('Tab');
	await page.keyboard.press('ArrowDown');
	await expect(page.getByRole('radio', { name: 'Light', exact: true })).toBeChecked();
	expect(await page.evaluate(() => document.documentElement.dataset['theme'])).toBe('light');
});
