import type { Span } from '#core/outcome.ts';
import type { Expression, Vocabulary } from './expression.ts';
import type { NumberReading } from './number.ts';
import { Parser, type ExpressionProblem } from './parse.ts';
import { normalise, tokenise, type Token } from './token.ts';

/** One run of formulas joined by equals signs, arrows or words that mean the same, as a person writes them. */
export interface Chain {
	readonly span: Span;
	readonly members: readonly Expression[];
	/** words and signs around it that are no mathematics, for choices and remarks */
	readonly startsWithRelation: boolean;
}

export interface ReadText {
	readonly chains: readonly Chain[];
	/** words that belong to no formula, with their places */
	readonly words: readonly { readonly text: string; readonly span: Span }[];
	/** the first thing in the way of a formula, for each place where one was begun and not ended */
	readonly problems: readonly ExpressionProblem[];
}

const saysEqual = new Set([
	'is',
	'are',
	'equals',
	'equal',
	'gives',
	'makes',
	'ist',
	'sind',
	'gleich',
	'about',
	'ca',
	'so',
]);

/** Reads everything mathematical in a text with words around it. Never throws; time grows with the length alone. */
export function readChains(text: string, vocabulary: Vocabulary, reading: NumberReading): ReadText {
	const tokens = tokenise(normalise(text), reading);
	const chains: Chain[] = [];
	const words: { text: string; span: Span }[] = [];
	const problems: ExpressionProblem[] = [];
	let at = 0;
	while (at < tokens.length) {
		const start = at;
		const startsWithRelation = relationLength(tokens, at) > 0;
		at += relationLength(tokens, at);
		const members: Expression[] = [];
		for (;;) {
			const parser = new Parser(tokens, vocabulary, at);
			const member = parser.sum();
			if (!member) {
				if (parser.problem && parser.problem.code !== 'expected-value' && parser.problem.code !== 'unknown-name') {
					problems.push(parser.problem);
				}
				break;
			}
			members.push(member);
			at = parser.position;
			const joint = relationLength(tokens, at);
			if (joint === 0) break;
			at += joint;
		}
		const first = members[0];
		const last = members.at(-1);
		if (first && last) {
			chains.push({ span: { start: first.span.start, end: last.span.end }, members, startsWithRelation });
		}
		if (at === start) {
			const token = tokens[at];
			if (token?.kind === 'word') words.push({ text: token.text, span: token.span });
			at += 1;
		}
	}
	return { chains, words, problems };
}

function relationLength(tokens: readonly Token[], at: number): number {
	let length = 0;
	for (let token = tokens[at]; token && isRelation(token); token = tokens[at + length]) length += 1;
	return length;
}

function isRelation(token: Token): boolean {
	if (token.kind === 'relation') return token.text === '=';
	return token.kind === 'word' && saysEqual.has(token.text.toLowerCase());
}
