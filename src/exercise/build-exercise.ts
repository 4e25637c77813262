import { symbolsIn, type Expression, type Vocabulary } from '#core/expression/expression.ts';
import { parseExpression } from '#core/expression/parse.ts';
import { normalise } from '#core/expression/token.ts';
import { fail, succeed, type Outcome } from '#core/outcome.ts';
import type { Locate, Path } from './content-file.ts';
import { dimensionMismatch, sameKind, sameUnitKind } from './dimension-check.ts';
import { readUnitText } from './unit-text.ts';
import type { Condition, ContentProblem, Exercise, Given, GivenSource, Relation, Step } from './exercise.ts';
import { isQuantityKindId, quantityKinds, type QuantityKindId } from './quantity-kind.ts';
import type { WrittenExercise, WrittenGiven, WrittenStep } from './schema.ts';
import { isSlipName, type SlipName } from './slip/slip-name.ts';

/** Turns a file of the right shape into an exercise, checking each symbol, unit, formula and name. */
export function buildExercise(data: WrittenExercise, locate: Locate): Outcome<Exercise, ContentProblem> {
	const builder = new Builder(locate);
	const givens = data.givens.map((given, index) => builder.given(given, ['givens', index]));
	const steps = data.steps.map((step, index) => builder.step(step, ['steps', index]));
	const exercise: Exercise = {
		id: data.id,
		title: data.title,
		skills: data.skills,
		prompt: normalise(data.prompt.trim()),
		mustShowSteps: data.showSteps ?? false,
		givens: givens.filter((given) => given !== undefined),
		allowed: data.allowed ?? {},
		steps: steps.filter((step) => step !== undefined),
		wanted: data.wanted.map((symbol, index) => builder.found(symbol, ['wanted', index])),
		keepOut: (data.keepOut ?? [])
			.map((text, index) => builder.condition(text, ['keepOut', index]))
			.filter((condition) => condition !== undefined),
		sense: normalise(data.sense.trim()),
		slips: (data.slips ?? []).flatMap(({ name, step, relation }, index) => {
			const path = ['slips', index];
			const slip = builder.slip(name, [...path, 'name']);
			const target = builder.found(step, [...path, 'step']);
			const formula =
				relation === undefined ? undefined : builder.relation(relation, target, [...path, 'relation'], false);
			return slip ? [{ name: slip, step: target, ...(formula ? { relation: formula } : {}) }] : [];
		}),
		caution: data.caution,
		sample: { values: builder.values(data.sample.values, ['sample', 'values']), items: data.sample.items ?? {} },
		answers: data.answers.map((answer, index) => ({
			text: answer.text,
			values: builder.values(answer.values ?? {}, ['answers', index, 'values']),
			items: answer.items ?? {},
			marks: builder.marks(answer.marks, ['answers', index, 'marks']),
			unit: answer.unit,
			isRight: answer.right,
			slips: (answer.slips ?? []).flatMap((name, at) => builder.slip(name, ['answers', index, 'slips', at]) ?? []),
		})),
	};
	builder.placeholders(exercise.prompt, ['prompt']);
	builder.placeholders(exercise.sense, ['sense']);
	builder.sample(exercise);
	return builder.problems.length > 0 ? fail(...builder.problems) : succeed(exercise);
}

class Builder {
	readonly problems: ContentProblem[] = [];
	readonly #locate: Locate;
	readonly #kinds = new Map<string, QuantityKindId>();
	readonly #choices = new Set<string>();
	readonly #vocabulary: Vocabulary = {
		symbol: (name) => (this.#kinds.has(name) ? name : undefined),
		unit: readUnitText,
	};

	constructor(locate: Locate) {
		this.#locate = locate;
	}

	given(written: WrittenGiven, path: Path): Given | undefined {
		const quantity = this.#quantity(written.quantity, written.unit, path);
		const source = this.#source(written, path);
		const symbol = this.#declare(written.symbol, quantity, [...path, 'symbol']);
		if (!quantity || !source) return undefined;
		const { unit, unneeded = false, hidden = false } = written;
		return { symbol, quantity, unit, source, isUnneeded: unneeded, isHidden: hidden };
	}

	step(written: WrittenStep, path: Path): Step | undefined {
		const isIdea = written.idea ?? false;
		const find = normalise(written.find);
		if (written.options) {
			this.#choices.add(find);
			const options = written.options.flatMap(({ id, label, words, when }, index) => {
				const condition = this.condition(when, [...path, 'options', index, 'when']);
				return condition ? [{ id, label, words: words.map((word) => word.toLowerCase()), when: condition }] : [];
			});
			return { kind: 'choice', find, options, isIdea };
		}
		if (written.item) {
			this.#choices.add(find);
			const { slot, property } = written.item;
			const nearest = this.found(written.item.nearest, [...path, 'item', 'nearest']);
			return { kind: 'item', find, slot, property, nearest, isIdea };
		}
		if (written.quantity === undefined) return this.#refuse('missing-key', path, 'quantity');
		const unit = written.unit ?? '';
		const quantity = this.#quantity(written.quantity, unit, path);
		this.#declare(written.find, quantity, [...path, 'find']);
		const texts = written.relations ?? (written.relation === undefined ? [] : [written.relation]);
		const where = (index: number): Path => (written.relations ? [...path, 'relations', index] : [...path, 'relation']);
		const relations = texts.flatMap((text, index) => this.relation(text, find, where(index), true) ?? []);
		const [first, ...others] = relations;
		if (texts.length === 0) this.#refuse('missing-key', path, 'relation');
		if (!quantity || !first) return undefined;
		const margin = written.margin === undefined ? {} : { margin: written.margin };
		const figures = written.figures === undefined ? {} : { figures: written.figures };
		return { kind: 'number', find, quantity, unit, relations: [first, ...others], isIdea, ...figures, ...margin };
	}

	/** A symbol that a step finds. */
	found(symbol: string, path: Path): string {
		const name = normalise(symbol);
		if (!this.#kinds.has(name) && !this.#choices.has(name)) this.#refuse('undefined-symbol', path, symbol);
		return name;
	}

	relation(text: string, find: string, path: Path, mustFit: boolean): Relation | undefined {
		const equals = text.indexOf('=');
		if (equals < 0 || normalise(text.slice(0, equals)).trim() !== find) {
			return this.#refuse('formula', path, text, `${find} = …`);
		}
		const formula = this.#formula(text, equals + 1, path);
		if (!formula) return undefined;
		if (symbolsIn(formula).includes(find)) return this.#refuse('formula', path, text, `${find} on the left only`);
		const wrong = mustFit ? dimensionMismatch(formula, this.#unitOf, this.#unitOf(find)) : undefined;
		if (wrong) return this.#refuse('dimension', path, wrong.found, wrong.expected, equals + 1 + wrong.span.start);
		return { text: normalise(text).trim(), formula };
	}

	condition(text: string, path: Path): Condition | undefined {
		const sign = /<=|>=|≤|≥|<|>/u.exec(text);
		const comparison = comparisonOf(sign?.[0]);
		if (!sign || !comparison) return this.#refuse('formula', path, text, '< > <= >=');
		const left = this.#formula(text.slice(0, sign.index), 0, path);
		const right = this.#formula(text, sign.index + sign[0].length, path);
		if (!left || !right) return undefined;
		if (!sameKind(left, right, this.#unitOf)) return this.#refuse('dimension', path, text);
		return { text: normalise(text).trim(), left, comparison, right };
	}

	slip(name: string, path: Path): SlipName | undefined {
		return isSlipName(name) ? name : this.#refuse('unknown-slip', path, name);
	}

	values(written: Readonly<Record<string, number>>, path: Path): Readonly<Record<string, number>> {
		return Object.fromEntries(
			Object.entries(written).map(([symbol, value]) => [this.found(symbol, [...path, symbol]), value]),
		);
	}

	marks(written: Readonly<Record<string, string>>, path: Path): Readonly<Record<string, string>> {
		return Object.fromEntries(
			Object.entries(written).map(([symbol, mark]) => [this.found(symbol, [...path, symbol]), mark]),
		);
	}

	placeholders(text: string, path: Path): void {
		for (const [, written = ''] of text.matchAll(/\{([^}]*)\}/gu)) {
			if (written.startsWith('item ')) continue;
			const symbol = written.replace(/^letter /u, '');
			if (!this.#kinds.has(symbol)) this.#refuse('undefined-symbol', path, written);
		}
	}

	sample(exercise: Exercise): void {
		for (const { symbol, source } of exercise.givens) {
			const isThere =
				source.kind === 'value' ||
				(source.kind === 'cupboard' ? source.slot in exercise.sample.items : symbol in exercise.sample.values);
			if (!isThere) this.#refuse('sample-missing', ['sample'], symbol);
		}
	}

	readonly #unitOf = (symbol: string): string => {
		const kind = this.#kinds.get(symbol);
		return kind === undefined ? '1' : quantityKinds[kind].unit;
	};

	#formula(text: string, start: number, path: Path): Expression | undefined {
		const parsed = parseExpression(text.slice(start), this.#vocabulary);
		if (parsed.ok) return parsed.value;
		for (const problem of parsed.problems) {
			const span = { start: start + problem.span.start, end: start + problem.span.end };
			const [code, found] =
				problem.code === 'unknown-name' ? (['undefined-symbol', problem.text] as const) : (['formula', text] as const);
			this.problems.push(this.#locate(code, path, found, { span, expected: problem.code }));
		}
		return undefined;
	}

	#declare(written: string, quantity: QuantityKindId | undefined, path: Path): string {
		const symbol = normalise(written);
		if (this.#kinds.has(symbol)) this.#refuse('duplicate', path, written);
		this.#kinds.set(symbol, quantity ?? 'ratio');
		return symbol;
	}

	#quantity(quantity: string, unit: string, path: Path): QuantityKindId | undefined {
		if (!isQuantityKindId(quantity)) return this.#refuse('unknown-quantity', [...path, 'quantity'], quantity);
		const found = readUnitText(unit);
		if (!found) return this.#refuse('unknown-unit', [...path, 'unit'], unit);
		const expected = quantityKinds[quantity].unit;
		if (!sameUnitKind(unit, expected)) this.#refuse('dimension', [...path, 'unit'], unit, expected);
		return quantity;
	}

	#source(written: WrittenGiven, path: Path): GivenSource | undefined {
		const { from, to, step, values, value, derived, cupboard } = written;
		const ways = [from, values, value, derived, cupboard].filter((way) => way !== undefined).length;
		if (ways !== 1) return this.#refuse('wrong-type', path, String(ways), 'from | values | value | derived | cupboard');
		if (value !== undefined) return { kind: 'value', value };
		if (values !== undefined) return { kind: 'list', values };
		if (cupboard !== undefined) return { kind: 'cupboard', ...cupboard };
		if (step === undefined) return this.#refuse('missing-key', path, 'step');
		if (derived !== undefined) {
			const formula = this.#formula(derived, 0, [...path, 'derived']);
			return formula && { kind: 'derived', formula, step };
		}
		if (from === undefined || to === undefined || to < from)
			return this.#refuse('wrong-type', path, 'to', 'from <= to');
		return { kind: 'range', from, to, step };
	}

	#refuse(code: ContentProblem['code'], path: Path, found: string, expected?: string, at?: number): undefined {
		const span = at === undefined ? {} : { span: { start: at, end: at } };
		this.problems.push(this.#locate(code, path, found, { ...(expected === undefined ? {} : { expected }), ...span }));
		return undefined;
	}
}

function comparisonOf(sign: string | undefined): Condition['comparison'] | undefined {
	if (sign === '≤' || sign === '<=') return '<=';
	if (sign === '≥' || sign === '>=') return '>=';
	return sign === '<' || sign === '>' ? sign : undefined;
}
