import { fail, type Outcome } from '#core/outcome.ts';
import type { Cupboard } from '#exercise/cupboard.ts';
import { anySupply, fieldNames, readBrief, textsOf, type BriefSettings, type FieldName } from './brief.ts';

/** Why an address gave no brief. */
export type AddressProblem =
	{ readonly code: 'version' } | { readonly code: 'part'; readonly part: FieldName | 'aim' | 'supply' };

const version = '1';
const keys = {
	from: 'a',
	to: 'b',
	shortest: 'f',
	longest: 'g',
	runTime: 'r',
	mostCurrent: 'i',
	room: 't',
} as const satisfies Record<FieldName, string>;
const aims = { t: 'temperature', q: 'power-per-metre' } as const;

/** The brief as the query of an address, starting with `?`; °C or W/m, mm, min, A. What is not asked is left out. */
export function writeAddress(brief: BriefSettings): string {
	const texts = textsOf(brief);
	const fields = fieldNames.filter((field) => texts[field] !== '').map((field) => `${keys[field]}=${texts[field]}`);
	const aim = brief.aim === 'temperature' ? 't' : 'q';
	return `?${[`v=${version}`, `w=${aim}`, `s=${brief.supply}`, ...fields].join('&')}`;
}

/** Reads such a query; null when it holds no brief at all. Nothing of a faulty address is used. */
export function readAddress(query: string, cupboard: Cupboard): Outcome<BriefSettings, AddressProblem> | null {
	const parts = new URLSearchParams(query.slice(0, 400));
	const found = parts.get('v');
	if (found === null) return null;
	if (found !== version) return fail({ code: 'version' });
	const letter = parts.get('w');
	if (letter !== 't' && letter !== 'q') return fail({ code: 'part', part: 'aim' });
	const supply = parts.get('s') ?? '';
	if (supply !== anySupply && cupboard.supplies.every(({ id }) => id !== supply)) {
		return fail({ code: 'part', part: 'supply' });
	}
	const text = (field: FieldName) => parts.get(keys[field]) ?? '';
	const texts = {
		from: text('from'),
		to: text('to'),
		shortest: text('shortest'),
		longest: text('longest'),
		runTime: text('runTime'),
		mostCurrent: text('mostCurrent'),
		room: text('room'),
	};
	const read = readBrief(texts, { aim: aims[letter], supply });
	return read.ok ? read : fail(...read.problems.map(({ field }) => ({ code: 'part' as const, part: field })));
}
