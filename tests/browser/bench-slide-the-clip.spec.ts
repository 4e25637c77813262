import { expect, test } from '@playwright/test';
import { doBenchCheck, fieldOf, numberIn, openBench, typeInto } from '#tests/support/bench.ts';

test('the clip is dragged, the rule is tapped, and the figures follow', async ({ page }) => {
	await openBench(page);
	const clip = page.getByRole('slider', { name: /Clip on the rule/ });
	await expect(clip).toHaveAttribute('aria-valuenow', '553');
	const box = await clip.boundingBox();
	if (box === null) throw new Error('no clip');
	const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
	const before = await numberIn(page, 'Current');
	await page.mouse.move(x, y);
	await page.mouse.down();
	await page.mouse.move(x - 200, y, { steps: 8 });
	await page.mouse.up();
	const dragged = Number(await clip.getAttribute('aria-valuenow'));
	expect(dragged).toBeLessThan(450);
	expect(await numberIn(page, 'Current')).toBeGreaterThan(before);
	// the rule runs along the lower end of the clip's frame
	await page.mouse.click(x, box.y + box.height - 8);
	expect(Math.abs(Number(await clip.getAttribute('aria-valuenow')) - 553)).toBeLessThanOrEqual(2);
});

test('each drag has a twin: buttons move the clip by 1 and 10 mm', async ({ page }) => {
	await openBench(page);
	for (const [name, length] of [
		['+10 mm', '563'],
		['−1 mm', '562'],
		['−10 mm', '552'],
		['+1 mm', '553'],
	] as const) {
		await page.getByRole('group', { name: 'Move the clip' }).getByRole('button', { name, exact: true }).click();
		await expect(fieldOf(page, 'Length')).toHaveValue(length);
	}
});

test('moving the clip on a live wire switches it off and says why', async ({ page }) => {
	await openBench(page);
	await expect(fieldOf(page, 'Length')).toHaveValue('553');
	await doBenchCheck(page);
	await page.getByRole('button', { name: 'Switch on' }).click();
	await page.getByRole('group', { name: 'Move the clip' }).getByRole('button', { name: '−10 mm' }).click();
	await expect(page.getByRole('button', { name: 'Switch on' })).toHaveAttribute('aria-pressed', 'false');
	await expect(page.getByRole('alert')).toHaveText(/never move the clip on a live wire/);
});

test('without the bench check the switch stays off', async ({ page }) => {
	await openBench(page);
	await expect(fieldOf(page, 'Length')).toHaveValue('553');
	await page.getByRole('button', { name: 'Switch on' }).click();
	await expect(page.getByRole('alert')).toHaveText('Not yet. Finish the bench check first.');
	await doBenchCheck(page);
	await expect(page.getByRole('alert')).toHaveText('');
	await page.getByRole('button', { name: 'Switch on' }).click();
	await expect(page.getByRole('button', { name: 'Switch off' })).toBeVisible();
});

test('an unfused short is refused with its number and the reason', async ({ page }) => {
	await openBench(page);
	await page.getByLabel('Which supply').selectOption('P5');
	await typeInto(page, 'Length', '20');
	await page.getByRole('button', { name: 'Switch on' }).click();
	await expect(page.getByRole('alert')).toHaveText(/Refused: a short. The loop would pass \d\d\.\d A/);
	await expect(page.getByRole('button', { name: 'Switch on' })).toHaveAttribute('aria-pressed', 'false');
});

test('with less motion wanted, three stills show the warming', async ({ page }) => {
	await page.emulateMedia({ reducedMotion: 'reduce' });
	await openBench(page);
	await expect(fieldOf(page, 'Length')).toHaveValue('553');
	await doBenchCheck(page);
	await page.getByRole('button', { name: 'Switch on' }).click();
	await expect(page.getByRole('img', { name: /Bench: .*20 °C · cold/ })).toBeVisible();
	await page.getByRole('button', { name: 'Next still' }).click();
	await page.getByRole('button', { name: 'Next still' }).click();
	await expect(page.getByRole('img', { name: /Bench: .*no glow · burns/ })).toBeVisible();
	await expect(page.getByRole('button', { name: 'Next still' })).toHaveCount(0);
});
