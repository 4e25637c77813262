import { expect, test, type Page } from '@playwright/test';

const next = (page: Page, part: number) =>
	page
		.getByRole('navigation', { name: 'Parts of this lesson' })
		.getByRole('button', { name: new RegExp(`^${part} `) })
		.click();

test('lesson 4 with a wrong prediction: refused measuring, six points, the fullest explanation', async ({ page }) => {
	await page.emulateMedia({ reducedMotion: 'reduce' });
	await page.goto('/lessons/measure-and-find-the-length/');
	await next(page, 2);
	await page.getByRole('radio', { name: '5.1 Ω' }).check();
	await page.getByRole('radio', { name: 'Sure', exact: true }).check();
	await page.getByRole('button', { name: 'Lock it in pencil' }).click();
	await next(page, 3);

	const touch = page.getByRole('button', { name: 'Touch them together' });
	await page.getByRole('textbox', { name: 'Clip on the rule' }).fill('100');
	await page.getByRole('button', { name: 'Switch on' }).click();
	await expect(page.getByText(/shows no glow, and burns/)).toBeVisible();
	await touch.click();
	await expect(page.getByText('Refused: the loop is live.')).toBeVisible();
	await page.getByRole('button', { name: 'Switch off' }).click();
	await touch.click();
	await expect(page.getByText('Refused: the supply is still plugged in.')).toBeVisible();
	await page.getByRole('button', { name: 'Unplug the supply' }).click();
	await touch.click();
	await expect(page.getByText('Refused: the wire is still hot.')).toBeVisible();
	await page.getByRole('button', { name: 'Wait a minute' }).click();
	await touch.click();
	await expect(page.getByText('Refused: put your glasses on.')).toBeVisible();
	await page.getByRole('button', { name: 'Glasses on' }).click();
	await touch.click();
	await page.getByRole('button', { name: 'Note it' }).click();
	await expect(page.getByRole('row', { name: 'Probes together' })).toContainText('0.3 Ω');

	await page.getByRole('button', { name: 'Put them on the wire' }).click();
	for (const length of ['100', '200', '300', '400', '554', '700']) {
		await page.getByRole('textbox', { name: 'Clip on the rule' }).fill(length);
		await page.getByRole('button', { name: 'Note it' }).click();
	}
	await expect(page.getByRole('row', { name: '554 mm' })).toContainText('5.1 Ω');
	await expect(page.getByText('6 points. The line is drawn in part 5.')).toBeVisible();

	await next(page, 5);
	await expect(page.getByText('Say what you saw first.')).toBeVisible();
	await page.getByRole('button', { name: 'To part 4' }).click();
	await page.getByRole('radio', { name: '0 Ω', exact: true }).check();
	await page.getByRole('button', { name: 'Say it' }).click();
	await expect(page.getByText('Ringed: the reading that was asked for.')).toBeVisible();
	await page.getByRole('radio', { name: 'about 0.3 Ω' }).check();
	await page.getByRole('button', { name: 'Say it' }).click();
	await next(page, 5);
	for (const line of [
		'You may think',
		'A reading belongs to the whole path',
		'no wire at all',
		'Wire = reading less leads',
	])
		await expect(page.getByText(line)).toBeVisible();
	const said = await page
		.getByText(/The line climbs/)
		.first()
		.innerText();
	const [slope, height] = [...said.matchAll(/[\d.]+(?=\s?Ω)/g)].map(([digits]) => Number(digits));
	// the reel's label says 8.67 Ω/m and the leads are 0.3 Ω; the meter counts in tenths
	expect(slope).toBeGreaterThan(8.4);
	expect(slope).toBeLessThan(8.9);
	expect(height).toBeGreaterThan(0.2);
	expect(height).toBeLessThan(0.4);

	await next(page, 6);
	await page.getByRole('textbox', { name: /resistance of the wire alone/ }).fill('6.2 + 0.3');
	await page.getByRole('button', { name: 'Check this step' }).click();
	await expect(page.getByText('6.50 Ω would be 565 mm of this wire.')).toBeVisible();
	await expect(page.getByText('You added the leads.')).toBeVisible();
	await page.getByRole('textbox', { name: /resistance of the wire alone/ }).fill('6.2 - 0.3');
	await page.getByRole('button', { name: 'Check this step' }).click();
	await expect(page.getByText('The rest follows from your step.')).toBeVisible();
	await expect(page.getByRole('complementary', { name: 'Margin' })).toContainText('not as predicted');
});
