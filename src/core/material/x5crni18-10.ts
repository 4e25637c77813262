import { celsius, fromCelsius, type Material } from './material.ts';

export const x5crni1810 = {
	id: 'x5crni18-10',
	designation: 'X5CrNi18-10',
	materialNumber: '1.4301',
	family: 'stainless-steel',
	resistivity: {
		value: 7.3e-7,
		tolerance: 0.06,
		source: ['EN10088-1'],
		note: 'tolerance: no standard limits it; composition alone moves it 6 %',
	},
	resistanceRatio: {
		temperature: celsius(20, 100, 200, 300, 400, 500, 600, 700, 800, 900),
		ratio: [1.0, 1.126, 1.246, 1.337, 1.413, 1.487, 1.574, 1.655, 1.705, 1.755],
		source: ['CINCOTTI', 'ASM-STAINLESS', 'OURS'],
		doubtfulAbove: fromCelsius(650),
		note: '20-600 °C: cubic fit normalised at 20 °C. 700-900 °C: own flattening continuation, low confidence. ASM endpoint 116/72 = 1.61 at 650 °C supports it (fit gives 1.626).',
	},
	density: { value: 7900, source: ['EN10088-1', 'INCROPERA-A1'] },
	specificHeat: {
		temperature: celsius(27, 127, 327, 527, 727, 927, 1227),
		value: [477, 515, 557, 582, 611, 640, 682],
		source: ['INCROPERA-A1'],
		note: '300-1500 K',
	},
	conductivity: {
		temperature: celsius(27, 127, 327, 527, 727, 927, 1227),
		value: [14.9, 16.6, 19.8, 22.6, 25.4, 28.0, 31.7],
		source: ['INCROPERA-A1'],
	},
	expansion: { value: 1.8e-5, to: fromCelsius(500), source: ['EN10088-1'] },
	emissivity: {
		oxidised: {
			value: 0.7,
			min: 0.6,
			max: 0.85,
			source: ['INCROPERA-A11', 'MILLS'],
			note: 'highly oxidised: 0.67 at 327 °C, 0.70 at 527 °C, 0.76 at 727 °C',
		},
		clean: { value: 0.17, min: 0.1, max: 0.3, source: ['INCROPERA-A11'], note: 'polished' },
	},
	melting: { from: fromCelsius(1400), to: fromCelsius(1450), source: ['COMMON'] },
	limit: { value: fromCelsius(700), source: ['WORKSHOP'] },
	elementMaximum: {
		value: fromCelsius(925),
		source: ['SSINA'],
		note: '1700 °F, continuous; intermittent service 870 °C (from memory)',
	},
	thinWireLimit: {
		rows: [{ upTo: 1e-3, value: fromCelsius(700) }],
		source: ['COMMON'],
	},
	hazards: [],
} as const satisfies Material;
