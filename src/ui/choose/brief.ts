import type { Kelvin, Metres, Seconds, Amperes, WattsPerMetre } from '#core/quantity/unit.ts';
import { fail, succeed, type Outcome } from '#core/outcome.ts';
import { readTyped, type TypedProblem, type TypedRange } from '#ui/bench/typed.ts';
import { zeroCelsius } from '#ui/bench/settings.ts';

/** What the wire must reach: a temperature in free air, or a power per metre. */
export type Aim = 'temperature' | 'power-per-metre';

/** A brief as the page keeps it; every value in SI. */
export interface BriefSettings {
	readonly aim: Aim;
	/** K or W/m */
	readonly from: Kelvin | WattsPerMetre;
	readonly to: Kelvin | WattsPerMetre;
	readonly shortest: Metres;
	readonly longest: Metres;
	readonly runTime?: Seconds;
	readonly mostCurrent?: Amperes;
	readonly room: Kelvin;
	/** label of the one supply looked at, or every supply */
	readonly supply: string;
}

/** Stands for every supply of the cupboard. */
export const anySupply = 'any';

export const fieldNames = ['from', 'to', 'shortest', 'longest', 'runTime', 'mostCurrent', 'room'] as const;
export type FieldName = (typeof fieldNames)[number];

/** The texts of the fields as typed. */
export type BriefTexts = Readonly<Record<FieldName, string>>;

/** What is wrong with one field; the words are in `ui/text`. */
export interface FieldProblem {
	readonly field: FieldName;
	readonly problem: TypedProblem | { readonly code: 'order'; readonly from: string } | { readonly code: 'cold' };
}

/** What a field takes; aims differ in the first two. */
export function rangeOf(field: FieldName, aim: Aim): TypedRange {
	switch (field) {
		case 'from':
		case 'to':
			return aim === 'temperature'
				? { unit: '°C', least: zeroCelsius, most: 1400 + zeroCelsius }
				: { unit: 'W/m', least: 0.1, most: 5000 };
		case 'shortest':
		case 'longest':
			return { unit: 'mm', least: 0.01, most: 10 };
		case 'runTime':
			return { unit: 'min', least: 6, most: 10_000 * 60 };
		case 'mostCurrent':
			return { unit: 'A', least: 0.05, most: 20 };
		case 'room':
			return { unit: '°C', least: zeroCelsius - 20, most: zeroCelsius + 60 };
		default:
			return field satisfies never;
	}
}

const optional: readonly FieldName[] = ['runTime', 'mostCurrent'];

/** Reads all fields together; every problem at once, each with its field. */
export function readBrief(
	texts: BriefTexts,
	{ aim, supply }: Pick<BriefSettings, 'aim' | 'supply'>,
): Outcome<BriefSettings, FieldProblem> {
	const problems: FieldProblem[] = [];
	const take = (field: FieldName): number | undefined => {
		if (optional.includes(field) && texts[field].trim() === '') return undefined;
		const read = readTyped(texts[field], rangeOf(field, aim));
		if (read.ok) return read.value;
		problems.push(...read.problems.slice(0, 1).map((problem) => ({ field, problem })));
		return undefined;
	};
	const [from, to, shortest, longest] = [take('from'), take('to'), take('shortest'), take('longest')];
	const [runTime, mostCurrent, room] = [take('runTime'), take('mostCurrent'), take('room')];
	const isReversed = (low?: number, high?: number) => low !== undefined && high !== undefined && high < low;
	if (isReversed(from, to)) problems.push({ field: 'to', problem: { code: 'order', from: texts.from.trim() } });
	else if (aim === 'temperature' && isReversed(room, to) && from !== undefined) {
		problems.push({ field: 'to', problem: { code: 'cold' } });
	}
	if (isReversed(shortest, longest)) {
		problems.push({ field: 'longest', problem: { code: 'order', from: texts.shortest.trim() } });
	}
	if (problems.length > 0) return fail(...problems);
	if (from === undefined || to === undefined || shortest === undefined || longest === undefined || room === undefined)
		throw new RangeError('a field without value or problem');
	return succeed({
		aim,
		supply,
		from,
		to,
		shortest,
		longest,
		room,
		...(runTime === undefined ? {} : { runTime }),
		...(mostCurrent === undefined ? {} : { mostCurrent }),
	});
}

/** The texts a fresh set of fields shows for a brief, in the units of the fields. */
export function textsOf(brief: BriefSettings): BriefTexts {
	const { aim, from, to, shortest, longest, runTime, mostCurrent, room } = brief;
	const zero = aim === 'temperature' ? zeroCelsius : 0;
	return {
		from: plain(from - zero),
		to: plain(to - zero),
		shortest: plain(shortest * 1000),
		longest: plain(longest * 1000),
		runTime: runTime === undefined ? '' : plain(runTime / 60),
		mostCurrent: mostCurrent === undefined ? '' : plain(mostCurrent),
		room: plain(room - zeroCelsius),
	};
}

function plain(value: number): string {
	return String(Number(value.toPrecision(7)));
}
