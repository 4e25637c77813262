/**
 * A zero of a continuous function between two places where its sign differs, by Brent's method: inverse
 * quadratic or secant steps where they help, halving where they do not, so it can never leave the bracket.
 *
 * @param f continuous function; called about ten times for a smooth one
 * @param bracket two places with values of unlike sign; `tolerance` is the allowed error of the place, > 0
 * @throws RangeError when the signs do not differ, a value is not a number, or the bracket is not finite
 * @see R. P. Brent, Algorithms for Minimization without Derivatives, 1973, chapter 4 (from memory)
 */
export function rootBetween(
	f: (x: number) => number,
	bracket: { readonly from: number; readonly to: number; readonly tolerance: number },
): number {
	const { tolerance } = bracket;
	let [a, b] = [bracket.from, bracket.to];
	if (!Number.isFinite(a) || !Number.isFinite(b) || !(tolerance > 0)) {
		throw new RangeError(`cannot search between ${a} and ${b} to ${tolerance}`);
	}
	let [fa, fb] = [f(a), f(b)];
	if (fa === 0) return a;
	if (fb === 0) return b;
	if (!(fa * fb < 0) && !(Math.sign(fa) * Math.sign(fb) < 0)) {
		throw new RangeError(`no change of sign between ${a} and ${b}: ${fa} and ${fb}`);
	}
	// b is the best place so far, c lies on the other side of the zero
	let [c, fc] = [a, fa];
	let step = b - a;
	let stepBefore = step;
	for (let i = 0; i < maxSteps; i++) {
		if (Math.sign(fb) === Math.sign(fc)) {
			[c, fc] = [a, fa];
			step = b - a;
			stepBefore = step;
		}
		if (Math.abs(fc) < Math.abs(fb)) {
			[a, b, c] = [b, c, b];
			[fa, fb, fc] = [fb, fc, fb];
		}
		const enough = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2;
		const half = (c - b) / 2;
		if (Math.abs(half) <= enough || fb === 0) return b;
		const guess = Math.abs(fa) > Math.abs(fb) ? interpolatedStep({ a, b, c, fa, fb, fc, half }) : half;
		const helps =
			Math.abs(stepBefore) >= enough &&
			guess * half > 0 &&
			Math.abs(guess) < Math.min(1.5 * Math.abs(half), Math.abs(stepBefore / 2));
		stepBefore = helps ? step : half;
		step = helps ? guess : half;
		[a, fa] = [b, fb];
		b += Math.abs(step) > enough ? step : Math.sign(half) * enough;
		fb = f(b);
		if (Number.isNaN(fb)) throw new RangeError(`the function is not a number at ${b}`);
	}
	return b;
}

const maxSteps = 200;

interface Places {
	readonly a: number;
	readonly b: number;
	readonly c: number;
	readonly fa: number;
	readonly fb: number;
	readonly fc: number;
	readonly half: number;
}

function interpolatedStep({ a, b, c, fa, fb, fc, half }: Places): number {
	const s = fb / fa;
	if (a === c) return (2 * half * s) / (s - 1) || half;
	const q = fa / fc;
	const r = fb / fc;
	const p = s * (2 * half * q * (q - r) - (b - a) * (r - 1));
	return -p / ((q - 1) * (r - 1) * (s - 1)) || half;
}
