import { readChains, type Chain } from '#core/expression/chain.ts';
import { evaluate } from '#core/expression/evaluate.ts';
import { partsOf, type Expression, type Vocabulary } from '#core/expression/expression.ts';
import type { NumberReading } from '#core/expression/number.ts';
import type { Span } from '#core/outcome.ts';
import { isNear, type StatedNumber } from './tolerance.ts';

/** A value as it stands in an answer. */
export interface StatedValue extends StatedNumber {
	readonly span: Span;
	/** undefined for a bare number */
	readonly unit?: string;
}

/** One statement of an answer: a quantity, the working that leads to it, and the values written for it. */
export interface Claim {
	readonly span: Span;
	readonly members: readonly Expression[];
	readonly names: readonly string[];
	readonly works: readonly Expression[];
	readonly stated: readonly StatedValue[];
	/** "… or …": offered beside the claim before it, not after it */
	readonly isAlternative: boolean;
	/** "no, wait: …": said to replace what stands before it */
	readonly isCorrection: boolean;
	readonly isRunOn: boolean;
}

export interface Reading {
	readonly claims: readonly Claim[];
	readonly words: readonly { readonly text: string; readonly span: Span }[];
	readonly unread: readonly Span[];
	readonly ambiguous: readonly { readonly span: Span; readonly readings: readonly [number, number] }[];
}

/** Reads all statements of an answer in the order in which they stand. */
export function readClaims(text: string, vocabulary: Vocabulary, reading: NumberReading): Reading {
	const { chains, words, problems } = readChains(text, vocabulary, reading);
	const joined = joinContinued(chains, text);
	const ends = [0, ...joined.map(({ span }) => span.end)];
	return {
		claims: joined.flatMap((chain, index) => {
			const between = text.slice(ends[index] ?? 0, chain.span.start);
			const isCorrection = /(?:^|[^\p{L}])(?:no|wait|sorry|correction|rather|nein)(?:$|[^\p{L}])/iu.test(between);
			return claimsIn(chain, /^[\s,;.]*(?:or|oder)[\s,:]*$/iu.test(between), isCorrection);
		}),
		words,
		unread: problems.map(({ span }) => span),
		ambiguous: joined.flatMap(({ members }) => members.flatMap(ambiguousIn)),
	};
}

// a line that begins with an equals sign goes on with the line before it
function joinContinued(chains: readonly Chain[], text: string): readonly Chain[] {
	const joined: Chain[] = [];
	for (const chain of chains) {
		const before = joined.at(-1);
		const gap = before && text.slice(before.span.end, chain.span.start);
		if (!before || !chain.startsWithRelation || !/^[\s=≈→⇒>-]*$/u.test(gap ?? 'x')) {
			joined.push(chain);
			continue;
		}
		joined[joined.length - 1] = {
			span: { start: before.span.start, end: chain.span.end },
			members: [...before.members, ...chain.members],
			startsWithRelation: before.startsWithRelation,
		};
	}
	return joined;
}

interface Draft {
	span: Span;
	members: Expression[];
	names: string[];
	works: Expression[];
	stated: StatedValue[];
	isRunOn: boolean;
}

function claimsIn({ members }: Chain, isAlternative: boolean, isCorrection: boolean): readonly Claim[] {
	const drafts: Draft[] = [];
	for (const member of members) {
		const draft = drafts.at(-1);
		const stated = statedValue(member);
		if (member.kind === 'symbol') {
			if (draft && draft.stated.length === 0) add(draft, member).names.push(member.name);
			else add(begin(drafts, member), member).names.push(member.name);
		} else if (stated) {
			add(draft ?? begin(drafts, member), member).stated.push(stated);
		} else {
			addWork(drafts, member);
		}
	}
	return drafts.map((draft, index) => ({ ...draft, isCorrection, isAlternative: isAlternative && index === 0 }));
}

// 12/2.5 = 4.8/8.67 = 0.554: the second division begins with the result of the first
function addWork(drafts: Draft[], work: Expression): void {
	const draft = drafts.at(-1);
	const last = draft?.works.at(-1);
	const value = evaluate(work, () => undefined);
	const known = draft?.stated.at(-1);
	const knownValue = known ? known.number * known.factor : last && evaluate(last, () => undefined);
	const first = firstNumber(work);
	const begins = draft !== undefined && knownValue !== undefined && first !== undefined;
	if (begins && isNear(first.number * first.factor, knownValue) && !isNear(value, knownValue)) {
		if (draft.stated.length === 0) draft.stated.push(first);
		draft.isRunOn = true;
		add(begin(drafts, work), work).works.push(work);
	} else if (draft && known && Number.isFinite(value) && !isNear(value, knownValue ?? Number.NaN)) {
		add(begin(drafts, work), work).works.push(work);
	} else {
		add(draft ?? begin(drafts, work), work).works.push(work);
	}
}

function begin(drafts: Draft[], member: Expression): Draft {
	const draft: Draft = { span: member.span, members: [], names: [], works: [], stated: [], isRunOn: false };
	drafts.push(draft);
	return draft;
}

function add(draft: Draft, member: Expression): Draft {
	draft.members.push(member);
	draft.span = { start: draft.span.start, end: member.span.end };
	return draft;
}

/** A number with or without a unit, as a value; undefined for anything that has to be worked out. */
export function statedValue(node: Expression): StatedValue | undefined {
	if (node.kind === 'number') return { number: node.value, figures: node.figures, factor: 1, span: node.span };
	if (node.kind === 'negative') {
		const inner = statedValue(node.operand);
		return inner && { ...inner, number: -inner.number, span: node.span };
	}
	if (node.kind !== 'in-unit') return undefined;
	const inner = statedValue(node.operand);
	if (!inner || inner.unit !== undefined) return undefined;
	return { ...inner, factor: node.unit.factor, unit: node.unit.text, span: node.span };
}

function firstNumber(node: Expression): StatedValue | undefined {
	const stated = statedValue(node);
	if (stated) return stated;
	const [first] = partsOf(node);
	return first && firstNumber(first);
}

function ambiguousIn(node: Expression): Reading['ambiguous'] {
	if (node.kind === 'number') {
		return node.otherReading === undefined ? [] : [{ span: node.span, readings: [node.value, node.otherReading] }];
	}
	return partsOf(node).flatMap(ambiguousIn);
}
