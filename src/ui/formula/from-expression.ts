import type { BinaryKind, Expression, NumberNode } from '#core/expression/expression.ts';
import { narrowSpace, unitSpace, writeNumber } from '#core/quantity/write.ts';

/** One element of set mathematics as plain data; the component turns it into MathML, so nothing typed becomes markup. */
export type MathNode =
	| { readonly tag: 'letter' | 'number' | 'sign' | 'unit' | 'space'; readonly text: string }
	| { readonly tag: 'row' | 'fraction' | 'power' | 'index' | 'root'; readonly parts: readonly MathNode[] };

export interface MathStyle {
	readonly voltageLetter: 'V' | 'U';
	readonly decimalSign: '.' | ',';
}

type Binding = 1 | 2 | 3 | 4;

const plainStyle: MathStyle = { voltageLetter: 'V', decimalSign: '.' };
const binding: Readonly<Record<BinaryKind, Binding>> = {
	sum: 1,
	difference: 1,
	parallel: 1,
	product: 2,
	quotient: 4,
	power: 3,
};
const greek: Readonly<Record<string, string>> = { rho: 'ρ', alpha: 'α', theta: 'ϑ', eta: 'η', pi: 'π' };

/** Sets a formula as it would be written by hand: fractions with a bar, roots with a sign, brackets where needed. */
export function fromExpression(node: Expression, style: MathStyle = plainStyle): MathNode {
	switch (node.kind) {
		case 'number':
			return number(node, style);
		case 'symbol':
			return symbolNode(node.name, style);
		case 'in-unit':
			return row(grip(node.operand, 4, style), { tag: 'space', text: unitSpace }, unitNode(node.unit.text));
		case 'negative':
			return row(sign('−'), grip(node.operand, 2, style));
		case 'root':
			return { tag: 'root', parts: [fromExpression(node.operand, style)] };
		case 'quotient':
			return { tag: 'fraction', parts: [fromExpression(node.left, style), fromExpression(node.right, style)] };
		case 'power':
			return { tag: 'power', parts: [grip(node.left, 4, style), fromExpression(node.right, style)] };
		case 'sum':
			return row(grip(node.left, 1, style), sign('+'), grip(node.right, 1, style));
		case 'difference':
			return row(grip(node.left, 1, style), sign('−'), grip(node.right, 2, style));
		case 'parallel':
			return row(grip(node.left, 2, style), sign('∥'), grip(node.right, 2, style));
		case 'product':
			return row(grip(node.left, 2, style), sign('·'), grip(node.right, 2, style));
		default:
			return node satisfies never;
	}
}

/** A run of formulas joined by equals signs. */
export function fromChain(members: readonly Expression[], style: MathStyle = plainStyle): MathNode {
	const parts = members.flatMap((member, index) =>
		index === 0 ? [fromExpression(member, style)] : [sign('='), fromExpression(member, style)],
	);
	return row(...parts);
}

/** A quantity's letter: the letter italic, what names the thing upright and low, primes for "per metre". */
export function symbolNode(name: string, style: MathStyle = plainStyle): MathNode {
	const primes = /['′’]+/u.exec(name)?.[0].length ?? 0;
	const bare = name.replace(/^\?|['′’]/gu, '');
	// a word is no letter with an index
	if (/^[a-z]{3,}$/u.test(bare) && greek[bare] === undefined) return { tag: 'unit', text: bare };
	const found = Object.keys(greek).find((word) => bare === word || bare.startsWith(`${word}_`));
	const first = found ?? (bare.startsWith('Δ') || bare.startsWith('∆') ? bare.slice(0, 2) : bare.slice(0, 1));
	const index = bare.slice(first.length).replace(/^_/u, '').replace(/[{}]/gu, '');
	const letter: MathNode = { tag: 'letter', text: letterText(found ? (greek[found] ?? found) : first, style) };
	const low: MathNode = index === '' ? letter : { tag: 'index', parts: [letter, { tag: 'unit', text: index }] };
	return primes === 0 ? low : row(low, sign('′'.repeat(primes)));
}

/** A unit as written, its powers raised. */
export function unitNode(text: string): MathNode {
	const pieces = text
		.replace(/\*/gu, '·')
		.split(/(\^-?\d+)/u)
		.filter((piece) => piece !== '');
	const parts = pieces.reduce<MathNode[]>((before, piece) => {
		const last = before.at(-1);
		if (!piece.startsWith('^') || !last) return [...before, { tag: 'unit', text: piece }];
		const power: MathNode = { tag: 'number', text: piece.slice(1).replace('-', '−') };
		return [...before.slice(0, -1), { tag: 'power', parts: [last, power] }];
	}, []);
	return row(...parts);
}

/** The same as a line of plain text, for spoken names and tests. */
export function plainText(node: MathNode): string {
	if (!('parts' in node)) return node.text;
	const [first = '', second = ''] = node.parts.map(plainText);
	switch (node.tag) {
		case 'row':
			return node.parts.map(plainText).join('');
		case 'fraction':
			return `(${first})/(${second})`;
		case 'power':
			return `${first}^${second}`;
		case 'index':
			return `${first}_${second}`;
		case 'root':
			return `√(${first})`;
		default:
			return node satisfies never;
	}
}

function letterText(letter: string, { voltageLetter }: MathStyle): string {
	if (letter === 'V' || letter === 'U') return voltageLetter;
	return letter === 'L' || letter === 'l' ? 'ℓ' : letter;
}

function number({ value, figures }: NumberNode, { decimalSign }: MathStyle): MathNode {
	if (value === Math.PI) return { tag: 'letter', text: 'π' };
	const written = writeNumber(value, { figures: figures < 15 ? Math.max(1, figures) : figuresOf(value), decimalSign });
	const [mantissa = '', exponent] = written.split(`${narrowSpace}×${narrowSpace}10`);
	if (exponent === undefined) return { tag: 'number', text: written };
	const power: MathNode = { tag: 'power', parts: [numeral('10'), numeral(plainDigits(exponent))] };
	return row(numeral(mantissa), sign('×'), power);
}

function figuresOf(value: number): number {
	const digits = Number(value.toPrecision(6)).toExponential().split('e')[0] ?? '';
	return Math.max(1, digits.replace(/\D/gu, '').length);
}

function plainDigits(raised: string): string {
	return [...raised].map((digit) => (digit === '⁻' ? '−' : String('⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(digit)))).join('');
}

// brackets where the sign around the part binds tighter than the part itself
function grip(node: Expression, least: Binding, style: MathStyle): MathNode {
	const inner = fromExpression(node, style);
	return bindingOf(node) < least ? row(sign('('), inner, sign(')')) : inner;
}

function bindingOf(node: Expression): Binding {
	if (node.kind === 'negative') return 1;
	if (node.kind === 'in-unit') return 3;
	return 'left' in node ? binding[node.kind] : 4;
}

function row(...parts: readonly MathNode[]): MathNode {
	const [first] = parts;
	return first && parts.length === 1 ? first : { tag: 'row', parts };
}

function sign(text: string): MathNode {
	return { tag: 'sign', text };
}

function numeral(text: string): MathNode {
	return { tag: 'number', text };
}
