import { readdirSync, readFileSync } from 'node:fs';
import * as v from 'valibot';
import { parse } from 'yaml';
import type { Exercise } from '#exercise/exercise.ts';
import { parseExercise } from '#exercise/schema.ts';

const amount = v.strictObject({ symbol: v.string(), value: v.number(), unit: v.string() });
const problem = v.strictObject({
	id: v.string(),
	text: v.string(),
	givens: v.array(amount),
	showSteps: v.optional(v.boolean()),
	steps: v.array(
		v.strictObject({
			find: v.string(),
			relation: v.string(),
			unit: v.string(),
			figures: v.optional(v.number()),
			below: v.optional(v.string()),
			above: v.optional(v.number()),
		}),
	),
	wanted: v.array(v.strictObject({ symbol: v.string(), unit: v.string() })),
	answers: v.array(
		v.strictObject({
			kind: v.string(),
			text: v.string(),
			marks: v.string(),
			right: v.boolean(),
			slips: v.optional(v.array(v.string())),
			note: v.optional(v.string()),
		}),
	),
});

export type CorpusProblem = v.InferOutput<typeof problem>;

const byUnit: Readonly<Record<string, string>> = {
	V: 'voltage',
	A: 'current',
	mA: 'current',
	Ω: 'resistance',
	'Ω/m': 'resistance-per-length',
	'Ω·m': 'resistivity',
	m: 'length',
	mm: 'length',
	cm: 'length',
	in: 'length',
	W: 'power',
	J: 'energy',
	'kW·h': 'energy',
	s: 'time',
	min: 'time',
	h: 'time',
	'm²': 'area',
	'mm²': 'area',
	'cm²': 'area',
	'W/cm²': 'surface-load',
	'A·h': 'charge',
	'mA·h': 'charge',
	'°C': 'temperature',
	K: 'temperature-difference',
	'1/K': 'temperature-coefficient',
	'%': 'fraction',
	'': 'count',
	g: 'mass',
	'J/(kg·K)': 'specific-heat',
};
const bySymbol: Readonly<Record<string, string>> = {
	d: 'diameter',
	Rl: 'lead-resistance',
	Rm: 'resistance-reading',
	E: 'source-voltage',
};

function quantity(symbol: string, unit: string): string {
	if (symbol === 'r' && unit === 'Ω') return 'internal-resistance';
	if (symbol === 'E' && unit !== 'V') return byUnit[unit] ?? '';
	return bySymbol[symbol] ?? byUnit[unit] ?? '';
}

const plainUnit = (unit: string) => (unit === '' ? '1' : unit === '1/K' ? 'K^-1' : unit);

/** The problems of the corpus that are about quantities this site has; money it has not. */
export function readCorpus(): readonly { readonly problem: CorpusProblem; readonly exercise: Exercise }[] {
	const folder = 'tests/fixtures/marking';
	return readdirSync(folder)
		.filter((name) => name.endsWith('.yaml'))
		.toSorted()
		.flatMap((name) => v.parse(v.array(problem), parse(readFileSync(`${folder}/${name}`, 'utf8'))))
		.filter(({ givens }) => !givens.some(({ unit }) => unit.includes('€')))
		.map((found) => ({ problem: found, exercise: exerciseOf(found) }));
}

function exerciseOf({ id, text, givens, steps, wanted, showSteps }: CorpusProblem): Exercise {
	const file = {
		format: 1,
		id: id.slice(0, 24),
		title: id,
		skills: ['K4'],
		prompt: text,
		showSteps: showSteps ?? false,
		givens: givens.map(({ symbol, value, unit }) => ({
			symbol,
			quantity: quantity(symbol, unit),
			unit: plainUnit(unit),
			value,
		})),
		steps: steps.map(({ find, relation, unit, figures }) => ({
			find,
			quantity: quantity(find, unit),
			unit: plainUnit(unit),
			relation: `${find} = ${relation}`,
			...(figures === undefined ? {} : { figures }),
		})),
		wanted: wanted.map(({ symbol }) => symbol),
		sense: text,
		caution: { signal: 'caution', hazard: '-', consequence: '-', instruction: '-' },
		sample: { values: {} },
		answers: [{ text: '-', marks: {}, unit: false, right: false }],
	};
	const parsed = parseExercise(JSON.stringify(file), `${id}.yaml`);
	if (!parsed.ok) throw new Error(`${id}: ${JSON.stringify(parsed.problems)}`);
	return parsed.value;
}
