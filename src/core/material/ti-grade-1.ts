import { celsius, fromCelsius, type Material } from './material.ts';

export const tiGrade1 = {
	id: 'ti-grade-1',
	designation: 'Ti grade 1',
	materialNumber: '3.7025',
	family: 'pure-metal',
	resistivity: {
		value: 4.5e-7,
		tolerance: 0.1,
		source: ['MILOSEVIC-TI'],
		note: '0.4512 for pure Ti; grade 1 is quoted 0.45-0.56; tolerance: oxygen content moves it 10 % or more',
	},
	resistanceRatio: {
		temperature: celsius(20, 100, 200, 300, 400, 500, 600, 700, 800),
		ratio: [1.0, 1.302, 1.696, 2.093, 2.478, 2.834, 3.144, 3.393, 3.563],
		source: ['MILOSEVIC-TI'],
		note: 'Pure titanium, valid 250-1100 K. Commercial grade 1 starts higher and has a slightly smaller ratio.',
	},
	density: { value: 4510, source: ['CRC-expansion'] },
	specificHeat: {
		temperature: celsius(27, 127, 327, 527, 727),
		value: [522, 551, 591, 633, 675],
		source: ['INCROPERA-A1'],
	},
	conductivity: {
		temperature: celsius(27, 127, 327, 527, 727),
		value: [21.9, 20.4, 19.4, 19.7, 20.7],
		source: ['INCROPERA-A1'],
		note: 'grade 1 commercial sheet is lower, about 16',
	},
	expansion: { value: 9.7e-6, to: fromCelsius(540), source: ['CRC-expansion', 'COMMON'] },
	emissivity: {
		oxidised: { value: 0.5, min: 0.4, max: 0.6, source: ['DMIC-177'], note: 'oxidised at about 540 °C' },
		clean: {
			value: 0.15,
			min: 0.08,
			max: 0.24,
			source: ['PARKER-ABBOTT', 'OURS'],
			note: 'computed for a clean smooth metal',
		},
	},
	melting: { from: fromCelsius(1668), to: fromCelsius(1668), source: ['CRC-elements'] },
	limit: {
		value: fromCelsius(425),
		source: ['COMMON'],
		note: 'long service; short heating to 600 °C; oxygen embrittlement above',
	},
	elementMaximum: {
		value: fromCelsius(425),
		source: ['COMMON'],
		note: 'long service; short heating to 600 °C; oxygen embrittlement above',
	},
	thinWireLimit: {
		rows: [{ upTo: 1e-3, value: fromCelsius(425) }],
		source: ['COMMON'],
	},
	hazards: ['burns-when-white-hot'],
} as const satisfies Material;
