import { ampereHours, type Cell } from './cell.ts';

export const hr6 = {
	id: 'hr6',
	designation: 'HR6',
	chemistry: 'nickel-metal-hydride',
	cellsInside: 1,
	openCircuit: {
		charge: [0, 0.1, 0.2, 0.4, 0.6, 0.8, 0.9, 1],
		voltage: [1.05, 1.2, 1.24, 1.27, 1.29, 1.31, 1.34, 1.42],
		source: ['NIMH-ENC', 'COMMON'],
		note: 'flat in the middle',
	},
	resistance: {
		charge: [1],
		value: [0.05],
		least: [0.02],
		most: [0.1],
		source: ['NIMH-ENC', 'COMMON'],
		note: 'one value at every charge; good cells 0.02 to 0.03 Ω, aged ones 0.1 Ω and more',
	},
	capacity: {
		current: [0.2, 1, 2, 4],
		charge: ampereHours(2, 1.95, 1.85, 1.6),
		source: ['COMMON'],
		note: 'for a cell of 2.0 A·h',
	},
	cutOff: { value: 1, source: ['NIMH-ENC'], note: 'lower, the weakest cell of a row is driven backwards' },
} as const satisfies Cell;
