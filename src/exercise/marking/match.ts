import { evaluate } from '#core/expression/evaluate.ts';
import type { Expression } from '#core/expression/expression.ts';
import { readWork, type Known, type SymbolicWork } from './leaf.ts';
import { inputsOf, type Routes, type Values, type WrongRoute } from './route.ts';
import { isNear } from './tolerance.ts';

/** What a working turned out to be. */
export type Match = {
	readonly work: SymbolicWork;
	/** 0 for a literal match; higher the more has to be assumed */
	readonly cost: number;
	/** the working gives the value times this power of ten, as when it ends in millimetres */
	readonly power: number;
} & (
	| { readonly kind: 'right'; readonly step: string }
	| { readonly kind: 'wrong'; readonly step: string; readonly route: WrongRoute }
	/** the value found, in other units */
	| { readonly kind: 'conversion'; readonly step: string }
	/** works back to a given */
	| { readonly kind: 'check' }
);

/** Matches that assume more than this are left alone. */
const costLimit = 5;

interface Search {
	readonly routes: Routes;
	readonly known: readonly Known[];
	/** the step the working is said to be for */
	readonly target: string | undefined;
	readonly attempted: ReadonlySet<string>;
	/** the quantity a letter of the learner's own stands for */
	readonly alias: (symbol: string) => string;
}

/** The likeliest meaning of a working: the right relation before a wrong one, literal readings before assumed ones. */
export function matchWork(work: Expression, search: Search): Match | undefined {
	let best: Match | undefined;
	for (const reading of readWork(work, search.known)) {
		if (reading.cost > Math.min(costLimit, best?.cost ?? costLimit)) break;
		for (const match of meanings(reading, search)) {
			if (match.cost <= costLimit && (best === undefined || match.cost < best.cost)) best = match;
		}
	}
	return best;
}

function* meanings(work: SymbolicWork, search: Search): Generator<Match> {
	const { routes, target, attempted, alias } = search;
	const at = (point: Values) => evaluate(work.formula, (symbol) => point[alias(symbol)]);
	const right = routes.right.map(at);
	const written = [...new Set(lettersAndNumbers(work, alias))];
	const only = written.length === 1 ? written[0] : undefined;
	for (const { find } of routes.steps) {
		const power = powerOver(right, routes.right, find);
		if (power === undefined) continue;
		if (only === find) {
			if (target === undefined || target === find)
				yield { kind: 'conversion', step: find, work, cost: work.cost, power };
			continue;
		}
		if (target !== undefined && target !== find) continue;
		const cost = work.cost + (power === 0 ? 0 : 0.3) + (attempted.has(find) && target === undefined ? 0.1 : 0);
		yield { kind: 'right', step: find, work, cost, power };
	}
	if (target === undefined && Object.keys(routes.right[0] ?? {}).some((given) => isGivenAgain(given, right, search))) {
		yield { kind: 'check', work, cost: work.cost + 0.5, power: 0 };
	}
	for (const route of routes.wrong) {
		const wrong = route.points.map(at);
		for (const step of routes.steps) {
			if (target !== undefined && target !== step.find) continue;
			if (step.find !== route.step && !inputsOf(step, routes.steps).has(route.step)) continue;
			if (only === step.find) continue;
			const power = powerOver(wrong, route.points, step.find);
			if (power === undefined) continue;
			const isLater = step.find === route.step ? 0 : 0.05;
			const again = attempted.has(step.find) && target === undefined ? 0.1 : 0;
			const cost = work.cost + 0.9 + (power === 0 ? 0 : 0.3) + isLater + again;
			yield { kind: 'wrong', step: step.find, route, work, cost, power };
		}
	}
}

function lettersAndNumbers(work: SymbolicWork, alias: (symbol: string) => string): readonly string[] {
	const found: string[] = [];
	const visit = (node: Expression): void => {
		if (node.kind === 'symbol') found.push(alias(node.name));
		else if ('left' in node) [node.left, node.right].forEach(visit);
		else if ('operand' in node) visit(node.operand);
	};
	visit(work.formula);
	return found;
}

function isGivenAgain(given: string, values: readonly number[], { routes }: Search): boolean {
	if (routes.steps.some(({ find }) => find === given)) return false;
	return powerOver(values, routes.right, given) !== undefined;
}

/** The power of ten by which values differ from a symbol at every trial point; undefined when they differ otherwise. */
function powerOver(values: readonly number[], points: readonly Values[], symbol: string): number | undefined {
	const ratios = values.map((value, index) => value / (points[index]?.[symbol] ?? Number.NaN));
	const [first = Number.NaN] = ratios;
	if (!(first > 0)) return undefined;
	const power = Math.round(Math.log10(first));
	if (Math.abs(power) > 6) return undefined;
	return ratios.every((ratio) => isNear(ratio, 10 ** power, 1e-3)) ? power : undefined;
}
