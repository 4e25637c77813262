import type { Expression } from '#core/expression/expression.ts';
import type { Span } from '#core/outcome.ts';
import {
	dimensions,
	isSameDimension,
	kindOf,
	multiplyDimensions,
	raiseDimension,
	type Dimension,
} from '#core/quantity/dimension.ts';
import { readUnitText } from './unit-text.ts';

type UnitOf = (symbol: string) => string;

export interface Mismatch {
	readonly found: string;
	readonly expected: string;
	readonly span: Span;
}

type Checked = { readonly dimension: Dimension } | Mismatch;

/** Where a formula joins unlike quantities, or undefined when it is a quantity of the wanted unit. */
export function dimensionMismatch(formula: Expression, unitOf: UnitOf, wantedUnit: string): Mismatch | undefined {
	const found = dimensionOf(formula, unitOf);
	if ('span' in found) return found;
	if (isSameDimension(found.dimension, dimensionOfUnit(wantedUnit))) return undefined;
	return { found: describe(found.dimension), expected: wantedUnit, span: formula.span };
}

/** Whether two formulas are quantities of one kind; a bare number may stand beside any quantity, in its SI unit. */
export function sameKind(left: Expression, right: Expression, unitOf: UnitOf): boolean {
	const [a, b] = [dimensionOf(left, unitOf), dimensionOf(right, unitOf)];
	if ('span' in a || 'span' in b) return false;
	return isBare(left) || isBare(right) || isSameDimension(a.dimension, b.dimension);
}

/** Whether two units measure one kind of quantity; false when either is unknown. */
export function sameUnitKind(a: string, b: string): boolean {
	const [left, right] = [readUnitText(a), readUnitText(b)];
	return left !== undefined && right !== undefined && isSameDimension(left.dimension, right.dimension);
}

function isBare(formula: Expression): boolean {
	return formula.kind === 'number' || (formula.kind === 'negative' && isBare(formula.operand));
}

function dimensionOfUnit(unit: string): Dimension {
	return readUnitText(unit)?.dimension ?? dimensions.number;
}

function describe(found: Dimension): string {
	return kindOf(found) ?? 'none';
}

function dimensionOf(node: Expression, unitOf: UnitOf): Checked {
	switch (node.kind) {
		case 'number':
			return { dimension: dimensions.number };
		case 'symbol':
			return { dimension: dimensionOfUnit(unitOf(node.name)) };
		case 'in-unit':
			return mapped(dimensionOf(node.operand, unitOf), (inner) =>
				multiplyDimensions(inner, dimensionOfUnit(node.unit.text)),
			);
		case 'negative':
			return dimensionOf(node.operand, unitOf);
		case 'root':
			return mapped(dimensionOf(node.operand, unitOf), (inner) => raiseDimension(inner, 0.5));
		default:
			return ofTwo(node, unitOf);
	}
}

function ofTwo(node: Extract<Expression, { left: Expression }>, unitOf: UnitOf): Checked {
	const left = dimensionOf(node.left, unitOf);
	const right = dimensionOf(node.right, unitOf);
	if ('span' in left) return left;
	if ('span' in right) return right;
	if (node.kind === 'product') return { dimension: multiplyDimensions(left.dimension, right.dimension) };
	if (node.kind === 'quotient') {
		return { dimension: multiplyDimensions(left.dimension, raiseDimension(right.dimension, -1)) };
	}
	if (node.kind === 'power') {
		const power = node.right.kind === 'number' ? node.right.value : 1;
		return { dimension: raiseDimension(left.dimension, power) };
	}
	if (isSameDimension(left.dimension, right.dimension)) return left;
	return { found: describe(right.dimension), expected: describe(left.dimension), span: node.right.span };
}

function mapped(found: Checked, change: (inner: Dimension) => Dimension): Checked {
	return 'span' in found ? found : { dimension: change(found.dimension) };
}
