import { ampereHours, type Cell } from './cell.ts';

export const block6lr61 = {
	id: '6lr61',
	designation: '6LR61',
	chemistry: 'alkaline-manganese',
	cellsInside: 6,
	openCircuit: {
		charge: [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1],
		voltage: [6.3, 7.14, 7.5, 7.74, 7.92, 8.1, 8.28, 8.52, 8.76, 9.12, 9.6],
		source: ['LINDEN', 'COMMON'],
		note: 'six times the cell',
	},
	resistance: {
		charge: [0.1, 0.5, 1],
		value: [10, 3, 1.75],
		least: [5, 2, 1],
		most: [15, 4, 2.5],
		source: ['COMMON'],
		note: 'middle and ends of the range met; "nearly empty" is set at a tenth',
	},
	capacity: {
		current: [0.01, 0.025, 0.1, 0.25, 0.5],
		charge: ampereHours(0.6, 0.57, 0.48, 0.33, 0.2),
		source: ['LINDEN', 'COMMON'],
		note: 'down to 4.8 V',
	},
	cutOff: { value: 5.4, source: ['IEC60086-2'], note: 'end points lie between 4.8 and 7.5 V, by the test' },
} as const satisfies Cell;
