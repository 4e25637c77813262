import { expect, test } from '@playwright/test';

test.beforeEach(async ({ page }) => {
	await page.goto('/tables/');
});

test('a teacher finds the ohms per metre of AWG 28 heating wire', async ({ page }) => {
	await page.getByLabel('Metal').selectOption({ label: 'CrAl 25 5' });
	await page.getByLabel('AWG').check();
	const row = page.getByRole('row', { name: /^28 / });
	// CrAl 25 5: 1.44 µΩ·m by GB/T 1234 (looked up), AWG 28 is 0.3211 mm by ASTM B258: 4 × 1.44e-6/(π × 0.3211e-3²)
	await expect(row.getByRole('cell').nth(1)).toHaveText('17.8');
});

test('a press on a column head sorts by it, a second press turns the order round', async ({ page }) => {
	const head = page.getByRole('columnheader', { name: /Cold, per metre/ });
	const firstCell = page.getByRole('rowheader').first();
	await head.getByRole('button').press('Enter');
	await expect(head).toHaveAttribute('aria-sort', 'ascending');
	await expect(firstCell).toHaveText('2.00');
	await head.getByRole('button').press('Enter');
	await expect(head).toHaveAttribute('aria-sort', 'descending');
	await expect(firstCell).toHaveText('0.100');
});

test('a dash stands where the metal may not be that hot', async ({ page }) => {
	await page.getByLabel('Metal').selectOption({ label: 'CuNi 44' });
	await expect(page.getByText('over its limit in air').first()).toBeAttached();
});
