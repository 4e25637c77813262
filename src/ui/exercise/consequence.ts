import { materialIds, materials } from '#core/material/materials.ts';
import { resistivityAt, type Material } from '#core/material/material.ts';
import { operatingPoint, type SupplyState } from '#core/setup/operating-point.ts';
import type { WireState } from '#core/setup/wire-state.ts';
import { stillRoom } from '#core/thermal/room.ts';
import type { Cupboard, CupboardReel } from '#exercise/cupboard.ts';
import type { Exercise } from '#exercise/exercise.ts';
import type { QuantityKindId } from '#exercise/quantity-kind.ts';
import type { Variant } from '#exercise/variant.ts';

/** A set-up of the bench that shows what a number does. */
export interface BenchPlan {
	/** V */
	readonly voltage: number;
	/** A */
	readonly currentLimit: number;
	readonly reel: string;
	/** m */
	readonly length: number;
}

/** What the learner's own number would do on the bench; values in SI. */
export type Consequence =
	| {
			readonly code: 'loop';
			readonly resistance: number;
			readonly voltage: number;
			/** what flows while the wire is cold, if nothing limits it */
			readonly current: number;
			readonly wished?: number;
			readonly supplyState: SupplyState;
			readonly wireState: WireState;
			readonly postsVoltage: number;
			readonly plan: BenchPlan;
	  }
	| {
			readonly code: 'needed-voltage';
			readonly current: number;
			readonly resistance: number;
			readonly needed: number;
			readonly given: number;
			readonly plan?: BenchPlan;
	  }
	| {
			readonly code: 'reading';
			readonly length: number;
			readonly reel: string;
			readonly reading: number;
			readonly given: number;
			readonly plan: BenchPlan;
	  }
	| {
			readonly code: 'between';
			readonly perMetre: number;
			readonly length: number;
			readonly ohms: number;
			readonly given: number;
	  }
	| { readonly code: 'impossible'; readonly value: number }
	| { readonly code: 'ratio'; readonly ratio: number };

const cold = 293.15;
const benchCurrent = 5;
const benchVoltage = 12;
const handyLength = 0.6;
/** bare leads and supply: the number alone shall show */
const noLeads = { resistance: 0, rating: 10 } as const;

/** Runs the learner's number through the bench model; undefined when nothing can be said of it. */
export function consequenceOf(
	exercise: Exercise,
	variant: Variant,
	answer: { readonly find: string; readonly value: number },
	cupboard: Cupboard,
): Consequence | undefined {
	const { find, value } = answer;
	const step = exercise.steps.find((candidate) => candidate.find === find);
	if (step?.kind !== 'number' || !Number.isFinite(value)) return undefined;
	if (value <= 0) return { code: 'impossible', value };
	const given = (kind: QuantityKindId): number | undefined => valuesOf(exercise, variant, kind)[0];
	const told =
		step.quantity === 'resistance'
			? loop(value, given, cupboard)
			: step.quantity === 'current'
				? neededVoltage(value, given, cupboard)
				: step.quantity === 'length'
					? reading(value, given, variant, cupboard)
					: step.quantity === 'resistance-per-length'
						? between(value, exercise, variant)
						: undefined;
	return told ?? ratioTo(value, variant.expected[find]);
}

type GivenOf = (kind: QuantityKindId) => number | undefined;

function loop(resistance: number, given: GivenOf, cupboard: Cupboard): Consequence | undefined {
	const voltage = given('voltage') ?? given('source-voltage');
	const wished = given('current');
	const found = reelFor(resistance, cupboard);
	if (voltage === undefined || !(voltage > 0 && voltage <= 24) || !found) return undefined;
	const { reel, material, length } = found;
	const currentLimit = given('current-limit') ?? benchCurrent;
	const point = operatingPoint({
		supply: { openCircuitVoltage: voltage, internalResistance: 0, protection: { kind: 'holds', limit: currentLimit } },
		wire: { material, diameter: reel.diameterMillimetres / 1000, length },
		leads: noLeads,
		room: stillRoom,
	});
	return {
		code: 'loop',
		resistance,
		voltage,
		current: point.inrushCurrent,
		...(wished === undefined ? {} : { wished }),
		supplyState: point.state,
		wireState: point.wireState,
		postsVoltage: point.postsVoltage,
		plan: { voltage, currentLimit, reel: reel.id, length },
	};
}

function neededVoltage(current: number, given: GivenOf, cupboard: Cupboard): Consequence | undefined {
	const voltage = given('voltage') ?? given('source-voltage');
	const resistance = given('resistance');
	if (voltage === undefined || resistance === undefined) return undefined;
	const found = voltage <= 24 ? reelFor(resistance, cupboard) : undefined;
	const plan = found && {
		voltage,
		currentLimit: given('current-limit') ?? benchCurrent,
		reel: found.reel.id,
		length: found.length,
	};
	return {
		code: 'needed-voltage',
		current,
		resistance,
		needed: current * resistance,
		given: voltage,
		...(plan ? { plan } : {}),
	};
}

function reading(length: number, given: GivenOf, variant: Variant, cupboard: Cupboard): Consequence | undefined {
	const shown = given('resistance-reading');
	const leads = given('lead-resistance') ?? 0;
	const perMetre = given('resistance-per-length');
	const reel = cupboard.reels.find(({ id }) => id === variant.items.reel);
	if (shown === undefined || perMetre === undefined || !reel) return undefined;
	const plan = { voltage: benchVoltage, currentLimit: benchCurrent, reel: reel.id, length };
	return { code: 'reading', length, reel: reel.id, reading: length * perMetre + leads, given: shown, plan };
}

function between(perMetre: number, exercise: Exercise, variant: Variant): Consequence | undefined {
	const [first, second] = valuesOf(exercise, variant, 'resistance-reading');
	const [from, to] = valuesOf(exercise, variant, 'length');
	if (first === undefined || second === undefined || from === undefined || to === undefined) return undefined;
	const length = Math.abs(to - from);
	return { code: 'between', perMetre, length, ohms: perMetre * length, given: Math.abs(second - first) };
}

function ratioTo(value: number, expected: number | undefined): Consequence | undefined {
	if (expected === undefined || !(expected > 0)) return undefined;
	return { code: 'ratio', ratio: value / expected };
}

function valuesOf(exercise: Exercise, variant: Variant, kind: QuantityKindId): readonly number[] {
	return exercise.givens.flatMap(({ symbol, quantity, isHidden }) => {
		const value = variant.givens[symbol];
		return quantity === kind && !isHidden && value !== undefined ? [value] : [];
	});
}

// the reel that gives this resistance in the handiest length between the posts
function reelFor(resistance: number, cupboard: Cupboard) {
	const found = cupboard.reels.flatMap((reel) => {
		// a metal that must stay cool, or grows in ohms as it warms, would hide what the number does
		const material = reel.limitCelsius === undefined ? metalOf(reel) : undefined;
		if (!material) return [];
		const area = (Math.PI * (reel.diameterMillimetres / 1000) ** 2) / 4;
		const length = (resistance * area) / resistivityAt(material, cold);
		return length >= 0.01 && length <= 10 ? [{ reel, material, length }] : [];
	});
	const away = (length: number): number => Math.abs(Math.log(length / handyLength));
	return found.toSorted((a, b) => away(a.length) - away(b.length))[0];
}

function metalOf({ designation }: CupboardReel): Material | undefined {
	const id = materialIds.find((one) => materials[one].designation === designation);
	return id && materials[id];
}
