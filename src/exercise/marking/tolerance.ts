/** Relative difference within which a value counts as the model value. */
export const tolerance = 0.01;

/** A value as stated: the number written, its figures, and the size of its unit in SI. */
export interface StatedNumber {
	readonly number: number;
	readonly figures: number;
	readonly factor: number;
}

/** Whether a stated value is within 1 % of the expected SI value, or is it rounded to two or more figures. */
export function isClose(stated: StatedNumber, expected: number): boolean {
	const value = stated.number * stated.factor;
	if (!Number.isFinite(value) || !Number.isFinite(expected)) return false;
	if (Math.abs(value - expected) <= tolerance * Math.abs(expected) * (1 + 1e-9)) return true;
	const figures = Math.min(stated.figures, 15);
	if (figures < 2) return false;
	const rounded = Number((expected / stated.factor).toPrecision(figures));
	return Math.abs(rounded - stated.number) <= 1e-9 * Math.abs(rounded);
}

/** Whether two computed values are the same up to rounding on the way. */
export function isNear(a: number, b: number, within = tolerance): boolean {
	return Math.abs(a - b) <= within * Math.max(Math.abs(a), Math.abs(b)) + Number.MIN_VALUE;
}

/** Whether one number looks like the other with a digit wrong, left out or exchanged with its neighbour. */
export function isMiscopied(found: number, right: number): boolean {
	const [a, b] = [digitsOf(found), digitsOf(right)];
	if (a === b || Math.abs(a.length - b.length) > 1 || b.length < 2) return false;
	if (a.length === b.length) {
		const wrong = [...a].flatMap((digit, index) => (digit === b[index] ? [] : [index]));
		if (wrong.length === 1) return true;
		const [first = 0, second = 0] = wrong;
		return wrong.length === 2 && second === first + 1 && a[first] === b[second] && a[second] === b[first];
	}
	const [short, long] = a.length < b.length ? [a, b] : [b, a];
	return [...long].some((_, index) => long.slice(0, index) + long.slice(index + 1) === short);
}

function digitsOf(value: number): string {
	return Math.abs(value).toPrecision(6).replace(/e.*$/u, '').replace('.', '').replace(/^0+/u, '').replace(/0+$/u, '');
}
