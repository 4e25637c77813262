import { array, number, object, optional, parse, picklist, string } from 'valibot';
import { describe, expect, test } from 'vitest';
import { batteryRunTime } from '#core/electric/battery.ts';
import {
	loopCurrent,
	parallelResistance,
	resistancePower,
	seriesResistance,
	sourceFromReadings,
	terminalVoltage,
} from '#core/electric/circuit.ts';
import { wireArea, wireLength, wireResistance } from '#core/electric/wire.ts';
import { iceZero } from '#core/thermal/physical-constants.ts';
import { radiatedPower } from '#core/thermal/radiation.ts';
import { readFormula } from '#course/checks/read-formula.ts';
import file from '#tests/fixtures/textbook-problems.json';

const agreement = ['agrees', 'off by one in the last printed digit', 'mismatch'] as const;

const { problems } = parse(
	object({
		problems: array(
			object({
				id: string(),
				citation: string(),
				how: picklist(['looked up', 'from memory']),
				givens: array(object({ symbol: string(), value: number() })),
				parts: array(
					object({
						part: string(),
						asked: string(),
						symbol: string(),
						expression: string(),
						published: optional(object({ printed: string(), unit: string(), figures: number(), value: number() })),
						check: optional(picklist(agreement)),
						note: optional(string()),
					}),
				),
			}),
		),
	}),
	file,
);

type Values = Readonly<Record<string, number>>;
type Need = (symbol: string) => number;

/** Unrounded values of a problem: what is given, then each part by its own expression. */
const solved = problems.map((problem) => {
	const values = problem.parts.reduce<Values>(
		(known, { symbol, expression }) => ({ ...known, [symbol]: readFormula(expression, known) }),
		Object.fromEntries(problem.givens.map(({ symbol, value }) => [symbol, value])),
	);
	return { problem, values };
});

const answers = solved.flatMap(({ problem, values }) =>
	problem.parts.flatMap(({ published, check, ...part }) =>
		published && check
			? [{ ...part, published, check, values, name: `${problem.id}${part.part}`, citation: problem.citation }]
			: [],
	),
);

/** Whether a value rounds to the printed answer, and by how many steps of the last printed figure it misses. */
function agreementOf(found: number, { printed, figures, value }: (typeof answers)[number]['published']) {
	const inPrintedUnit = found / (value / Number(printed));
	const step = 10 ** (Math.floor(Math.log10(Math.abs(Number(printed)))) - figures + 1);
	const steps = Math.abs(Math.round(inPrintedUnit / step) - Math.round(Number(printed) / step));
	return agreement[Math.min(steps, 2)];
}

/** The answers the core has a function for; v gives a value of the problem by its letter. */
const byCore: Readonly<Record<string, (v: Need) => number>> = {
	A02a: (v) => ohm(v('V'), v('R')),
	A05a: (v) => resistancePower({ current: v('I'), resistance: v('Ra') }),
	A05b: (v) => resistancePower({ current: v('I'), resistance: v('Rb') }),
	A06a: (v) => ohm(v('V'), v('R') * (1 - v('t'))),
	A06b: (v) => ohm(v('V'), v('R') * (1 + v('t'))),
	A07a: (v) => wireResistance({ length: v('L'), area: wireArea(v('d')), resistivity: v('rho') }),
	A09a: (v) => wireLength({ resistance: v('R'), area: wireArea(v('d')), resistivity: v('rho') }),
	A12b: (v) => wireLength({ resistance: v('R'), area: v('A'), resistivity: v('rho') }),
	A18c: (v) => ohm(v('V'), v('Rc')),
	A19b: (v) => {
		const resistance = wireResistance({ length: v('L'), area: wireArea(v('d')), resistivity: v('rho') });
		return resistancePower({ current: v('I'), resistance });
	},
	A20b: (v) => ohm(v('V'), v('R')),
	A22a: (v) => runTime(v('Q'), ohm(v('V'), seriesResistance([v('R'), v('R'), v('R')]))),
	A22b: (v) => runTime(v('Q'), ohm(v('V'), parallelResistance([v('R'), v('R'), v('R')]))),
	A25a: (v) => loaded(v('E'), v('r'), v('Ra')).voltage,
	A25b: (v) => loaded(v('E'), v('r'), v('Rb')).voltage,
	A25c: (v) => loaded(v('E'), v('r'), v('Rb')).power,
	A25d1: (v) => loaded(v('E'), v('r2'), v('Rb')).current,
	A25d2: (v) => loaded(v('E'), v('r2'), v('Rb')).voltage,
	A25d3: (v) => loaded(v('E'), v('r2'), v('Rb')).power,
	A26a: (v) => terminalVoltage({ sourceVoltage: v('E'), internalResistance: v('r'), current: v('I') }),
	A27a: (v) => loaded(v('E'), v('r'), v('R')).current,
	A27b: (v) => loaded(v('E'), v('r'), v('R')).power,
	A28a: (v) => {
		const readings = { first: { voltage: v('dV'), current: 0 }, second: { voltage: 0, current: v('dI') } };
		return sourceFromReadings(readings).internalResistance;
	},
	A29a: (v) => loaded(v('E'), v('r'), v('R')).current,
	A29b: (v) => loaded(v('E'), v('r'), v('R')).voltage,
	A29c: (v) => loaded(v('E'), v('r'), v('R')).power,
	A29d1: (v) => loaded(v('E'), v('r') + v('x'), v('R')).current,
	A29d2: (v) => loaded(v('E'), v('r') + v('x'), v('R')).voltage,
	A29d3: (v) => loaded(v('E'), v('r') + v('x'), v('R')).power,
	A30b: (v) => resistancePower({ current: v('I'), resistance: v('r') }),
	A31a: (v) => seriesResistance(three(v)),
	A31b: (v) => ohm(v('V'), seriesResistance(three(v))),
	A31d3: (v) => resistancePower({ current: ohm(v('V'), seriesResistance(three(v))), resistance: v('R3') }),
	A32a: (v) => parallelResistance(three(v)),
	A32b: (v) => ohm(v('V'), parallelResistance(three(v))),
	A32c1: (v) => ohm(v('V'), v('R1')),
	A32c2: (v) => ohm(v('V'), v('R2')),
	A32c3: (v) => ohm(v('V'), v('R3')),
	A32d3: (v) => resistancePower({ current: ohm(v('V'), v('R3')), resistance: v('R3') }),
	A33a: (v) => seriesResistance(Array.from({ length: v('n') }, () => v('R'))),
	A33b: (v) => parallelResistance(Array.from({ length: v('n') }, () => v('R'))),
	A34a: (v) => parallelResistance(three(v)),
	A34b: (v) => ohm(v('V'), parallelResistance(three(v))),
	A34c1: (v) => ohm(v('V'), v('R1')),
	A34c2: (v) => ohm(v('V'), v('R2')),
	A34c3: (v) => ohm(v('V'), v('R3')),
	A36b: (v) => wireResistance({ length: v('L'), area: v('w') * v('h'), resistivity: v('rho') }),
	A37a1: (v) => loaded(v('E'), 2 * v('R0'), v('RL')).current,
	A37a2: (v) => loaded(v('E'), 2 * v('R0'), v('RL')).voltage,
	A37b2: (v) => loaded(v('E'), 2 * v('R'), v('RL')).current,
	A37b3: (v) => loaded(v('E'), 2 * v('R'), v('RL')).voltage,
	A38c: (v) => wireResistance({ length: v('L'), area: v('A14'), resistivity: v('rho') }),
	A42a: (v) => {
		const surface = { emissivity: v('e'), area: v('A'), temperature: v('T') + iceZero };
		return -radiatedPower(surface, v('T0') + iceZero);
	},
	A44b: (v) => resistancePower({ current: v('I'), resistance: v('R') }),
};

function ohm(sourceVoltage: number, loadResistance: number): number {
	return loopCurrent({ sourceVoltage, seriesResistance: 0, loadResistance });
}

function runTime(capacity: number, current: number): number {
	return batteryRunTime({ capacity, usableFraction: 1 }, current);
}

function loaded(sourceVoltage: number, internalResistance: number, loadResistance: number) {
	const current = loopCurrent({ sourceVoltage, seriesResistance: internalResistance, loadResistance });
	const power = resistancePower({ current, resistance: loadResistance });
	return { current, power, voltage: terminalVoltage({ sourceVoltage, internalResistance, current }) };
}

function three(v: Need): readonly number[] {
	return [v('R1'), v('R2'), v('R3')];
}

describe('the printed answers', () => {
	test('are 103, to 44 problems; five do not agree and say why', () => {
		expect(problems.length).toBe(44);
		expect(answers.length).toBe(103);
		const others = answers.filter(({ check }) => check !== 'agrees');
		expect(others.map(({ name }) => name)).toEqual(['A09a', 'A12b', 'A19b', 'A42a', 'A44b']);
		expect(others.filter(({ note = '' }) => note.length < 20)).toEqual([]);
	});

	test.each(answers)('$name $asked: $published.printed $published.unit $check ($citation)', (answer) => {
		expect(agreementOf(answer.values[answer.symbol] ?? Number.NaN, answer.published)).toBe(answer.check);
	});
});

describe('the same by the functions of the core', () => {
	test('each of them belongs to a printed answer', () => {
		const names = new Set(answers.map(({ name }) => name));
		expect(Object.keys(byCore).filter((name) => !names.has(name))).toEqual([]);
	});

	test.each(answers.filter(({ name }) => name in byCore))('$name $asked', ({ name, values, published, check }) => {
		const found = byCore[name]?.((symbol) => values[symbol] ?? Number.NaN) ?? Number.NaN;
		expect(agreementOf(found, published)).toBe(check);
	});
});
