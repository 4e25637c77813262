import { thinWireLimitFor } from '#core/material/material.ts';
import { writeNumber } from '#core/quantity/write.ts';
import { shortLink } from '#core/setup/setup.ts';
import { burnThreshold, glowThreshold } from '#core/setup/wire-state.ts';
import { text } from '#ui/text/en.ts';
import type { Bench } from './bench.svelte.ts';
import { degrees, trimmed } from './words.ts';

export interface Remark {
	readonly id: string;
	readonly words: string;
	/** the wire is hot now */
	readonly isHot?: boolean;
}

/** The cautions that fit this bench as it stands, the gravest first. */
export function remarksOn({ setup, point, temperature, isHot }: Bench): readonly Remark[] {
	const words = text.bench.remarks;
	const { wire, supply } = setup;
	const found: Remark[] = [];
	if (isHot) {
		found.push({ id: 'hot', isHot: true, words: temperature < glowThreshold ? words.hot : words.hotGlow });
	} else if (point.temperature >= burnThreshold) found.push({ id: 'burns', words: words.burns });
	if (point.binding.some(({ kind, ratio }) => kind !== 'wire' && ratio > 1 + 1e-9)) {
		found.push({ id: 'ceiling', words: words.ceiling });
	}
	if (wire.material.hazards.includes('zinc-coating-fume')) found.push({ id: 'zinc', words: words.zinc });
	if (supply.charge !== undefined) found.push({ id: 'battery', words: words.battery });
	const thinLimit = thinWireLimitFor(wire.material, wire.diameter);
	if (thinLimit !== undefined && point.temperature > thinLimit) {
		const millimetres = trimmed(writeNumber(wire.diameter * 1000));
		found.push({ id: 'thin', words: words.thin(millimetres, degrees(thinLimit)) });
	}
	if (wire.length < shortLink) found.push({ id: 'short', words: words.short });
	if (found.length === 0) found.push({ id: 'cutting', words: words.cutting });
	return found;
}
