import { ampereHours, type Cell } from './cell.ts';

export const leadAcid12v = {
	id: 'lead-acid-12v',
	designation: 'IEC 61056, 12 V, 7 A·h',
	chemistry: 'lead-acid',
	cellsInside: 6,
	openCircuit: {
		charge: [0, 0.25, 0.5, 0.75, 1],
		voltage: [11.89, 12.06, 12.24, 12.45, 12.65],
		source: ['BCI'],
		note: 'flooded, rested for hours; closed types up to 0.2 V more',
	},
	resistance: {
		charge: [1],
		value: [0.0275],
		least: [0.02],
		most: [0.035],
		source: ['COMMON'],
		note: 'a closed battery of 7 A·h; one value at every charge',
	},
	capacity: {
		current: [0.35, 0.651, 1.19, 4.2],
		charge: ampereHours(7, 6.51, 5.95, 4.2),
		source: ['COMMON'],
		note: '1, 0.93, 0.85 and 0.6 of the rated charge within 20, 10, 5 and 1 h',
	},
	cutOff: { value: 10.8, source: ['COMMON'], note: '10.5 V is 1.75 V a cell' },
} as const satisfies Cell;
