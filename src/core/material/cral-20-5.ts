import { celsius, fromCelsius, type Material } from './material.ts';

export const cral205 = {
	id: 'cral-20-5',
	designation: 'CrAl 20 5',
	materialNumber: '1.4767',
	family: 'iron-chromium-aluminium',
	resistivity: { value: 1.37e-6, tolerance: 0.05, source: ['DIN17470'], note: 'Inside the looked-up ASTM ranges.' },
	resistanceRatio: {
		temperature: celsius(20, 100, 200, 300, 400, 500, 600, 700, 800, 900, 1000, 1100, 1200),
		ratio: [1, 1.002, 1.007, 1.014, 1.024, 1.036, 1.056, 1.064, 1.07, 1.074, 1.078, 1.081, 1.084],
		source: ['GOST12766'],
		note: 'Row for a 23Cr-5Al alloy (0Cr23Al5 / Kh23Yu5T); nearest standard composition to 20-5.',
	},
	density: { value: 7200, source: ['DIN17470'] },
	specificHeat: {
		temperature: celsius(20, 200, 400, 600, 800, 1000, 1200),
		value: [460, 560, 630, 750, 710, 720, 740],
		source: ['COMMON'],
		note: 'Shape (hump near 600 °C, magnetic transition) is physical; the numbers circulate only in trade literature.',
	},
	conductivity: {
		temperature: celsius(20, 100, 200, 300, 400, 500, 600, 700, 800, 900, 1000),
		value: [11.1, 12.3, 13.8, 15.3, 16.8, 18.2, 19.7, 21.1, 22.5, 23.9, 25.3],
		source: ['ORNL-FECRAL'],
		note: 'Same fit as for 25-5 (21Cr-5Al-3Mo).',
	},
	expansion: { value: 1.5e-5, to: fromCelsius(1000), source: ['GBT1234'], note: '0Cr23Al5' },
	emissivity: {
		oxidised: {
			value: 0.7,
			min: 0.5,
			max: 0.8,
			source: ['COMMON'],
			note: 'design value for a fully oxidised element; a young scale is lower',
		},
		clean: {
			value: 0.25,
			min: 0.15,
			max: 0.5,
			source: ['OURS', 'PARKER-ABBOTT'],
			note: 'bright or straw-coloured, before the first firing',
		},
	},
	melting: { from: fromCelsius(1500), to: fromCelsius(1500), source: ['GBT1234', 'DIN17470'] },
	limit: { value: fromCelsius(1200), source: ['WORKSHOP'] },
	elementMaximum: { value: fromCelsius(1200), source: ['DIN17470'] },
	thinWireLimit: {
		rows: [
			{ upTo: 0.4e-3, value: fromCelsius(925) },
			{ upTo: 0.95e-3, value: fromCelsius(1025) },
			{ upTo: 3e-3, value: fromCelsius(1100) },
		],
		source: ['COMMON'],
	},
	hazards: ['brittle-after-use'],
} as const satisfies Material;
