import { celsius, fromCelsius, type Material } from './material.ts';

export const ni992 = {
	id: 'ni-99-2',
	designation: 'Ni 99.2',
	materialNumber: '2.4066',
	family: 'pure-metal',
	resistivity: {
		value: 9e-8,
		tolerance: 0.15,
		source: ['COMMON'],
		note: 'commercial nickel; other data spread 0.08–0.10 µΩ·m; tolerance: purity decides: about ±15 %',
	},
	resistanceRatio: {
		temperature: celsius(20, 100, 200, 300, 358, 400, 500, 600, 700, 800, 900, 1000),
		ratio: [1.0, 1.3912, 2.0018, 2.8172, 3.3508, 3.6457, 4.0777, 4.4265, 4.7576, 5.0656, 5.3659, 5.6662],
		source: ['CRC-resistivity', 'KAYE-LABY', 'OURS'],
		doubtfulAbove: fromCelsius(600),
		note: 'Pure nickel with a constant residual resistivity of 0.0207 µΩ·m added, so that ρ₂₀ is that of Ni 99.2; knee at the Curie point, extrapolated above 627 °C.',
	},
	density: { value: 8900, source: ['INCROPERA-A1'] },
	specificHeat: {
		temperature: celsius(20, 100, 200, 300, 358, 400, 500, 600, 700, 800, 900, 1000),
		value: [440, 474, 516, 573, 679, 633, 527, 535, 545, 557, 571, 584],
		source: ['NIST-JANAF'],
		note: 'sharp peak at the Curie point (358 °C): the 300-400 °C entries lie on its flanks',
	},
	conductivity: {
		temperature: celsius(27, 127, 327, 527, 727, 927),
		value: [90.7, 80.2, 65.6, 67.6, 71.8, 76.2],
		source: ['INCROPERA-A1'],
	},
	expansion: {
		value: 1.34e-5,
		to: fromCelsius(100),
		source: ['CRC-expansion'],
		note: 'about 15.5e-6 mean for 20-600 °C (common practice)',
	},
	emissivity: {
		oxidised: {
			value: 0.45,
			min: 0.37,
			max: 0.57,
			source: ['INSTREF-14.16', 'INCROPERA-A11'],
			note: 'about 400 °C, between the two sources',
		},
		clean: {
			value: 0.06,
			min: 0.045,
			max: 0.19,
			source: ['INSTREF-14.16'],
			note: 'unoxidised: 0.06 at 100 °C, 0.19 at 1000 °C',
		},
	},
	melting: { from: fromCelsius(1435), to: fromCelsius(1446), source: ['COMMON'] },
	limit: { value: fromCelsius(600), source: ['COMMON'], note: 'oxidises slowly, no sulphur' },
	elementMaximum: { value: fromCelsius(600), source: ['COMMON'], note: 'oxidises slowly, no sulphur' },
	thinWireLimit: {
		rows: [{ upTo: 1e-3, value: fromCelsius(500) }],
		source: ['COMMON'],
	},
	hazards: [],
} as const satisfies Material;
