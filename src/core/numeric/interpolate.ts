/**
 * A smooth curve through given points that rises only where they rise and falls only where they fall.
 *
 * Piecewise cubic Hermite interpolation with the limited slopes of Fritsch and Butland: no overshoot between
 * points, continuous first derivative. It never leaves its range on its own: the caller asks `covers` first.
 *
 * @see F. N. Fritsch and J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300–304; end slopes by the
 * three-point rule in C. Moler, Numerical Computing with MATLAB, section 3.6 (both from memory)
 */
export class MonotoneCurve {
	readonly #x: readonly number[];
	readonly #y: readonly number[];
	readonly #slope: readonly number[];
	/** The first and the last x. */
	readonly from: number;
	readonly to: number;

	/**
	 * @param x positions, at least one, strictly increasing
	 * @param y as many values; a single point makes a constant that covers only its own place
	 * @throws RangeError when the lists differ in length, are empty, not finite or not increasing
	 */
	constructor(x: readonly number[], y: readonly number[]) {
		const first = x[0];
		const last = x.at(-1);
		if (first === undefined || last === undefined || x.length !== y.length) {
			throw new RangeError(`a curve needs as many positions as values, got ${x.length} and ${y.length}`);
		}
		if (!x.every(Number.isFinite) || !y.every(Number.isFinite)) throw new RangeError('a curve needs finite numbers');
		if (x.some((here, i) => i > 0 && here <= at(x, i - 1))) throw new RangeError('positions must increase');
		this.#x = x;
		this.#y = y;
		this.#slope = limitedSlopes(x, y);
		this.from = first;
		this.to = last;
	}

	covers(x: number): boolean {
		return x >= this.from && x <= this.to;
	}

	/** @throws RangeError where the curve has no data */
	at(x: number): number {
		if (!this.covers(x)) throw new RangeError(`${x} is outside ${this.from} … ${this.to}`);
		if (this.#x.length === 1) return at(this.#y, 0);
		const i = this.#interval(x);
		const h = at(this.#x, i + 1) - at(this.#x, i);
		const t = (x - at(this.#x, i)) / h;
		const u = 1 - t;
		return (
			u * u * (1 + 2 * t) * at(this.#y, i) +
			t * t * (3 - 2 * t) * at(this.#y, i + 1) +
			h * t * u * (u * at(this.#slope, i) - t * at(this.#slope, i + 1))
		);
	}

	/** The value inside the range, and outside it the value of the nearer end. */
	heldAt(x: number): number {
		return this.at(Math.min(this.to, Math.max(this.from, x)));
	}

	/** The value inside the range, and outside it the straight line that leaves the nearer end with its slope. */
	continuedAt(x: number): number {
		const end = Math.min(this.to, Math.max(this.from, x));
		const slope = at(this.#slope, end === this.from ? 0 : this.#slope.length - 1);
		return this.at(end) + slope * (x - end);
	}

	#interval(x: number): number {
		let low = 0;
		let high = this.#x.length - 1;
		while (high - low > 1) {
			const middle = (low + high) >> 1;
			if (at(this.#x, middle) <= x) low = middle;
			else high = middle;
		}
		return low;
	}
}

function limitedSlopes(x: readonly number[], y: readonly number[]): number[] {
	if (x.length === 1) return [0];
	const width = x.slice(1).map((here, i) => here - at(x, i));
	const chord = y.slice(1).map((here, i) => (here - at(y, i)) / at(width, i));
	if (x.length === 2) return [at(chord, 0), at(chord, 0)];
	const inner = chord.slice(1).map((right, i) => {
		const left = at(chord, i);
		if (left * right <= 0) return 0;
		const leftWeight = 2 * at(width, i + 1) + at(width, i);
		const rightWeight = at(width, i + 1) + 2 * at(width, i);
		return (leftWeight + rightWeight) / (leftWeight / left + rightWeight / right);
	});
	const n = chord.length;
	return [
		endSlope(at(width, 0), at(width, 1), at(chord, 0), at(chord, 1)),
		...inner,
		endSlope(at(width, n - 1), at(width, n - 2), at(chord, n - 1), at(chord, n - 2)),
	];
}

function endSlope(width: number, nextWidth: number, chord: number, nextChord: number): number {
	const slope = ((2 * width + nextWidth) * chord - width * nextChord) / (width + nextWidth);
	if (slope * chord <= 0) return 0;
	// three times the chord is the steepest end that cannot overshoot
	return Math.abs(slope) > 3 * Math.abs(chord) ? 3 * chord : slope;
}

function at(list: readonly number[], index: number): number {
	const value = list[index];
	if (value === undefined) throw new RangeError(`no entry ${index} in a list of ${list.length}`);
	return value;
}
