import { evaluate } from '#core/expression/evaluate.ts';
import { partsOf, symbolsIn, type Expression } from '#core/expression/expression.ts';
import type { Exercise, NumberStep } from '#exercise/exercise.ts';
import type { SlipName } from '#exercise/slip/slip-name.ts';
import { symbolsOf } from '#exercise/symbols.ts';
import { readUnitText } from '#exercise/unit-text.ts';
import type { Variant } from '#exercise/variant.ts';
import { sameUnitKind } from '#exercise/dimension-check.ts';
import { isSideOfChoice } from './choice.ts';
import { statedValue, type Claim, type StatedValue } from './claim.ts';
import { isPure, judge } from './judge.ts';
import type { Known } from './leaf.ts';
import type { LineVerdict } from './marking.ts';
import { matchWork, type Match } from './match.ts';
import { slipOf, SlipNamer } from './slip-namer.ts';
import type { StepProgress } from './step-progress.ts';
import { inputsOf, routesOf, type Routes } from './route.ts';
import { isClose, isNear } from './tolerance.ts';

export interface ClaimResult {
	readonly claim: Claim;
	readonly verdict: LineVerdict;
	readonly find?: string;
}

/** Goes through the claims of an answer in order and keeps what each step has earned. */
export class Progress {
	readonly steps: readonly StepProgress[];
	readonly results: ClaimResult[] = [];
	readonly relationOnly: Claim[] = [];
	readonly #exercise: Exercise;
	readonly #variant: Variant;
	readonly #routes: Routes;
	readonly #namer: SlipNamer;
	readonly #free = new Map<string, string>();
	readonly #freeValues = new Map<string, number>();

	constructor(exercise: Exercise, variant: Variant) {
		this.#exercise = exercise;
		this.#variant = variant;
		this.#routes = routesOf(exercise, variant);
		this.#namer = new SlipNamer(exercise, this.#routes, this);
		this.steps = this.#routes.steps.map((step) => ({
			step,
			isAttempted: false,
			isStated: false,
			hasWork: false,
			method: false,
			accuracy: false,
			carriedForward: false,
			isTwoAnswers: false,
		}));
	}

	/** The learner's value of a quantity where there is one, else the given or the model's. */
	readonly valueOf = (symbol: string): number | undefined =>
		this.#freeValues.get(symbol) ?? this.#of(symbol)?.value ?? this.modelOf(symbol);

	readonly modelOf = (symbol: string): number | undefined =>
		this.#variant.expected[symbol] ?? this.#variant.givens[symbol];

	/** Takes one claim; `isLast` when nothing follows it. */
	take(claim: Claim, isLast: boolean): void {
		const before = this.results.at(-1);
		const hadMethod = this.steps.map(({ method }) => method);
		const find = this.#take(claim, isLast);
		// of two workings side by side the right one keeps its method
		if (claim.isAlternative) {
			this.steps.forEach((progress, index) => {
				progress.method ||= (hadMethod[index] ?? false) && progress.hasWork;
			});
		}
		if (claim.isAlternative) this.#twoAnswers(claim, find, before?.find);
		for (const name of claim.names) {
			if (!name.startsWith('?')) continue;
			if (find !== undefined) this.#free.set(name, find);
			const last = claim.stated.at(-1);
			if (last) this.#freeValues.set(name, last.number * last.factor);
		}
		this.results.push({ claim, verdict: this.#verdict(claim, find), ...(find === undefined ? {} : { find }) });
	}

	#take(claim: Claim, isLast: boolean): string | undefined {
		const target = claim.names.findLast((name) => this.#of(name));
		// L = 594 mm where L is given as 554 mm speaks of another length
		const isGiven = claim.names.some((name) => {
			const value = this.#variant.givens[name];
			return value !== undefined && (claim.stated.length === 0 || claim.stated.some((form) => isClose(form, value)));
		});
		const match = this.#bestMatch(claim, target);
		if (match && match.kind !== 'check') {
			const isQuoted = claim.stated.length === 0 && !claim.works.some(hasNumber);
			if (isQuoted) {
				this.relationOnly.push(claim);
				return undefined;
			}
			return match.kind === 'conversion' ? this.#stated(match.step, claim, undefined) : this.#worked(match, claim);
		}
		if (match || (isGiven && target === undefined) || claim.stated.length === 0) {
			const fraction = match ? undefined : this.#fraction(claim);
			if (fraction) return this.#stated(fraction.find, { ...claim, stated: [fraction.value] }, undefined);
			if (!match && claim.works.length > 0 && target !== undefined && claim.works.some(hasNumber)) this.#begin(target);
			return undefined;
		}
		const step = this.#namedStep(claim, target) ?? this.#guess(claim, isLast);
		return step === undefined ? undefined : this.#stated(step, claim, undefined);
	}

	// 24/5 Ω left as it is counts as the value it is
	#fraction({ works, stated }: Claim): { readonly find: string; readonly value: StatedValue } | undefined {
		const [work] = works;
		if (stated.length > 0 || works.length !== 1 || work?.kind !== 'quotient') return undefined;
		const [top, bottom] = [statedValue(work.left), statedValue(work.right)];
		if (!top || !bottom || top.unit !== undefined) return undefined;
		const { factor, unit } = bottom;
		const value = {
			number: top.number / bottom.number,
			figures: 4,
			factor,
			span: work.span,
			...(unit === undefined ? {} : { unit }),
		};
		const fitting = this.steps.find(({ step }) => {
			return judge([value], [this.modelOf(step.find) ?? Number.NaN], step, this.#isFinal(step.find))?.isClose;
		});
		return fitting && { find: fitting.step.find, value };
	}

	// letters are only names: R may be any resistance, and the working says which
	#bestMatch(claim: Claim, target: string | undefined): Match | undefined {
		const named = this.#match(claim, target);
		if (target === undefined || named?.kind === 'right' || named?.kind === 'conversion') return named;
		const free = this.#match(claim, undefined);
		return free?.kind === 'right' && free.cost < Math.min(named?.cost ?? 1, 1) ? free : named;
	}

	#namedStep({ stated }: Claim, target: string | undefined): string | undefined {
		const named = target === undefined ? undefined : this.#of(target);
		if (!named || this.#fits(named, stated)) return target;
		const other = this.steps.find((progress) => {
			const isAlike = sameUnitKind(progress.step.unit, named.step.unit) && !progress.isStated;
			return isAlike && this.#fits(progress, stated);
		});
		return other?.step.find ?? target;
	}

	#fits({ step }: StepProgress, stated: readonly StatedValue[]): boolean {
		const expected = this.modelOf(step.find) ?? Number.NaN;
		return judge(stated, [expected], step, false)?.isClose ?? false;
	}

	#match(claim: Claim, target: string | undefined): Match | undefined {
		const search = {
			routes: this.#routes,
			known: this.#known(),
			target,
			attempted: new Set(this.steps.filter(({ isAttempted }) => isAttempted).map(({ step }) => step.find)),
			alias: (symbol: string) => this.#free.get(symbol) ?? symbol,
		};
		// once numbers are put in they are marked; the relation quoted beside them earns nothing
		const numeric = claim.works.filter(hasNumber);
		const works = numeric.length > 0 ? numeric : claim.works;
		return works.flatMap((work) => matchWork(work, search) ?? []).toSorted((a, b) => a.cost - b.cost)[0];
	}

	#known(): readonly Known[] {
		const named = symbolsOf(this.#exercise).map(({ name, isGiven, unit }): Known => {
			const own = this.#of(name)?.value;
			const model = this.modelOf(name) ?? Number.NaN;
			const factor = readUnitText(unit)?.factor ?? 1;
			return { symbol: name, isGiven, factor, values: own === undefined ? [model] : [own, model] };
		});
		// parts of a relation that are often worked out first: R + r, R₂ − R₁, P/R
		const parts = this.#routes.steps.flatMap(({ relations: [{ formula }] }) => partsOf(formula).flatMap(innerParts));
		return [
			...named,
			...parts.map((formula): Known => ({
				symbol: '',
				isGiven: false,
				formula,
				values: [evaluate(formula, this.valueOf), evaluate(formula, this.modelOf)],
			})),
		];
	}

	#worked(match: Exclude<Match, { kind: 'check' | 'conversion' }>, claim: Claim): string {
		const progress = this.#begin(match.step);
		const computed = evaluate(match.work.formula, (symbol) => this.valueOf(this.#free.get(symbol) ?? symbol));
		const worked = computed / 10 ** match.power;
		if (match.kind === 'right') return this.#workedRight(match, progress, worked, claim);
		const { route } = match;
		const origin = this.#of(route.step);
		if (route.step === match.step || !origin || origin.isAttempted) {
			progress.method = route.step !== match.step;
			this.#settle(progress, claim.stated, [this.modelOf(match.step) ?? Number.NaN], worked);
			if (route.step === match.step) {
				if (progress.accuracy) progress.slip = slipOf('right-by-wrong-working', match.step, progress.value, true);
				progress.accuracy = false;
			}
			if (route.step === match.step && progress.slip?.names[0] !== 'right-by-wrong-working') {
				progress.slip = this.#namer.like(match, progress.value);
				this.#forgiveRadius(progress, claim);
			}
			progress.slip ??= this.#namer.like(match, progress.value);
		} else {
			this.#begin(route.step);
			origin.slip = this.#namer.like(match, undefined);
			progress.method = true;
			progress.hasWork = true;
			this.#settle(progress, claim.stated, [worked], worked);
			this.#imply(match.step, new Set([...match.work.symbols, route.step]), progress.accuracy);
		}
		for (const symbol of match.work.symbols) {
			if (symbol !== route.step) this.#usedValue(symbol, isFaulty(match, symbol));
		}
		progress.hasWork = true;
		return match.step;
	}

	// πr² is the right formula; only the diameter went in for the radius
	#forgiveRadius(progress: StepProgress, claim: Claim): void {
		const { slip } = progress;
		if (!slip?.names.includes('diameter-as-radius')) return;
		const letters = claim.members.flatMap(symbolsIn);
		if (
			!letters.some(
				(letter) =>
					letter === '?r' ||
					this.#exercise.givens.some(({ symbol, quantity }) => symbol === letter && quantity === 'radius'),
			)
		)
			return;
		progress.method = true;
		progress.slip = { ...slip, names: ['diameter-as-radius'] };
	}

	#workedRight(match: Match & { step: string }, progress: StepProgress, worked: number, claim: Claim): string {
		progress.method = true;
		progress.hasWork = true;
		delete progress.slip;
		const own = this.#followed(progress.step);
		this.#settle(progress, claim.stated, [this.modelOf(match.step) ?? Number.NaN, own, worked], worked);
		if (!progress.accuracy || claim.stated.length === 0) this.#namer.nameFault(progress, match, worked);
		for (const symbol of match.work.symbols) this.#usedValue(symbol, isFaulty(match, symbol));
		this.#imply(match.step, new Set(match.work.symbols), progress.accuracy || !progress.isStated);
		return match.step;
	}

	// a middle value put straight into the next step was known without being written
	#usedValue(symbol: string, isFaulty: boolean): void {
		const used = this.#of(symbol);
		if (!used || isFaulty) return;
		if (!used.isAttempted) {
			this.#begin(symbol);
			used.method = true;
			used.accuracy = !this.#exercise.wanted.includes(symbol);
		} else if (!used.isStated && used.method && !this.#exercise.wanted.includes(symbol)) {
			used.accuracy = true;
		}
	}

	#imply(find: string, seen: ReadonlySet<string>, isRight: boolean): void {
		const step = this.#of(find)?.step;
		if (!step) return;
		for (const input of inputsOf(step, this.#routes.steps)) {
			const progress = this.#of(input);
			if (!progress || progress.isAttempted || seen.has(input)) continue;
			progress.isAttempted = true;
			progress.method = true;
			progress.accuracy = isRight && !this.#exercise.wanted.includes(input);
		}
	}

	#settle(progress: StepProgress, stated: readonly StatedValue[], expected: readonly number[], worked: number): void {
		const { find } = progress.step;
		const judged = judge(stated, expected, progress.step, this.#isFinal(find));
		const last = stated.at(-1);
		if (!judged || !last) {
			if (Number.isFinite(worked)) progress.value = worked;
			return;
		}
		progress.isStated = true;
		progress.value = judged.value;
		progress.unit = judged.unit;
		progress.figures = last.figures;
		progress.written = last;
		const near = expected.filter((value) => isNear(value, judged.value));
		progress.against = near.at(0) ?? Number.NaN;
		if (last.unit === undefined) delete progress.unitText;
		else progress.unitText = last.unit;
		progress.accuracy = judged.isClose && (judged.value > 0 || isPure(progress.step));
		const model = this.modelOf(find) ?? Number.NaN;
		const isModel = stated.some((form) => judge([form], [model], progress.step, this.#isFinal(find))?.isClose);
		progress.carriedForward = progress.accuracy && !isModel;
	}

	// values without a working that can be recognised
	#stated(find: string, claim: Claim, name: SlipName | undefined): string {
		const progress = this.#begin(find);
		const expected = this.modelOf(find) ?? Number.NaN;
		const own = this.#followed(progress.step);
		const hadMethod = progress.method;
		this.#settle(progress, claim.stated, [expected, own], Number.NaN);
		if (progress.accuracy) {
			progress.method = hadMethod || !this.#exercise.mustShowSteps;
			if (!hadMethod || progress.slip?.names[0] === 'arithmetic-slip') delete progress.slip;
			if (!progress.carriedForward && !this.#exercise.mustShowSteps) this.#imply(find, new Set(), true);
		} else if (!progress.hasWork) {
			// a value that was right by itself and is now taken back
			progress.method = false;
			this.#withdraw(progress.step);
			const found = name === undefined ? this.#namer.byValue(progress) : slipOf(name, find, progress.value, false);
			if (found) progress.slip = found;
		} else if (!hadMethod || !progress.slip) {
			const found = name === undefined ? this.#namer.byValue(progress) : slipOf(name, find, progress.value, false);
			if (found) progress.slip = found;
		}
		return find;
	}

	/** What a step gives with the learner's own earlier values. */
	#followed(step: NumberStep): number {
		return evaluate(step.relations[0].formula, this.valueOf);
	}

	// which step a value without a name and without a working is for
	#guess({ stated, isCorrection }: Claim, isLast: boolean): string | undefined {
		const fits = ({ step }: StepProgress) =>
			stated.every(({ unit }) => unit === undefined || sameUnitKind(unit, step.unit));
		const close = (expected: number | undefined) => (progress: StepProgress) =>
			expected !== undefined && (judge(stated, [expected], progress.step, false)?.isClose ?? false);
		const open = this.steps.filter(fits);
		const right = open.filter((progress) => close(this.modelOf(progress.step.find))(progress));
		const found =
			right.find(({ isAttempted }) => !isAttempted) ??
			right.at(0) ??
			open.find((progress) => close(progress.value)(progress)) ??
			open.find((progress) => this.#isFollowing(progress) && close(this.#followed(progress.step))(progress));
		if (found) return found.step.find;
		const isGiven = symbolsOf(this.#exercise).some(({ name, isGiven: given, unit }) => {
			const value = given ? this.#variant.givens[name] : undefined;
			const factor = readUnitText(unit)?.factor ?? 1;
			return (
				value !== undefined &&
				stated.some((form) => isNear(form.number * (form.unit === undefined ? factor : form.factor), value, 1e-6))
			);
		});
		if (isGiven && !isLast) return undefined;
		const final = open.findLast(({ step }) => this.#exercise.wanted.includes(step.find));
		return isLast && (!final?.isAttempted || isCorrection) ? final?.step.find : undefined;
	}

	#isFollowing({ step }: StepProgress): boolean {
		return [...inputsOf(step, this.#routes.steps)].some((input) => this.#of(input)?.value !== undefined);
	}

	#twoAnswers(claim: Claim, find: string | undefined, previous: string | undefined): void {
		const target = find ?? previous ?? this.#exercise.wanted.at(-1);
		const progress = target === undefined ? undefined : this.#of(target);
		const earlier = this.results.at(-1)?.claim.stated.at(-1);
		const later = claim.stated.at(-1);
		if (!progress || !earlier || !later || isNear(earlier.number * earlier.factor, later.number * later.factor)) return;
		progress.isAttempted = true;
		progress.isTwoAnswers = true;
		progress.accuracy = false;
		if (!progress.hasWork) {
			progress.method = false;
			this.#withdraw(progress.step);
		}
		progress.slip = slipOf('two-answers', progress.step.find, progress.value, true);
	}

	// what was credited only because a later value was right
	#withdraw(step: NumberStep): void {
		for (const input of inputsOf(step, this.#routes.steps)) {
			const before = this.#of(input);
			if (before && !before.isStated && !before.hasWork) {
				before.isAttempted = false;
				before.method = false;
				before.accuracy = false;
			}
		}
	}

	#begin(find: string): StepProgress {
		const progress = this.#of(find);
		if (!progress) throw new RangeError(`no step finds ${find}`);
		progress.isAttempted = true;
		return progress;
	}

	#of(find: string): StepProgress | undefined {
		return this.steps.find(({ step }) => step.find === find);
	}

	#isFinal(find: string): boolean {
		return this.#exercise.wanted.includes(find);
	}

	// the unit counts where the result is one that is asked for
	#isUnitLost({ stated }: Claim, { step, unit }: StepProgress): boolean {
		return stated.length > 0 && this.#isFinal(step.find) && unit !== 'right';
	}

	#verdict(claim: Claim, find: string | undefined): LineVerdict {
		const progress = find === undefined ? undefined : this.#of(find);
		if (!progress) return isSideOfChoice(claim, this.#exercise, this.valueOf) ? 'right' : 'not-needed';
		if (progress.accuracy && progress.carriedForward) return 'carried-forward';
		if (progress.accuracy) return this.#isUnitLost(claim, progress) ? 'unit-not' : 'right';
		if (!progress.method) return 'wrong';
		return claim.stated.length === 0 ? 'right' : 'method-only';
	}
}

// 1.76 for 1.76 A·h is the value itself; a moved point or a wrong digit is not
function isFaulty({ work }: Match, symbol: string): boolean {
	return work.faults.some((fault) => fault.symbol === symbol && fault.kind !== 'own-unit');
}

function innerParts(node: Expression): readonly Expression[] {
	if (node.kind === 'number' || node.kind === 'symbol') return [];
	return [node, ...partsOf(node).flatMap(innerParts)];
}

function hasNumber(node: Claim['works'][number]): boolean {
	if (node.kind === 'number' || node.kind === 'in-unit') return true;
	if ('left' in node) return hasNumber(node.left) || (node.kind !== 'power' && hasNumber(node.right));
	return 'operand' in node && hasNumber(node.operand);
}
