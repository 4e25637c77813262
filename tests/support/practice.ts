import { expect, type Page } from '@playwright/test';

/** A job on the screen: what its card gives, by letter, as shown. */
export interface ShownJob {
	readonly prompt: string;
	readonly value: (letter: string) => number;
}

/** Opens the first job of a drawn set whose card says these words. */
export async function openJob(page: Page, set: string, words: RegExp, seed = 'k3f9'): Promise<ShownJob> {
	for (let job = 1; job <= 10; job += 1) {
		await page.goto(`/practice/${set}/?seed=${seed}&job=${job}`);
		const card = page.getByRole('region', { name: 'Job card' });
		await expect(card).toBeVisible();
		const prompt = await card.innerText();
		if (words.test(prompt)) return { prompt, value: await readCard(page) };
	}
	throw new Error(`no job of set ${set} says ${String(words)}`);
}

async function readCard(page: Page): Promise<ShownJob['value']> {
	const rows = await page.getByRole('region', { name: 'Job card' }).locator('dd').allTextContents();
	const values = new Map(
		rows.flatMap((row) => {
			const [letter = '', value] = row.split('=').map((part) => part.replace(/[\s\u202f]+/gu, ' ').trim());
			return value === undefined ? [] : [[letter.replaceAll(' ', ''), Number.parseFloat(value)] as const];
		}),
	);
	return (letter) => {
		const value = values.get(letter);
		if (value === undefined) throw new Error(`the card gives no ${letter}, only ${[...values.keys()].join(', ')}`);
		return value;
	};
}

/** Types a working and has it marked. */
export async function markWorking(page: Page, working: string): Promise<void> {
	await page.getByLabel('Working', { exact: true }).fill(working);
	await page.getByRole('button', { name: 'Mark it' }).click();
}

/** Looks up the row of a step in the table of marks, and compares its words. */
export async function expectStep(page: Page, letter: string, words: readonly string[]): Promise<void> {
	const head = page.locator('th[scope="row"]').filter({ hasText: new RegExp(`^\\s*${letter}\\s*$`, 'u') });
	await expect(page.getByRole('row').filter({ has: head }).getByRole('cell')).toHaveText([...words]);
}

export function rounded(value: number): string {
	return String(Number(value.toPrecision(4)));
}
