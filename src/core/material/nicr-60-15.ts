import { celsius, fromCelsius, type Material } from './material.ts';

export const nicr6015 = {
	id: 'nicr-60-15',
	designation: 'NiCr 60 15',
	materialNumber: '2.4867',
	family: 'nickel-chromium',
	resistivity: {
		value: 1.12e-6,
		tolerance: 0.05,
		source: ['ASTMB344', 'GBT1234'],
		note: '675 ohm circular-mil per foot = 1.1221',
	},
	resistanceRatio: {
		temperature: celsius(20, 100, 200, 300, 400, 500, 600, 700, 800, 900, 1000, 1100),
		ratio: [1, 1.011, 1.024, 1.038, 1.052, 1.064, 1.069, 1.073, 1.078, 1.088, 1.095, 1.109],
		source: ['GBT1234'],
		note: 'Row Cr15Ni60',
	},
	density: { value: 8200, source: ['GBT1234', 'DIN17470'] },
	specificHeat: {
		temperature: celsius(27, 127, 327, 527),
		value: [494, 565, 618, 641],
		source: ['GBT1234', 'INCROPERA-A1', 'OURS'],
		note: 'value at 20 °C, with the rise of NiCr 80 20',
	},
	conductivity: {
		temperature: celsius(27, 127, 327, 527, 1027),
		value: [12.56, 14.65, 16.75, 21.98, 32.45],
		source: ['GBT1234', 'INCROPERA-A1', 'OURS'],
		note: 'value at 20 °C, with the rise of NiCr 80 20',
	},
	expansion: { value: 1.7e-5, to: fromCelsius(1000), source: ['GBT1234'] },
	emissivity: {
		oxidised: {
			value: 0.88,
			min: 0.65,
			max: 0.95,
			source: ['INSTREF-14.16'],
			note: '60Ni-12Cr-28Fe oxidised: 0.89 at 270 °C, 0.82 at 560 °C',
		},
		clean: { value: 0.25, min: 0.15, max: 0.65, source: ['OURS', 'PARKER-ABBOTT'], note: 'taken over from NiCr 80 20' },
	},
	melting: { from: fromCelsius(1390), to: fromCelsius(1390), source: ['GBT1234'] },
	limit: { value: fromCelsius(1100), source: ['WORKSHOP'] },
	elementMaximum: { value: fromCelsius(1150), source: ['GBT1234', 'DIN17470'] },
	thinWireLimit: {
		rows: [
			{ upTo: 0.4e-3, value: fromCelsius(900) },
			{ upTo: 0.95e-3, value: fromCelsius(950) },
			{ upTo: 3e-3, value: fromCelsius(1000) },
		],
		source: ['COMMON'],
	},
	hazards: [],
} as const satisfies Material;
