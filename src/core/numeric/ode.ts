/** One accepted step of a solution, with slopes, so that a cubic between its ends is known. */
export interface OdeStep {
	readonly from: number;
	readonly to: number;
	readonly valueFrom: number;
	readonly valueTo: number;
	readonly slopeFrom: number;
	readonly slopeTo: number;
}

export interface OdeProblem {
	/** y′ at (t, y) */
	readonly derivative: (time: number, value: number) => number;
	readonly from: number;
	readonly to: number;
	readonly value: number;
	/** allowed error of one step, in units of y */
	readonly tolerance: number;
	/** ends the solution early, after the step for which it is true */
	readonly stopWhen?: (step: OdeStep) => boolean;
}

const mostSteps = 100_000;

/**
 * Solves y′ = f(t, y) for one unknown with the embedded Runge–Kutta pair 5(4) of Dormand & Prince. The step follows
 * the error, so it shrinks where the solution is fast and stays within stability where it has settled.
 *
 * @returns the accepted steps, in order; none when `to` equals `from`
 * @throws RangeError when `to` lies before `from`, or the solution needs more than 100 000 steps
 * @see J. R. Dormand, P. J. Prince, J. Comput. Appl. Math. 6 (1980) 19–26;
 *      checked in tests/property/core/thermal/warm-up.test.ts against another solver
 */
export function solveOde(problem: OdeProblem): readonly OdeStep[] {
	const { derivative, to, tolerance, stopWhen } = problem;
	if (!(to >= problem.from)) throw new RangeError(`the end ${to} lies before the start ${problem.from}`);
	const steps: OdeStep[] = [];
	let t = problem.from;
	let y = problem.value;
	let k1 = derivative(t, y);
	let h = Math.min(to - t, (0.1 * tolerance ** 0.2) / Math.max(Math.abs(k1), 1e-9));
	for (let tries = 0; t < to; tries += 1) {
		if (tries > mostSteps) throw new RangeError('the solution needs too many steps');
		h = Math.min(h, to - t);
		const { value, slope, error } = dormandPrince(derivative, { t, y, k1, h });
		const ratio = error / tolerance;
		if (ratio <= 1) {
			// the last step lands on the end itself, whatever rounding does
			const next = h >= to - t ? to : t + h;
			const step = { from: t, to: next, valueFrom: y, valueTo: value, slopeFrom: k1, slopeTo: slope };
			steps.push(step);
			if (stopWhen?.(step) === true) break;
			t = next;
			y = value;
			k1 = slope;
		}
		h *= Math.min(5, Math.max(0.2, 0.9 * Math.max(ratio, 1e-10) ** -0.2));
	}
	return steps;
}

function dormandPrince(f: OdeProblem['derivative'], start: { t: number; y: number; k1: number; h: number }) {
	const { t, y, k1, h } = start;
	const k2 = f(t + h / 5, y + (h * k1) / 5);
	const k3 = f(t + (3 * h) / 10, y + h * ((3 / 40) * k1 + (9 / 40) * k2));
	const k4 = f(t + (4 * h) / 5, y + h * ((44 / 45) * k1 - (56 / 15) * k2 + (32 / 9) * k3));
	const k5 = f(
		t + (8 * h) / 9,
		y + h * ((19372 / 6561) * k1 - (25360 / 2187) * k2 + (64448 / 6561) * k3 - (212 / 729) * k4),
	);
	const k6 = f(
		t + h,
		y + h * ((9017 / 3168) * k1 - (355 / 33) * k2 + (46732 / 5247) * k3 + (49 / 176) * k4 - (5103 / 18656) * k5),
	);
	const value = y + h * ((35 / 384) * k1 + (500 / 1113) * k3 + (125 / 192) * k4 - (2187 / 6784) * k5 + (11 / 84) * k6);
	const k7 = f(t + h, value);
	const error =
		h *
		((71 / 57600) * k1 -
			(71 / 16695) * k3 +
			(71 / 1920) * k4 -
			(17253 / 339200) * k5 +
			(22 / 525) * k6 -
			(1 / 40) * k7);
	return { value, slope: k7, error: Math.abs(error) };
}

/** The solution inside one step, by the cubic through both ends with their slopes. */
export function valueInStep(step: OdeStep, time: number): number {
	const width = step.to - step.from;
	const t = (time - step.from) / width;
	return (
		(1 + 2 * t) * (1 - t) ** 2 * step.valueFrom +
		t * (1 - t) ** 2 * width * step.slopeFrom +
		t ** 2 * (3 - 2 * t) * step.valueTo +
		t ** 2 * (t - 1) * width * step.slopeTo
	);
}
