import { expect, test } from '@playwright/test';
import { expectStep, markWorking, openJob, rounded } from '#tests/support/practice.ts';

const ohmsJob = /You want exactly/;
const lengthJob = /How long is the measured piece/;

test('a right working is called right, with what flows, and counts in the set', async ({ page }) => {
	const job = await openJob(page, 'b', ohmsJob);
	await expect(page.getByText('Set B, ten to go')).toBeVisible();
	const result = rounded(job.value('V') / job.value('I'));
	await markWorking(page, `R = V/I\n${job.value('V')}/${job.value('I')} = ${result} ohm`);
	const verdict = page.locator('.verdict');
	await expect(verdict).toContainText('Right.');
	await expect(verdict).toContainText(`would let ${job.value('I').toPrecision(3)}`);
	await expect(page.getByText('Set B, nine to go')).toBeVisible();
	await expect(page.getByRole('button', { name: 'Next job' })).toBeVisible();
});

test('a quotient upside down is told by what it does on the bench, and named at the second try', async ({ page }) => {
	const job = await openJob(page, 'b', ohmsJob);
	const wrong = job.value('I') / job.value('V');
	await markWorking(page, `R = ${job.value('I')}/${job.value('V')} = ${rounded(wrong)} ohm`);
	const verdict = page.locator('.verdict');
	await expect(verdict).toContainText('Not yet.');
	await expect(verdict).toContainText(/on [\d.]+\sV would let [\d.]+\sk?A through/);
	await expect(verdict).toContainText('The supply holds its limit');
	await expect(verdict).not.toContainText('upside down');
	await markWorking(page, `${job.value('I')} : ${job.value('V')} = ${rounded(wrong)} ohm`);
	await expect(verdict).toContainText('The division stands upside down.');
	await expect(page.getByText('Worked twin', { exact: true })).toBeHidden();
	await markWorking(page, `${job.value('I')} / ${job.value('V')} = ${rounded(wrong)} Ω`);
	await expect(page.getByText('Worked twin', { exact: true })).toBeVisible();
});

test('a right number without its unit is half way, and the same line with it is right', async ({ page }) => {
	const job = await openJob(page, 'b', ohmsJob);
	const line = `${job.value('V')}/${job.value('I')} = ${rounded(job.value('V') / job.value('I'))}`;
	await markWorking(page, line);
	await expect(page.locator('.verdict')).toContainText('It has no unit: Ω?');
	await expectStep(page, 'R', ['right', 'right']);
	await expectStep(page, 'Unit', ['not yet']);
	await markWorking(page, `${line} Ω`);
	await expect(page.locator('.verdict')).toContainText('Right.');
});

test('a slip in the first step is followed: the second is right for the own number', async ({ page }) => {
	const job = await openJob(page, 'c', lengthJob);
	const sum = Number((job.value('Rread') + job.value('Rleads')).toFixed(2));
	const length = rounded((sum / job.value('R′')) * 1000);
	await markWorking(
		page,
		`R = ${job.value('Rread')} + ${job.value('Rleads')} = ${sum} ohm\nL = ${sum}/${job.value('R′')} = ${length} mm`,
	);
	await expect(page.locator('.verdict')).toContainText('is right for your number');
	await expectStep(page, 'R', ['not yet', 'not yet']);
	await expectStep(page, 'ℓ', ['right', 'right for your number']);
	await expect(page.locator('.verdict')).toContainText('the meter would show');
	await page.getByRole('link', { name: 'Set up the bench with this number' }).click();
	await expect(page).toHaveURL(/\/bench\/?\?v=1/);
	await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
});

test('a number that can be read two ways is asked about, and the question costs no try', async ({ page }) => {
	await openJob(page, 'b', ohmsJob);
	await markWorking(page, 'R = 1,234 ohm');
	await expect(page.locator('.verdict')).toContainText('One question first.');
	await page.getByRole('button', { name: 'It is 1.234' }).click();
	await expect(page.getByLabel('Working', { exact: true })).toHaveValue('R = 1.234 ohm');
	await expect(page.locator('.verdict')).toContainText('Not yet.');
});

test('the choice of a supply’s ceiling is taken from the list', async ({ page }) => {
	const job = await openJob(page, 'b', /Then say whether/);
	const current = job.value('V') / job.value('R');
	const isOver = current > 0.8 * job.value('Imax');
	await page.getByRole('radio', { name: isOver ? 'Under the ceiling' : 'Over the ceiling' }).check();
	await markWorking(page, `${job.value('V')}/${job.value('R')} = ${rounded(current)} A`);
	await expect(page.locator('.verdict')).toContainText('The choice does not follow from it.');
	await page.getByRole('radio', { name: isOver ? 'Over the ceiling' : 'Under the ceiling' }).check();
	await page.getByRole('button', { name: 'Mark it' }).click();
	await expect(page.locator('.verdict')).toContainText('Right.');
});

test('what is typed is set as mathematics at once, and what cannot be read is named', async ({ page }) => {
	await openJob(page, 'b', ohmsJob);
	await page.getByLabel('Working', { exact: true }).fill('R = 12/2.5 = 4.8 Ω');
	await expect(page.locator('.read mfrac')).toHaveCount(1);
	await page.getByLabel('Working', { exact: true }).fill('R = 12/(2.5 = 4.8');
	await expect(page.locator('.read')).toContainText('Not read:');
});

test('until a twofold number is settled nothing is read into it', async ({ page }) => {
	await openJob(page, 'b', ohmsJob);
	await markWorking(page, 'R = 1,234 ohm');
	await expect(page.locator('.verdict')).toContainText('One question first.');
	await expect(page.locator('.read')).toContainText('1,234 is 1234 or 1.234.');
	await expect(page.locator('.verdict')).not.toContainText('would let');
	await expect(page.getByText('Set up the bench with this number')).toHaveCount(0);
});

test('an emptied working leaves no old verdict', async ({ page }) => {
	await openJob(page, 'b', ohmsJob);
	await markWorking(page, 'R = 1000 ohm');
	await expect(page.locator('.verdict')).toContainText('Not yet.');
	await markWorking(page, '');
	await expect(page.getByText('Nothing to mark yet')).toBeVisible();
	await expect(page.locator('.verdict')).toHaveCount(0);
});

test('a space stands between any two sentences of a verdict', async ({ page }) => {
	const job = await openJob(page, 'b', ohmsJob);
	const wrong = job.value('I') / job.value('V');
	for (const sign of ['/', ':', '÷']) {
		await markWorking(page, `R = ${job.value('I')} ${sign} ${job.value('V')} = ${rounded(wrong)} ohm`);
		await expect(page.locator('.verdict')).toContainText('Not yet.');
		expect(await page.locator('.verdict').textContent()).not.toMatch(/\p{L}[.?:]\p{L}/u);
	}
});

test('a right answer rounded to two figures is told by what the unrounded one needs', async ({ page }) => {
	const job = await openJob(page, 'b', /What current flows/);
	const [V, R, label] = [job.value('V'), job.value('R'), job.value('Imax')];
	await page.getByRole('radio', { name: V / R > 0.8 * label ? 'Over the ceiling' : 'Under the ceiling' }).check();
	await markWorking(page, `I = ${V} V / ${R} Ω = ${(V / R).toPrecision(2)} A`);
	const verdict = page.locator('.verdict');
	await expect(verdict).toContainText('Right.');
	await expect(verdict).toContainText(new RegExp(`needs ${V.toPrecision(3)}\\sV`, 'u'));
	await expect(verdict).not.toContainText('more than it can give');
});
