import { celsius, fromCelsius, type Material } from './material.ts';

export const cuEtp = {
	id: 'cu-etp',
	designation: 'Cu-ETP',
	materialNumber: 'CW004A',
	family: 'pure-metal',
	resistivity: {
		value: 1 / 58e6,
		tolerance: 0.01,
		source: ['IEC60028'],
		note: 'annealed copper of 100 % IACS: 1/58 Ω·mm²/m; tolerance: annealed wire is 100–101 % IACS; the diameter tolerance dominates',
	},
	resistanceRatio: {
		temperature: celsius(20, 100, 200, 300, 400, 500, 600, 700, 800, 900, 1000),
		ratio: [1.0, 1.32, 1.73, 2.145, 2.572, 3.013, 3.471, 3.951, 4.456, 4.989, 5.555],
		source: ['MATULA', 'CRC-wire', 'CRC-resistivity'],
		note: 'to 127 °C looked up, above from memory of the same recommended values',
	},
	density: { value: 8890, source: ['IEC60028'] },
	specificHeat: {
		temperature: celsius(20, 100, 200, 300, 400, 500, 600, 800, 1000),
		value: [384, 395, 406, 416, 423, 430, 438, 460, 499],
		source: ['NIST-JANAF'],
	},
	conductivity: {
		temperature: celsius(27, 127, 327, 527, 727, 927),
		value: [401, 393, 379, 366, 352, 339],
		source: ['INCROPERA-A1'],
	},
	expansion: {
		value: 1.7e-5,
		to: fromCelsius(100),
		source: ['IEC60028'],
		note: 'from memory of the standard; CRC 16.5e-6 near 25 °C; 17.7e-6 for 20-300 °C',
	},
	emissivity: {
		oxidised: { value: 0.6, min: 0.5, max: 0.8, source: ['INSTREF-14.16', 'INCROPERA-A11'] },
		clean: { value: 0.03, min: 0.02, max: 0.04, source: ['INSTREF-14.16', 'INCROPERA-A11'], note: 'polished' },
	},
	melting: { from: fromCelsius(1084.62), to: fromCelsius(1084.62), source: ['CRC-elements'] },
	limit: { value: fromCelsius(200), source: ['COMMON'], note: 'tarnishes above 150 °C, scale flakes above 300 °C' },
	elementMaximum: {
		value: fromCelsius(200),
		source: ['COMMON'],
		note: 'tarnishes above 150 °C, scale flakes above 300 °C',
	},
	thinWireLimit: {
		rows: [{ upTo: 1e-3, value: fromCelsius(200) }],
		source: ['COMMON'],
	},
	hazards: ['scales-off'],
} as const satisfies Material;
