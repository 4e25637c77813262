import type { Leads, Supply } from '#core/electric/supply.ts';
import { materials } from '#core/material/materials.ts';
import type { Setup, SetupWire } from '#core/setup/setup.ts';
import { stillRoom } from '#core/thermal/room.ts';

/** The supplies of the shed, each as its label says. */
export const supplies = {
	benchSupply: { openCircuitVoltage: 12, internalResistance: 0, protection: { kind: 'holds', limit: 5 } },
	brick: {
		openCircuitVoltage: 12,
		internalResistance: 0,
		protection: { kind: 'retries', rated: 5, tripAbove: 5.5 },
	},
	fourAA: {
		openCircuitVoltage: 6.2,
		internalResistance: 0.8,
		protection: { kind: 'none' },
		fuse: { rating: 3.15 },
		charge: { capacity: 1.4 * 3600, usableFraction: 1 },
	},
	nickelPack: {
		openCircuitVoltage: 7.5,
		internalResistance: 0.18,
		protection: { kind: 'none' },
		fuse: { rating: 5 },
		charge: { capacity: 2 * 3600, usableFraction: 0.8 },
	},
	sealedLead: {
		openCircuitVoltage: 12.7,
		internalResistance: 0.03,
		protection: { kind: 'none' },
		fuse: { rating: 6.3 },
		charge: { capacity: 7 * 3600, usableFraction: 0.5 },
	},
	adaptor: {
		openCircuitVoltage: 5,
		internalResistance: 0,
		protection: { kind: 'latches', rated: 3, tripAbove: 3.3 },
	},
} as const satisfies Record<string, Supply>;

export const screwPair: Leads = { resistance: 0.035, rating: 10 };
export const clipPair: Leads = { resistance: 0.3, rating: 3 };
export const noLeads: Leads = { resistance: 0, rating: 20 };

/** NiCr 80 20 of 0.40 mm, half a metre of it. */
export const reel40: SetupWire = { material: materials['nicr-80-20'], diameter: 0.4e-3, length: 0.5 };

/** A set-up on the bench supply with no leads, changed where wanted. */
export function setupWith(change: Partial<Setup> = {}): Setup {
	return { supply: supplies.benchSupply, wire: reel40, leads: noLeads, room: stillRoom, ...change };
}

/** The same wire cut so that it has this resistance at 20 °C. */
export function wireOf(coldResistance: number, wire: SetupWire = reel40): SetupWire {
	const area = (Math.PI * wire.diameter ** 2) / 4;
	return { ...wire, length: (coldResistance * area) / wire.material.resistivity.value };
}
