import type { Expression } from './expression.ts';

/**
 * The value of a formula in SI base units.
 *
 * @param valueOf the value of a quantity in SI base units, undefined when it is not known
 * @returns the value; not a number when a quantity is unknown, a root is taken of a negative number or 0 divides 0
 */
export function evaluate(node: Expression, valueOf: (symbol: string) => number | undefined): number {
	switch (node.kind) {
		case 'number':
			return node.value;
		case 'symbol':
			return valueOf(node.name) ?? Number.NaN;
		case 'in-unit':
			return evaluate(node.operand, valueOf) * node.unit.factor;
		case 'negative':
			return -evaluate(node.operand, valueOf);
		case 'root':
			return Math.sqrt(evaluate(node.operand, valueOf));
		default:
			return combine(node.kind, evaluate(node.left, valueOf), evaluate(node.right, valueOf));
	}
}

function combine(kind: 'sum' | 'difference' | 'product' | 'quotient' | 'power' | 'parallel', a: number, b: number) {
	switch (kind) {
		case 'sum':
			return a + b;
		case 'difference':
			return a - b;
		case 'product':
			return a * b;
		case 'quotient':
			return a / b;
		case 'power':
			return a ** b;
		case 'parallel':
			return (a * b) / (a + b);
	}
}
