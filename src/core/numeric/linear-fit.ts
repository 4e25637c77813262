export interface LinearFit {
	readonly intercept: number;
	readonly slope: number;
	/** Standard deviation of one point about the line. */
	readonly scatter: number;
	/** Standard uncertainties of intercept and slope, from the scatter. */
	readonly interceptUncertainty: number;
	readonly slopeUncertainty: number;
	/** Correlation of intercept and slope, −1…1. */
	readonly correlation: number;
}

/**
 * Straight line of least squares through points of equal weight: y = intercept + slope · x.
 *
 * @param points at least three, with at least two different x
 * @throws RangeError for fewer points, equal x or a number that is not finite
 * @see JCGM 100:2008 (GUM), H.3.2, equations H.13a–H.13f
 */
export function linearFit(points: readonly { readonly x: number; readonly y: number }[]): LinearFit {
	const n = points.length;
	if (n < 3) throw new RangeError(`a fit with uncertainties needs three points, got ${n}`);
	if (!points.every(({ x, y }) => Number.isFinite(x) && Number.isFinite(y))) {
		throw new RangeError('a fit needs finite numbers');
	}
	const meanX = mean(points.map(({ x }) => x));
	const meanY = mean(points.map(({ y }) => y));
	const sxx = sum(points.map(({ x }) => (x - meanX) ** 2));
	if (!(sxx > 0)) throw new RangeError('all points have the same x');
	const slope = sum(points.map(({ x, y }) => (x - meanX) * (y - meanY))) / sxx;
	const intercept = meanY - slope * meanX;
	const scatter = Math.sqrt(sum(points.map(({ x, y }) => (y - intercept - slope * x) ** 2)) / (n - 2));
	const meanSquareX = sxx / n + meanX ** 2;
	return {
		intercept,
		slope,
		scatter,
		interceptUncertainty: scatter * Math.sqrt(meanSquareX / sxx),
		slopeUncertainty: scatter / Math.sqrt(sxx),
		correlation: -meanX / Math.sqrt(meanSquareX),
	};
}

function sum(values: readonly number[]): number {
	return values.reduce((total, value) => total + value, 0);
}

function mean(values: readonly number[]): number {
	return sum(values) / values.length;
}
