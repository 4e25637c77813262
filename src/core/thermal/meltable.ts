import type { Source } from '#core/material/sources.ts';

/** A number only known to lie somewhere: the usual value and how far it may be off. */
export interface Estimate {
	readonly value: number;
	readonly least: number;
	readonly most: number;
}

/** Where the numbers of what a hot wire melts are from. */
export const meltableSources = {
	'CALLISTER-E': {
		citation:
			'W. D. Callister, Fundamentals of Materials Science and Engineering, 3rd ed., Appendix E: polystyrene softens at 100 °C, low-density polyethylene melts at 115 °C, high-density polyethylene at 137 °C',
		had: 'looked-up',
	},
	HANDBOOK: {
		citation: 'polymer handbooks: densities, mean specific heats, heats of melting',
		had: 'from-memory',
	},
	COMMON: { citation: 'common practice, no source', had: 'common-practice' },
} as const satisfies Record<string, Source>;

/** A plastic that a hot wire softens or melts. */
export interface Meltable {
	readonly id: string;
	/** kg/m³ */
	readonly density: Estimate;
	/** mean from room temperature up to where it gives way, J/(kg K) */
	readonly specificHeat: Estimate;
	/** J/kg; 0 for a glassy plastic: it softens without melting */
	readonly meltingHeat: Estimate;
	/** the temperature it must reach, K */
	readonly givesWayAt: Estimate;
	readonly source: readonly (keyof typeof meltableSources)[];
	readonly note?: string;
}

const none: Estimate = { value: 0, least: 0, most: 0 };

/** What the workshop cuts, bends and seals. PVC is not here: it gives off acid when cut hot. */
export const meltables = {
	'expanded-polystyrene': {
		id: 'expanded-polystyrene',
		density: { value: 20, least: 15, most: 30 },
		specificHeat: { value: 1500, least: 1300, most: 1800 },
		meltingHeat: none,
		givesWayAt: { value: 423.15, least: 383.15, most: 473.15 },
		source: ['CALLISTER-E', 'HANDBOOK', 'COMMON'],
		note: 'collapses from 110 °C; beside the wire it is as hot as 200 °C',
	},
	'extruded-polystyrene': {
		id: 'extruded-polystyrene',
		density: { value: 33, least: 28, most: 45 },
		specificHeat: { value: 1500, least: 1300, most: 1800 },
		meltingHeat: none,
		givesWayAt: { value: 423.15, least: 383.15, most: 473.15 },
		source: ['CALLISTER-E', 'HANDBOOK', 'COMMON'],
		note: 'as expanded foam, but denser',
	},
	'pe-ld': {
		id: 'pe-ld',
		density: { value: 920, least: 910, most: 930 },
		specificHeat: { value: 2400, least: 2000, most: 2800 },
		meltingHeat: { value: 110e3, least: 90e3, most: 130e3 },
		givesWayAt: { value: 388.15, least: 378.15, most: 398.15 },
		source: ['CALLISTER-E', 'HANDBOOK'],
	},
	'pe-hd': {
		id: 'pe-hd',
		density: { value: 950, least: 940, most: 965 },
		specificHeat: { value: 2400, least: 2000, most: 2800 },
		meltingHeat: { value: 200e3, least: 170e3, most: 230e3 },
		givesWayAt: { value: 410.15, least: 398.15, most: 413.15 },
		source: ['CALLISTER-E', 'HANDBOOK'],
	},
	'pmma-sheet': {
		id: 'pmma-sheet',
		density: { value: 1190, least: 1170, most: 1200 },
		specificHeat: { value: 1800, least: 1500, most: 2100 },
		meltingHeat: none,
		givesWayAt: { value: 433.15, least: 423.15, most: 443.15 },
		source: ['HANDBOOK', 'COMMON'],
		note: 'bends at 150 to 170 °C, blisters above about 180 °C',
	},
} as const satisfies Readonly<Record<string, Meltable>>;

export type MeltableId = keyof typeof meltables;
