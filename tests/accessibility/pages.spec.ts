import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { openSettled } from '#tests/support/open-page.ts';
import { routes } from '#tests/support/routes.ts';

const levels = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

for (const route of routes) {
	for (const look of ['light', 'dark', 'wall'] as const) {
		test(`${route} has no fault axe can find, ${look}`, async ({ page }) => {
			await page.emulateMedia({ colorScheme: look === 'dark' ? 'dark' : 'light', reducedMotion: 'reduce' });
			if (look === 'wall') {
				await page.setViewportSize({ width: 1920, height: 1080 });
				await page.addInitScript(() => localStorage.setItem('ohm-to-ember:settings', '{"view":"wall"}'));
			}
			await openSettled(page, route);
			const { violations, passes } = await new AxeBuilder({ page }).withTags(levels).analyze();
			expect(passes.length).toBeGreaterThan(5);
			expect(violations.map(({ id, nodes }) => ({ id, places: nodes.map(({ target }) => target.join(' ')) }))).toEqual(
				[],
			);
		});
	}

	test(`${route} has a title, a description, one main heading and fits 320 px`, async ({ page }) => {
		await page.setViewportSize({ width: 320, height: 640 });
		await openSettled(page, route);
		await expect(page).toHaveTitle(/Ohm to Ember/);
		expect((await page.locator('meta[name=description]').getAttribute('content'))?.length).toBeGreaterThan(20);
		await expect(page.getByRole('heading', { level: 1 })).toHaveCount(1);
		const overhang = await page.evaluate(
			() => document.documentElement.scrollWidth - document.documentElement.clientWidth,
		);
		expect(overhang).toBe(0);
	});
}

test('titles tell the pages apart', async ({ page }) => {
	const titles: string[] = [];
	for (const route of routes) {
		await page.goto(route);
		titles.push(await page.title());
	}
	expect(new Set(titles).size).toBe(routes.length);
});
