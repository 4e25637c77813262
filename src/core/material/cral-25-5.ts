import { celsius, fromCelsius, type Material } from './material.ts';

export const cral255 = {
	id: 'cral-25-5',
	designation: 'CrAl 25 5',
	materialNumber: '1.4765',
	family: 'iron-chromium-aluminium',
	resistivity: { value: 1.44e-6, tolerance: 0.05, source: ['DIN17470'], note: 'Inside both looked-up ranges below.' },
	resistanceRatio: {
		temperature: celsius(20, 100, 200, 300, 400, 500, 600, 700, 800, 900, 1000, 1100, 1200),
		ratio: [1, 1.002, 1.005, 1.008, 1.013, 1.021, 1.03, 1.038, 1.04, 1.042, 1.044, 1.046, 1.047],
		source: ['GBT1234'],
		note: 'Row 0Cr25Al5.',
	},
	density: { value: 7100, source: ['GBT1234', 'DIN17470'] },
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
		note: 'Fit for a 21Cr-5Al-3Mo alloy, T in K: k = 6.569 + 1.5628e-2 T - 7.223e-7 T^2. 25Cr-5Al should lie within about 15 %.',
	},
	expansion: { value: 1.6e-5, to: fromCelsius(1000), source: ['GBT1234'] },
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
	elementMaximum: { value: fromCelsius(1300), source: ['DIN17470'], note: 'Wire of 1 mm and more.' },
	thinWireLimit: {
		rows: [
			{ upTo: 0.4e-3, value: fromCelsius(925) },
			{ upTo: 0.95e-3, value: fromCelsius(1050) },
			{ upTo: 3e-3, value: fromCelsius(1175) },
		],
		source: ['COMMON'],
	},
	hazards: ['brittle-after-use'],
} as const satisfies Material;
