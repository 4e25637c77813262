import { rootBetween } from '#core/numeric/root.ts';
import { blackBodyChromaticity, draperPoint, encodeSrgb, glowLuminance, linearSrgb } from '#core/thermal/glow.ts';
import { boltzmannConstant, planckConstant, speedOfLight } from '#core/thermal/physical-constants.ts';
import { check, type PublishedCheck } from './check.ts';

const locus = {
	source: 'kelly',
	had: 'from-memory',
	note: 'from memory, and recomputed from the looked-up CIE 1931 table',
} as const;
const oldTable = {
	source: 'robertson',
	had: 'looked-up',
	note: 'with the second radiation constant of that time, 1.4388·10⁻² m·K',
} as const;

interface OldBody {
	readonly temperature: number;
	/** second radiation constant the table was made with, in m·K */
	readonly secondConstant: number;
}

/** The temperature that gives the same spectrum with today's second radiation constant. */
function todaysKelvin({ temperature, secondConstant }: OldBody): number {
	return (temperature * ((planckConstant * speedOfLight) / boltzmannConstant)) / secondConstant;
}

function chromaticityXy(temperature: number): readonly number[] {
	const { x, y } = blackBodyChromaticity(temperature);
	return [x, y];
}

/** CIE 1960: u = 4x/(−2x + 12y + 3), v = 6y/(−2x + 12y + 3). */
function chromaticityUv(body: OldBody): readonly number[] {
	const { x, y } = blackBodyChromaticity(todaysKelvin(body));
	const share = -2 * x + 12 * y + 3;
	return [(4 * x) / share, (6 * y) / share];
}

/** XYZ of linear channels, by Cramer's rule from the core's matrix. */
function tristimulusOf(channels: readonly number[]): readonly number[] {
	const columns = [
		linearSrgb({ X: 1, Y: 0, Z: 0 }),
		linearSrgb({ X: 0, Y: 1, Z: 0 }),
		linearSrgb({ X: 0, Y: 0, Z: 1 }),
	];
	const whole = determinant(columns);
	return columns.map(
		(_, place) => determinant(columns.map((column, index) => (index === place ? channels : column))) / whole,
	);
}

function determinant([a = [], b = [], c = []]: readonly (readonly number[])[]): number {
	const at = (column: readonly number[], row: number) => column[row] ?? 0;
	return [0, 1, 2].reduce((sum, row) => {
		const [next, last] = [(row + 1) % 3, (row + 2) % 3];
		return sum + at(a, row) * (at(b, next) * at(c, last) - at(b, last) * at(c, next));
	}, 0);
}

/** Colour and brightness of glow. */
export const glowChecks: readonly PublishedCheck[] = [
	check({
		number: 43,
		id: 'planck-uv-600-mired',
		quantity: 'chromaticity u, v (CIE 1960) of a black body',
		item: '1666.667 K',
		published: [0.33724, 0.36051],
		unit: '',
		tolerance: { absolute: 2e-5 },
		...oldTable,
		confidence: 0.98,
		inputs: { temperature: 1666.667, secondConstant: 1.4388e-2 },
		ours: (body) => chromaticityUv(body),
	}),
	check({
		number: 44,
		id: 'planck-uv-500-mired',
		quantity: 'chromaticity u, v (CIE 1960) of a black body',
		item: '2000 K',
		published: [0.30505, 0.35907],
		unit: '',
		tolerance: { absolute: 2e-5 },
		...oldTable,
		confidence: 0.98,
		inputs: { temperature: 2000, secondConstant: 1.4388e-2 },
		ours: (body) => chromaticityUv(body),
	}),
	check({
		number: 45,
		id: 'planck-uv-350-mired',
		quantity: 'chromaticity u, v (CIE 1960) of a black body',
		item: '2857.143 K',
		published: [0.25591, 0.34951],
		unit: '',
		tolerance: { absolute: 2e-5 },
		...oldTable,
		confidence: 0.98,
		inputs: { temperature: 2857.143, secondConstant: 1.4388e-2 },
		ours: (body) => chromaticityUv(body),
	}),
	check({
		number: 46,
		id: 'planck-uv-150-mired',
		quantity: 'chromaticity u, v (CIE 1960) of a black body',
		item: '6666.667 K',
		published: [0.19962, 0.30921],
		unit: '',
		tolerance: { absolute: 2e-5 },
		...oldTable,
		confidence: 0.98,
		inputs: { temperature: 6666.667, secondConstant: 1.4388e-2 },
		ours: (body) => chromaticityUv(body),
	}),
	check({
		number: 47,
		id: 'planck-xy-1000',
		quantity: 'chromaticity x, y of a black body',
		item: '1000 K',
		published: [0.6528, 0.3444],
		unit: '',
		tolerance: { absolute: 0.00015 },
		...locus,
		confidence: 0.97,
		inputs: { temperature: 1000 },
		ours: ({ temperature }) => chromaticityXy(temperature),
	}),
	check({
		number: 48,
		id: 'planck-xy-1500',
		quantity: 'chromaticity x, y of a black body',
		item: '1500 K',
		published: [0.5857, 0.3931],
		unit: '',
		tolerance: { absolute: 0.00015 },
		...locus,
		confidence: 0.97,
		inputs: { temperature: 1500 },
		ours: ({ temperature }) => chromaticityXy(temperature),
	}),
	check({
		number: 49,
		id: 'planck-xy-2000',
		quantity: 'chromaticity x, y of a black body',
		item: '2000 K',
		published: [0.5267, 0.4133],
		unit: '',
		tolerance: { absolute: 0.00015 },
		...locus,
		confidence: 0.97,
		inputs: { temperature: 2000 },
		ours: ({ temperature }) => chromaticityXy(temperature),
	}),
	check({
		number: 50,
		id: 'planck-xy-2856',
		quantity: 'chromaticity x, y of a black body',
		item: '2856 K',
		published: [0.4475, 0.4074],
		unit: '',
		tolerance: { absolute: 0.00015 },
		...locus,
		confidence: 0.97,
		inputs: { temperature: 2856 },
		ours: ({ temperature }) => chromaticityXy(temperature),
	}),
	check({
		number: 51,
		id: 'planck-xy-6500',
		quantity: 'chromaticity x, y of a black body',
		item: '6500 K',
		published: [0.3135, 0.3237],
		unit: '',
		tolerance: { absolute: 0.00015 },
		...locus,
		confidence: 0.97,
		inputs: { temperature: 6500 },
		ours: ({ temperature }) => chromaticityXy(temperature),
	}),
	check({
		number: 55,
		id: 'cie-a-xy',
		quantity: 'chromaticity x, y of CIE standard illuminant A',
		item: '2848 K with the constant of 1931, 1.435·10⁻² m·K',
		published: [0.44758, 0.40745],
		unit: '',
		tolerance: { absolute: 0.00015 },
		source: 'cie-15',
		had: 'looked-up',
		confidence: 0.99,
		inputs: { temperature: 2848, secondConstant: 1.435e-2 },
		ours: (body) => chromaticityXy(todaysKelvin(body)),
	}),
	check({
		number: 57,
		id: 'srgb-white',
		quantity: 'linear sRGB of the white of daylight D65',
		item: 'X 0.9505, Y 1, Z 1.089',
		published: [1, 1, 1],
		unit: '',
		tolerance: { absolute: 0.001 },
		source: 'srgb',
		had: 'looked-up',
		confidence: 0.99,
		inputs: { X: 0.9505, Y: 1, Z: 1.089 },
		ours: (white) => linearSrgb(white),
	}),
	check({
		number: 58,
		id: 'srgb-encode-018',
		quantity: 'sRGB channel, encoded',
		item: 'linear 0.18',
		published: 0.4613561,
		unit: '',
		tolerance: { absolute: 1e-6 },
		source: 'srgb',
		had: 'looked-up',
		confidence: 0.99,
		inputs: { linear: 0.18 },
		ours: ({ linear }) => encodeSrgb(linear),
	}),
	check({
		number: 59,
		id: 'srgb-encode-half',
		quantity: 'sRGB channel, encoded',
		item: 'linear 0.5',
		published: 0.735357,
		unit: '',
		tolerance: { absolute: 1e-6 },
		source: 'srgb',
		had: 'derived',
		confidence: 0.99,
		inputs: { linear: 0.5 },
		ours: ({ linear }) => encodeSrgb(linear),
	}),
	check({
		number: 60,
		id: 'srgb-decode-half',
		quantity: 'sRGB channel, decoded',
		item: 'encoded 0.5',
		published: 0.214041,
		unit: '',
		tolerance: { absolute: 1e-6 },
		source: 'srgb',
		had: 'derived',
		confidence: 0.99,
		inputs: { encoded: 0.5 },
		ours: ({ encoded }) => rootBetween((linear) => encodeSrgb(linear) - encoded, { from: 0, to: 1, tolerance: 1e-12 }),
	}),
	check({
		number: 61,
		id: 'srgb-knee',
		quantity: 'sRGB channel, encoded at the knee',
		item: 'linear 0.0031308',
		published: 0.0404499,
		unit: '',
		tolerance: { absolute: 1e-6 },
		source: 'srgb',
		had: 'looked-up',
		confidence: 0.99,
		inputs: { linear: 0.0031308 },
		ours: ({ linear }) => encodeSrgb(linear),
	}),
	check({
		number: 62,
		id: 'srgb-red-xyz',
		quantity: 'XYZ of full sRGB red',
		item: 'channels 1, 0, 0',
		published: [0.4124, 0.2126, 0.0193],
		unit: '',
		tolerance: { absolute: 0.0001 },
		source: 'srgb',
		had: 'looked-up',
		confidence: 0.99,
		note: 'our matrix from XYZ to sRGB, inverted',
		inputs: { rgb: [1, 0, 0] },
		ours: ({ rgb }) => tristimulusOf(rgb),
	}),
	check({
		number: 69,
		id: 'draper',
		quantity: 'first red seen in the dark',
		item: 'in the dark',
		published: 798,
		unit: 'K',
		tolerance: { absolute: 1 },
		source: 'draper',
		had: 'looked-up',
		confidence: 0.95,
		note: 'a visual threshold, not a sharp constant: 525 C = 798 K',
		inputs: {},
		ours: () => draperPoint,
	}),
	check({
		number: 70,
		id: 'draper-luminance',
		quantity: 'luminance of a black body at the Draper point',
		item: '798.15 K, black',
		published: 0.0076,
		unit: 'cd/m²',
		tolerance: { relative: 0.02 },
		source: 'cie-planck',
		had: 'derived',
		confidence: 0.97,
		inputs: { temperature: 798.15 },
		ours: ({ temperature }) => glowLuminance(temperature, 1),
	}),
];
