import { fail, succeed, type Outcome, type Span } from '#core/outcome.ts';
import { symbolsIn, type BinaryKind, type Expression, type Vocabulary } from './expression.ts';
import { normalise, tokenise, type Operator, type Token } from './token.ts';
import { readUnit } from './unit-name.ts';

/** How deep brackets, roots and powers may be nested. */
export const depthLimit = 40;

export type ExpressionProblem =
	| { readonly code: 'expected-value'; readonly span: Span }
	| { readonly code: 'unexpected'; readonly span: Span; readonly text: string }
	| { readonly code: 'bracket-open'; readonly span: Span }
	| { readonly code: 'unknown-name'; readonly span: Span; readonly text: string }
	| { readonly code: 'too-deep'; readonly span: Span };

const roots = new Set(['sqrt', 'root', 'wurzel', 'sqr']);
const constants: Readonly<Record<string, number>> = { π: Math.PI, pi: Math.PI, Pi: Math.PI };

/** Reads formulas from a row of tokens, from where it stands; a place it cannot read is left for the caller. */
export class Parser {
	readonly #tokens: readonly Token[];
	readonly #vocabulary: Vocabulary;
	#at: number;
	#depth = 0;
	// what could not be read is not tried again at the same place and depth: R^(R^(… would double with each bracket
	readonly #unread = new Map<number, ExpressionProblem | undefined>();
	problem: ExpressionProblem | undefined;

	constructor(tokens: readonly Token[], vocabulary: Vocabulary, start = 0) {
		this.#tokens = tokens;
		this.#vocabulary = vocabulary;
		this.#at = start;
	}

	/** index of the next token not yet read */
	get position(): number {
		return this.#at;
	}

	/** The longest formula that starts here, or undefined with `problem` set. */
	sum(): Expression | undefined {
		let left = this.#product();
		for (;;) {
			const sign = this.#operator('+', '-', '∥');
			if (!left || !sign) return left;
			const mark = this.#at;
			this.#at += 1;
			const right = this.#product();
			if (!right) {
				this.#at = mark;
				return left;
			}
			left = join(sign === '+' ? 'sum' : sign === '-' ? 'difference' : 'parallel', left, right);
		}
	}

	#product(): Expression | undefined {
		let left = this.#tightProduct();
		for (;;) {
			if (!left) return undefined;
			const sign = this.#operator('*', '/');
			const mark = this.#at;
			if (sign) this.#at += 1;
			else if (!this.#startsFactor()) return left;
			const right = this.#tightProduct();
			if (!right) {
				this.#at = mark;
				return left;
			}
			left = join(sign === '/' ? 'quotient' : 'product', left, right);
		}
	}

	// letters written together belong together: U/IR is U/(I·R), U/I R is not
	#tightProduct(): Expression | undefined {
		let left = this.#signed();
		while (left && this.#startsFactor() && this.#tokens[this.#at]?.span.start === left.span.end) {
			const mark = this.#at;
			const right = this.#signed();
			if (!right) {
				this.#at = mark;
				return left;
			}
			left = join('product', left, right);
		}
		return left;
	}

	#signed(): Expression | undefined {
		const sign = this.#operator('-', '+', '√');
		if (!sign) return this.#power();
		const start = this.#tokens[this.#at]?.span.start ?? 0;
		return this.#nested(() => {
			this.#at += 1;
			const operand = this.#signed();
			if (!operand || sign === '+') return operand;
			return { kind: sign === '-' ? 'negative' : 'root', span: { start, end: operand.span.end }, operand };
		});
	}

	#power(): Expression | undefined {
		const base = this.#primary();
		if (!base || !this.#operator('^')) return base;
		const mark = this.#at;
		const exponent = this.#nested(() => {
			this.#at += 1;
			return this.#exponent();
		});
		if (!exponent) {
			this.#at = mark;
			return base;
		}
		const power = join('power', base, exponent);
		return symbolsIn(base).length > 0 ? power : this.#withUnit(power);
	}

	// a unit behind an exponent belongs to the whole power: 10³ m
	#exponent(): Expression | undefined {
		if (this.#operator('-')) {
			const start = this.#tokens[this.#at]?.span.start ?? 0;
			this.#at += 1;
			const operand = this.#exponent();
			return operand && { kind: 'negative', span: { start, end: operand.span.end }, operand };
		}
		const token = this.#tokens[this.#at];
		if (token?.kind !== 'number') return this.#power();
		this.#at += 1;
		const { value, figures, span } = token.number;
		return { kind: 'number', value, figures, span };
	}

	#primary(): Expression | undefined {
		const token = this.#tokens[this.#at];
		if (!token) return this.#refuse({ code: 'expected-value', span: this.#endSpan() });
		if (token.kind === 'number') return this.#number(token);
		if (token.kind === 'word') return this.#word(token);
		if (token.kind === 'operator' && token.text === '(') return this.#bracket(token.span);
		return this.#refuse({ code: 'expected-value', span: token.span });
	}

	#number(token: Extract<Token, { kind: 'number' }>): Expression {
		this.#at += 1;
		const { isResistorCode, ...number } = token.number;
		const node: Expression = { kind: 'number', ...number };
		if (!isResistorCode) return this.#withUnit(node);
		const named = this.#withUnit(node);
		if (named.kind === 'in-unit') return named;
		return { kind: 'in-unit', span: node.span, operand: node, unit: { text: 'Ω', factor: 1, span: node.span } };
	}

	#word(token: Extract<Token, { kind: 'word' }>): Expression | undefined {
		const { span, text } = token;
		const constant = constants[text];
		if (constant !== undefined && this.#vocabulary.symbol(text) === undefined) {
			this.#at += 1;
			return { kind: 'number', span, value: constant, figures: 15 };
		}
		if (roots.has(text.toLowerCase())) {
			return this.#nested(() => {
				this.#at += 1;
				const operand = this.#operator('(') ? this.#primary() : this.#power();
				return operand && { kind: 'root', span: { start: span.start, end: operand.span.end }, operand };
			});
		}
		const names = splitName(text, this.#vocabulary);
		if (!names) return this.#refuse({ code: 'unknown-name', span, text });
		this.#at += 1;
		let start = span.start;
		const factors = names.map(({ name, length }): Expression => {
			const span = { start, end: start + length };
			const number = constants[name];
			const node: Expression =
				number === undefined || this.#vocabulary.symbol(name) !== undefined
					? { kind: 'symbol', span, name }
					: { kind: 'number', span, value: number, figures: 15 };
			start += length;
			return node;
		});
		const last = factors.pop();
		if (!last) return undefined;
		const tail = this.#operator('^') ? this.#powerOf(last) : last;
		return [...factors, tail].reduce((left, right) => join('product', left, right));
	}

	// IR² squares the R only
	#powerOf(base: Expression): Expression {
		const mark = this.#at;
		this.#at += 1;
		const exponent = this.#nested(() => this.#exponent());
		if (exponent) return join('power', base, exponent);
		this.#at = mark;
		return base;
	}

	#bracket(open: Span): Expression | undefined {
		return this.#nested(() => {
			this.#at += 1;
			const inner = this.sum();
			if (!inner) return undefined;
			const close = this.#tokens[this.#at];
			if (!this.#operator(')') || !close) return this.#refuse({ code: 'bracket-open', span: open });
			this.#at += 1;
			const whole: Expression = { ...inner, span: { start: open.start, end: close.span.end } };
			// (12/2.5) R is in ohms, (V/I) R is a product
			return symbolsIn(inner).length > 0 ? whole : this.#withUnit(whole);
		});
	}

	#withUnit(operand: Expression): Expression {
		const unit = readUnit(this.#tokens, this.#at, this.#vocabulary);
		if (!unit) return operand;
		this.#at = unit.next;
		return { kind: 'in-unit', span: { start: operand.span.start, end: unit.unit.span.end }, operand, unit: unit.unit };
	}

	#startsFactor(): boolean {
		const token = this.#tokens[this.#at];
		if (token?.kind === 'number') return this.#tokens[this.#at - 1]?.kind !== 'number';
		if (token?.kind === 'operator') return token.text === '(' || token.text === '√';
		if (token?.kind !== 'word') return false;
		return token.text in constants || roots.has(token.text.toLowerCase()) || !!splitName(token.text, this.#vocabulary);
	}

	#operator(...wanted: readonly Operator[]): Operator | undefined {
		const token = this.#tokens[this.#at];
		return token?.kind === 'operator' && wanted.includes(token.text) ? token.text : undefined;
	}

	#nested<T>(read: () => T | undefined): T | undefined {
		if (this.#depth >= depthLimit) return this.#refuse({ code: 'too-deep', span: this.#endSpan() });
		const place = this.#at * (depthLimit + 1) + this.#depth;
		if (this.#unread.has(place)) {
			this.problem = this.#unread.get(place);
			return undefined;
		}
		this.#depth += 1;
		const found = read();
		this.#depth -= 1;
		if (found === undefined) this.#unread.set(place, this.problem);
		return found;
	}

	#refuse(problem: ExpressionProblem): undefined {
		this.problem = problem;
		return undefined;
	}

	#endSpan(): Span {
		const token = this.#tokens[this.#at] ?? this.#tokens.at(-1);
		return token?.span ?? { start: 0, end: 0 };
	}
}

function join(kind: BinaryKind, left: Expression, right: Expression): Expression {
	return { kind, span: { start: left.span.start, end: right.span.end }, left, right };
}

/** The quantities a word is made of: itself, or known letters written together (UI, IR′). */
function splitName(
	text: string,
	vocabulary: Vocabulary,
): readonly { readonly name: string; readonly length: number }[] | undefined {
	const whole = vocabulary.symbol(text);
	if (whole !== undefined) return [{ name: whole, length: text.length }];
	if (text.length > 6) return undefined;
	for (let length = text.length - 1; length > 0; length -= 1) {
		const head = text.slice(0, length);
		const name = vocabulary.symbol(head) ?? (head === 'π' ? head : undefined);
		const rest = name === undefined ? undefined : splitName(text.slice(length), vocabulary);
		if (name !== undefined && rest) return [{ name, length }, ...rest];
	}
	return undefined;
}

/** Reads a text that is one formula and nothing else, as in an exercise file. */
export function parseExpression(text: string, vocabulary: Vocabulary): Outcome<Expression, ExpressionProblem> {
	const tokens = tokenise(normalise(text), { decimalSign: '.' });
	const parser = new Parser(tokens, vocabulary);
	const formula = parser.sum();
	const rest = tokens[parser.position];
	if (formula && !rest) return succeed(formula);
	if (rest && formula && parser.problem === undefined) {
		return fail({ code: 'unexpected', span: rest.span, text: text.slice(rest.span.start, rest.span.end) });
	}
	return fail(parser.problem ?? { code: 'expected-value', span: { start: text.length, end: text.length } });
}
