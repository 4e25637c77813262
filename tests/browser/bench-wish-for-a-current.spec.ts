import { expect, test } from '@playwright/test';
import { doBenchCheck, fieldOf, numberIn, setUp, typeInto } from '#tests/support/bench.ts';

test('12 V and a wish for 3 A on CrAl 25 5, AWG 28: 4 Ω, near 22 cm, 36 W, glowing', async ({ page }) => {
	await setUp(page, 28);
	await typeInto(page, 'Current', '3 A');
	// Ohm's law: 12 V over 3 A is 4 Ω in the loop, 0.035 Ω of it in the leads
	expect(await numberIn(page, 'Resistance, hot')).toBeCloseTo(3.965, 1);
	expect(await numberIn(page, 'Power')).toBeCloseTo(36, 0);
	const length = await numberIn(page, 'Length');
	expect(length).toBeGreaterThan(205);
	expect(length).toBeLessThan(235);
	await doBenchCheck(page);
	await page.getByRole('button', { name: 'Switch on' }).click();
	const off = page.getByRole('button', { name: 'Switch off' });
	await expect(off).toHaveAttribute('aria-pressed', 'true');
	await expect(page.getByRole('img', { name: /Bench: .*(dark red|red|orange) · burns/ })).toBeVisible({
		timeout: 15_000,
	});
	await page.getByRole('button', { name: 'Note it' }).click();
	await expect(page.getByRole('row')).toHaveCount(2);
});

test('then 3 Ω: 4 A, and a remark that wire this thin does not last', async ({ page }) => {
	await setUp(page, 28);
	await typeInto(page, 'Resistance, hot', '2.965');
	expect(await numberIn(page, 'Current')).toBeCloseTo(4, 2);
	await expect(page.getByText(/Thin wire: this size lasts only up to about \d+ °C/)).toBeVisible();
});

test('the same 1 A leaves AWG 28 grey and makes AWG 36 glow', async ({ page }) => {
	await setUp(page, 28);
	await typeInto(page, 'Current', '1');
	await expect(page.getByRole('img', { name: /expected .* · hot, no glow/ })).toBeVisible();
	await typeInto(page, 'Size', 'AWG 36');
	expect(await numberIn(page, 'Current')).toBeCloseTo(1, 2);
	await expect(page.getByRole('img', { name: /expected .* · (red|orange|dark red)/ })).toBeVisible();
});

test('any figure can be the one wished for, and the others follow', async ({ page }) => {
	await setUp(page, 28);
	for (const [label, figure] of [
		['Power', '20'],
		['Power per metre', '60'],
		['Temperature', '400'],
		['Length', '500'],
	] as const) {
		const before = await fieldOf(page, 'Current').inputValue();
		await typeInto(page, label, figure);
		expect(await numberIn(page, label)).toBeCloseTo(Number(figure), 0);
		expect(await fieldOf(page, 'Current').inputValue()).not.toBe(before);
	}
});

test('a voltage of 12 V on twice the length passes less, and the chart says so in words', async ({ page }) => {
	await setUp(page, 28);
	await typeInto(page, 'Length', '300');
	const before = await numberIn(page, 'Current');
	await typeInto(page, 'Length', '600');
	const after = await numberIn(page, 'Current');
	expect(after).toBeLessThan(before * 0.53);
	expect(after).toBeGreaterThan(before * 0.47);
	await expect(page.getByText(/Falls from .* W to .* W as the length grows/)).toBeVisible();
});
