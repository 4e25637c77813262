import { iceZero } from '#core/thermal/physical-constants.ts';
import { dimensions, type Dimension } from './dimension.ts';

/** A unit with a symbol of its own. */
export interface NamedUnit {
	readonly symbol: string;
	/** SI value of one of it. */
	readonly factor: number;
	readonly dimension: Dimension;
	/** Prefixes a person may put before the symbol. */
	readonly prefixes: string;
	/** Other ways to write the symbol; these take the same prefixes. */
	readonly otherSymbols: readonly string[];
	/** Names in words, in lower case; these take prefixes in words. */
	readonly words: readonly string[];
	/** Zero of the scale in K, for scales that do not start at absolute zero. */
	readonly zero?: number;
}

export const prefixes: Readonly<Record<string, number>> = {
	G: 1e9,
	M: 1e6,
	k: 1e3,
	d: 1e-1,
	c: 1e-2,
	m: 1e-3,
	µ: 1e-6,
	u: 1e-6,
	n: 1e-9,
	p: 1e-12,
};

export const prefixWords: Readonly<Record<string, number>> = {
	giga: 1e9,
	mega: 1e6,
	meg: 1e6,
	kilo: 1e3,
	kil: 1e3,
	deci: 1e-1,
	centi: 1e-2,
	milli: 1e-3,
	micro: 1e-6,
	nano: 1e-9,
	pico: 1e-12,
};

const usual = 'GMkmµunp';

function unit(
	symbol: string,
	factor: number,
	dimension: Dimension,
	also: { readonly prefixes?: string; readonly symbols?: readonly string[]; readonly words?: readonly string[] } = {},
): NamedUnit {
	return {
		symbol,
		factor,
		dimension,
		prefixes: also.prefixes ?? '',
		otherSymbols: also.symbols ?? [],
		words: also.words ?? [],
	};
}

const inch = 0.0254;

/** Every unit that can be typed, SI first; the inch is exactly 25.4 mm (international yard, 1959). */
export const namedUnits: readonly NamedUnit[] = [
	unit('Ω', 1, dimensions.resistance, {
		prefixes: `${usual}K`,
		symbols: ['ohm', 'ohms', 'Ohm', 'R'],
		words: ['ohm', 'ohms'],
	}),
	unit('V', 1, dimensions.voltage, { prefixes: usual, symbols: ['v'], words: ['volt', 'volts'] }),
	unit('A', 1, dimensions.current, {
		prefixes: usual,
		symbols: ['a'],
		words: ['ampere', 'amperes', 'ampère', 'ampères', 'amp', 'amps'],
	}),
	unit('W', 1, dimensions.power, { prefixes: usual, symbols: ['w'], words: ['watt', 'watts'] }),
	unit('m', 1, dimensions.length, { prefixes: 'kdcmµun', words: ['metre', 'metres', 'meter', 'meters'] }),
	unit('s', 1, dimensions.time, {
		prefixes: 'mµun',
		symbols: ['sec', 'secs'],
		words: ['second', 'seconds', 'sekunde', 'sekunden'],
	}),
	unit('min', 60, dimensions.time, { symbols: ['mins'], words: ['minute', 'minutes', 'minuten'] }),
	unit('h', 3600, dimensions.time, {
		symbols: ['hr', 'hrs', 'Std'],
		words: ['hour', 'hours', 'stunde', 'stunden', 'std'],
	}),
	unit('K', 1, dimensions.temperature, { prefixes: 'mk', words: ['kelvin', 'kelvins'] }),
	{
		...unit('°C', 1, dimensions.temperature, {
			symbols: ['degC', '°c'],
			words: ['celsius', 'centigrade'],
		}),
		zero: iceZero,
	},
	{
		...unit('°F', 5 / 9, dimensions.temperature, { symbols: ['degF', '°f'], words: ['fahrenheit'] }),
		zero: 459.67 * (5 / 9),
	},
	unit('J', 1, dimensions.energy, { prefixes: usual, words: ['joule', 'joules'] }),
	unit('Wh', 3600, dimensions.energy, { prefixes: 'Mkm', symbols: ['wh', 'WH'] }),
	unit('Ws', 1, dimensions.energy, { prefixes: 'km', symbols: ['ws'] }),
	unit('C', 1, dimensions.charge, { prefixes: usual, words: ['coulomb', 'coulombs'] }),
	unit('Ah', 3600, dimensions.charge, { prefixes: 'km', symbols: ['ah', 'AH'] }),
	unit('As', 1, dimensions.charge, { prefixes: 'km' }),
	unit('VA', 1, dimensions.power, { prefixes: 'km' }),
	unit('S', 1, dimensions.conductance, { prefixes: usual, words: ['siemens'] }),
	unit('Ωm', 1, dimensions.resistivity, { prefixes: 'mµun', symbols: ['ohmm'] }),
	unit('g', 1e-3, dimensions.mass, {
		prefixes: 'kmµu',
		words: ['gram', 'grams', 'gramme', 'grammes'],
	}),
	unit('N', 1, dimensions.force, { prefixes: 'kmµu', words: ['newton', 'newtons'] }),
	unit('Pa', 1, dimensions.pressure, { prefixes: 'GMkm', words: ['pascal', 'pascals'] }),
	unit('Hz', 1, dimensions.frequency, { prefixes: 'GMkm', words: ['hertz'] }),
	unit('in', inch, dimensions.length, { symbols: ['"', "''"], words: ['inch', 'inches'] }),
	unit('ft', 12 * inch, dimensions.length, { symbols: ["'", '′'], words: ['foot', 'feet'] }),
	unit('mil', inch / 1000, dimensions.length, { symbols: ['mils', 'thou'] }),
	unit('%', 0.01, dimensions.number, { words: ['percent'] }),
];
