import type { Leads, Supply } from '#core/electric/supply.ts';
import { materials } from '#core/material/materials.ts';
import type { Cupboard } from '#core/setup/design.ts';
import { stillRoom } from '#core/thermal/room.ts';

// The items of src/content/cupboard.yaml, repeated with varied numbers until the shelves are as full as asked.
const supplies: readonly Supply[] = [
	{ openCircuitVoltage: 12, internalResistance: 0, protection: { kind: 'retries', rated: 5, tripAbove: 5.5 } },
	{
		openCircuitVoltage: 6.2,
		internalResistance: 0.8,
		protection: { kind: 'none' },
		fuse: { rating: 3.15 },
		charge: { capacity: 1.4 * 3600, usableFraction: 1 },
	},
	{
		openCircuitVoltage: 7.5,
		internalResistance: 0.18,
		protection: { kind: 'none' },
		fuse: { rating: 5 },
		charge: { capacity: 2 * 3600, usableFraction: 0.8 },
	},
	{
		openCircuitVoltage: 12.7,
		internalResistance: 0.03,
		protection: { kind: 'none' },
		fuse: { rating: 6.3 },
		charge: { capacity: 7 * 3600, usableFraction: 0.5 },
	},
	{ openCircuitVoltage: 5, internalResistance: 0, protection: { kind: 'latches', rated: 3, tripAbove: 3.3 } },
];
const benchSupply: Supply = {
	openCircuitVoltage: 15,
	internalResistance: 0,
	protection: { kind: 'holds', limit: 5 },
};
const diameters = [0.25, 0.32, 0.4, 0.5, 0.71, 0.127] as const;
const metals = ['nicr-80-20', 'cral-25-5'] as const;
const leads: readonly Leads[] = [
	{ resistance: 0.035, rating: 10 },
	{ resistance: 0.3, rating: 3 },
];

/** A cupboard of so many supplies, reels and pairs of leads, no two alike; every fifth supply holds a limit. */
export function filledCupboard(count: { supplies: number; reels: number; leads: number }): Cupboard {
	return {
		room: stillRoom,
		supplies: Array.from({ length: count.supplies }, (_, index) => {
			if (index % 5 === 0) {
				const openCircuitVoltage = 15 - index * 0.1;
				return { id: `S${index}`, supply: { ...benchSupply, openCircuitVoltage }, currentTo: 5 };
			}
			const supply = taken(supplies, index);
			return {
				id: `S${index}`,
				supply: { ...supply, openCircuitVoltage: supply.openCircuitVoltage * (1 + index / 100) },
			};
		}),
		reels: Array.from({ length: count.reels }, (_, index) => ({
			id: `R${index}`,
			wire: {
				material: materials[taken(metals, index)],
				diameter: taken(diameters, index >> 1) * (1 + Math.floor(index / 12) / 50) * 1e-3,
			},
		})),
		leads: Array.from({ length: count.leads }, (_, index) => {
			const pair = taken(leads, index);
			return { id: `L${index}`, leads: { ...pair, resistance: pair.resistance * (1 + index / 10) } };
		}),
	};
}

function taken<T>(items: readonly T[], index: number): T {
	const item = items[index % items.length];
	if (item === undefined) throw new RangeError('an empty shelf');
	return item;
}
