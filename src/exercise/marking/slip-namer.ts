import { evaluate } from '#core/expression/evaluate.ts';
import type { Exercise, NumberStep } from '#exercise/exercise.ts';
import { mutantsOf } from '#exercise/slip/mutate.ts';
import { leafSlip, powerOfTenBetween, powerOfTenSlip } from '#exercise/slip/power-of-ten.ts';
import type { SlipName } from '#exercise/slip/slip-name.ts';
import type { FoundSlip } from './marking.ts';
import type { Match } from './match.ts';
import type { StepProgress } from './step-progress.ts';
import { inputsOf, type Routes } from './route.ts';
import { isClose, isNear } from './tolerance.ts';

interface Known {
	readonly steps: readonly StepProgress[];
	readonly valueOf: (symbol: string) => number | undefined;
	readonly modelOf: (symbol: string) => number | undefined;
}

/** Says which slip a wrong working or a wrong number shows. */
export class SlipNamer {
	readonly #exercise: Exercise;
	readonly #routes: Routes;
	readonly #progress: Known;

	constructor(exercise: Exercise, routes: Routes, progress: Known) {
		this.#exercise = exercise;
		this.#routes = routes;
		this.#progress = progress;
	}

	/** Names what made the value of a right working wrong. */
	nameFault(progress: StepProgress, match: Match, worked: number): void {
		const [fault] = match.work.faults;
		const { step, value } = progress;
		const expected = this.#progress.modelOf(step.find) ?? Number.NaN;
		if (fault) {
			const name = leafSlip(fault, fault.symbol, this.#exercise);
			progress.slip = slipOf(name, step.find, value, true);
		} else if (progress.isStated && value !== undefined) {
			const power = powerOfTenBetween(value, isNear(value, expected) ? worked : expected, 0.011);
			const isRounded = (progress.figures ?? 9) < 2 && Math.abs(value / worked - 1) < 0.3;
			const name =
				power !== undefined ? this.#powerSlip(power, step) : isRounded ? 'too-few-figures' : 'arithmetic-slip';
			progress.slip = slipOf(name, step.find, value, true);
		}
	}

	#powerSlip(power: number, step: NumberStep): SlipName {
		return powerOfTenSlip(power, step, this.#exercise);
	}

	/** Names a wrong value that came without a working, by the number alone. */
	byValue({ step, value }: StepProgress): FoundSlip | undefined {
		if (value === undefined) return undefined;
		const stated = { number: value, figures: 3, factor: 1 };
		const own = mutantsOf(step, this.#exercise)
			.filter(({ formula }) => isClose(stated, evaluate(formula, this.#progress.valueOf)))
			.map(({ name }) => ({ name, step: step.find }));
		const inputs = inputsOf(step, this.#routes.steps);
		const whole = this.#routes.wrong
			.filter((route, index) => {
				const isOpen =
					route.step === step.find ||
					(inputs.has(route.step) &&
						!this.#progress.steps.find(({ step: inner }) => inner.find === route.step)?.isAttempted);
				return isOpen && isClose(stated, this.#routes.results[index]?.[step.find] ?? Number.NaN);
			})
			.map((route) => ({ name: route.name, step: route.step }));
		const found = own.length > 0 ? own : whole;
		const [first] = found;
		if (first)
			return { names: namesOf(found.map(({ name }) => name)) ?? [first.name], step: first.step, value, isSeen: false };
		const power = powerOfTenBetween(value, evaluate(step.relations[0].formula, this.#progress.valueOf), 0.011);
		return power === undefined ? undefined : slipOf(this.#powerSlip(power, step), step.find, value, false);
	}

	/** Every slip that leads to the formula of a match. */
	like(match: Match & { readonly kind: 'wrong' }, value: number | undefined): FoundSlip {
		const { route } = match;
		const same = this.#routes.wrong.filter(
			(other) =>
				other.step === route.step &&
				other.points.every((point, index) =>
					isNear(point[route.step] ?? Number.NaN, route.points[index]?.[route.step] ?? Number.NaN, 1e-9),
				),
		);
		const names = namesOf(same.map(({ name }) => name)) ?? [route.name];
		return { names, step: route.step, isSeen: true, ...(value === undefined ? {} : { value }) };
	}
}

export function slipOf(name: SlipName, step: string, value: number | undefined, isSeen: boolean): FoundSlip {
	return { names: [name], step, isSeen, ...(value === undefined ? {} : { value }) };
}

function namesOf(names: readonly SlipName[]): FoundSlip['names'] | undefined {
	const [first, ...rest] = new Set(names);
	return first === undefined ? undefined : [first, ...rest];
}
