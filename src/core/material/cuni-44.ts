import { celsius, fromCelsius, type Material } from './material.ts';

export const cuni44 = {
	id: 'cuni-44',
	designation: 'CuNi 44',
	materialNumber: '2.0842',
	family: 'copper-nickel',
	resistivity: { value: 4.9e-7, tolerance: 0.05, source: ['JISC2521', 'DIN17471', 'ENC-CUNI'] },
	resistanceRatio: {
		temperature: celsius(20, 100, 200, 300, 400, 500, 600),
		ratio: [1, 0.994, 0.992, 0.993, 0.997, 1.006, 1.02],
		source: ['CRC-wire', 'OURS', 'COMMON'],
		note: 'The 100 °C point is 60Cu-40Ni; above it only trade curves are known: flat within 2 % to 600 °C.',
	},
	density: { value: 8900, source: ['DIN17471'] },
	specificHeat: {
		temperature: celsius(20),
		value: [384],
		source: ['INCROPERA-A1'],
		note: 'one value near room temperature is known',
	},
	conductivity: {
		temperature: celsius(20),
		value: [23],
		source: ['INCROPERA-A1'],
		note: 'one value near room temperature is known',
	},
	expansion: { value: 1.49e-5, to: fromCelsius(400), source: ['DIN17471'], note: '13.5e-6 for 20-100 °C' },
	emissivity: {
		oxidised: {
			value: 0.55,
			min: 0.4,
			max: 0.6,
			source: ['COMMON'],
			note: 'from memory; an oxidised nickel-copper alloy in INSTREF-14.16 has 0.43',
		},
		clean: { value: 0.15, min: 0.1, max: 0.2, source: ['COMMON'], note: 'bright wire, from memory' },
	},
	melting: { from: fromCelsius(1220), to: fromCelsius(1280), source: ['INCROPERA-A1', 'DIN17471'] },
	limit: { value: fromCelsius(400), source: ['WORKSHOP'] },
	elementMaximum: { value: fromCelsius(600), source: ['DIN17471'] },
	thinWireLimit: {
		rows: [{ upTo: 0.5e-3, value: fromCelsius(400) }],
		source: ['COMMON'],
	},
	hazards: [],
} as const satisfies Material;
