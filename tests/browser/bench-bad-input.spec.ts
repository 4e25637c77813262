import { expect, test } from '@playwright/test';
import { fieldOf, openBench, typeInto } from '#tests/support/bench.ts';

for (const [label, text, sentence] of [
	['Voltage', '', 'Type a number'],
	['Voltage', '-5', 'This cannot be negative'],
	['Voltage', '0', 'Zero will not do'],
	['Voltage', '1e99', 'is too much here'],
	['Voltage', 'abc', 'I cannot read that as a number'],
	['Length', '0', 'Zero will not do'],
	['Length', '-1', 'This cannot be negative'],
	['Length', '1e99', 'is too much here'],
	['Length', '5 V', 'I do not know'],
	['Current', '0', 'Zero will not do'],
	['Current', 'lots', 'I cannot read that as a number'],
	['Current', '40', 'That needs 40.0 A; the supply gives 5'],
	['Temperature', '1500', 'Refused. That takes the wire to'],
] as const) {
	test(`${label} "${text}": a sentence at the field, the text and the last good picture stay`, async ({ page }) => {
		await openBench(page);
		const picture = page.getByRole('img', { name: /^Bench:/ });
		await expect(fieldOf(page, 'Length')).toHaveValue('553');
		const before = await picture.getAttribute('aria-label');
		await typeInto(page, label, text);
		const field = fieldOf(page, label);
		await expect(field).toHaveValue(text);
		await expect(field).toHaveAttribute('aria-invalid', 'true');
		await expect(field).toHaveAccessibleDescription(new RegExp(sentence.replaceAll('.', '\\.')));
		expect(await picture.getAttribute('aria-label')).toBe(before);
		await expect(page.getByRole('slider', { name: /Clip/ })).toHaveAttribute('aria-valuenow', '553');
	});
}

test('more than 24 V is refused with the number and the reason', async ({ page }) => {
	await openBench(page);
	await page.getByLabel('Which supply').selectOption('typed');
	await typeInto(page, 'Voltage', '30 V');
	await expect(fieldOf(page, 'Voltage')).toHaveAccessibleDescription(/above 24 V DC/);
});

test('a size that is none is told', async ({ page }) => {
	await openBench(page);
	await page.getByLabel('Which reel').selectOption('typed');
	await typeInto(page, 'Size', 'thick');
	await expect(fieldOf(page, 'Size')).toHaveAccessibleDescription(/I cannot read that size/);
	await typeInto(page, 'Size', 'AWG 28');
	await expect(fieldOf(page, 'Size')).not.toHaveAttribute('aria-invalid', 'true');
});
