import { expect, test, type Page } from '@playwright/test';

/** The page answers once its scripts run: a preset then shows as pressed. */
async function open(page: Page, query = ''): Promise<void> {
	await page.goto(`/choose/${query}`);
	await expect(async () => {
		await page.getByRole('button', { name: 'Cord tip' }).click();
		await expect(page.getByLabel('Length from')).toHaveValue('60', { timeout: 500 });
	}).toPass();
	await page.getByRole('button', { name: 'Foam bow' }).click();
	await expect(page.getByLabel('Length from')).toHaveValue('420');
}

const rows = (page: Page) => page.getByRole('rowheader');

test('the foam bow on the pack is had from 0.40 mm wire alone, and the other reels say why not', async ({ page }) => {
	await open(page);
	await expect(rows(page)).toHaveCount(2);
	for (const row of await rows(page).all()) await expect(row).toContainText('R-40');
	const rejected = page.getByRole('region', { name: 'What fits nowhere, and why' });
	await expect(rejected.getByRole('listitem').filter({ hasText: 'R-32' })).toContainText(/too cool/);
	await expect(rejected.getByRole('listitem').filter({ hasText: 'R-50' })).toContainText(/One charge lasts 3\d\smin/);
});

test('the temperature gets its ± a moment after it is shown', async ({ page }) => {
	await open(page);
	await expect(page.getByRole('cell', { name: /^\d{3} ± \d+$/ })).toHaveCount(2);
});

test('the bench opens with the set-up found', async ({ page }) => {
	await open(page);
	const link = page.getByRole('link', { name: /^Open P4, R-40, LA on the bench/ });
	const row = page.getByRole('row').filter({ has: link });
	const length = (await row.getByRole('cell').nth(3).textContent()) ?? '';
	await link.click();
	await expect(page).toHaveURL(/\/bench\/\?v=1&s=P4/);
	await expect(page.getByLabel('Which supply')).toHaveValue('P4');
	await expect(page.getByLabel('Which reel')).toHaveValue('R-40');
	await expect(page.getByLabel('Which leads')).toHaveValue('LA');
	await expect(page.getByRole('slider', { name: /Clip on the rule/ })).toHaveAttribute('aria-valuenow', length);
});

test('a band turned round is told at the field, what was found stays, and nothing typed is lost', async ({ page }) => {
	await open(page);
	const to = page.getByLabel('Wanted to');
	await to.fill('25o°');
	await to.press('Tab');
	await expect(to).toHaveAttribute('aria-invalid', 'true');
	await expect(to).toHaveValue('25o°');
	await expect(rows(page)).toHaveCount(2);
	await expect(page.getByText('Shown below: the last brief I could read.')).toBeVisible();
	await to.fill('240');
	await expect(page.getByText(/This is below “250”/)).toBeVisible();
	await expect(page.getByLabel('Length from')).toHaveValue('420');
	await to.fill('350');
	await expect(to).not.toHaveAttribute('aria-invalid');
	await expect(page.getByText('Shown below: the last brief I could read.')).toBeHidden();
});

test('a largest current rejects what takes more', async ({ page }) => {
	await open(page);
	await page.getByLabel('Current at most').fill('1.5');
	await expect(page.getByText(/None of \d+ set-ups fits/)).toBeVisible();
	await expect(page.getByText(/at most 1\.50\sA is wanted/).first()).toBeVisible();
});

test('with the keyboard alone: another brief, a field, and on to the bench', async ({ page }) => {
	await open(page);
	await page.getByRole('button', { name: 'Foam bow' }).focus();
	await page.keyboard.press('Tab');
	await page.keyboard.press('Space');
	await expect(page.getByRole('button', { name: 'Sealing bar' })).toHaveAttribute('aria-pressed', 'true');
	await expect(page.getByLabel('Wanted from')).toHaveValue('95');
	const focused = (label: string) =>
		page.getByLabel(label).evaluate((element) => element === element.ownerDocument.activeElement);
	for (let stops = 0; stops < 12 && !(await focused('Run time at least')); stops += 1) await page.keyboard.press('Tab');
	await page.keyboard.press('ControlOrMeta+A');
	await page.keyboard.type('10');
	await expect(rows(page).first()).toContainText('P4');
	const link = page.getByRole('link', { name: /on the bench/ }).first();
	for (let stops = 0; stops < 12; stops += 1) {
		if (await link.evaluate((element) => element === element.ownerDocument.activeElement)) break;
		await page.keyboard.press('Tab');
	}
	await page.keyboard.press('Enter');
	await expect(page).toHaveURL(/\/bench\//);
});

test('the address keeps the brief, and brings it back', async ({ page }) => {
	await open(page);
	await page.getByLabel('Length to').fill('460');
	await expect(page).toHaveURL(/g=460/);
	await page.reload();
	await expect(page.getByLabel('Length to')).toHaveValue('460');
});

test('a damaged link says so and shows the foam bow', async ({ page }) => {
	await page.goto('/choose/?v=1&w=t&s=P4&a=hot&b=350&f=420&g=440&t=20');
	await expect(page.getByText(/This link is damaged at “wanted from”/)).toBeVisible();
	await expect(page.getByLabel('Wanted from')).toHaveValue('250');
});
