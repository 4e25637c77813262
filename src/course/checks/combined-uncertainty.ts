import { combinedCovariance, contributions, freeInput } from '#core/numeric/first-order.ts';
import { check, type PublishedCheck } from './check.ts';

/** Table H.2: voltage in V, current in A, phase in rad, read together five times. From memory. */
const simultaneousReadings = {
	voltage: [5.007, 4.994, 5.005, 4.99, 4.999],
	current: [19.663e-3, 19.639e-3, 19.64e-3, 19.685e-3, 19.678e-3],
	phase: [1.0456, 1.0438, 1.0468, 1.0428, 1.0433],
} as const;

/** Section H.1: lengths in nm, temperatures in °C; the differences of expansion and temperature are zero by estimate. */
const endGauge = {
	standard: { value: 50.000623e6, u: 25 },
	difference: { value: 215, u: 9.7 },
	expansionDifference: { value: 0, u: 0.58e-6 },
	temperature: { value: -0.1, u: 0.41 },
	expansion: { value: 11.5e-6, u: 1.2e-6 },
	temperatureDifference: { value: 0, u: 0.029 },
} as const;

function mean(values: readonly number[]): number {
	return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** Covariance of the means of two rows read together. */
function covarianceOfMeans(first: readonly number[], second: readonly number[]): number {
	const [a, b] = [mean(first), mean(second)];
	const sum = first.reduce((total, value, index) => total + (value - a) * ((second[index] ?? NaN) - b), 0);
	return sum / (first.length * (first.length - 1));
}

/** R = V/I cos φ, X = V/I sin φ, Z = V/I, with uncertainties and correlations from the readings. */
function element(readings: Readonly<Record<'voltage' | 'current' | 'phase', readonly number[]>>) {
	const rows = [readings.voltage, readings.current, readings.phase];
	const means = rows.map(mean);
	const covariance = (i: number, j: number) => covarianceOfMeans(rows[i] ?? [], rows[j] ?? []);
	const uncertainty = (i: number) => Math.sqrt(covariance(i, i));
	const resultsOf = ([V = NaN, I = NaN, phase = NaN]: readonly number[]) => [
		(V / I) * Math.cos(phase),
		(V / I) * Math.sin(phase),
		V / I,
	];
	const parts = contributions(
		means.map((_, index) => freeInput(uncertainty(index))),
		({ input, by }) => resultsOf(means.map((value, index) => (index === input ? value + by : value))),
	);
	const combined = (a: number, b: number) =>
		combinedCovariance(parts[a] ?? [], parts[b] ?? [], (i, j) => covariance(i, j) / (uncertainty(i) * uncertainty(j)));
	return {
		value: (result: number) => resultsOf(means)[result] ?? NaN,
		uncertainty: (result: number) => Math.sqrt(combined(result, result)),
		correlation: (a: number, b: number) => combined(a, b) / Math.sqrt(combined(a, a) * combined(b, b)),
	};
}

/** l = lₛ + d − lₛ(δα θ + αₛ δθ), to first order. */
function endGaugeUncertainty(budget: typeof endGauge): number {
	const inputs = Object.values(budget);
	const length = ([
		standard = NaN,
		difference = NaN,
		dAlpha = NaN,
		theta = NaN,
		alpha = NaN,
		dTheta = NaN,
	]: readonly number[]) => standard + difference - standard * (dAlpha * theta + alpha * dTheta);
	const [parts = []] = contributions(
		inputs.map(({ u }) => freeInput(u)),
		({ input, by }) => [length(inputs.map(({ value }, index) => (index === input ? value + by : value)))],
	);
	return Math.sqrt(combinedCovariance(parts, parts));
}

/** Uncertainty to first order, with and without correlation. */
export const combinedUncertaintyChecks: readonly PublishedCheck[] = [
	check({
		number: 71,
		id: 'gum-h2-r',
		quantity: 'resistance',
		item: 'five readings of voltage, current and phase',
		published: 127.732,
		unit: 'Ω',
		tolerance: { absolute: 0.0006 },
		source: 'gum-h2',
		had: 'looked-up',
		confidence: 0.98,
		inputs: simultaneousReadings,
		ours: (readings) => element(readings).value(0),
	}),
	check({
		number: 72,
		id: 'gum-h2-ur',
		quantity: 'standard uncertainty of the resistance',
		item: 'five readings of voltage, current and phase',
		published: 0.071,
		unit: 'Ω',
		tolerance: { absolute: 0.001 },
		source: 'gum-h2',
		had: 'looked-up',
		confidence: 0.98,
		inputs: simultaneousReadings,
		ours: (readings) => element(readings).uncertainty(0),
	}),
	check({
		number: 73,
		id: 'gum-h2-x',
		quantity: 'reactance',
		item: 'five readings of voltage, current and phase',
		published: 219.847,
		unit: 'Ω',
		tolerance: { absolute: 0.0006 },
		source: 'gum-h2',
		had: 'looked-up',
		confidence: 0.98,
		inputs: simultaneousReadings,
		ours: (readings) => element(readings).value(1),
	}),
	check({
		number: 74,
		id: 'gum-h2-ux',
		quantity: 'standard uncertainty of the reactance',
		item: 'five readings of voltage, current and phase',
		published: 0.295,
		unit: 'Ω',
		tolerance: { absolute: 0.001 },
		source: 'gum-h2',
		had: 'looked-up',
		confidence: 0.98,
		inputs: simultaneousReadings,
		ours: (readings) => element(readings).uncertainty(1),
	}),
	check({
		number: 75,
		id: 'gum-h2-z',
		quantity: 'impedance',
		item: 'five readings of voltage, current and phase',
		published: 254.26,
		unit: 'Ω',
		tolerance: { absolute: 0.0006 },
		source: 'gum-h2',
		had: 'looked-up',
		confidence: 0.98,
		inputs: simultaneousReadings,
		ours: (readings) => element(readings).value(2),
	}),
	check({
		number: 76,
		id: 'gum-h2-uz',
		quantity: 'standard uncertainty of the impedance',
		item: 'five readings of voltage, current and phase',
		published: 0.236,
		unit: 'Ω',
		tolerance: { absolute: 0.001 },
		source: 'gum-h2',
		had: 'looked-up',
		confidence: 0.98,
		inputs: simultaneousReadings,
		ours: (readings) => element(readings).uncertainty(2),
	}),
	check({
		number: 77,
		id: 'gum-h2-rxz',
		quantity: 'correlation of reactance and impedance',
		item: 'five readings of voltage, current and phase',
		published: 0.993,
		unit: '',
		tolerance: { absolute: 0.001 },
		source: 'gum-h2',
		had: 'from-memory',
		confidence: 0.95,
		inputs: simultaneousReadings,
		ours: (readings) => element(readings).correlation(1, 2),
	}),
	check({
		number: 78,
		id: 'gum-h1-u',
		quantity: 'standard uncertainty of an end gauge',
		item: 'six-line budget',
		published: 32,
		unit: 'nm',
		tolerance: { absolute: 0.5 },
		source: 'gum-h1',
		had: 'looked-up',
		confidence: 0.97,
		note: 'inputs of the budget from memory',
		inputs: { budget: endGauge },
		ours: ({ budget }) => endGaugeUncertainty(budget),
	}),
];
