import type { Source } from '#core/material/sources.ts';

/** Where the numbers of the cells are from. */
export const cellSources = {
	'IEC60086-2': {
		citation: 'IEC 60086-2:2021, Primary batteries - Part 2: Physical and electrical specifications (LR6, LR03, 6LR61)',
		had: 'from-memory',
	},
	LINDEN: {
		citation: "T. B. Reddy (ed.), Linden's Handbook of Batteries, 4th ed. (2011), general shape and typical numbers",
		had: 'from-memory',
	},
	'NIMH-ENC': {
		citation:
			'encyclopedia text on nickel-metal hydride cells: 1.4-1.45 V unloaded when full, about 1.25 V from 10 % to 80 % depth of discharge at 0.5 A, 1.2 V at 1 A, 1.15 V at 2 A, about 0.05 ohm for AA, cut-off 1.0-1.1 V',
		had: 'looked-up',
		seen: 'secondary reprint',
	},
	CHEN2020: {
		citation:
			'C.-H. Chen et al., J. Electrochem. Soc. 167, 080534 (2020): electrode potentials of an NMC811 / graphite-SiOx cell',
		had: 'looked-up',
		seen: 'secondary: the two potential functions; the stoichiometry window is from memory',
	},
	BCI: {
		citation:
			'Battery Council International style table of rest voltages of a flooded 12 V battery: 12.65 V full, 11.89 V empty',
		had: 'looked-up',
		seen: 'secondary reprint',
	},
	DERIVED: { citation: 'computed from the other sources named next to it', had: 'derived' },
	COMMON: { citation: 'common practice, no source', had: 'common-practice' },
} as const satisfies Record<string, Source>;

export type CellSourceKey = keyof typeof cellSources;
