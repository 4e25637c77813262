import { ampereHours, type Cell } from './cell.ts';

export const lr6 = {
	id: 'lr6',
	designation: 'LR6',
	chemistry: 'alkaline-manganese',
	cellsInside: 1,
	openCircuit: {
		charge: [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1],
		voltage: [1.05, 1.19, 1.25, 1.29, 1.32, 1.35, 1.38, 1.42, 1.46, 1.52, 1.6],
		source: ['LINDEN', 'COMMON'],
		note: 'rested, within 0.03 V; there is no standard curve',
	},
	resistance: {
		charge: [0.1, 0.5, 1],
		value: [0.7, 0.3, 0.15],
		least: [0.4, 0.2, 0.1],
		most: [1, 0.4, 0.2],
		source: ['COMMON'],
		note: 'middle and ends of the range met; "nearly empty" is set at a tenth; two to three times as much at 0 °C',
	},
	capacity: {
		current: [0.025, 0.1, 0.25, 0.5, 1],
		charge: ampereHours(2.8, 2.4, 1.9, 1.4, 0.8),
		source: ['LINDEN', 'COMMON'],
	},
	cutOff: { value: 0.8, source: ['IEC60086-2'], note: 'end point of several application tests, 0.9 V in others' },
} as const satisfies Cell;
