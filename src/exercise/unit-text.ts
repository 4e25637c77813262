/** Exponents of metre, kilogram, second, ampere and kelvin. */
export type Exponents = readonly [number, number, number, number, number];

export interface UnitReading {
	readonly factor: number;
	readonly dimension: Exponents;
	readonly dimensionText: string;
}

const table: readonly (readonly [names: string, factor: number, dimension: Exponents, prefixes: string])[] = [
	['V volt volts', 1, [2, 1, -3, -1, 0], 'kmμu'],
	['A amp amps ampere amperes ampère ampères', 1, [0, 0, 0, 1, 0], 'mμu'],
	['Ω ohm ohms Ohm OHM R', 1, [2, 1, -3, -2, 0], 'mkMμu'],
	['W watt watts', 1, [2, 1, -3, 0, 0], 'mkM'],
	['m metre metres meter meters', 1, [1, 0, 0, 0, 0], 'mckμun'],
	['s sec second seconds', 1, [0, 0, 1, 0, 0], 'm'],
	['min minute minutes', 60, [0, 0, 1, 0, 0], ''],
	['h hour hours hr hrs', 3600, [0, 0, 1, 0, 0], ''],
	['J joule joules', 1, [2, 1, -2, 0, 0], 'mkM'],
	['C coulomb coulombs', 1, [0, 0, 1, 1, 0], 'mk'],
	['K', 1, [0, 0, 0, 0, 1], ''],
	['inch inches', 0.0254, [1, 0, 0, 0, 0], ''],
	['% percent', 0.01, [0, 0, 0, 0, 0], ''],
	['1', 1, [0, 0, 0, 0, 0], ''],
];
const prefixFactors: Readonly<Record<string, number>> = { n: 1e-9, μ: 1e-6, u: 1e-6, m: 1e-3, c: 1e-2, k: 1e3, M: 1e6 };
const prefixWords = new Map([
	['milli', 1e-3],
	['centi', 1e-2],
	['kilo', 1e3],
	['micro', 1e-6],
	['mega', 1e6],
]);

function build(): ReadonlyMap<string, readonly [number, Exponents]> {
	const found = new Map<string, readonly [number, Exponents]>();
	for (const [names, factor, dimension, prefixes] of table) {
		for (const name of names.split(' ')) {
			found.set(name, [factor, dimension]);
			const isSymbol = name === names.split(' ')[0];
			for (const prefix of isSymbol ? prefixes : '') {
				found.set(prefix + name, [factor * (prefixFactors[prefix] ?? 1), dimension]);
			}
			if (!isSymbol)
				for (const [word, by] of prefixWords) found.set(word + name.toLowerCase(), [factor * by, dimension]);
		}
	}
	for (const prefix of 'mkM') {
		found.set(`${prefix}ohm`, [prefixFactors[prefix] ?? 1, [2, 1, -3, -2, 0]]);
	}
	return found;
}
const known = build();

/** Reads a unit written in plain signs: Ω/m, Ω·mm^2/m, A·h, W/(m^2). Undefined when any part is unknown. */
export function readUnitText(text: string): UnitReading | undefined {
	let factor = 1;
	let dimension: Exponents = [0, 0, 0, 0, 0];
	const parts = text
		.replace(/\s+/gu, '')
		.replace(/\u2126/gu, 'Ω')
		.replace(/µ/gu, 'μ')
		.split(/([·*/])/u);
	for (let index = 0; index < parts.length; index += 2) {
		const match = /^(.+?)(?:\^(-?\d)|([²³]))?$/u.exec(parts[index] ?? '');
		const unit = known.get(match?.[1] ?? '') ?? known.get((match?.[1] ?? '').toLowerCase());
		if (!match || !unit) return undefined;
		const raised = match[3] === '²' ? 2 : match[3] === '³' ? 3 : Number(match[2] ?? 1);
		const power = parts[index - 1] === '/' ? -raised : raised;
		factor *= unit[0] ** power;
		dimension = combine(dimension, unit[1], power);
	}
	return { factor, dimension, dimensionText: dimension.join(' ') };
}

export function combine(a: Exponents, b: Exponents, power: number): Exponents {
	return [a[0] + b[0] * power, a[1] + b[1] * power, a[2] + b[2] * power, a[3] + b[3] * power, a[4] + b[4] * power];
}
