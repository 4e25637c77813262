import { celsius, fromCelsius, type Material } from './material.ts';

export const nicr8020 = {
	id: 'nicr-80-20',
	designation: 'NiCr 80 20',
	materialNumber: '2.4869',
	family: 'nickel-chromium',
	resistivity: { value: 1.09e-6, tolerance: 0.05, source: ['GBT1234'], note: '1.09 ± 0.05 for thin annealed wire' },
	resistanceRatio: {
		temperature: celsius(20, 100, 200, 300, 400, 500, 600, 700, 800, 900, 1000, 1100, 1200),
		ratio: [1, 1.007, 1.015, 1.022, 1.028, 1.034, 1.038, 1.042, 1.045, 1.048, 1.052, 1.058, 1.063],
		source: ['GBT1234', 'CRC-wire', 'OURS'],
		note: 'For thin wire as bought (annealed and cooled fast, ρ₂₀ = 1.09). Built as follows: above 700 °C the absolute resistivity of GB/T 1234 (1.13 × ratio, slowly cooled) divided by 1.09; below 100 °C the CRC slope (9.3e-5 /K); smooth in between. If the wire is held for minutes at 350-550 °C an ordering reaction (K-state) adds up to 0.03 more. Matches the commonly circulated rounded factors (1.01 at 100 ... 1.04 at 600-900, 1.05 at 1000, 1.06 at 1100) within 0.01.',
	},
	density: { value: 8400, source: ['GBT1234', 'INCROPERA-A1'] },
	specificHeat: {
		temperature: celsius(27, 127, 327, 527),
		value: [420, 480, 525, 545],
		source: ['INCROPERA-A1'],
		note: 'tabulated at 300, 400, 600, 800 K',
	},
	conductivity: {
		temperature: celsius(27, 127, 327, 527, 1027),
		value: [12, 14, 16, 21, 31],
		source: ['INCROPERA-A1'],
		note: 'tabulated at 300, 400, 600, 800 K; the last point is extrapolated at 0.02 W/(m·K) per K',
	},
	expansion: { value: 1.8e-5, to: fromCelsius(1000), source: ['GBT1234'] },
	emissivity: {
		oxidised: {
			value: 0.88,
			min: 0.65,
			max: 0.95,
			source: ['INSTREF-14.16'],
			note: '0.87 at 100 and 600 °C, 0.89 at 1300 °C; two families of data disagree, hence the range',
		},
		clean: {
			value: 0.25,
			min: 0.15,
			max: 0.65,
			source: ['OURS', 'PARKER-ABBOTT'],
			note: 'bright annealed, before the first red heat',
		},
	},
	melting: { from: fromCelsius(1400), to: fromCelsius(1400), source: ['GBT1234', 'INCROPERA-A1'] },
	limit: { value: fromCelsius(1100), source: ['WORKSHOP'] },
	elementMaximum: { value: fromCelsius(1200), source: ['GBT1234', 'DIN17470'] },
	thinWireLimit: {
		rows: [
			{ upTo: 0.4e-3, value: fromCelsius(925) },
			{ upTo: 0.95e-3, value: fromCelsius(1000) },
			{ upTo: 3e-3, value: fromCelsius(1075) },
		],
		source: ['COMMON'],
	},
	hazards: [],
} as const satisfies Material;
