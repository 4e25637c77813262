import type { Kelvin } from '#core/quantity/unit.ts';
import { quantityParts, writeNumber, writeQuantity } from '#core/quantity/write.ts';
import type { Ceiling } from '#core/setup/ceiling.ts';
import type { StateFact } from '#core/setup/operating-point.ts';
import type { WishProblem } from '#core/setup/solve.ts';
import { burnThreshold, type WireState } from '#core/setup/wire-state.ts';
import { glowThreshold, type RoomLight } from '#core/thermal/glow.ts';
import { text } from '#ui/text/en.ts';
import type { Bench, Halt } from './bench.svelte.ts';
import type { Refusal } from './refusal.ts';
import { zeroCelsius, type BenchWish, type WishKind, type WireSize } from './settings.ts';
import type { TypedProblem, TypedRange } from './typed.ts';

const words = text.bench;

/** Degrees Celsius, rounded as far as the model is worth. */
export function degrees(temperature: Kelvin): string {
	const celsius = temperature - zeroCelsius;
	return writeNumber(celsius, { decimals: 0 });
}

/** Twice the standard uncertainty of a temperature, in steps of 5 K from 10 K on. */
export function plusMinus(standardUncertainty: number): string {
	const twice = 2 * standardUncertainty;
	return writeNumber(twice < 10 ? Math.ceil(twice) : Math.round(twice / 5) * 5, { decimals: 0 });
}

/** How lengths are written here: mm in whole figures, or inches. */
export function lengthScale(unit: 'mm' | 'inch') {
	return unit === 'inch'
		? ({ symbol: 'in', name: 'inches', perMetre: 1 / 0.0254, decimals: 2 } as const)
		: ({ symbol: 'mm', name: 'millimetres', perMetre: 1000, decimals: 0 } as const);
}

/** A length as a number alone, in the unit chosen. */
export function lengthNumber(metres: number, unit: 'mm' | 'inch'): string {
	const { perMetre, decimals } = lengthScale(unit);
	return writeNumber(metres * perMetre, { decimals });
}

export function amperes(current: number): string {
	return writeNumber(current);
}

/** The word for a wire in this room; a glow the room hides is not called one. */
export function wireWord(state: WireState, temperature: Kelvin, light: RoomLight): string {
	const isHidden = state === 'faint-red' && temperature < glowThreshold[light];
	return words.wireStates[isHidden ? 'hot-no-glow' : state];
}

export interface Tab {
	readonly text: string;
	readonly mark: 'pencil' | 'ink' | 'ember';
}

/** What stands on the wire: the temperature now while it is hot or live, else what is to be expected. */
export function tabOf(bench: Bench, light: RoomLight): Tab {
	const { temperature, point, uncertainty, isOn } = bench;
	const room = bench.setup.room.temperature;
	const twice = (at: Kelvin) => {
		const share = Math.min(1, (at - room) / Math.max(1, point.temperature - room));
		return plusMinus((uncertainty?.temperature.standardUncertainty ?? 0) * share);
	};
	if (temperature >= burnThreshold) {
		const word = wireWord(bench.wireState, temperature, light);
		return { text: words.tab.now(degrees(temperature), twice(temperature), word), mark: 'ember' };
	}
	if (isOn || temperature > room + 3) {
		const word = words.wireStates[bench.wireState];
		return { text: words.tab.cool(degrees(temperature), word), mark: isOn ? 'ember' : 'ink' };
	}
	if (point.current === 0) {
		const { state, wouldPass } = bench.forecast;
		if (wouldPass === null) return { text: words.tab.none, mark: 'pencil' };
		return { text: words.tab.stopped(words.supplyForecasts[state], amperes(wouldPass)), mark: 'pencil' };
	}
	if (!point.isTemperatureInRange) return { text: words.tab.beyond(degrees(point.temperature)), mark: 'pencil' };
	const word = wireWord(point.wireState, point.temperature, light);
	return { text: words.tab.expected(degrees(point.temperature), twice(point.temperature), word), mark: 'pencil' };
}

export function haltWords(halt: Halt): string {
	switch (halt.code) {
		case 'refused':
			return refusalWords(halt.refusal);
		case 'stopped':
			return factWords(halt.fact);
		case 'moved-live':
			return words.stopped.movedLive;
		case 'changed-live':
			return words.stopped.changedLive;
		default:
			return halt satisfies never;
	}
}

export function refusalWords(refusal: Refusal): string {
	switch (refusal.code) {
		case 'check':
			return words.refused.check;
		case 'short':
			return words.refused.short(writeNumber(refusal.wouldPass), writeNumber(refusal.heatInside));
		case 'over-limit': {
			const { temperature, limit, isKnown } = refusal;
			if (!isKnown) return words.refused.beyond(degrees(limit));
			return words.refused.overLimit(degrees(temperature), degrees(limit));
		}
		default:
			return refusal satisfies never;
	}
}

export function factWords(fact: StateFact): string {
	switch (fact.code) {
		case 'held-at':
			return words.holding(amperes(fact.limit), amperes(fact.asked));
		case 'tripped-by': {
			const sentence = fact.cause === 'inrush' ? words.stopped.trippedCold : words.stopped.tripped;
			return sentence(amperes(fact.current), amperes(fact.tripAbove));
		}
		case 'fuse-opened-by':
			return words.stopped.fuse(amperes(fact.current), writeNumber(fact.rating));
		case 'short-on-bare-battery':
			return words.refused.short(writeNumber(fact.wouldPass), writeNumber(fact.heatInside));
		case 'charge-used':
			return words.stopped.flat;
		default:
			return fact satisfies never;
	}
}

export function bindingWords({ kind, ceiling, ratio }: Ceiling): string {
	const sentence = words.binds[kind](amperes(ceiling));
	return ratio > 1 + 1e-9 ? `${sentence}. ${words.binds.over}` : sentence;
}

const wishUnits = {
	length: 'mm',
	current: 'A',
	resistance: 'Ω',
	temperature: '°C',
	power: 'W',
	'power-per-metre': 'W/m',
} as const satisfies Record<WishKind, string>;

export const wishNames = {
	length: words.wanted.length,
	current: words.wanted.current,
	resistance: words.wanted.resistance,
	temperature: words.wanted.temperature,
	power: words.wanted.power,
	'power-per-metre': words.wanted.powerPerMetre,
} as const satisfies Record<WishKind, string>;

/** The number alone, in the unit of its field. */
export function wishNumber(kind: WishKind, value: number): string {
	const decimals = kind === 'temperature' || kind === 'length' ? { decimals: 0 } : {};
	return quantityParts(value, wishUnits[kind], { keepUnit: true, ...decimals }).number;
}

export function wishWords({ kind, value }: BenchWish, unit: 'mm' | 'inch'): string {
	if (kind === 'length')
		return `${wishNames.length.toLowerCase()} ${lengthNumber(value, unit)} ${lengthScale(unit).symbol}`;
	return `${wishNames[kind].toLowerCase()} ${wishNumber(kind, value)} ${wishUnits[kind]}`;
}

export function wishProblemWords(problem: WishProblem): string {
	const { problem: say } = words.wanted;
	switch (problem.code) {
		case 'not-positive':
			return say.notPositive;
		case 'over-24-volts':
			return words.typed.volts24;
		case 'no-voltage':
			return say.noVoltage;
		case 'over-limit':
			return say.overLimit[problem.part](amperes(problem.current), amperes(problem.limit));
		case 'over-wire-limit':
			return say.overWire(degrees(problem.temperature), degrees(problem.limit));
		case 'below-room':
			return say.belowRoom(degrees(problem.room));
		case 'no-length':
			return say.noLength(amperes(problem.most));
		case 'over-greatest-power':
			return say.greatestPower(writeNumber(problem.most));
		case 'too-short':
			return say.tooShort;
		case 'too-long':
			return say.tooLong;
		default:
			return problem satisfies never;
	}
}

export function typedWords(problem: TypedProblem, range: TypedRange): string {
	const { typed } = words;
	const write = (value: number) => quantityParts(value, range.unit, { keepUnit: true, figures: 4 }).number;
	const least = trimmed(write(range.least));
	const most = trimmed(write(range.most));
	const span = typed.range(least, most, range.unit);
	switch (problem.code) {
		case 'empty':
			return typed.empty(span);
		case 'not-a-number':
			return typed.notANumber(span);
		case 'unit':
			return typed.unit(problem.found, range.unit);
		case 'negative':
			return typed.negative(span);
		case 'zero':
			return typed.zero(span);
		case 'below':
			return typed.below(`${least} ${range.unit}`, span);
		case 'above':
			return range.unit === 'V' && range.most === 24 ? typed.volts24 : typed.above(`${most} ${range.unit}`, span);
		default:
			return problem satisfies never;
	}
}

export function trimmed(number: string): string {
	return number.includes('.') ? number.replace(/\.?0+$/, '') : number;
}

export function sizeWords({ system, value }: WireSize): string {
	return system === 'mm' ? `${trimmed(writeNumber(value, { figures: 4 }))} mm` : `${system.toUpperCase()} ${value}`;
}

export function runTimeWords(seconds: number): string {
	return writeQuantity(seconds, 'min', { figures: 2 });
}
