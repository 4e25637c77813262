import { build, partsOf, symbolsIn, type Expression } from '#core/expression/expression.ts';
import { sameKind } from '#exercise/dimension-check.ts';
import type { Exercise, NumberStep } from '#exercise/exercise.ts';
import { kindOf, siUnitOf, symbolsOf } from '#exercise/symbols.ts';
import type { QuantityKindId } from '#exercise/quantity-kind.ts';
import type { SlipName } from './slip-name.ts';

/** A wrong formula for a step, and the slip that leads to it. */
export interface Mutant {
	readonly name: SlipName;
	readonly formula: Expression;
}

/** Wrong formulas of one step: those its author named first, then those derived from its relation, likeliest first. */
export function mutantsOf(step: NumberStep, exercise: Exercise): readonly Mutant[] {
	const authored = exercise.slips.flatMap(({ name, step: find, relation }) =>
		find === step.find && relation ? [{ name, formula: relation.formula }] : [],
	);
	const { formula } = step.relations[0];
	const kind = (symbol: string) => kindOf(exercise, symbol);
	return [...authored, ...everywhere(formula, (node) => wrongNodes(node, kind, exercise)), ...swapped(step, exercise)];
}

function everywhere(node: Expression, wrong: (node: Expression) => readonly Mutant[]): readonly Mutant[] {
	const here = wrong(node);
	if ('left' in node) {
		return [
			...here,
			...everywhere(node.left, wrong).map((part) => ({ ...part, formula: { ...node, left: part.formula } })),
			...everywhere(node.right, wrong).map((part) => ({ ...part, formula: { ...node, right: part.formula } })),
		];
	}
	if (!('operand' in node)) return here;
	return [
		...here,
		...everywhere(node.operand, wrong).map((part) => ({ ...part, formula: { ...node, operand: part.formula } })),
	];
}

type KindOf = (symbol: string) => QuantityKindId | undefined;

function wrongNodes(node: Expression, kind: KindOf, exercise: Exercise): readonly Mutant[] {
	switch (node.kind) {
		case 'quotient':
			return wrongQuotients(node.left, node.right, kind, exercise);
		case 'product':
			return wrongProducts(node.left, node.right, kind);
		case 'power':
			return wrongSquares(node.left, node.right, kind);
		case 'root':
			return [
				...(node.operand.kind === 'quotient'
					? [
							{
								name: 'current-squared-over-resistance',
								formula: build.root(build.binary('product', node.operand.left, node.operand.right)),
							} as const,
						]
					: []),
				{ name: 'root-not-taken', formula: node.operand },
				{ name: 'halved-for-root', formula: build.binary('quotient', node.operand, build.number(2)) },
			];
		case 'difference':
			return wrongDifferences(node.left, node.right, kind);
		case 'sum':
			return wrongSums(node.left, node.right, kind);
		default:
			return [];
	}
}

function wrongQuotients(left: Expression, right: Expression, kind: KindOf, exercise: Exercise): readonly Mutant[] {
	const product = build.binary('product', left, right);
	const inverted: Mutant = { name: 'quotient-inverted', formula: build.binary('quotient', right, left) };
	if (isSquareOf(left, kind, 'V')) {
		return [{ name: 'voltage-squared-times-resistance', formula: product }, inverted];
	}
	if (left.kind === 'product' && right.kind === 'sum' && isPair(left, right)) return wrongParallels(right, inverted);
	const round = wrongCircles(left, right, kind);
	if (round.length > 0) return round;
	const isWire = has(right, kind, ['resistance-per-length', 'resistivity']) || has(left, kind, ['resistivity']);
	const isUnlike = !sameKind(left, right, (symbol) => siUnitOf(exercise, symbol));
	const added = ['difference', 'sum'] as const;
	const isTotal = right.kind === 'sum' && right.left.kind !== 'number';
	const broken = isTotal ? build.binary('sum', build.binary('quotient', left, right.left), right.right) : undefined;
	return [
		inverted,
		...(broken ? [{ name: 'brackets-lost', formula: broken } as const] : []),
		...(isWire && left.kind === 'product'
			? [
					{
						name: 'wire-formula-misarranged',
						formula: build.binary('quotient', build.binary('product', right, left.right), left.left),
					} as const,
				]
			: []),
		...(isWire ? [{ name: 'wire-formula-misarranged', formula: product } as const] : []),
		{ name: 'product-for-quotient', formula: product },
		...(isUnlike
			? added.map((way) => ({ name: 'unlike-quantities-added', formula: build.binary(way, left, right) }) as const)
			: []),
	];
}

type Two = Extract<Expression, { left: Expression }>;

function isPair(product: Two, sum: Two): boolean {
	const pair = (node: Two) => symbolsIn(node).toSorted().join(' ');
	return symbolsIn(product).length === 2 && pair(product) === pair(sum);
}

function wrongParallels(sum: Two, inverted: Mutant): readonly Mutant[] {
	const reciprocal = (node: Expression) => build.binary('quotient', build.number(1), node);
	return [
		{ name: 'series-rule-for-parallel', formula: sum },
		{ name: 'average-for-parallel', formula: build.binary('quotient', sum, build.number(2)) },
		{ name: 'parallel-unfinished', formula: build.binary('sum', reciprocal(sum.left), reciprocal(sum.right)) },
		{ ...inverted, name: 'parallel-unfinished' },
	];
}

// πd²/4: a factor lost, or the diameter taken for the radius
function wrongCircles(left: Expression, right: Expression, kind: KindOf): readonly Mutant[] {
	if (right.kind !== 'number' || right.value !== 4 || !has(left, kind, ['diameter'])) return [];
	const [diameter = ''] = symbolsIn(left);
	const d = build.symbol(diameter);
	const square = build.binary('power', d, build.number(2));
	const pi = build.number(Math.PI);
	return [
		{ name: 'diameter-as-radius', formula: left },
		{ name: 'quarter-pi-left-out', formula: left },
		{ name: 'quarter-pi-left-out', formula: square },
		{ name: 'radius-not-squared', formula: build.binary('product', pi, d) },
		{ name: 'halved-twice', formula: build.binary('quotient', left, build.number(16)) },
	];
}

function wrongProducts(left: Expression, right: Expression, kind: KindOf): readonly Mutant[] {
	const [fraction, whole] = has(left, kind, ['fraction']) ? [left, right] : [right, left];
	if (has(fraction, kind, ['fraction']) && fraction.kind === 'symbol') {
		const rest = build.binary('difference', build.number(1), fraction);
		return [
			{ name: 'fraction-ignored', formula: whole },
			{ name: 'fraction-inverted', formula: build.binary('quotient', whole, fraction) },
			{ name: 'fraction-ignored', formula: build.binary('product', whole, rest) },
		];
	}
	if (has(left, kind, ['diameter']) && right.kind === 'symbol' && kind(right.name) === 'length') {
		const whole = build.binary('product', left, right);
		const two = build.number(2);
		return [
			{ name: 'diameter-as-radius', formula: build.binary('product', two, whole) },
			{ name: 'wrong-surface', formula: build.binary('quotient', whole, two) },
		];
	}
	if (left.kind === 'number' || right.kind === 'number') return [];
	const divided = build.binary('quotient', left, right);
	const name = isSquareOf(left, kind, 'A') ? 'current-squared-over-resistance' : 'quotient-for-product';
	return [
		{ name, formula: divided },
		{ name: 'quotient-for-product', formula: build.binary('quotient', right, left) },
		...(left.kind === 'product' ? [{ name: 'factor-left-out', formula: left } as const] : []),
		...(left.kind === 'product'
			? [{ name: 'factor-left-out', formula: build.binary('product', left.right, right) } as const]
			: []),
	];
}

function wrongSquares(base: Expression, exponent: Expression, kind: KindOf): readonly Mutant[] {
	if (exponent.kind !== 'number' || exponent.value !== 2) return [];
	const name = has(base, kind, ['current'])
		? 'current-not-squared'
		: has(base, kind, ['voltage', 'source-voltage'])
			? 'voltage-not-squared'
			: has(base, kind, ['diameter', 'radius'])
				? 'radius-not-squared'
				: 'wrong-thing-squared';
	return [
		{ name, formula: base },
		{ name: 'wrong-thing-squared', formula: build.binary('product', build.number(2), base) },
	];
}

function wrongDifferences(left: Expression, right: Expression, kind: KindOf): readonly Mutant[] {
	if (has(right, kind, ['lead-resistance'])) {
		const twice = build.binary('product', build.number(2), right);
		return [
			{ name: 'leads-not-subtracted', formula: left },
			{ name: 'leads-added', formula: build.binary('sum', left, right) },
			{ name: 'leads-subtracted-twice', formula: build.binary('difference', left, twice) },
		];
	}
	const isDrop = has(right, kind, ['internal-resistance']);
	return [
		...(isDrop ? [{ name: 'drop-for-terminal-voltage', formula: right } as const] : []),
		{ name: isDrop ? 'internal-resistance-forgotten' : 'term-dropped', formula: left },
		{ name: 'sign-reversed', formula: build.binary('sum', left, right) },
	];
}

function wrongSums(left: Expression, right: Expression, kind: KindOf): readonly Mutant[] {
	const nameOf = (dropped: Expression): SlipName => {
		if (has(dropped, kind, ['internal-resistance'])) return 'internal-resistance-forgotten';
		if (has(dropped, kind, ['clamp-length'])) return 'clamps-forgotten';
		if (has(left, kind, ['internal-resistance']) || has(right, kind, ['internal-resistance'])) return 'load-left-out';
		return dropped.kind === 'number' ? 'one-left-out' : 'term-dropped';
	};
	return [
		{ name: nameOf(right), formula: left },
		{ name: nameOf(left), formula: right },
		{ name: 'sign-reversed', formula: build.binary('difference', left, right) },
	];
}

// another given of the same kind in place of the right one, or as the answer itself
function swapped(step: NumberStep, exercise: Exercise): readonly Mutant[] {
	const { formula } = step.relations[0];
	const givens = symbolsOf(exercise).filter(({ isGiven }) => isGiven);
	const unit = (symbol: string) => siUnitOf(exercise, symbol);
	const inputs = symbolsIn(formula);
	const isGiven = (symbol: string) => givens.some(({ name }) => name === symbol);
	const found: Mutant[] = [];
	for (const given of givens) {
		const name: SlipName = given.quantity === 'current-limit' ? 'limit-for-current' : 'given-swapped';
		if (unit(given.name) === unit(step.find) && given.quantity === 'current-limit') {
			found.push({ name, formula: build.symbol(given.name) });
		}
		// a given in place of an earlier result is a step left out, and named by that step
		for (const input of inputs.filter(isGiven)) {
			if (given.name === input || inputs.includes(given.name) || unit(given.name) !== unit(input)) continue;
			found.push({ name, formula: exchange(formula, input, build.symbol(given.name)) });
		}
	}
	return found;
}

function exchange(node: Expression, symbol: string, by: Expression): Expression {
	if (node.kind === 'symbol') return node.name === symbol ? by : node;
	if ('left' in node)
		return { ...node, left: exchange(node.left, symbol, by), right: exchange(node.right, symbol, by) };
	return 'operand' in node ? { ...node, operand: exchange(node.operand, symbol, by) } : node;
}

function isSquareOf(node: Expression, kind: KindOf, unit: 'V' | 'A'): boolean {
	const kinds: readonly QuantityKindId[] = unit === 'V' ? ['voltage', 'source-voltage'] : ['current'];
	return node.kind === 'power' && has(node.left, kind, kinds);
}

function has(node: Expression, kind: KindOf, kinds: readonly QuantityKindId[]): boolean {
	if (node.kind === 'symbol') {
		const own = kind(node.name);
		return own !== undefined && kinds.includes(own);
	}
	return partsOf(node).some((part) => has(part, kind, kinds));
}
