import { celsius, fromCelsius, type Material } from './material.ts';

export const softSteel = {
	id: 'soft-steel',
	designation: 'soft steel',
	materialNumber: '1.0300-1.0304',
	family: 'steel',
	resistivity: {
		value: 1.3e-7,
		tolerance: 0.15,
		source: ['NPL-STEELS'],
		note: 'tolerance: carbon and manganese move it ±15 %',
	},
	resistanceRatio: {
		temperature: celsius(20, 100, 200, 300, 400, 500, 600, 700, 800, 900, 1000, 1100, 1200),
		ratio: [1.0, 1.369, 1.938, 2.631, 3.446, 4.436, 5.577, 7.078, 8.254, 8.657, 8.923, 9.165, 9.354],
		source: ['NPL-STEELS', 'OURS'],
		note: '0.06 % C steel; odd hundreds interpolated (remembered NPL values 34.1 at 300, 57.5 at 500, 89.8 at 700 agree within 3 %).',
	},
	density: { value: 7850, source: ['EN1993-1-2'] },
	specificHeat: {
		temperature: celsius(20, 100, 200, 300, 400, 500, 600, 700, 730, 800, 900, 1000),
		value: [440, 488, 530, 565, 606, 666, 760, 1008, 2291, 803, 650, 650],
		source: ['EN1993-1-2'],
		note: 'peak at 735 °C is the phase change',
	},
	conductivity: {
		temperature: celsius(20, 200, 400, 600, 800, 1000),
		value: [53.3, 47.3, 40.7, 34.0, 27.3, 27.3],
		source: ['EN1993-1-2'],
		note: '54 - 0.0333 T below 800 °C, then 27.3; from memory',
	},
	expansion: {
		value: 1.23e-5,
		to: fromCelsius(100),
		source: ['EN1993-1-2'],
		note: 'elongation = 1.2e-5 T + 0.4e-8 T^2 - 2.416e-4 below 750 °C',
	},
	emissivity: {
		oxidised: { value: 0.8, min: 0.7, max: 0.9, source: ['INSTREF-14.16'] },
		clean: {
			value: 0.08,
			min: 0.05,
			max: 0.3,
			source: ['INSTREF-14.16'],
			note: 'unoxidised steel; the range is our judgement',
		},
	},
	melting: { from: fromCelsius(1530), to: fromCelsius(1530), source: ['COMMON'] },
	limit: { value: fromCelsius(400), source: ['WORKSHOP'] },
	elementMaximum: { value: fromCelsius(500), source: ['COMMON'], note: 'scales quickly above 550 °C' },
	thinWireLimit: {
		rows: [{ upTo: 1e-3, value: fromCelsius(400) }],
		source: ['COMMON'],
	},
	hazards: ['zinc-coating-fume', 'scales-off'],
} as const satisfies Material;
