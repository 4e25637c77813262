import { expect, test, type Page } from '@playwright/test';
import { openBench } from '#tests/support/bench.ts';

/** Tabs forward until the control that has this name is reached. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
	for (let presses = 0; presses < 60; presses += 1) {
		await page.keyboard.press('Tab');
		const found = await page.evaluate(() => {
			const { activeElement: element } = document;
			if (element === null) return '';
			const labels =
				element instanceof HTMLInputElement || element instanceof HTMLSelectElement ? element.labels : null;
			return element.getAttribute('aria-label') ?? labels?.[0]?.textContent ?? element.textContent ?? '';
		});
		if (name.test(found.trim())) return;
	}
	throw new Error(`no control called ${name} by Tab`);
}

test('the whole job by keyboard alone', async ({ page }) => {
	await openBench(page);
	const clip = page.getByRole('slider', { name: /Clip on the rule/ });
	await expect(clip).toHaveAttribute('aria-valuenow', '553');

	await tabTo(page, /^Clip on the rule/);
	await page.keyboard.press('ArrowRight');
	await expect(clip).toHaveAttribute('aria-valuenow', '554');
	await page.keyboard.press('Shift+ArrowLeft');
	await expect(clip).toHaveAttribute('aria-valuenow', '544');
	await page.keyboard.press('PageDown');
	await expect(clip).toHaveAttribute('aria-valuenow', '494');
	await page.keyboard.press('End');
	await expect(clip).toHaveAttribute('aria-valuenow', '600');
	await page.keyboard.press('Home');
	await expect(clip).toHaveAttribute('aria-valuenow', '10');

	await tabTo(page, /^Slide the tile/);
	await page.keyboard.press('Space');
	await tabTo(page, /^Move the paper/);
	await page.keyboard.press('Enter');
	await tabTo(page, /^Current$/);
	await page.keyboard.press('Control+a');
	await page.keyboard.type('2');
	await page.keyboard.press('Enter');
	await expect(page.getByText('Kept: current 2.00 A.')).toBeVisible();

	await page.keyboard.press('Shift+Tab');
	await page.getByRole('button', { name: 'Switch on' }).focus();
	await page.keyboard.press('Space');
	await expect(page.getByRole('button', { name: 'Switch off' })).toHaveAttribute('aria-pressed', 'true');
	await expect(page.getByText('no glow · burns')).toBeVisible({ timeout: 15_000 });

	await clip.focus();
	await page.keyboard.press('ArrowRight');
	await expect(page.getByRole('button', { name: 'Switch on' })).toHaveAttribute('aria-pressed', 'false');
	await expect(page.getByRole('alert')).toContainText('Switched off');
});

test('the points of the chart are walked by arrow keys and read out', async ({ page }) => {
	await openBench(page);
	const reader = page.getByRole('slider', { name: 'Read along the line' });
	await reader.focus();
	await page.keyboard.press('ArrowRight');
	const first = await reader.getAttribute('aria-valuetext');
	expect(first).toMatch(/^At ℓ \d+ mm: P [\d.]+ W$/);
	await page.keyboard.press('ArrowRight');
	await expect(reader).not.toHaveAttribute('aria-valuetext', first ?? '');
	const walked = await reader.getAttribute('aria-valuetext');
	await page.getByRole('button', { name: 'Show as table' }).click();
	const [length = '', power = ''] = (walked ?? '').match(/\d[\d.]* (mm|W)/g) ?? [];
	await expect(page.getByRole('row', { name: `${length} ${power}`, exact: true })).toBeVisible();
});
