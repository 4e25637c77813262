import { greatestPower } from '#core/electric/circuit.ts';
import { heldCurrent, highestVoltage, ratedCurrent } from '#core/electric/supply.ts';
import { fail, succeed, type Outcome } from '#core/outcome.ts';
import type { Amperes, Kelvin, Metres, Ohms, Volts, Watts } from '#core/quantity/unit.ts';
import { coldTemperature, heatCurve } from './heat-curve.ts';
import { operatingPoint, type OperatingPoint } from './operating-point.ts';
import { longestLength, seriesResistanceOf, shortestLength, withLength, type Setup } from './setup.ts';

/** What one wants of the wire; the length that does it is looked for. Values in SI units, resistance hot. */
export interface Wish {
	readonly kind: 'current' | 'resistance' | 'cold-resistance' | 'length' | 'temperature' | 'power' | 'power-per-metre';
	readonly value: number;
}

export type WishProblem =
	| { readonly code: 'not-positive'; readonly value: number }
	| { readonly code: 'over-24-volts'; readonly voltage: Volts; readonly most: Volts }
	| { readonly code: 'no-voltage' }
	/** the wish needs more than the supply, the leads or the fuse is rated for */
	| {
			readonly code: 'over-limit';
			readonly part: 'supply' | 'leads' | 'fuse';
			readonly current: Amperes;
			readonly limit: Amperes;
	  }
	| { readonly code: 'over-wire-limit'; readonly temperature: Kelvin; readonly limit: Kelvin }
	| { readonly code: 'below-room'; readonly temperature: Kelvin; readonly room: Kelvin }
	/** supply and leads alone let less through: no wire, however short, brings this current */
	| { readonly code: 'no-length'; readonly current: Amperes; readonly most: Amperes; readonly seriesResistance: Ohms }
	| { readonly code: 'over-greatest-power'; readonly power: Watts; readonly most: Watts }
	| { readonly code: 'too-short'; readonly length: Metres; readonly least: Metres }
	| { readonly code: 'too-long'; readonly length: Metres; readonly most: Metres };

/** Not a refusal, but to be told. */
export type WishRemark =
	| {
			readonly code: 'over-ceiling';
			readonly part: 'supply' | 'leads' | 'fuse' | 'wire';
			readonly current: Amperes;
			readonly ceiling: Amperes;
	  }
	/** the wire wanted would be right, but its cold current or the state of the supply keeps it from starting */
	| { readonly code: 'does-not-start'; readonly state: OperatingPoint['state']; readonly inrush: Amperes };

/** A set-up that fulfils a wish. */
export interface Solution {
	/** the set-up given, with the length found */
	readonly setup: Setup;
	readonly length: Metres;
	/** what the wire must have when hot, and what to look for on the ohmmeter */
	readonly resistanceHot: Ohms;
	readonly resistanceCold: Ohms;
	readonly current: Amperes;
	readonly temperature: Kelvin;
	readonly point: OperatingPoint;
	readonly remarks: readonly WishRemark[];
}

/**
 * The length of wire that fulfils a wish on the given supply, leads and room; the length in `setup` does not matter.
 *
 *   R = Us/I − Rs,  ℓ = R/R′(T(I))
 *
 * A temperature or a power per metre first gives its current by the heat balance. A power has two currents,
 * I = (Us ∓ √(Us² − 4 Rs P))/(2 Rs): the smaller is taken, which the supply bears sooner and wastes less.
 */
export function solveWish(setup: Setup, wish: Wish): Outcome<Solution, WishProblem> {
	const { openCircuitVoltage } = setup.supply;
	if (!(wish.value > 0 && Number.isFinite(wish.value))) return fail({ code: 'not-positive', value: wish.value });
	if (openCircuitVoltage > highestVoltage) {
		return fail({ code: 'over-24-volts', voltage: openCircuitVoltage, most: highestVoltage });
	}
	if (!(openCircuitVoltage > 1e-6)) return fail({ code: 'no-voltage' });
	// beyond any workshop at both ends, but still a number to reckon with
	const length = wishedLength(setup, { ...wish, value: Math.min(1e9, Math.max(1e-9, wish.value)) });
	if (!length.ok) return length;
	if (length.value < shortestLength) return fail({ code: 'too-short', length: length.value, least: shortestLength });
	if (length.value > longestLength) return fail({ code: 'too-long', length: length.value, most: longestLength });
	const solved = withLength(setup, length.value);
	const point = operatingPoint(solved);
	const hottest = setup.wire.material.limit.value;
	if (!point.isTemperatureInRange || point.temperature > hottest) {
		return fail({ code: 'over-wire-limit', temperature: point.temperature, limit: hottest });
	}
	return succeed({
		setup: solved,
		length: length.value,
		resistanceHot: point.resistanceHot,
		resistanceCold: point.resistanceCold,
		current: point.current,
		temperature: point.temperature,
		point,
		remarks: remarksOn(point),
	});
}

function wishedLength(setup: Setup, { kind, value }: Wish): Outcome<Metres, WishProblem> {
	const curve = heatCurve(setup);
	switch (kind) {
		case 'length':
			return succeed(value);
		case 'cold-resistance':
			return succeed(value / curve.resistancePerMetre(coldTemperature));
		case 'resistance':
			return lengthForHotResistance(setup, value);
		case 'current':
			return lengthForCurrent(setup, value);
		case 'temperature':
			return lengthForTemperature(setup, value);
		case 'power-per-metre':
			return lengthForTemperature(setup, curve.temperatureAtPower(value).temperature);
		case 'power': {
			const current = currentForPower(setup, value);
			return current.ok ? lengthForCurrent(setup, current.value) : current;
		}
		default:
			return kind satisfies never;
	}
}

function lengthForHotResistance(setup: Setup, resistance: Ohms): Outcome<Metres, WishProblem> {
	const asked = setup.supply.openCircuitVoltage / (resistance + seriesResistanceOf(setup));
	const current = Math.min(asked, heldCurrent(setup.supply) ?? Infinity);
	const curve = heatCurve(setup);
	return succeed(resistance / curve.resistancePerMetre(curve.temperatureAt(current).temperature));
}

function lengthForTemperature(setup: Setup, temperature: Kelvin): Outcome<Metres, WishProblem> {
	const room = setup.room.temperature;
	if (temperature <= room) return fail({ code: 'below-room', temperature, room });
	const limit = setup.wire.material.limit.value;
	const curve = heatCurve(setup);
	if (temperature > Math.min(limit, curve.hottest)) return fail({ code: 'over-wire-limit', temperature, limit });
	return lengthForCurrent(setup, curve.currentAt(temperature));
}

function lengthForCurrent(setup: Setup, current: Amperes): Outcome<Metres, WishProblem> {
	const over = overLimits(setup, current);
	const curve = heatCurve(setup);
	const { temperature, isInRange } = curve.temperatureAt(current);
	const limit = setup.wire.material.limit.value;
	if (!isInRange || temperature > limit) over.push({ code: 'over-wire-limit', temperature, limit });
	const seriesResistance = seriesResistanceOf(setup);
	const resistance = setup.supply.openCircuitVoltage / current - seriesResistance;
	if (!(resistance > 0)) {
		const most = setup.supply.openCircuitVoltage / seriesResistance;
		over.push({ code: 'no-length', current, most, seriesResistance });
	}
	return over.length > 0 ? fail(...over) : succeed(resistance / curve.resistancePerMetre(temperature));
}

function currentForPower(setup: Setup, power: Watts): Outcome<Amperes, WishProblem> {
	const sourceVoltage = setup.supply.openCircuitVoltage;
	const seriesResistance = seriesResistanceOf(setup);
	const most = greatestPower({ sourceVoltage, seriesResistance });
	if (power > most) return fail({ code: 'over-greatest-power', power, most });
	// the smaller root, written without the difference of two near numbers
	const root = Math.sqrt(sourceVoltage ** 2 - 4 * seriesResistance * power);
	return succeed((2 * power) / (sourceVoltage + root));
}

function overLimits({ supply, leads }: Setup, current: Amperes): WishProblem[] {
	const ratings = [
		{ part: 'supply', limit: ratedCurrent(supply) },
		{ part: 'leads', limit: leads.rating },
		{ part: 'fuse', limit: supply.fuse?.rating ?? null },
	] as const;
	return ratings.flatMap(({ part, limit }) =>
		limit !== null && current > limit * (1 + 1e-9) ? [{ code: 'over-limit' as const, part, current, limit }] : [],
	);
}

function remarksOn(point: OperatingPoint): readonly WishRemark[] {
	const bold = point.binding
		.filter(({ ratio }) => ratio > 1 + 1e-9)
		.map(({ kind, ceiling }) => ({ code: 'over-ceiling' as const, part: kind, current: point.current, ceiling }));
	const isStarted = point.state === 'on' || point.state === 'holding-limit';
	if (isStarted) return bold;
	return [...bold, { code: 'does-not-start', state: point.state, inrush: point.inrushCurrent }];
}
