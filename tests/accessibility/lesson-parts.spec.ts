import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from '@playwright/test';

test.setTimeout(120_000);

const levels = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

for (const slug of ['solve-for-resistance', 'measure-and-find-the-length']) {
	for (const colorScheme of ['light', 'dark'] as const) {
		test(`no part of ${slug} has a fault axe can find, ${colorScheme}`, async ({ page }) => {
			await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
			await page.goto(`/lessons/${slug}/`);
			for (const part of [2, 3, 4, 5, 6, 7]) {
				await page.getByRole('button', { name: `Next part: ${part} of 7` }).click();
				if (part === 2) {
					await page.getByRole('radio').first().check();
					await page.getByRole('radio', { name: 'Fairly sure' }).check();
					await page.getByRole('button', { name: 'Lock it in pencil' }).click();
				}
				if (part === 3 && slug === 'solve-for-resistance') {
					await page.getByRole('textbox', { name: 'Wished current' }).fill('4');
					await page.getByRole('button', { name: 'Put in 3.0 Ω' }).click();
					await page.getByRole('button', { name: 'Switch on' }).click();
				}
				if (part === 3 && slug === 'measure-and-find-the-length') {
					await page.getByRole('button', { name: 'Glasses on' }).click();
					await page.getByRole('button', { name: 'Unplug the supply' }).click();
					await page.getByRole('button', { name: 'Touch them together' }).click();
					await page.getByRole('button', { name: 'Note it' }).click();
				}
				if (part === 4) {
					await page.getByRole('radio', { name: /^(4.00|about 0.3)/ }).check();
					await page.getByRole('button', { name: 'Say it' }).click();
				}
				const { violations, passes } = await new AxeBuilder({ page }).withTags(levels).analyze();
				expect(passes.length).toBeGreaterThan(5);
				const faults = violations.map(({ id, nodes }) => ({ id, places: nodes.map(({ target }) => target.join(' ')) }));
				expect({ part, faults }).toEqual({ part, faults: [] });
			}
		});
	}
}
