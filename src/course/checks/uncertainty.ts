import { Random } from '#core/numeric/random.ts';
import { check, type PublishedCheck } from './check.ts';
import { readFormula } from './read-formula.ts';

type Draw = (next: () => number) => number;

/** A seeded row of numbers, so that the page prints the same figures each time. */
function drawn(draws: number, draw: Draw): Float64Array {
	const random = new Random('how right is it');
	const next = () => random.next();
	return Float64Array.from({ length: draws }, () => draw(next));
}

function meanOf(draws: number, draw: Draw): number {
	return drawn(draws, draw).reduce((sum, value) => sum + value, 0) / draws;
}

/** A normal draw from two even ones, after Box and Muller, 1958. */
function boxMuller(next: () => number): number {
	return Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
}

/** Half the width of the middle 95 % of a sum of four such draws. */
function halfWidth95(draws: number, draw: Draw): number {
	const sums = drawn(draws, (next) => draw(next) + draw(next) + draw(next) + draw(next)).sort();
	const at = (share: number) => sums[Math.round(share * (draws - 1))] ?? NaN;
	return (at(0.975) - at(0.025)) / 2;
}

/** Random draws. */
export const uncertaintyChecks: readonly PublishedCheck[] = [
	check({
		number: 79,
		id: 'jcgm101-normal',
		quantity: '95 % half-width of a sum, by random draws',
		item: 'four normal inputs, mean 0, standard deviation 1',
		published: 3.92,
		unit: '',
		tolerance: { absolute: 0.02 },
		source: 'jcgm-101-normal',
		had: 'looked-up',
		confidence: 0.98,
		inputs: { draws: 400_000 },
		ours: ({ draws }) => halfWidth95(draws, boxMuller),
	}),
	check({
		number: 80,
		id: 'jcgm101-rect',
		quantity: '95 % half-width of a sum, by random draws',
		item: 'four rectangular inputs, mean 0, standard deviation 1',
		published: 3.88,
		unit: '',
		tolerance: { absolute: 0.02 },
		source: 'jcgm-101-rectangular',
		had: 'looked-up',
		confidence: 0.98,
		note: 'GUM first order gives 3.92',
		inputs: { draws: 400_000 },
		ours: ({ draws }) => halfWidth95(draws, (next) => Math.sqrt(3) * (2 * next() - 1)),
	}),
	check({
		number: 82,
		id: 'npl-log',
		quantity: 'mean of ln X, by random draws',
		item: 'X uniform, 0.1 to 1.1',
		published: -0.665,
		unit: '',
		tolerance: { absolute: 0.004 },
		source: 'npl',
		had: 'looked-up',
		confidence: 0.95,
		note: 'first order gives −0.511 and fails here',
		inputs: { draws: 400_000 },
		ours: ({ draws }) => meanOf(draws, (next) => Math.log(0.1 + next())),
	}),
	check({
		number: 81,
		id: 'nist-tn1900-e13',
		quantity: 'thermal expansion coefficient from two lengths',
		item: '1.4999 m at 288.15 K, 1.5021 m at 373.10 K',
		published: 1.7266e-5,
		unit: 'K⁻¹',
		tolerance: { relative: 0.0001 },
		source: 'nist-1900',
		had: 'looked-up',
		confidence: 0.9,
		note: 'read by our formula reader',
		inputs: { Lo: 1.4999, L: 1.5021, To: 288.15, T: 373.1 },
		ours: (values) => readFormula('(L-Lo)/(Lo*(T-To))', values),
	}),
];
