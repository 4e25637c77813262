import type { Hazard } from '#core/material/material.ts';
import { writeNumber } from '#core/quantity/write.ts';
import { cautionsFor, type Caution } from '#core/setup/caution.ts';
import { glowThreshold } from '#core/setup/wire-state.ts';
import { text } from '#ui/text/en.ts';
import type { Bench } from './bench.svelte.ts';
import { amperes, degrees, runTimeWords } from './words.ts';

const words = text.bench.remarks;

export interface Remark {
	readonly id: string;
	readonly words: string;
	/** the wire is hot now */
	readonly isHot?: boolean;
}

/** The cautions that fit this bench as it stands, the gravest first. */
export function remarksOn({ setup, point, temperature, isHot, isOn, refusals }: Bench): readonly Remark[] {
	const found: Remark[] = [];
	if (isHot) {
		const [dark, glowing] = isOn ? [words.hot, words.hotGlow] : [words.stillHot, words.stillGlows];
		found.push({ id: 'hot', isHot: true, words: temperature < glowThreshold ? dark : glowing });
	}
	const short = refusals.find(({ code }) => code === 'short');
	if (short?.code === 'short') {
		const told = words.shorted(amperes(short.wouldPass), writeNumber(short.heatInside));
		found.push({ id: 'short', words: `${text.caution.signal.danger}. ${told}` });
	}
	for (const caution of cautionsFor(setup, point)) {
		if (isHot && caution.code === 'burn') continue;
		// told already, by the short without a fuse
		if (short !== undefined && (caution.code === 'fuse-opens' || caution.code === 'short-circuit')) continue;
		found.push({ id: caution.code, words: `${text.caution.signal[caution.level]}. ${cautionWords(caution)}` });
	}
	for (const hazard of setup.wire.material.hazards) found.push({ id: hazard, words: hazardWords(hazard) });
	if (found.length === 0) found.push({ id: 'cutting', words: words.cutting });
	return found;
}

function hazardWords(hazard: Hazard): string {
	return words.hazard[hazard];
}

function cautionWords(caution: Caution): string {
	switch (caution.code) {
		case 'short-circuit':
		case 'no-fuse':
			return words.short(amperes(caution.wouldPass), writeNumber(caution.heatInside));
		case 'over-wire-limit':
			return caution.isKnown
				? words.overWire(degrees(caution.temperature), degrees(caution.limit))
				: words.beyondWire(degrees(caution.limit));
		case 'fuse-opens':
			return words.fuseOpens(amperes(caution.wouldPass), writeNumber(caution.rating));
		case 'burnt-through':
			return words.burnt;
		case 'burn':
			return caution.glows ? words.burnsGlowing : words.burns;
		case 'ignites-paper':
			return words.paper(degrees(caution.from));
		case 'fumes':
			return words.fumes(degrees(caution.from));
		case 'over-leads':
			return words.overLeads(amperes(caution.current), amperes(caution.ceiling));
		case 'over-fuse':
			return words.overFuse(amperes(caution.current), writeNumber(caution.rating));
		case 'battery-heat':
			return words.batteryHeat(writeNumber(caution.power));
		case 'supply-stopped':
			return caution.wouldPass === null ? words.flat : words.stopped(amperes(caution.wouldPass));
		case 'short-wire':
			return words.shortWire;
		case 'over-supply':
			return words.overSupply(amperes(caution.current), amperes(caution.ceiling));
		case 'thin-wire':
			return words.thin(degrees(caution.lasts));
		case 'runs-flat':
			return words.runsFlat(runTimeWords(caution.after));
		default:
			return caution satisfies never;
	}
}
