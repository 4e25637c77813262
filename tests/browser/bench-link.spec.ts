import { expect, test } from '@playwright/test';
import { fieldOf, setUp, typeInto } from '#tests/support/bench.ts';

test('the link brings the same bench back', async ({ page }) => {
	await setUp(page, 28);
	await typeInto(page, 'Current', '3');
	const length = await fieldOf(page, 'Length').inputValue();
	await page.getByRole('button', { name: 'Save this set-up' }).click();
	const link = await page.getByRole('textbox', { name: 'Link to this bench' }).inputValue();
	expect(link).toContain('v=1');
	await expect(page).toHaveURL(link);
	await page.goto('/');
	await page.goto(link);
	await expect(fieldOf(page, 'Current')).toHaveValue('3.00');
	await expect(fieldOf(page, 'Length')).toHaveValue(length);
	await expect(fieldOf(page, 'Size')).toHaveValue('AWG 28');
	await expect(page.getByText('Kept: current 3.00 A.')).toBeVisible();
});

for (const query of [
	'?v=1&s=<script>alert(1)</script>',
	'?v=1&s=P1&u=1e999&i=5',
	'?v=1&s=P1&u=12',
	'?v=99',
	'?v=1&s=P1&u=12&i=5&w=R-40&l=-5&c=LA&o=MT&t=20&a=0&k=l553',
]) {
	test(`a hostile or cut address is told and the standard bench shown: ${query}`, async ({ page }) => {
		const faults: string[] = [];
		page.on('pageerror', (error) => faults.push(error.message));
		await page.goto(`/bench/${query}`);
		await expect(page.getByText(/The standard bench is shown/)).toBeVisible();
		await expect(fieldOf(page, 'Length')).toHaveValue('553');
		expect(faults).toEqual([]);
	});
}

test('without scripts the page still shows the standard bench and its figures', async ({ browser }) => {
	const page = await browser.newPage({ javaScriptEnabled: false });
	await page.goto('/bench/');
	await expect(page.getByRole('heading', { name: 'Bench', level: 1 })).toBeVisible();
	await expect(page.getByText(/expected \d+ °C ± \d+ · hot, no glow/)).toBeVisible();
	await expect(page.getByText(/Falls from .* W to .* W/)).toBeVisible();
	await page.close();
});
