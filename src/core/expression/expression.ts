import type { Span } from '#core/outcome.ts';

/** A unit as it was written, in plain signs (Ω·m, mm^2); one of it is `factor` in SI base units. */
export interface WrittenUnit {
	readonly text: string;
	readonly factor: number;
	readonly span: Span;
}

/** A number as it was written; `otherReading` is set where a mark may be a decimal sign or a digit group. */
export interface NumberNode {
	readonly kind: 'number';
	readonly span: Span;
	readonly value: number;
	/** significant figures written, trailing zeros after a decimal sign included */
	readonly figures: number;
	readonly otherReading?: number;
}

export type BinaryKind = 'sum' | 'difference' | 'product' | 'quotient' | 'power' | 'parallel';

/** A formula as a tree; every node knows where it stood in the text. */
export type Expression =
	| NumberNode
	| { readonly kind: 'symbol'; readonly span: Span; readonly name: string }
	| { readonly kind: 'in-unit'; readonly span: Span; readonly operand: Expression; readonly unit: WrittenUnit }
	| { readonly kind: 'negative' | 'root'; readonly span: Span; readonly operand: Expression }
	| { readonly kind: BinaryKind; readonly span: Span; readonly left: Expression; readonly right: Expression };

/** What names mean while a text is read: quantities by their letters, units by their symbols. */
export interface Vocabulary {
	/** the quantity a written name stands for, in its canonical spelling; undefined for a word that is none */
	readonly symbol: (name: string) => string | undefined;
	readonly unit: (text: string) => { readonly factor: number } | undefined;
}

const nowhere: Span = { start: 0, end: 0 };

/** Builders for formulas made by the program itself, not read from a text. */
export const build = {
	number: (value: number): Expression => ({ kind: 'number', span: nowhere, value, figures: Infinity }),
	symbol: (name: string): Expression => ({ kind: 'symbol', span: nowhere, name }),
	binary: (kind: BinaryKind, left: Expression, right: Expression): Expression => ({ kind, span: nowhere, left, right }),
	negative: (operand: Expression): Expression => ({ kind: 'negative', span: nowhere, operand }),
	root: (operand: Expression): Expression => ({ kind: 'root', span: nowhere, operand }),
};

/** The parts a node is made of, left to right. */
export function partsOf(node: Expression): readonly Expression[] {
	if ('left' in node) return [node.left, node.right];
	return 'operand' in node ? [node.operand] : [];
}

/** The names of all quantities in a formula, each once, in order of appearance. */
export function symbolsIn(node: Expression): readonly string[] {
	if (node.kind === 'symbol') return [node.name];
	return [...new Set(partsOf(node).flatMap(symbolsIn))];
}

/** The same formula with some of its nodes exchanged, the outermost first. */
export function replaceNodes(node: Expression, change: (node: Expression) => Expression | undefined): Expression {
	const changed = change(node);
	if (changed) return changed;
	if ('left' in node) {
		return { ...node, left: replaceNodes(node.left, change), right: replaceNodes(node.right, change) };
	}
	return 'operand' in node ? { ...node, operand: replaceNodes(node.operand, change) } : node;
}
