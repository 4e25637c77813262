import { block6lr61 } from './block-6lr61.ts';
import type { Cell } from './cell.ts';
import { hr6 } from './hr6.ts';
import { inr18650 } from './inr18650.ts';
import { leadAcid12v } from './lead-acid-12v.ts';
import { lr03 } from './lr03.ts';
import { lr6 } from './lr6.ts';

/** Every cell the workshop knows, by its id. */
export const cells = {
	lr6,
	lr03,
	'6lr61': block6lr61,
	hr6,
	inr18650,
	'lead-acid-12v': leadAcid12v,
} as const satisfies Readonly<Record<string, Cell>>;
