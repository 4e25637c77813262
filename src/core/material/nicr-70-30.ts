import { celsius, fromCelsius, type Material } from './material.ts';

export const nicr7030 = {
	id: 'nicr-70-30',
	designation: 'NiCr 70 30',
	materialNumber: '2.4658',
	family: 'nickel-chromium',
	resistivity: { value: 1.18e-6, tolerance: 0.05, source: ['GBT1234'], note: '1.18 ± 0.05' },
	resistanceRatio: {
		temperature: celsius(20, 100, 200, 300, 400, 500, 600, 700, 800, 900, 1000, 1100, 1200),
		ratio: [1, 1.007, 1.016, 1.028, 1.038, 1.044, 1.036, 1.03, 1.028, 1.029, 1.033, 1.037, 1.043],
		source: ['GBT1234'],
		note: 'Row Cr30Ni70 (slowly cooled reference)',
	},
	density: { value: 8100, source: ['GBT1234'] },
	specificHeat: {
		temperature: celsius(27, 127, 327, 527),
		value: [461, 527, 576, 598],
		source: ['GBT1234', 'INCROPERA-A1', 'OURS'],
		note: 'value at 20 °C, with the rise of NiCr 80 20',
	},
	conductivity: {
		temperature: celsius(27, 127, 327, 527, 1027),
		value: [12.56, 14.65, 16.75, 21.98, 32.45],
		source: ['GBT1234', 'INCROPERA-A1', 'OURS'],
		note: 'value at 20 °C, with the rise of NiCr 80 20',
	},
	expansion: { value: 1.71e-5, to: fromCelsius(1000), source: ['GBT1234'] },
	emissivity: {
		oxidised: { value: 0.88, min: 0.65, max: 0.95, source: ['INSTREF-14.16'], note: 'taken over from NiCr 80 20' },
		clean: { value: 0.25, min: 0.15, max: 0.65, source: ['OURS', 'PARKER-ABBOTT'], note: 'taken over from NiCr 80 20' },
	},
	melting: { from: fromCelsius(1380), to: fromCelsius(1380), source: ['GBT1234'] },
	limit: { value: fromCelsius(1100), source: ['WORKSHOP'] },
	elementMaximum: { value: fromCelsius(1250), source: ['GBT1234'] },
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
