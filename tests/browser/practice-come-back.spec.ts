import { expect, test } from '@playwright/test';
import { markWorking, openJob, rounded } from '#tests/support/practice.ts';

test('typed lines, the marking and the open hint are there again after loading again', async ({ page }) => {
	const job = await openJob(page, 'b', /You want exactly/);
	const line = `R = ${job.value('V')}·${job.value('I')} = ${rounded(job.value('V') * job.value('I'))} Ω`;
	await markWorking(page, line);
	await page.getByRole('button', { name: 'Look for a hint' }).click();
	await page.getByLabel('Working', { exact: true }).fill(`${line}\nno, again`);
	await page.reload();
	await expect(page.getByLabel('Working', { exact: true })).toHaveValue(`${line}\nno, again`);
	await expect(page.locator('.verdict')).toContainText('Not yet.');
	await expect(page.getByText('on the job card. The rest is not needed')).toBeVisible();
});

test('the same address draws the same numbers for another person, fresh numbers change both', async ({
	page,
	browser,
}) => {
	const job = await openJob(page, 'b', /You want exactly/);
	const other = await browser.newPage();
	await other.goto(page.url());
	await expect(other.getByRole('region', { name: 'Job card' })).toBeVisible();
	expect(await other.getByRole('region', { name: 'Job card' }).innerText()).toBe(job.prompt);
	await page.getByRole('button', { name: 'Fresh numbers' }).click();
	await expect(page).toHaveURL(/numbers=1/);
	const fresh = page.getByRole('region', { name: 'Job card' });
	await expect.poll(() => fresh.innerText()).not.toBe(job.prompt);
	await other.goto(page.url());
	await expect.poll(() => other.getByRole('region', { name: 'Job card' }).innerText()).toBe(await fresh.innerText());
	await other.close();
});

test('a job right with help says so and leaves the fresh one to be done alone', async ({ page }) => {
	const job = await openJob(page, 'b', /You want exactly/);
	await page.getByRole('button', { name: 'Look for a hint' }).click();
	await expect(page.getByRole('button', { name: 'Next hint' })).toBeDisabled();
	await markWorking(page, `${rounded(job.value('V') * job.value('I'))} Ω`);
	await expect(page.getByRole('button', { name: 'Next hint' })).toBeEnabled();
	await markWorking(page, `${job.value('V')}/${job.value('I')} = ${rounded(job.value('V') / job.value('I'))} Ω`);
	await expect(page.locator('.verdict')).toContainText('Right, with help.');
	await expect(page.locator('.verdict')).toContainText('One fresh one without help would settle it.');
});
