import type { Cupboard } from './cupboard.ts';
import type { CupboardProperty, CupboardSlot } from './exercise.ts';

/** The items of one shelf of the cupboard. */
export function itemsOf(cupboard: Cupboard, slot: CupboardSlot): readonly { readonly id: string }[] {
	switch (slot) {
		case 'reel':
			return cupboard.reels;
		case 'supply':
			return cupboard.supplies;
		case 'leads':
			return cupboard.leads;
		case 'meter':
			return cupboard.meters;
	}
}

/** A property of an item in SI units, or undefined when there is no such item or it has no such property. */
export function propertyOf(
	cupboard: Cupboard,
	slot: CupboardSlot,
	id: string,
	property: CupboardProperty,
): number | undefined {
	if (slot === 'reel') {
		const reel = cupboard.reels.find((item) => item.id === id);
		if (property === 'label') return reel?.label;
		return property === 'diameter' && reel ? reel.diameterMillimetres / 1000 : undefined;
	}
	if (slot === 'leads') {
		const leads = cupboard.leads.find((item) => item.id === id);
		if (property === 'resistance') return leads?.resistance;
		return property === 'rating' ? leads?.rating : undefined;
	}
	if (slot === 'meter') return undefined;
	const supply = cupboard.supplies.find((item) => item.id === id);
	if (property === 'voltage') return supply?.voltage;
	if (property === 'internalResistance') return supply?.internalResistance;
	if (property !== 'limit' || !supply) return undefined;
	const { protection } = supply;
	if (protection.kind === 'holds') return protection.limitMaximum;
	return protection.kind === 'none' ? supply.fuse : protection.rated;
}
