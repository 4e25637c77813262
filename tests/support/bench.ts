import { expect, type Locator, type Page } from '@playwright/test';

/** The bench once it answers: the chart is drawn only then. */
export async function openBench(page: Page): Promise<void> {
	await page.goto('/bench/');
	await expect(page.locator('canvas')).toHaveAttribute('width', /^\d+$/);
}

/** A field of the bench by its label, typed into and left by Enter. */
export async function typeInto(page: Page, label: string, text: string): Promise<void> {
	const field = fieldOf(page, label);
	await field.fill(text);
	await field.press('Enter');
}

export function fieldOf(page: Page, label: string): Locator {
	return page.getByRole('textbox', { name: label, exact: true });
}

/** The number a field shows. */
export async function numberIn(page: Page, label: string): Promise<number> {
	return Number(await fieldOf(page, label).inputValue());
}

/** 12 V and 5 A typed in, CrAl 25 5 of the AWG size given. */
export async function setUp(page: Page, awg: number): Promise<void> {
	await openBench(page);
	await page.getByLabel('Which supply').selectOption('typed');
	await typeInto(page, 'Voltage', '12');
	await typeInto(page, 'Current limit', '5');
	await page.getByLabel('Which reel').selectOption('typed');
	await page.getByLabel('Metal').selectOption({ label: 'CrAl 25 5' });
	await typeInto(page, 'Size', `AWG ${awg}`);
}

export async function doBenchCheck(page: Page): Promise<void> {
	await page.getByRole('button', { name: 'Slide the tile under the wire' }).click();
	await page.getByRole('button', { name: 'Move the paper away' }).click();
}
