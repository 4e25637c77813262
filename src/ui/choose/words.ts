import { quantityParts, writeQuantity } from '#core/quantity/write.ts';
import type { Design, DesignCheck } from '#core/setup/design.ts';
import type { StateFact } from '#core/setup/operating-point.ts';
import { materialOfReel, sizeOfReel } from '#ui/bench/settings.ts';
import { sizeWords, typedWords } from '#ui/bench/words.ts';
import type { Cupboard } from '#exercise/cupboard.ts';
import { text } from '#ui/text/en.ts';
import type { AddressProblem } from './address.ts';
import { rangeOf, type Aim, type FieldProblem } from './brief.ts';

const words = text.choose;
const { why } = words.rejected;

export const amperes = (current: number) => writeQuantity(current, 'A', { keepUnit: true });
export const celsius = (temperature: number) => writeQuantity(temperature, '°C', { decimals: 0 });
export const millimetres = (length: number) => writeQuantity(length, 'mm', { keepUnit: true, decimals: 0 });
export const minutes = (time: number) => writeQuantity(time, 'min', { keepUnit: true, decimals: time < 600 ? 1 : 0 });
const wattsPerMetre = (power: number) => writeQuantity(power, 'W/m', { keepUnit: true });

export function problemWords({ field, problem }: FieldProblem, aim: Aim): string {
	if (problem.code === 'order') return words.problem.order(problem.from);
	return problem.code === 'cold' ? words.problem.cold : typedWords(problem, rangeOf(field, aim));
}

export function addressWords(problem: AddressProblem): string {
	if (problem.code === 'version') return words.address.version;
	const { part } = problem;
	if (part === 'aim' || part === 'supply') return words.address.part(words.address.parts[part]);
	return words.address.part(words.field[part].toLowerCase());
}

/** What stands on a shelf under this label, by name and size. */
export function itemWords(id: string, { supplies, reels, leads }: Cupboard): string {
	const reel = reels.find((item) => item.id === id);
	if (reel !== undefined) {
		const [metal, size] = [materialOfReel(reel).designation, sizeWords(sizeOfReel(reel))];
		return `${unbroken(metal)}, ${unbroken(size)}`;
	}
	return [...supplies, ...leads].find((item) => item.id === id)?.name ?? '';
}

function unbroken(words: string): string {
	return words.replaceAll(' ', '\u00A0');
}

/** Which parts a design takes, by their labels. */
export function partsWords({ supplyId, reelId, leadsId }: Design): string {
	return `${supplyId}, ${reelId}, ${leadsId}`;
}

/** Why a design does not fit, the gravest first; a loop that stops needs no second reason. */
export function whyWords({ checks, point }: Design): string {
	const failed = checks.filter(({ holds }) => !holds);
	const [fact] = point.facts;
	if (failed.some(({ code }) => code === 'runs') && fact !== undefined) return factWords(fact);
	const [first = '', ...others] = failed.map((check) => checkWords(check, point.isTemperatureInRange));
	return [first, ...others.map(why.also)].join(' ');
}

function checkWords(check: DesignCheck, isInRange: boolean): string {
	switch (check.code) {
		case 'temperature': {
			const { value, band } = check;
			if (!isInRange) return why.beyond(celsius(value));
			return value < band.from
				? why.tooCool(celsius(value), celsius(band.from))
				: why.tooHot(celsius(value), celsius(band.to));
		}
		case 'power-per-metre': {
			const { value, band } = check;
			return value < band.from
				? why.tooWeak(wattsPerMetre(value), wattsPerMetre(band.from))
				: why.tooStrong(wattsPerMetre(value), wattsPerMetre(band.to));
		}
		case 'ceiling':
			return why.ceiling[check.part](amperes(check.value), amperes(check.most));
		case 'current':
			return why.current(amperes(check.value), amperes(check.most));
		case 'run-time':
			return why.runTime(minutes(check.value), minutes(check.least));
		case 'jobs':
			return why.runTime(String(check.value), String(check.least));
		case 'length':
			return why.length;
		case 'runs':
			return why.flat;
		default:
			return check satisfies never;
	}
}

function factWords(fact: StateFact): string {
	switch (fact.code) {
		case 'tripped-by': {
			const sentence = fact.cause === 'inrush' ? why.trippedCold : why.tripped;
			return sentence(amperes(fact.current), amperes(fact.tripAbove));
		}
		case 'fuse-opened-by':
			return why.fuse(amperes(fact.current), amperes(fact.rating));
		case 'short-on-bare-battery':
			return why.short(amperes(fact.wouldPass));
		case 'charge-used':
			return why.flat;
		case 'held-at':
			return why.ceiling.supply(amperes(fact.asked), amperes(fact.limit));
		default:
			return fact satisfies never;
	}
}

/** The ceiling nearest above the current. */
export function ceilingWords({ checks }: Design): string {
	const rows = checks.flatMap((check) => (check.code === 'ceiling' ? [check] : []));
	const tightest = rows.reduce<(typeof rows)[number] | undefined>(
		(least, row) => (least === undefined || row.most < least.most ? row : least),
		undefined,
	);
	if (tightest === undefined) return '';
	return words.found.ceiling(words.found.parts[tightest.part], amperes(tightest.most));
}

/** How an adjustable supply is to be set; empty for a fixed one. */
export function settingWords({ setup: { supply } }: Design): string {
	if (supply.protection.kind !== 'holds') return '';
	const volts = quantityParts(supply.openCircuitVoltage, 'V', { keepUnit: true }).text;
	return words.found.set(volts, amperes(supply.protection.limit));
}

/** The room to spare in per cent of the whole. */
export function marginWords(margin: number): string {
	return writeQuantity(margin, '%', { keepUnit: true, decimals: 0 });
}
