import type { Load } from '#core/electric/discharge.ts';
import type { Setup } from './setup.ts';
import { steadyTemperature } from './steady.ts';

/**
 * The hot wire of a set-up with its leads as the load of a pack: the current at which wire, heat and source agree.
 * Warm-up is left out: it is over in seconds, a discharge lasts minutes.
 *
 * @param setup its wire, leads and room; the supply is left out
 */
export function wireLoad({ wire, leads, room }: Pick<Setup, 'wire' | 'leads' | 'room'>): Load {
	return ({ voltage, resistance }) =>
		steadyTemperature({
			supply: { openCircuitVoltage: voltage, internalResistance: resistance, protection: { kind: 'none' } },
			wire,
			leads,
			room,
		}).current;
}
