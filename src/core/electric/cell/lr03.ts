import { ampereHours, type Cell } from './cell.ts';

export const lr03 = {
	id: 'lr03',
	designation: 'LR03',
	chemistry: 'alkaline-manganese',
	cellsInside: 1,
	openCircuit: {
		charge: [0, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1],
		voltage: [1.05, 1.19, 1.25, 1.29, 1.32, 1.35, 1.38, 1.42, 1.46, 1.52, 1.6],
		source: ['LINDEN', 'COMMON'],
		note: 'same chemistry as LR6',
	},
	resistance: {
		charge: [0.1, 0.5, 1],
		value: [1.05, 0.45, 0.25],
		least: [0.6, 0.3, 0.15],
		most: [1.5, 0.6, 0.35],
		source: ['COMMON'],
		note: 'middle and ends of the range met; "nearly empty" is set at a tenth',
	},
	capacity: {
		current: [0.01, 0.1, 0.25, 0.5],
		charge: ampereHours(1.2, 0.95, 0.7, 0.45),
		source: ['LINDEN', 'COMMON'],
	},
	cutOff: { value: 0.8, source: ['IEC60086-2'] },
} as const satisfies Cell;
