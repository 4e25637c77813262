import { expect, test, type Page } from '@playwright/test';

async function readMeters(page: Page) {
	const [volts = 0, amperes = 0, ohms = 0] = (await page.locator('dl dd').allInnerTexts()).map(Number.parseFloat);
	return { volts, amperes, ohms };
}

test('the wire obeys Ohm’s law at every place of the slider', async ({ page }) => {
	await page.goto('/');
	const slider = page.getByRole('slider', { name: 'Voltage of the supply' });
	for (const voltage of ['1.5', '6', '12']) {
		await slider.fill(voltage);
		await expect(page.locator('output')).toHaveText(`${Number(voltage).toFixed(1)} V`);
		const { volts, amperes, ohms } = await readMeters(page);
		expect(amperes).toBeGreaterThan(0);
		expect(volts).toBeLessThan(Number(voltage));
		expect(Math.abs(volts / ohms / amperes - 1)).toBeLessThan(0.01);
	}
});

test('by keyboard the wire goes from cold to glowing, and the slider says what it does', async ({ page }) => {
	await page.goto('/');
	const slider = page.getByRole('slider', { name: 'Voltage of the supply' });
	await slider.press('Home');
	await expect(page.getByText('20 °C · cold', { exact: true })).toBeVisible();
	expect((await readMeters(page)).amperes).toBe(0);
	await slider.press('End');
	await expect(slider).toHaveAttribute('aria-valuetext', /^12\.0 volts, .* amperes\. .* red\. Would burn\.$/);
	await expect(page.getByText(/°C ± \d+ · (dark )?red · burns$/)).toBeVisible();
});

test('the buttons beside the slider do what dragging does', async ({ page }) => {
	await page.goto('/');
	await page.getByRole('slider').fill('6');
	await page.getByRole('button', { name: 'Voltage of the supply: 0.5 V more' }).click();
	await expect(page.locator('output')).toHaveText('6.5 V');
	await page.getByRole('button', { name: 'Voltage of the supply: 0.5 V less' }).click();
	await page.getByRole('button', { name: 'Voltage of the supply: 0.5 V less' }).click();
	await expect(page.locator('output')).toHaveText('5.5 V');
});

test('in bright light the same wire shows no glow, yet still burns', async ({ page }) => {
	await page.goto('/');
	await page.getByRole('slider').fill('10');
	await expect(page.getByText(/faint red · burns/)).toBeVisible();
	await page.goto('/settings/');
	await page.getByRole('radio', { name: /^Bright daylight/ }).check();
	await page.goto('/');
	await page.getByRole('slider').fill('10');
	await expect(page.getByText(/hot, no glow · burns/)).toBeVisible();
});

test('nothing on the front page moves while it loads', async ({ page }) => {
	await page.goto('/');
	const shift = await page.evaluate(
		() =>
			new Promise<number>((resolve) => {
				let sum = 0;
				new PerformanceObserver((list) => {
					for (const entry of list.getEntries()) if ('value' in entry) sum += Number(entry.value);
				}).observe({ type: 'layout-shift', buffered: true });
				setTimeout(() => resolve(sum), 1000);
			}),
	);
	expect(shift).toBeLessThan(0.01);
});

test('an address that leads nowhere names the next act', async ({ page }) => {
	const response = await page.goto('/no-such-sheet/');
	expect(response?.status()).toBe(404);
	await expect(page.getByRole('heading', { name: 'That sheet is not in the drawer.' })).toBeVisible();
	await page.locator('main').getByRole('link', { name: 'Front page' }).click();
	await expect(page.getByRole('heading', { level: 1, name: /heated wire/ })).toBeVisible();
});

test('the front page offers to carry on where a lesson was left', async ({ page }) => {
	await page.goto('/');
	const lessons = page.getByRole('region', { name: 'Lessons' });
	await lessons.getByRole('link', { name: /^Begin with lesson/ }).click();
	await page.getByRole('button', { name: /^Next part: 2/ }).click();
	await page.goto('/');
	await expect(lessons.getByRole('link', { name: /^Carry on: lesson \d+, part 2$/ })).toBeVisible();
	await expect(lessons.getByText('begun')).toBeVisible();
});
