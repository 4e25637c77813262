import { expect, test } from '@playwright/test';
import { openSettled } from '#tests/support/open-page.ts';
import { fileNameOf, routes } from '#tests/support/routes.ts';

const sizes = [
	{ width: 360, height: 740 },
	{ width: 1280, height: 800 },
	{ width: 1920, height: 1080 },
];
const output = 'tests/output/pages';

for (const route of routes) {
	for (const size of sizes) {
		test(`${route} at ${size.width} px stays inside its width and is pictured in light and dark`, async ({ page }) => {
			await page.setViewportSize(size);
			for (const colorScheme of ['light', 'dark'] as const) {
				await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
				await openSettled(page, route);
				const width = await page.evaluate(() => document.documentElement.scrollWidth);
				expect(width).toBeLessThanOrEqual(size.width);
				const path = `${output}/${fileNameOf(route)}-${size.width}-${colorScheme}.png`;
				await page.screenshot({ path, fullPage: true, animations: 'disabled' });
			}
		});
	}

	test(`${route} prints in black on white`, async ({ page }) => {
		await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
		await openSettled(page, route);
		const colours = await page.evaluate(() => {
			const { color, backgroundColor } = getComputedStyle(document.body);
			return { color, backgroundColor };
		});
		expect(colours).toEqual({ color: 'rgb(0, 0, 0)', backgroundColor: 'rgb(255, 255, 255)' });
		await page.pdf({ path: `${output}/${fileNameOf(route)}.pdf`, format: 'A4', preferCSSPageSize: true });
		await page.setViewportSize({ width: 794, height: 1123 });
		await page.screenshot({ path: `${output}/${fileNameOf(route)}-print.png`, fullPage: true });
	});
}
