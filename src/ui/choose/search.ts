import { leastMargin, searchDesigns, type Brief, type Cupboard as Shelf, type Design } from '#core/setup/design.ts';
import { stillRoom } from '#core/thermal/room.ts';
import type { Cupboard } from '#exercise/cupboard.ts';
import { writeAddress } from '#ui/bench/address.ts';
import { adjustableUpTo, setupOf, standardSettings, type BenchSettings } from '#ui/bench/settings.ts';
import { anySupply, type BriefSettings } from './brief.ts';

/** What a brief finds: what fits, best first, and what of each shelf fits nowhere, with its nearest miss. */
export interface Findings {
	readonly count: number;
	readonly fit: readonly Design[];
	readonly rejected: Readonly<Record<ShelfName, readonly Rejection[]>>;
}

export const shelfNames = ['supplies', 'reels', 'leads'] as const;
export type ShelfName = (typeof shelfNames)[number];

export interface Rejection {
	readonly id: string;
	/** the design with it that fails the fewest checks */
	readonly nearest: Design;
}

export function findDesigns(brief: BriefSettings, cupboard: Cupboard): Findings {
	const shelf = shelfOf(brief, cupboard);
	const designs = searchDesigns(shelf, wantedOf(brief));
	const fit = designs
		.filter(({ isFit }) => isFit)
		.map((design) => ({ design, margin: leastMargin(design.checks) }))
		.sort((a, b) => b.margin - a.margin)
		.map(({ design }) => design);
	const rejectedOf = (items: readonly { readonly id: string }[], idOf: (design: Design) => string) =>
		items.flatMap(({ id }) => {
			const nearest = designs.find((design) => idOf(design) === id);
			return nearest === undefined || nearest.isFit ? [] : [{ id, nearest }];
		});
	return {
		count: designs.length,
		fit,
		rejected: {
			supplies: rejectedOf(shelf.supplies, ({ supplyId }) => supplyId),
			reels: rejectedOf(shelf.reels, ({ reelId }) => reelId),
			leads: rejectedOf(shelf.leads, ({ leadsId }) => leadsId),
		},
	};
}

/** The address of a design on the bench. */
export function benchAddress({ supplyId, reelId, leadsId, setup }: Design): string {
	const { supply, wire, room } = setup;
	const settings: BenchSettings = {
		...standardSettings,
		supply: supplyId,
		...(supply.protection.kind === 'holds'
			? { voltage: supply.openCircuitVoltage, currentLimit: supply.protection.limit }
			: {}),
		reel: reelId,
		length: wire.length,
		leads: leadsId,
		roomTemperature: room.temperature,
		wish: { kind: 'length', value: wire.length },
	};
	return writeAddress(settings);
}

function wantedOf({ aim, from, to, shortest, longest, runTime, mostCurrent }: BriefSettings): Brief {
	return {
		length: { from: shortest, to: longest },
		...(aim === 'temperature' ? { temperature: { from, to } } : { powerPerMetre: { from, to } }),
		...(runTime === undefined ? {} : { runTime }),
		...(mostCurrent === undefined ? {} : { mostCurrent }),
	};
}

/** The cupboard as the search takes it: an adjustable supply at its full voltage, its limit left to the search. */
function shelfOf(brief: BriefSettings, cupboard: Cupboard): Shelf {
	const supplies = cupboard.supplies.filter(({ id }) => brief.supply === anySupply || brief.supply === id);
	const standing = { ...standardSettings, roomTemperature: brief.room };
	return {
		room: { ...stillRoom, temperature: brief.room },
		supplies: supplies.map(({ id }) => {
			const most = adjustableUpTo(cupboard, id);
			const { supply } = setupOf({ ...standing, supply: id, ...most }, cupboard);
			return { id, supply, ...(most === undefined ? {} : { currentTo: most.currentLimit }) };
		}),
		reels: cupboard.reels.map(({ id }) => {
			const { material, diameter } = setupOf({ ...standing, reel: id }, cupboard).wire;
			return { id, wire: { material, diameter } };
		}),
		leads: cupboard.leads.map(({ id, resistance, rating }) => ({ id, leads: { resistance, rating } })),
	};
}
