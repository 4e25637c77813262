import { planningFraction, type Leads, type Supply } from '#core/electric/supply.ts';
import type { Amperes, Kelvin, Metres, Seconds, WattsPerMetre } from '#core/quantity/unit.ts';
import type { Room } from '#core/thermal/room.ts';
import { heatCurve } from './heat-curve.ts';
import { operatingPoint, settle, type OperatingPoint, type SupplyState } from './operating-point.ts';
import { jobsFor } from './run-time.ts';
import { withLength, type Setup, type SetupWire } from './setup.ts';
import { steadyTemperatureFromTable } from './steady.ts';

/** A stretch of a quantity, both ends included. */
export interface Band {
	readonly from: number;
	readonly to: number;
}

/** What a design must do. */
export interface Brief {
	/** between the posts, in m */
	readonly length: Band;
	/** of the wire in free air, in K */
	readonly temperature?: Band;
	/** in W/m */
	readonly powerPerMetre?: Band;
	/** most that may flow, in A */
	readonly mostCurrent?: Amperes;
	/** how long one charge must last, in s */
	readonly runTime?: Seconds;
	/** how many jobs one charge must do, and how long each takes in s */
	readonly jobs?: { readonly count: number; readonly time: Seconds };
}

/** What can be taken from the cupboard. A supply with `currentTo` holds any limit up to it, in A. */
export interface Cupboard {
	readonly supplies: readonly { readonly id: string; readonly supply: Supply; readonly currentTo?: Amperes }[];
	readonly reels: readonly { readonly id: string; readonly wire: Omit<SetupWire, 'length'> }[];
	readonly leads: readonly { readonly id: string; readonly leads: Leads }[];
	readonly room: Room;
}

/** One thing a design is checked for; `value` and the bound share a unit. */
export type DesignCheck =
	| { readonly code: 'runs'; readonly holds: boolean; readonly state: SupplyState }
	| { readonly code: 'length'; readonly holds: boolean; readonly value: Metres; readonly band: Band }
	| { readonly code: 'temperature'; readonly holds: boolean; readonly value: Kelvin; readonly band: Band }
	| { readonly code: 'power-per-metre'; readonly holds: boolean; readonly value: WattsPerMetre; readonly band: Band }
	| { readonly code: 'current'; readonly holds: boolean; readonly value: Amperes; readonly most: Amperes }
	| {
			readonly code: 'ceiling';
			readonly holds: boolean;
			readonly part: 'supply' | 'leads' | 'fuse' | 'wire';
			readonly value: Amperes;
			readonly most: Amperes;
	  }
	| { readonly code: 'run-time'; readonly holds: boolean; readonly value: Seconds; readonly least: Seconds }
	| { readonly code: 'jobs'; readonly holds: boolean; readonly value: number; readonly least: number };

/** One way to fulfil a brief, or to fail it. */
export interface Design {
	readonly supplyId: string;
	readonly reelId: string;
	readonly leadsId: string;
	readonly setup: Setup;
	readonly point: OperatingPoint;
	readonly checks: readonly DesignCheck[];
	readonly isFit: boolean;
}

/**
 * Every check of a brief on a set-up, in the order a bench check takes them. A supply that delivers by holding a limit
 * set on purpose (`currentTo`) is judged by what it can hold, not by the limit set.
 */
export function checkDesign(
	setup: Setup,
	brief: Brief,
	point: OperatingPoint = operatingPoint(setup),
	currentTo?: Amperes,
): readonly DesignCheck[] {
	const { state } = point;
	const checks: DesignCheck[] = [{ code: 'runs', holds: state === 'on' || state === 'holding-limit', state }];
	const { length } = setup.wire;
	checks.push({ code: 'length', holds: isIn(brief.length, length), value: length, band: brief.length });
	const { temperature, powerPerMetre, mostCurrent, runTime, jobs } = brief;
	if (temperature !== undefined) {
		const holds = isIn(temperature, point.temperature) && point.isTemperatureInRange;
		checks.push({ code: 'temperature', holds, value: point.temperature, band: temperature });
	}
	if (powerPerMetre !== undefined) {
		const value = point.powerPerMetre;
		checks.push({ code: 'power-per-metre', holds: isIn(powerPerMetre, value), value, band: powerPerMetre });
	}
	// a stopped supply is judged by what it was asked for
	const value = point.current > 0 ? point.current : point.askedCurrent;
	if (mostCurrent !== undefined) {
		checks.push({ code: 'current', holds: value <= mostCurrent * (1 + 1e-9), value, most: mostCurrent });
	}
	for (const { kind: part, ceiling } of point.binding) {
		const most = part === 'supply' && currentTo !== undefined ? planningFraction * currentTo : ceiling;
		checks.push({ code: 'ceiling', holds: value <= most * (1 + 1e-9), part, value, most });
	}
	if (runTime !== undefined && setup.supply.charge !== undefined) {
		const lasts = point.runTime ?? 0;
		checks.push({ code: 'run-time', holds: lasts >= runTime, value: lasts, least: runTime });
	}
	if (jobs !== undefined && setup.supply.charge !== undefined) {
		const count = jobsFor(setup, point, jobs.time) ?? 0;
		checks.push({ code: 'jobs', holds: count >= jobs.count, value: count, least: jobs.count });
	}
	return checks;
}

/**
 * Every supply with every reel and pair of leads, each at the length of the brief that fails least: the fit ones
 * first, then by the number of checks failed. A rejected design keeps its checks, which say why and by how much.
 * Temperatures are read from the table of the wire, within 0.02 K of `operatingPoint`.
 */
export function searchDesigns(cupboard: Cupboard, brief: Brief): readonly Design[] {
	const designs = cupboard.supplies.flatMap((chosen) =>
		cupboard.reels.flatMap(({ id: reelId, wire }) =>
			cupboard.leads.map(({ id: leadsId, leads }) => {
				const start = {
					supply: chosen.supply,
					leads,
					room: cupboard.room,
					wire: { ...wire, length: brief.length.from },
				};
				const setup = withLimit(start, brief, chosen.currentTo);
				const best = bestLength(setup, brief, chosen.currentTo);
				return { supplyId: chosen.id, reelId, leadsId, ...best };
			}),
		),
	);
	return designs.sort((a, b) => failures(a.checks) - failures(b.checks));
}

/**
 * The part of its room that the tightest check of a design leaves over: 0 at a bound, 1 in the middle of a band or far
 * below a ceiling, negative beyond. The length counts for nothing, it is free within its band.
 */
export function leastMargin(checks: readonly DesignCheck[]): number {
	return Math.min(1, ...checks.map(marginOf));
}

function marginOf(check: DesignCheck): number {
	switch (check.code) {
		case 'runs':
			return check.holds ? 1 : -1;
		case 'length':
			return 1;
		case 'temperature':
		case 'power-per-metre': {
			const { value, band } = check;
			if (band.from === band.to) return check.holds ? 1 : -1;
			return (2 * Math.min(value - band.from, band.to - value)) / (band.to - band.from);
		}
		case 'current':
		case 'ceiling':
			return 1 - check.value / check.most;
		case 'run-time':
		case 'jobs':
			return check.value > 0 ? 1 - check.least / check.value : -1;
		default:
			return check satisfies never;
	}
}

const lengthsTried = 9;

function bestLength(
	setup: Setup,
	brief: Brief,
	currentTo: Amperes | undefined,
): Pick<Design, 'setup' | 'point' | 'checks' | 'isFit'> {
	const { from, to } = brief.length;
	const first = tryLength(setup, brief, currentTo, from);
	const last = from === to ? first : tryLength(setup, brief, currentTo, to);
	let best = last.badness < first.badness ? last : first;
	for (let index = 1; index < lengthsTried - 1 && !isAlike(first, last); index += 1) {
		const next = tryLength(setup, brief, currentTo, from + ((to - from) * index) / (lengthsTried - 1));
		if (next.badness < best.badness) best = next;
	}
	return { setup: best.setup, point: best.point, checks: best.checks, isFit: failures(best.checks) === 0 };
}

interface Tried {
	readonly setup: Setup;
	readonly point: OperatingPoint;
	readonly checks: readonly DesignCheck[];
	readonly badness: number;
}

function tryLength(setup: Setup, brief: Brief, currentTo: Amperes | undefined, length: Metres): Tried {
	const cut = withLength(setup, length);
	const point = settle(cut, steadyTemperatureFromTable(cut));
	const checks = checkDesign(cut, brief, point, currentTo);
	return { setup: cut, point, checks, badness: badness(checks) };
}

/**
 * Whether no length between two is better than both: each check passes or fails alike at both, and what is wanted lies
 * on one side of the middle of its band. Every figure only rises or only falls with the length.
 */
function isAlike(first: Tried, last: Tried): boolean {
	return first.checks.every((check, index) => {
		const other = last.checks[index];
		if (other?.code !== check.code || other.holds !== check.holds) return false;
		if (check.code === 'ceiling') return other.code === 'ceiling' && other.part === check.part;
		if (check.code === 'runs') return other.code === 'runs' && other.state === check.state;
		if (!('band' in check) || !('band' in other) || check.code === 'length') return true;
		const centre = middle(check.band);
		return check.value < centre === other.value < centre;
	});
}

/** Checks failed, and among equals how far the wanted temperature or power is from the middle of its band. */
function badness(checks: readonly DesignCheck[]): number {
	const wanted = checks.find(({ code }) => code === 'temperature' || code === 'power-per-metre');
	if (wanted === undefined || !('band' in wanted)) return failures(checks);
	const { from, to } = wanted.band;
	const off = Math.abs(wanted.value - (from + to) / 2) / Math.max(to - from, 1e-9);
	return failures(checks) + off / (1 + off);
}

/** A supply whose limit can be set is set to the current for the middle of the wanted temperature or power. */
function withLimit(setup: Setup, brief: Brief, currentTo: Amperes | undefined): Setup {
	if (currentTo === undefined || setup.supply.protection.kind !== 'holds') return setup;
	const temperature = wantedTemperature(setup, brief);
	if (temperature === null) return setup;
	const limit = Math.min(currentTo, heatCurve(setup).currentAt(temperature));
	return { ...setup, supply: { ...setup.supply, protection: { kind: 'holds', limit } } };
}

function wantedTemperature(setup: Setup, { temperature, powerPerMetre }: Brief): Kelvin | null {
	const curve = heatCurve(setup);
	if (temperature !== undefined) {
		return Math.min(curve.hottest, Math.max(curve.room.temperature, middle(temperature)));
	}
	return powerPerMetre === undefined ? null : curve.temperatureAtPower(middle(powerPerMetre)).temperature;
}

function middle({ from, to }: Band): number {
	return (from + to) / 2;
}

function isIn({ from, to }: Band, value: number): boolean {
	return value >= from * (1 - 1e-9) && value <= to * (1 + 1e-9);
}

function failures(checks: readonly DesignCheck[]): number {
	return checks.filter(({ holds }) => !holds).length;
}
