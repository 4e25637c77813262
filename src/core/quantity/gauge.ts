import { fail, succeed, type Outcome, type Span } from '#core/outcome.ts';
import { plainText } from './characters.ts';
import type { DecimalSign } from './read-number.ts';
import { readQuantity, type ReadProblem } from './read.ts';
import type { Metres } from './unit.ts';

const inch = 0.0254;

/** The gauge numbers this site knows; they cover every wire one can heat on a bench. */
export const awgRange = { from: 0, to: 50 } as const;
export const swgRange = { from: 0, to: 50 } as const;

/**
 * Diameter of an AWG (American wire gauge) wire: 39 equal ratios from No. 36, 0.005 in, to No. 0000, 0.46 in.
 *
 *   d = 0.127 mm · 92^((36 − n) / 39)
 *
 * @param number whole, 0…50
 * @returns diameter in m
 * @throws RangeError for any other number
 * @see ASTM B258 (scope and formula looked up); checked in tests/published/wire-gauge.test.ts
 */
export function awgDiameter(number: number): Metres {
	requireGauge(number, awgRange);
	return 0.127e-3 * 92 ** ((36 - number) / 39);
}

/**
 * Diameter of an SWG (British standard wire gauge) wire, defined by a table in inches and not by a formula.
 *
 * @param number whole, 0…50
 * @returns diameter in m
 * @throws RangeError for any other number
 * @see BS 3737:1964 (a reprint was looked up); checked in tests/published/wire-gauge.test.ts
 */
export function swgDiameter(number: number): Metres {
	requireGauge(number, swgRange);
	const inches = swgInches[number];
	if (inches === undefined) throw new RangeError(`no SWG ${number}`);
	return inches * inch;
}

/** Sizes shops keep in mm (common practice, no source). */
export const shopSizesMillimetres = [
	0.1, 0.12, 0.15, 0.16, 0.18, 0.2, 0.22, 0.25, 0.28, 0.3, 0.32, 0.35, 0.4, 0.45, 0.5, 0.55, 0.6, 0.65, 0.7, 0.8, 0.9,
	1.0, 1.2, 1.5, 2.0,
] as const;

/** SWG 0 to 50 in inches. */
const swgInches: readonly number[] = [
	0.324, 0.3, 0.276, 0.252, 0.232, 0.212, 0.192, 0.176, 0.16, 0.144, 0.128, 0.116, 0.104, 0.092, 0.08, 0.072, 0.064,
	0.056, 0.048, 0.04, 0.036, 0.032, 0.028, 0.024, 0.022, 0.02, 0.018, 0.0164, 0.0148, 0.0136, 0.0124, 0.0116, 0.0108,
	0.01, 0.0092, 0.0084, 0.0076, 0.0068, 0.006, 0.0052, 0.0048, 0.0044, 0.004, 0.0036, 0.0032, 0.0028, 0.0024, 0.002,
	0.0016, 0.0012, 0.001,
];

function requireGauge(number: number, range: { readonly from: number; readonly to: number }): void {
	if (!Number.isInteger(number) || number < range.from || number > range.to) {
		throw new RangeError(`a gauge number is whole, ${range.from} to ${range.to}, got ${number}`);
	}
}

/** How a size was written: by a gauge number or as a diameter. */
export type Gauge =
	| { readonly system: 'awg' | 'swg'; readonly number: number; readonly diameter: Metres }
	| { readonly system: 'diameter'; readonly diameter: Metres };

export type GaugeProblem =
	| ReadProblem
	| {
			readonly code: 'no-such-gauge';
			readonly span: Span;
			readonly system: 'awg' | 'swg';
			readonly from: number;
			readonly to: number;
	  }
	| { readonly code: 'diameter-out-of-range'; readonly span: Span; readonly from: Metres; readonly to: Metres };

/** Diameters taken for a wire, in m. */
export const diameterRange = { from: 0.01e-3, to: 13e-3 } as const;

/**
 * Reads a wire size as a person types it: `AWG 28`, `28 AWG`, `SWG 24`, `0.40 mm`, `0,4` (in mm), `0.016 in`.
 *
 * @param decimalSign the decimal sign of the page
 */
export function parseGauge(typed: string, decimalSign: DecimalSign = '.'): Outcome<Gauge, GaugeProblem> {
	const span = { start: 0, end: typed.length };
	const text = typed.length > 40 ? '' : plainText(typed).text.trim();
	const match =
		/^(AWG|SWG)[ -]?(?:no\.?|nr\.?|#)? ?(\d{1,3})$/i.exec(text) ??
		/^(?:no\.? ?|nr\.? ?|#)?(\d{1,3})[ -]?(AWG|SWG)$/i.exec(text);
	if (match !== null) {
		const isNumberFirst = /^\d/.test(match[1] ?? '');
		const system = (isNumberFirst ? match[2] : match[1])?.toLowerCase() === 'awg' ? 'awg' : 'swg';
		const number = Number(isNumberFirst ? match[1] : match[2]);
		const range = system === 'awg' ? awgRange : swgRange;
		if (number < range.from || number > range.to) return fail({ code: 'no-such-gauge', span, system, ...range });
		return succeed({ system, number, diameter: system === 'awg' ? awgDiameter(number) : swgDiameter(number) });
	}
	const read = readQuantity(typed.replace(/^\s*[⌀øØ∅]\s*/u, ''), { decimalSign, defaultUnit: 'mm' });
	if (!read.ok) return read;
	const diameter = read.value.value;
	if (diameter < diameterRange.from || diameter > diameterRange.to) {
		return fail({ code: 'diameter-out-of-range', span, ...diameterRange });
	}
	return succeed({ system: 'diameter', diameter });
}
