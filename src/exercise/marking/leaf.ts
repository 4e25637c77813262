import { build, replaceNodes, symbolsIn, type Expression } from '#core/expression/expression.ts';
import { powerOfTenBetween } from '#exercise/slip/power-of-ten.ts';
import { statedValue, type StatedValue } from './claim.ts';
import { isClose, isMiscopied } from './tolerance.ts';

/** A quantity a number in a working may stand for. */
export interface Known {
	readonly symbol: string;
	/** SI; more than one where the learner has a value of their own beside the model's */
	readonly values: readonly number[];
	readonly isGiven: boolean;
	/** the size of the unit it is spoken of in; a bare 20 may stand for 20 min */
	readonly factor?: number;
	/** what it is made of, where it has no letter: R + r, worked out in the head */
	readonly formula?: Expression;
}

export type LeafFault =
	| { readonly kind: 'power-of-ten'; readonly power: number }
	| { readonly kind: 'miscopied' }
	/** the number of another unit than SI, which may be right where every number is */
	| { readonly kind: 'own-unit' };

/** What one number of a working stands for. */
export interface LeafReading {
	readonly symbol?: string;
	readonly formula?: Expression;
	readonly fault?: LeafFault;
	readonly cost: number;
}

/** A working with its numbers read as quantities. */
export interface SymbolicWork {
	readonly formula: Expression;
	readonly cost: number;
	readonly symbols: readonly string[];
	readonly faults: readonly (LeafFault & { readonly symbol: string })[];
	/** numbers that stand for no quantity and are no usual constant */
	readonly strangers: number;
}

const constants = [
	2,
	3,
	4,
	0.5,
	0.25,
	Math.PI,
	3.14,
	3.142,
	22 / 7,
	10,
	100,
	1000,
	1e6,
	0.1,
	0.01,
	0.001,
	1e-6,
	1,
	60,
	3600,
];
/** Readings of one working that are tried at most. */
const readingLimit = 240;

/** Every sensible reading of a working, the most literal first. */
export function readWork(work: Expression, known: readonly Known[]): readonly SymbolicWork[] {
	const leaves: { readonly node: Expression; readonly readings: readonly LeafReading[] }[] = [];
	collect(work, false, (node, stated) => leaves.push({ node, readings: readingsOf(stated, known) }));
	let combinations: readonly (readonly LeafReading[])[] = [[]];
	for (const { readings } of leaves) {
		combinations = combinations
			.flatMap((chosen) => readings.map((reading) => [...chosen, reading]))
			.toSorted((a, b) => totalCost(a) - totalCost(b))
			.slice(0, readingLimit);
	}
	return combinations.map((chosen) => {
		const nodes = new Map(leaves.map(({ node }, index) => [node, chosen[index]]));
		const formula = replaceNodes(work, (node) => {
			const reading = nodes.get(node);
			if (reading?.formula) return reading.formula;
			return reading?.symbol === undefined ? undefined : build.symbol(reading.symbol);
		});
		return {
			formula,
			cost: totalCost(chosen),
			symbols: chosen.flatMap(({ symbol, formula: part }) =>
				part ? symbolsIn(part) : symbol === undefined ? [] : [symbol],
			),
			faults: chosen.flatMap(({ symbol, fault }) => (symbol !== undefined && fault ? [{ ...fault, symbol }] : [])),
			strangers: chosen.filter(({ symbol, formula: part, cost }) => symbol === undefined && !part && cost > 1).length,
		};
	});
}

function collect(node: Expression, isExponent: boolean, found: (node: Expression, stated: StatedValue) => void): void {
	const stated = statedValue(node);
	if (stated) {
		if (!isExponent) found(node, stated);
	} else if ('left' in node) {
		collect(node.left, isExponent, found);
		collect(node.right, isExponent || node.kind === 'power', found);
	} else if ('operand' in node) {
		collect(node.operand, isExponent, found);
	}
}

function readingsOf(stated: StatedValue, known: readonly Known[]): readonly LeafReading[] {
	const value = stated.number * stated.factor;
	const readings: LeafReading[] = [];
	for (const { symbol, values, isGiven, factor = 1, formula } of known) {
		const isExact = values.some((candidate) =>
			isGiven ? Math.abs(candidate - value) <= 1e-6 * Math.abs(candidate) : isClose(stated, candidate),
		);
		if (formula) {
			const power = values.map((one) => powerOfTenBetween(value, one, 1e-3)).find((one) => one !== undefined);
			const [first = ''] = symbolsIn(formula);
			if (isExact) readings.push({ cost: 0.4, formula });
			else if (power !== undefined) {
				readings.push({ symbol: first, cost: 1.4, formula, fault: { kind: 'power-of-ten', power } });
			}
			continue;
		}
		const isOdd = factor !== 1 && stated.unit === undefined && Math.abs(Math.log10(factor) % 1) > 1e-9;
		if (!isExact && isOdd && values.some((candidate) => isClose({ ...stated, factor }, candidate))) {
			readings.push({ symbol, cost: 0.2, fault: { kind: 'own-unit' } });
			continue;
		}
		if (isExact) {
			readings.push({ symbol, cost: 0 });
			continue;
		}
		const power = values
			.map((candidate) => powerOfTenBetween(value, candidate, 1e-3))
			.find((found) => found !== undefined);
		if (power !== undefined) {
			readings.push({ symbol, cost: 1 + Math.abs(power) / 100, fault: { kind: 'power-of-ten', power } });
		} else if (values.some((candidate) => isMiscopied(value, candidate))) {
			readings.push({ symbol, cost: 3, fault: { kind: 'miscopied' } });
		}
	}
	const isConstant = stated.unit === undefined && constants.some((constant) => Math.abs(constant - value) < 1e-9);
	readings.push({ cost: isConstant ? 0.5 : 6 });
	return readings.toSorted((a, b) => a.cost - b.cost).slice(0, 6);
}

function totalCost(readings: readonly LeafReading[]): number {
	return readings.reduce((sum, { cost }) => sum + cost, 0);
}
