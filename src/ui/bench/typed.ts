import { fail, succeed, type Outcome } from '#core/outcome.ts';
import { parseGauge } from '#core/quantity/gauge.ts';
import { readQuantity } from '#core/quantity/read.ts';
import { isSizeInRange } from './address.ts';
import type { WireSize } from './settings.ts';

/** What is wrong with a figure typed into a field of the bench; the words are in `ui/text`. */
export type TypedProblem =
	| { readonly code: 'empty' }
	| { readonly code: 'not-a-number' }
	| { readonly code: 'unit'; readonly found: string }
	| { readonly code: 'negative' }
	| { readonly code: 'zero' }
	| { readonly code: 'below' }
	| { readonly code: 'above' };

/** What a field takes, in SI. */
export interface TypedRange {
	/** symbol of the unit taken when none is typed */
	readonly unit: string;
	readonly least: number;
	readonly most: number;
}

/** Reads a figure with or without its unit and holds it against the range; the value is in SI. */
export function readTyped(text: string, { unit, least, most }: TypedRange): Outcome<number, TypedProblem> {
	const read = readQuantity(text, { defaultUnit: unit });
	if (!read.ok) {
		const [problem] = read.problems;
		switch (problem?.code) {
			case 'empty':
				return fail({ code: 'empty' });
			case 'too-large':
				return fail({ code: 'above' });
			case 'unit-unknown':
				return fail({ code: 'unit', found: problem.text.slice(0, 12) });
			case 'dimension':
				return fail({ code: 'unit', found: text.trim().slice(0, 12) });
			default:
				return fail({ code: 'not-a-number' });
		}
	}
	const { value, number } = read.value;
	const rounding = 1e-9 * Math.max(Math.abs(least), Math.abs(most));
	if (value > most + rounding) return fail({ code: 'above' });
	if (value >= least - rounding) return succeed(value);
	if (number === 0) return fail({ code: 'zero' });
	return fail({ code: number < 0 ? 'negative' : 'below' });
}

/** Reads a wire's thickness: `0.4 mm`, `AWG 28`, `30 SWG`. */
export function readSize(text: string): Outcome<WireSize, { readonly code: 'size' | 'size-range' }> {
	const read = parseGauge(text);
	if (!read.ok) {
		const isOutside = read.problems.some(({ code }) => code === 'no-such-gauge' || code === 'diameter-out-of-range');
		return fail({ code: isOutside ? 'size-range' : 'size' });
	}
	const gauge = read.value;
	const size: WireSize =
		gauge.system === 'diameter'
			? { system: 'mm', value: Number((gauge.diameter * 1000).toPrecision(6)) }
			: { system: gauge.system, value: gauge.number };
	return isSizeInRange(size) ? succeed(size) : fail({ code: 'size-range' });
}
