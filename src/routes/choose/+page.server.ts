import { readFileSync } from 'node:fs';
import { readContentFile } from '#exercise/content-file.ts';
import { cupboardSchema } from '#exercise/cupboard.ts';
import type { PageServerLoad } from './$types.js';

const file = 'src/content/cupboard.yaml';

export const load: PageServerLoad = () => {
	const read = readContentFile(readFileSync(file, 'utf8'), file, cupboardSchema);
	if (!read.ok) throw new RangeError(`${file}: ${JSON.stringify(read.problems)}`);
	return { cupboard: read.value.data };
};
