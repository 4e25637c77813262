import { thinWireLimitFor } from '#core/material/material.ts';
import type { Amperes, Kelvin, Metres, Seconds, Watts } from '#core/quantity/unit.ts';
import { prospectiveCurrent, type OperatingPoint, type SupplyState } from './operating-point.ts';
import { shortLink, type Setup } from './setup.ts';
import { burnThreshold } from './wire-state.ts';

/** Temperatures at which things begin to go wrong. */
export const hazardTemperatures = {
	/** paper browns and may ignite: middle of 218…246 °C by slow heating (S. H. Graf, 1949, from memory) */
	paper: 503.15,
	/** polystyrene breaks down to styrene from about 300 °C: published thermogravimetry; common practice for others */
	fumes: 573.15,
	burn: burnThreshold,
} as const satisfies Record<string, Kelvin>;

/** Heat inside a battery above which its cells grow hot, in W; common practice, no source. */
export const batteryHeat: Watts = 3;

/** A battery that lasts less than this is told, in s; common practice, no source. */
export const shortRunTime: Seconds = 600;

export type Caution =
	| {
			readonly code: 'short-circuit';
			readonly level: 'danger';
			readonly wouldPass: Amperes;
			readonly heatInside: Watts;
	  }
	| { readonly code: 'no-fuse'; readonly level: 'danger'; readonly wouldPass: Amperes; readonly heatInside: Watts }
	| {
			readonly code: 'fuse-opens';
			readonly level: 'danger';
			readonly wouldPass: Amperes;
			readonly rating: Amperes;
			/** in the battery, while the fuse has not yet opened or if it is bridged */
			readonly heatInside: Watts;
	  }
	| {
			readonly code: 'over-wire-limit';
			readonly level: 'danger';
			readonly temperature: Kelvin;
			readonly limit: Kelvin;
			/** false when the wire would be hotter than its data reach */
			readonly isKnown: boolean;
	  }
	| { readonly code: 'burnt-through'; readonly level: 'danger'; readonly temperature: Kelvin }
	| { readonly code: 'burn'; readonly level: 'warning'; readonly temperature: Kelvin; readonly glows: boolean }
	| { readonly code: 'ignites-paper'; readonly level: 'warning'; readonly temperature: Kelvin; readonly from: Kelvin }
	| { readonly code: 'fumes'; readonly level: 'warning'; readonly temperature: Kelvin; readonly from: Kelvin }
	| { readonly code: 'over-leads'; readonly level: 'warning'; readonly current: Amperes; readonly ceiling: Amperes }
	| { readonly code: 'over-fuse'; readonly level: 'warning'; readonly current: Amperes; readonly rating: Amperes }
	| { readonly code: 'battery-heat'; readonly level: 'warning'; readonly power: Watts }
	| {
			readonly code: 'supply-stopped';
			readonly level: 'caution';
			readonly state: SupplyState;
			/** what would have flowed, null for a flat battery */
			readonly wouldPass: Amperes | null;
	  }
	| { readonly code: 'short-wire'; readonly level: 'caution'; readonly length: Metres; readonly least: Metres }
	| { readonly code: 'over-supply'; readonly level: 'caution'; readonly current: Amperes; readonly ceiling: Amperes }
	| { readonly code: 'thin-wire'; readonly level: 'caution'; readonly temperature: Kelvin; readonly lasts: Kelvin }
	| { readonly code: 'runs-flat'; readonly level: 'caution'; readonly after: Seconds };

/** What to tell before the supply goes on, the gravest first: how it can hurt, with its figures. */
export function cautionsFor(setup: Setup, point: OperatingPoint): readonly Caution[] {
	return [
		...shortCautions(setup, point),
		...wireCautions(setup, point),
		...ratingCautions(setup, point),
		...batteryCautions(setup, point),
	].sort((a, b) => graveness[a.level] - graveness[b.level]);
}

const graveness = { danger: 0, warning: 1, caution: 2 } as const;

function shortCautions({ supply, wire }: Setup, point: OperatingPoint): readonly Caution[] {
	const cautions: Caution[] = [];
	const wouldPass = point.inrushCurrent;
	const heatInside = wouldPass ** 2 * supply.internalResistance;
	if (point.state === 'refused-short') {
		cautions.push({ code: 'short-circuit', level: 'danger', wouldPass, heatInside });
	} else if (supply.protection.kind === 'none' && supply.fuse === undefined) {
		// what a slip of a clip would draw, not what this wire draws
		const shorted = supply.openCircuitVoltage / supply.internalResistance;
		cautions.push({
			code: 'no-fuse',
			level: 'danger',
			wouldPass: shorted,
			heatInside: shorted * supply.openCircuitVoltage,
		});
	}
	if (wire.length < shortLink) {
		cautions.push({ code: 'short-wire', level: 'caution', length: wire.length, least: shortLink });
	}
	return cautions;
}

function wireCautions({ wire }: Setup, point: OperatingPoint): readonly Caution[] {
	const { temperature } = point;
	const limit = wire.material.limit.value;
	const cautions: Caution[] = [];
	if (point.wireState === 'burnt-through') cautions.push({ code: 'burnt-through', level: 'danger', temperature });
	if (point.wireState === 'over-limit') {
		cautions.push({
			code: 'over-wire-limit',
			level: 'danger',
			temperature,
			limit,
			isKnown: point.isTemperatureInRange,
		});
	}
	const { burn, paper, fumes } = hazardTemperatures;
	if (temperature > burn && point.current > 0) {
		const glows = point.wireState !== 'hot-no-glow' && point.wireState !== 'warm';
		cautions.push({ code: 'burn', level: 'warning', temperature, glows });
	}
	if (temperature > paper) cautions.push({ code: 'ignites-paper', level: 'warning', temperature, from: paper });
	if (temperature > fumes) cautions.push({ code: 'fumes', level: 'warning', temperature, from: fumes });
	const lasts = thinWireLimitFor(wire.material, wire.diameter);
	if (lasts !== undefined && temperature > lasts) {
		cautions.push({ code: 'thin-wire', level: 'caution', temperature, lasts });
	}
	return cautions;
}

function ratingCautions({ supply }: Setup, point: OperatingPoint): readonly Caution[] {
	const { binding, current, fuse, state } = point;
	const cautions: Caution[] = [];
	const wouldPass = prospectiveCurrent(point);
	if (state === 'fuse-open' && supply.fuse !== undefined && wouldPass !== null) {
		const heatInside = wouldPass ** 2 * supply.internalResistance;
		cautions.push({ code: 'fuse-opens', level: 'danger', wouldPass, rating: supply.fuse.rating, heatInside });
	} else if (state === 'tripped' || state === 'flat') {
		cautions.push({ code: 'supply-stopped', level: 'caution', state, wouldPass });
	}
	for (const { kind, ceiling, ratio } of binding) {
		if (current === 0 || !(ratio > 1 + 1e-9)) continue;
		if (kind === 'leads') cautions.push({ code: 'over-leads', level: 'warning', current, ceiling });
		if (kind === 'supply') cautions.push({ code: 'over-supply', level: 'caution', current, ceiling });
	}
	if (fuse !== null && supply.fuse !== undefined && fuse.ratio > 1) {
		cautions.push({ code: 'over-fuse', level: 'warning', current, rating: supply.fuse.rating });
	}
	return cautions;
}

function batteryCautions({ supply }: Setup, { supplyLoss, runTime }: OperatingPoint): readonly Caution[] {
	const cautions: Caution[] = [];
	if (supply.charge !== undefined && supplyLoss > batteryHeat) {
		cautions.push({ code: 'battery-heat', level: 'warning', power: supplyLoss });
	}
	if (runTime !== null && runTime < shortRunTime) {
		cautions.push({ code: 'runs-flat', level: 'caution', after: runTime });
	}
	return cautions;
}
