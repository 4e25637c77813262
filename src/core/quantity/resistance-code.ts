import { dimensions, isSameDimension, type Dimension } from './dimension.ts';

const multipliers: Readonly<Record<string, number>> = { L: 1e-3, R: 1, K: 1e3, k: 1e3, M: 1e6, G: 1e9 };

/**
 * Reads the letter-and-digit code of resistors: the letter stands where the decimal sign would and gives the
 * multiplier, as in `4R7`, `4K7`, `R47`, `47R`.
 *
 * @param text the whole of what was typed, in plain characters
 * @param expected the dimension asked for; `300K` without digits behind is taken for kelvins unless it is resistance
 * @returns the resistance in Ω, or undefined for anything else
 * @see IEC 60062:2016 (through summaries; the standard itself was not seen)
 */
export function readResistanceCode(
	text: string,
	expected: Dimension | undefined,
): { readonly value: number; readonly figures: number } | undefined {
	const match = /^(\d{0,4})([LRKkMG])(\d{0,4})$/.exec(text.trim());
	if (match === null) return undefined;
	const [, before = '', letter = '', after = ''] = match;
	const multiplier = multipliers[letter];
	if (multiplier === undefined || before + after === '') return undefined;
	const asksResistance = expected !== undefined && isSameDimension(expected, dimensions.resistance);
	if (after === '' && letter !== 'R' && !asksResistance) return undefined;
	const value = Number(`${before || '0'}.${after || '0'}`) * multiplier;
	return { value, figures: Math.max(1, (before + after).replace(/^0+/, '').length) };
}
