import { expect, test } from '@playwright/test';

const address = '/lessons/solve-for-resistance/';

test('a prediction is made, locked and put to the bench by the keyboard alone', async ({ page }) => {
	await page.goto(address);
	const press = async (name: string | RegExp) => {
		await page.getByRole('button', { name }).focus();
		await page.keyboard.press('Enter');
	};
	await expect(page.getByRole('button', { name: 'Next part: 2 of 7' })).toBeVisible();
	await press('Next part: 2 of 7');
	await expect(page.getByRole('heading', { name: '2 Predict' })).toBeFocused();
	await page.keyboard.press('Tab');
	await page.keyboard.press('ArrowDown');
	await expect(page.getByRole('radio', { name: 'halved' })).toBeChecked();
	await page.keyboard.press('Tab');
	await page.keyboard.press('Space');
	await expect(page.getByRole('radio', { name: 'I am guessing' })).toBeChecked();
	await page.keyboard.press('Tab');
	await page.keyboard.press('Enter');
	await expect(page.getByText('Locked in pencil.')).toBeVisible();
	await press('Next part: 3 of 7');
	await page.keyboard.press('Tab');
	await page.keyboard.type('4');
	await expect(page.getByRole('textbox', { name: 'Wished current' })).toHaveValue('4');
	await page.keyboard.press('Tab');
	await page.keyboard.press('Tab');
	await page.keyboard.press('Enter');
	await expect(page.getByRole('button', { name: 'Put in 3.0 Ω' })).toHaveAttribute('aria-pressed', 'true');
	await press('Switch on');
	await expect(page.getByText('The ammeter confirms it')).toBeVisible();
});

test('the switch waits for the prediction', async ({ page }) => {
	await page.goto(address);
	await page.getByRole('button', { name: '3 Watch' }).click();
	await page.getByRole('button', { name: 'Switch on' }).click();
	await expect(page.getByText('Your prediction comes first.')).toBeVisible();
	await expect(page.getByRole('button', { name: 'Switch on' })).toHaveAttribute('aria-pressed', 'false');
	await page.getByRole('button', { name: 'Back to the prediction' }).click();
	await expect(page.getByRole('heading', { name: '2 Predict' })).toBeVisible();
});

test('what was seen is asked only once the bench has shown it', async ({ page }) => {
	await page.goto(address);
	await page.getByRole('button', { name: '4 Say what you saw' }).click();
	await expect(page.getByText('Run the bench first.')).toBeVisible();
	await expect(page.getByRole('radio')).toHaveCount(0);
	await page.getByRole('button', { name: 'To part 3' }).click();
	await expect(page.getByRole('heading', { name: '3 Watch' })).toBeVisible();
});

test('loading again keeps the part, the choices, what was typed and the readings', async ({ page }) => {
	await page.goto(address);
	await page.getByRole('button', { name: '2 Predict' }).click();
	await page.getByRole('radio', { name: 'doubled' }).check();
	await page.getByRole('radio', { name: 'Fairly sure' }).check();
	await page.getByRole('button', { name: 'Lock it in pencil' }).click();
	await page.getByRole('button', { name: '3 Watch' }).click();
	await page.getByRole('textbox', { name: 'Wished current' }).fill('4');
	await page.getByRole('button', { name: 'Put in 3.0 Ω' }).click();
	await page.getByRole('button', { name: 'Switch on' }).click();
	await expect(page.getByRole('row', { name: '3.0 Ω' })).toBeVisible();
	await page.getByRole('button', { name: '6 Worked' }).click();
	await page.getByRole('textbox', { name: /Write the relation/ }).fill('V/');
	await page.getByRole('button', { name: 'Exercise 3 of 3' }).click();
	await page.getByRole('textbox', { name: 'Working' }).fill('R = 8.3/0.91');
	await page.reload();
	await expect(page.getByRole('heading', { name: /^6 Worked/ })).toBeVisible();
	await expect(page.getByRole('textbox', { name: /Write the relation/ })).toHaveValue('V/');
	await expect(page.getByRole('button', { name: 'Exercise 3 of 3' })).toHaveAttribute('aria-pressed', 'true');
	await expect(page.getByRole('textbox', { name: 'Working' })).toHaveValue('R = 8.3/0.91');
	await expect(page.getByRole('complementary', { name: 'Margin' })).toContainText('doubled');
	await page.getByRole('button', { name: '3 Watch' }).click();
	await expect(page.getByRole('textbox', { name: 'Wished current' })).toHaveValue('4');
	await expect(page.getByRole('row', { name: '3.0 Ω' })).toContainText('4.00 A');
	await page.goto('/lessons/');
	await expect(page.getByRole('listitem').filter({ hasText: 'Solve for resistance' })).toContainText('begun');
});

test('the chosen letter for voltage stands in every formula of a lesson', async ({ page }) => {
	await page.addInitScript(() => localStorage.setItem('ohm-to-ember:settings', '{"voltageLetter":"U"}'));
	await page.goto(address);
	await page.getByRole('button', { name: '6 Worked' }).click();
	await expect(page.locator('.letter-u').first()).toBeVisible();
	await expect(page.locator('.letter-v').first()).toBeHidden();
});

test.describe('without scripts', () => {
	test.use({ javaScriptEnabled: false });

	for (const { slug, relation, answer } of [
		{ slug: 'solve-for-resistance', relation: 'Resistance is the number of volts for each ampere.', answer: '4.80' },
		{ slug: 'measure-and-find-the-length', relation: 'divide by the ohms of one metre', answer: '554' },
	]) {
		test(`caution, explanation, formula and worked answer of ${slug} can be read`, async ({ page }) => {
			await page.goto(`/lessons/${slug}/`);
			await expect(page.getByRole('note')).toBeVisible();
			await expect(page.getByText(relation)).toBeVisible();
			await expect(page.locator('.katex:visible').first()).toBeVisible();
			await expect(page.getByText(answer).filter({ visible: true }).first()).toBeVisible();
			await expect(page.getByRole('heading', { name: '7 Look back' })).toBeVisible();
			await expect(page.getByRole('button')).toHaveCount(0);
			await page.getByText('The step, and the rest').click();
			await expect(page.getByText('It fits.').filter({ visible: true })).toHaveCount(2);
		});
	}
});
