import type { Expression } from '#core/expression/expression.ts';
import type { Span } from '#core/outcome.ts';
import { combine, readUnitText, type Exponents } from './unit-text.ts';

export { readUnitText };

type UnitOf = (symbol: string) => string;

export interface Mismatch {
	readonly found: string;
	readonly expected: string;
	readonly span: Span;
}

const none: Exponents = [0, 0, 0, 0, 0];

/** Where a formula joins unlike quantities, or undefined when it is a quantity of the wanted unit. */
export function dimensionMismatch(formula: Expression, unitOf: UnitOf, wantedUnit: string): Mismatch | undefined {
	const found = dimensionOf(formula, unitOf);
	if ('span' in found) return found;
	const wanted = readUnitText(wantedUnit)?.dimension ?? none;
	if (isSame(found.exponents, wanted)) return undefined;
	return { found: found.exponents.join(' '), expected: wantedUnit, span: formula.span };
}

/** Whether two formulas are quantities of one kind; a bare number may stand beside any quantity, in its SI unit. */
export function sameKind(left: Expression, right: Expression, unitOf: UnitOf): boolean {
	const [a, b] = [dimensionOf(left, unitOf), dimensionOf(right, unitOf)];
	if ('span' in a || 'span' in b) return false;
	return isBare(left) || isBare(right) || isSame(a.exponents, b.exponents);
}

function isBare(formula: Expression): boolean {
	return formula.kind === 'number' || (formula.kind === 'negative' && isBare(formula.operand));
}

function dimensionOf(node: Expression, unitOf: UnitOf): { readonly exponents: Exponents } | Mismatch {
	switch (node.kind) {
		case 'number':
			return { exponents: none };
		case 'symbol':
			return { exponents: readUnitText(unitOf(node.name))?.dimension ?? none };
		case 'in-unit':
			return mapped(dimensionOf(node.operand, unitOf), (inner) =>
				combine(inner, readUnitText(node.unit.text)?.dimension ?? none, 1),
			);
		case 'negative':
			return dimensionOf(node.operand, unitOf);
		case 'root':
			return mapped(dimensionOf(node.operand, unitOf), (inner) => combine(none, inner, 0.5));
		default:
			return ofTwo(node, unitOf);
	}
}

function ofTwo(node: Extract<Expression, { left: Expression }>, unitOf: UnitOf) {
	const left = dimensionOf(node.left, unitOf);
	const right = dimensionOf(node.right, unitOf);
	if ('span' in left) return left;
	if ('span' in right) return right;
	if (node.kind === 'product') return { exponents: combine(left.exponents, right.exponents, 1) };
	if (node.kind === 'quotient') return { exponents: combine(left.exponents, right.exponents, -1) };
	if (node.kind === 'power') {
		const power = node.right.kind === 'number' ? node.right.value : 1;
		return { exponents: combine(none, left.exponents, power) };
	}
	if (isSame(left.exponents, right.exponents)) return left;
	return { found: right.exponents.join(' '), expected: left.exponents.join(' '), span: node.right.span };
}

function mapped(found: { readonly exponents: Exponents } | Mismatch, change: (inner: Exponents) => Exponents) {
	return 'span' in found ? found : { exponents: change(found.exponents) };
}

function isSame(a: Exponents, b: Exponents): boolean {
	return a.every((exponent, index) => exponent === b[index]);
}
