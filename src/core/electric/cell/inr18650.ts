import { ampereHours, type Cell } from './cell.ts';

export const inr18650 = {
	id: 'inr18650',
	designation: 'INR19/66',
	chemistry: 'lithium-ion',
	cellsInside: 1,
	openCircuit: {
		charge: [0, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1],
		voltage: [2.498, 3.073, 3.258, 3.449, 3.548, 3.633, 3.706, 3.806, 3.921, 4.017, 4.093, 4.181],
		source: ['CHEN2020', 'DERIVED'],
		note: 'same chemistry family; other cells differ by up to 0.1 V',
	},
	resistance: {
		charge: [0, 0.2, 1],
		value: [0.1, 0.05, 0.05],
		least: [0.07, 0.035, 0.035],
		most: [0.14, 0.07, 0.07],
		source: ['COMMON'],
		note: 'energy type, 10 s at half charge; doubles near empty and at 0 °C',
	},
	capacity: {
		current: [0.5, 2.5, 5],
		charge: ampereHours(2.5, 2.4, 2.3),
		source: ['COMMON'],
		note: 'for a cell of 2.5 A·h: 1, 0.96 and 0.92 of it at 0.2, 1 and 2 times its hourly current',
	},
	cutOff: { value: 2.5, source: ['CHEN2020', 'COMMON'], note: '3.0 V is kinder' },
} as const satisfies Cell;
