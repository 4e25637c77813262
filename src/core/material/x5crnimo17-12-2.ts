import { celsius, fromCelsius, type Material } from './material.ts';

export const x5crnimo17122 = {
	id: 'x5crnimo17-12-2',
	designation: 'X5CrNiMo17-12-2',
	materialNumber: '1.4401',
	family: 'stainless-steel',
	resistivity: { value: 7.5e-7, tolerance: 0.06, source: ['EN10088-1'] },
	resistanceRatio: {
		temperature: celsius(20, 50, 100, 150, 200, 250, 300, 350, 400, 500, 600, 700, 800, 900),
		ratio: [1, 1.027, 1.081, 1.122, 1.176, 1.216, 1.27, 1.311, 1.345, 1.425, 1.495, 1.55, 1.595, 1.64],
		source: ['ITER-MPH-316', 'ASM-STAINLESS', 'OURS'],
		doubtfulAbove: fromCelsius(350),
		note: '20-350 °C: Peckner column (74 ... 97 µΩ·cm). Above 350 °C: own continuation towards the ASM endpoint 116/74 = 1.57 at 650 °C.',
	},
	density: { value: 8000, source: ['EN10088-1'] },
	specificHeat: {
		temperature: celsius(20, 100, 200, 300, 400, 500, 600, 700, 800, 900, 1000),
		value: [482, 496, 514, 533, 551, 569, 587, 605, 623, 642, 660],
		source: ['MILLS'],
		note: '428.46 + 0.1816 T(K), ±5 %',
	},
	conductivity: {
		temperature: celsius(20, 100, 200, 300, 400, 500, 600, 700, 800, 900, 1000),
		value: [13.6, 15.4, 17.5, 19.5, 21.3, 22.9, 24.5, 25.8, 27.0, 28.1, 29.1],
		source: ['MILLS'],
		note: '±10 %',
	},
	expansion: {
		value: 1.8e-5,
		to: fromCelsius(500),
		source: ['EN10088-1'],
		note: 'first value looked up, rest from memory',
	},
	emissivity: {
		oxidised: { value: 0.7, min: 0.6, max: 0.85, source: ['MILLS'], note: 'range taken over from X5CrNi18-10' },
		clean: { value: 0.15, min: 0.1, max: 0.3, source: ['MILLS'], note: 'polished' },
	},
	melting: { from: fromCelsius(1385), to: fromCelsius(1450), source: ['MILLS'] },
	limit: { value: fromCelsius(700), source: ['WORKSHOP'] },
	elementMaximum: { value: fromCelsius(925), source: ['SSINA'] },
	thinWireLimit: {
		rows: [{ upTo: 1e-3, value: fromCelsius(700) }],
		source: ['COMMON'],
	},
	hazards: [],
} as const satisfies Material;
