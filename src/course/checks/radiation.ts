import { rootBetween } from '#core/numeric/root.ts';
import { blackBodyRadiance } from '#core/thermal/glow.ts';
import { boltzmannConstant, planckConstant, speedOfLight, stefanBoltzmann } from '#core/thermal/physical-constants.ts';
import { radiatedPower } from '#core/thermal/radiation.ts';
import { check, type PublishedCheck } from './check.ts';

/** b = h c/(k x), with x the zero of 5(1 − e^−x) − x. */
function wienDisplacement(): number {
	const x = rootBetween((at) => 5 * (1 - Math.exp(-at)) - at, { from: 4, to: 6, tolerance: 1e-14 });
	return (planckConstant * speedOfLight) / (boltzmannConstant * x);
}

/** Radiation and its constants. */
export const radiationChecks: readonly PublishedCheck[] = [
	check({
		number: 63,
		id: 'sigma-sb',
		quantity: 'Stefan-Boltzmann constant',
		item: 'SI of 2019',
		published: 5.670374419e-8,
		unit: 'W/(m²·K⁴)',
		tolerance: { relative: 1e-9 },
		source: 'codata',
		had: 'looked-up',
		confidence: 1,
		inputs: {},
		ours: () => stefanBoltzmann,
	}),
	check({
		number: 64,
		id: 'c2',
		quantity: 'second radiation constant',
		item: 'h c/k',
		published: 0.01438776877,
		unit: 'm·K',
		tolerance: { relative: 1e-9 },
		source: 'codata',
		had: 'looked-up',
		confidence: 1,
		inputs: {},
		ours: () => (planckConstant * speedOfLight) / boltzmannConstant,
	}),
	check({
		number: 65,
		id: 'wien-b',
		quantity: 'Wien displacement constant',
		item: 'SI of 2019',
		published: 0.002897771955,
		unit: 'm·K',
		tolerance: { relative: 1e-9 },
		source: 'codata',
		had: 'looked-up',
		confidence: 1,
		note: 'from the zero of 5(1 − e^−x) = x and our constants',
		inputs: {},
		ours: () => wienDisplacement(),
	}),
	check({
		number: 66,
		id: 'planck-800k-4um',
		quantity: 'black-body spectral radiance',
		item: '800 K, 4 µm',
		published: 1311694129.74309,
		unit: 'W/(m²·sr·m)',
		tolerance: { relative: 1e-6 },
		source: 'planck-example',
		had: 'looked-up',
		confidence: 0.98,
		inputs: { temperature: 800, wavelength: 4e-6 },
		ours: ({ wavelength, temperature }) => blackBodyRadiance(wavelength, temperature),
	}),
	check({
		number: 67,
		id: 'rad-400k',
		quantity: 'black-body emissive power at 400 K',
		item: '400 K',
		published: 1451.614,
		unit: 'W/m²',
		tolerance: { relative: 1e-5 },
		source: 'bergman',
		had: 'looked-up',
		confidence: 0.99,
		inputs: { temperature: 400 },
		ours: ({ temperature }) => radiatedPower({ emissivity: 1, area: 1, temperature }, 1),
	}),
	check({
		number: 68,
		id: 'rad-net',
		quantity: 'net radiation of a grey surface',
		item: 'ε 0.85, 400 K to 305 K',
		published: 816.782,
		unit: 'W/m²',
		tolerance: { relative: 1e-5 },
		source: 'bergman',
		had: 'looked-up',
		confidence: 0.99,
		inputs: { emissivity: 0.85, temperature: 400, around: 305 },
		ours: ({ around, ...surface }) => radiatedPower({ ...surface, area: 1 }, around),
	}),
];
