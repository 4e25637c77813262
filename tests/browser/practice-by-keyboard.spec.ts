import { expect, test, type Page } from '@playwright/test';
import { openJob, rounded } from '#tests/support/practice.ts';

async function tabTo(page: Page, name: string): Promise<void> {
	for (let presses = 0; presses < 40; presses += 1) {
		const focused = page.locator(':focus');
		if ((await focused.count()) > 0) {
			const label = await focused.evaluate((element) => {
				const by = element instanceof HTMLTextAreaElement ? element.labels[0]?.textContent : element.textContent;
				return by?.trim() ?? '';
			});
			if (label === name) return;
		}
		await page.keyboard.press('Tab');
	}
	throw new Error(`${name} is not reached by the Tab key`);
}

test('a set is chosen, a job worked, marked and left for the next by the keyboard alone', async ({ page }) => {
	await page.goto('/practice/');
	await tabTo(page, 'Set B: Volts, amperes, ohms');
	await page.keyboard.press('Enter');
	await expect(page).toHaveURL(/\/practice\/b\/?\?seed=/);
	const job = await openJob(page, 'b', /You want exactly/);
	await tabTo(page, 'Working');
	await page.keyboard.type(`R = V/I`);
	await page.keyboard.press('Enter');
	await page.keyboard.type(`${job.value('V')}/${job.value('I')} = ${rounded(job.value('V') / job.value('I'))} ohm`);
	await page.keyboard.press('Control+Enter');
	await expect(page.locator('.verdict')).toContainText('Right.');
	await tabTo(page, 'Next job');
	await page.keyboard.press('Enter');
	await expect(page.getByRole('heading', { level: 1 })).toBeFocused();
	await expect(page.getByLabel('Working', { exact: true })).toHaveValue('');
});

test('an empty working is not marked, and the reason is said', async ({ page }) => {
	await openJob(page, 'b', /You want exactly/);
	await tabTo(page, 'Mark it');
	await page.keyboard.press('Enter');
	await expect(page.getByText('Nothing to mark yet. Write a line first.')).toBeVisible();
	await expect(page.locator('.verdict')).toHaveCount(0);
});
