import { expect, test, type Page } from '@playwright/test';

const next = (page: Page, part: number) => page.getByRole('button', { name: `Next part: ${part} of 7` });
const choose = async (page: Page, answer: string | RegExp, button: string) => {
	await page.getByRole('radio', { name: answer, exact: true }).check();
	await page.getByRole('button', { name: button, exact: true }).first().click();
};

test('lesson 3 is walked from the caution to the look back with every answer right', async ({ page }) => {
	await page.goto('/lessons/');
	await page.getByRole('link', { name: 'Solve for resistance' }).click();
	await expect(page.getByRole('note', { name: 'Caution' })).toContainText(
		'Work out the ohms before anything is joined',
	);
	await next(page, 2).click();
	await expect(page.getByRole('heading', { name: '2 Predict' })).toBeFocused();
	await page.getByRole('radio', { name: 'halved' }).check();
	await page.getByRole('radio', { name: 'Sure', exact: true }).check();
	await page.getByRole('button', { name: 'Lock it in pencil' }).click();
	await expect(page.getByRole('radio', { name: 'doubled' })).toBeDisabled();

	await next(page, 3).click();
	await expect(page.getByText('R = ?', { exact: true })).toBeVisible();
	await page.getByRole('textbox', { name: 'Wished current' }).fill('4 A');
	for (const [resistance, reading, said] of [
		['12.0 Ω', '1.00 A', 'Try fewer ohms'],
		['3.0 Ω', '4.00 A', 'The ammeter confirms it'],
		['1.5 Ω', '5.00 A', '8.00 A is asked for. The supply holds 5.00 A and its posts fall to 7.5 V'],
	] as const) {
		await page.getByRole('button', { name: `Put in ${resistance}` }).click();
		await page.getByRole('button', { name: 'Switch on' }).click();
		await expect(page.getByText(said)).toBeVisible();
		await expect(page.getByRole('row', { name: resistance })).toContainText(reading);
		await page.getByRole('button', { name: 'Switch off' }).click();
	}

	await next(page, 4).click();
	await choose(page, '4.00 A', 'Say it');
	await next(page, 5).click();
	await expect(page.getByText('Right. 3.0 Ω lets 4.00 A through.')).toBeVisible();
	await expect(page.getByText('You may think')).toHaveCount(0);
	await choose(page, /falls to half/, 'Check');
	await expect(page.getByText('Twice the ohms, half the amperes')).toBeVisible();

	await next(page, 6).click();
	await choose(page, /how many volts each ampere needs/, 'Check');
	await expect(page.getByText('Both readings belong to the piece')).toBeVisible();
	await page.getByRole('textbox', { name: /Write the relation/ }).fill('R = V/I');
	await page.getByRole('button', { name: 'Check this step' }).click();
	await expect(page.getByText('6.67 Ω would pass 0.750 A.')).toBeVisible();
	const job = page.getByRole('region', { name: 'Job card' });
	const [voltage, , current] = ((await job.innerText()).match(/[\d.]+(?=\s?[VA])/g) ?? []).map(Number);
	await page
		.getByRole('textbox', { name: 'Working' })
		.fill(`R = ${voltage}/${current} = ${(voltage ?? 0) / (current ?? 1)} Ω`);
	await page.getByRole('button', { name: 'Mark it' }).click();
	await expect(page.getByText(/^Right\b/).last()).toBeVisible();
	await expect(page.getByText('Not yet.')).toHaveCount(0);
	await page.getByRole('button', { name: 'Exercise 2 of 3' }).click();
	await expect(job).toContainText('mA');

	await next(page, 7).click();
	await choose(page, '2 A', 'Check');
	await expect(page.getByText('The lesson is done.')).toBeVisible();
	const margin = page.getByRole('complementary', { name: 'Margin' });
	await expect(margin).toContainText('halved');
	await expect(margin).toContainText('as predicted');
	await page.goto('/lessons/');
	await expect(page.getByRole('listitem').filter({ hasText: 'Solve for resistance' })).toContainText('done');
});
