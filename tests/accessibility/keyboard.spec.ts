import { expect, test } from '@playwright/test';
import { openSettled } from '#tests/support/open-page.ts';
import { routes } from '#tests/support/routes.ts';

const mostStops = 250;

for (const route of routes) {
	test(`${route} shows where the keyboard is at every stop, and lets it out again`, async ({ page }) => {
		await openSettled(page, route);
		const first = 'Skip to the work';
		const hidden: string[] = [];
		let stops = 0;
		for (; stops < mostStops; stops += 1) {
			await page.keyboard.press('Tab');
			const stop = await page.evaluate(() => {
				const focused = document.activeElement;
				if (!focused || focused === document.body) return null;
				// a radio's ring is drawn around its whole row, a text field's around itself
				const ringed = [focused, focused.closest('label')].some((element) => {
					if (!element) return false;
					const { outlineStyle, outlineWidth } = getComputedStyle(element);
					return outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 2;
				});
				const { top, bottom, left, right } = focused.getBoundingClientRect();
				const inWindow = bottom > 0 && right > 0 && top < innerHeight && left < innerWidth;
				return { name: (focused.textContent || focused.id || focused.tagName).trim(), isSeen: ringed && inWindow };
			});
			if (!stop || (stops > 0 && stop.name === first)) break;
			if (!stop.isSeen) hidden.push(stop.name);
		}
		expect(stops).toBeGreaterThan(1);
		expect(stops).toBeLessThan(mostStops);
		expect(hidden).toEqual([]);
	});
}
