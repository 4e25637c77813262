import { batteryRunTime, usableCharge } from '#core/electric/battery.ts';
import { loopCurrent } from '#core/electric/circuit.ts';
import { fuseVerdict, type FuseVerdict } from '#core/electric/fuse.ts';
import { heldCurrent, highestVoltage, tripCurrent } from '#core/electric/supply.ts';
import type {
	Amperes,
	Coulombs,
	Kelvin,
	Ohms,
	OhmsPerMetre,
	Seconds,
	Volts,
	Watts,
	WattsPerMetre,
	WattsPerSquareMetre,
} from '#core/quantity/unit.ts';
import { ceilings, type Ceiling } from './ceiling.ts';
import { coldTemperature, heatCurve } from './heat-curve.ts';
import { seriesResistanceOf, shortLink, type Setup } from './setup.ts';
import { steadyTemperature, type Steady } from './steady.ts';
import { wireState, type WireState } from './wire-state.ts';

export type SupplyState = 'off' | 'on' | 'holding-limit' | 'tripped' | 'fuse-open' | 'flat' | 'refused-short';

/** Why no current flows, or less than asked. */
export type StateFact =
	| { readonly code: 'held-at'; readonly limit: Amperes; readonly asked: Amperes }
	| {
			readonly code: 'tripped-by';
			readonly cause: 'hot-current' | 'inrush';
			readonly behaviour: 'retries' | 'latches';
			readonly current: Amperes;
			readonly tripAbove: Amperes;
	  }
	| {
			readonly code: 'fuse-opened-by';
			readonly cause: 'hot-current' | 'inrush';
			readonly current: Amperes;
			readonly rating: Amperes;
			readonly within: Seconds;
	  }
	| { readonly code: 'short-on-bare-battery'; readonly wouldPass: Amperes; readonly heatInside: Watts }
	| { readonly code: 'charge-used'; readonly usable: Coulombs; readonly used: Coulombs };

/** What a set-up settles to. Everything is 0 and at room temperature when no current flows, save what is asked. */
export interface OperatingPoint {
	readonly state: SupplyState;
	readonly facts: readonly StateFact[];
	readonly wireState: WireState;
	readonly current: Amperes;
	/** steady current the loop would draw if nothing limited it */
	readonly askedCurrent: Amperes;
	/** current in the first moment, wire still cold, if nothing limited it */
	readonly inrushCurrent: Amperes;
	/** across the wire */
	readonly postsVoltage: Volts;
	/** across the terminals of the supply, before the leads */
	readonly supplyVoltage: Volts;
	/** of the wire at 20 °C */
	readonly resistanceCold: Ohms;
	/** of the wire at its temperature */
	readonly resistanceHot: Ohms;
	readonly resistancePerMetre: OhmsPerMetre;
	/** in the wire */
	readonly power: Watts;
	readonly powerPerMetre: WattsPerMetre;
	/** power per surface of the wire */
	readonly surfaceLoad: WattsPerSquareMetre;
	/** of the wire, far from its ends */
	readonly temperature: Kelvin;
	/** false when the wire would settle hotter than its data reach; its temperature is then their end */
	readonly isTemperatureInRange: boolean;
	/** heat inside the supply by its internal resistance */
	readonly supplyLoss: Watts;
	readonly leadsLoss: Watts;
	/** ceilings of the planned current, tightest first */
	readonly binding: readonly Ceiling[];
	/** what the fuse makes of the current, when there is a fuse */
	readonly fuse: FuseVerdict | null;
	/** for a battery that delivers */
	readonly runTime: Seconds | null;
}

/** Switch position, on by default, and the charge already drawn from a battery in C, none by default. */
export interface Use {
	readonly isOn?: boolean;
	readonly usedCharge?: Coulombs;
}

/**
 * The steady state of a supply, its leads and a long wire in a room.
 *
 *   I(T) (Rs + R′(T) ℓ) = Us,  Rs = Ri + Rleads
 *
 * with I(T) from the heat balance of the wire; then what the supply's limit, trip or fuse makes of it. A trip or a
 * fuse is decided by the hot current and by the inrush: a supply trips at once, a fuse needs 4 times its rating to
 * open before the wire has warmed.
 *
 * @param setup no problem by `validateSetup`
 * @throws RangeError above 24 V and outside the ranges of the parts
 */
export function operatingPoint(setup: Setup, use: Use = {}): OperatingPoint {
	return settle(setup, steadyTemperature(setup), use);
}

/** The operating point when the steady state without limits is already known. */
export function settle(setup: Setup, asked: Steady, use: Use = {}): OperatingPoint {
	const { supply, wire, leads, room } = setup;
	if (!(supply.openCircuitVoltage <= highestVoltage)) {
		throw new RangeError(`no supply above ${highestVoltage} V, got ${supply.openCircuitVoltage} V`);
	}
	if (!(wire.length > 0)) throw new RangeError(`a wire needs a length, got ${wire.length} m`);
	const curve = heatCurve(setup);
	const resistanceCold = curve.resistancePerMetre(coldTemperature) * wire.length;
	const inrushCurrent = loopCurrent({
		sourceVoltage: supply.openCircuitVoltage,
		seriesResistance: seriesResistanceOf(setup),
		loadResistance: curve.resistancePerMetre(room.temperature) * wire.length,
	});
	const verdict = decide(setup, { asked: asked.current, inrush: inrushCurrent }, use);
	const isHeld = verdict.state === 'holding-limit';
	const { temperature, isInRange } = isHeld
		? curve.temperatureAt(verdict.current)
		: verdict.current > 0
			? asked
			: { temperature: room.temperature, isInRange: true };
	const resistancePerMetre = curve.resistancePerMetre(temperature);
	const resistanceHot = resistancePerMetre * wire.length;
	// past the end of the curve the resistance is the last one known
	const current = isHeld && !isInRange ? Math.min(verdict.current, asked.current) : verdict.current;
	const powerPerMetre = current ** 2 * resistancePerMetre;
	return {
		state: verdict.state,
		facts: verdict.facts,
		wireState: wireState({
			temperature,
			roomTemperature: room.temperature,
			limit: wire.material.limit.value,
			isInRange,
			melting: wire.material.melting.from,
		}),
		current,
		askedCurrent: asked.current,
		inrushCurrent,
		postsVoltage: current * resistanceHot,
		supplyVoltage: current * (resistanceHot + leads.resistance),
		resistanceCold,
		resistanceHot,
		resistancePerMetre,
		power: powerPerMetre * wire.length,
		powerPerMetre,
		surfaceLoad: powerPerMetre / (Math.PI * wire.diameter),
		temperature,
		isTemperatureInRange: isInRange,
		supplyLoss: current ** 2 * supply.internalResistance,
		leadsLoss: current ** 2 * leads.resistance,
		binding: ceilings(setup, verdict.current > 0 ? current : asked.current),
		fuse: supply.fuse === undefined ? null : fuseVerdict({ rating: supply.fuse.rating, current }),
		runTime: supply.charge === undefined || !(current > 0) ? null : batteryRunTime(supply.charge, current),
	};
}

/** What would flow if the supply, its fuse or the bench did not stop it; null when nothing is stopped. */
export function prospectiveCurrent({ facts }: OperatingPoint): Amperes | null {
	for (const fact of facts) {
		if (fact.code === 'short-on-bare-battery') return fact.wouldPass;
		if (fact.code === 'fuse-opened-by' || fact.code === 'tripped-by') return fact.current;
	}
	return null;
}

interface Verdict {
	readonly state: SupplyState;
	readonly current: Amperes;
	readonly facts: readonly StateFact[];
}

function decide(
	setup: Setup,
	{ asked, inrush }: { asked: Amperes; inrush: Amperes },
	{ isOn = true, usedCharge = 0 }: Use,
): Verdict {
	const { supply } = setup;
	if (!isOn) return { state: 'off', current: 0, facts: [] };
	if (isBareShort(setup, inrush)) {
		const heatInside = inrush ** 2 * supply.internalResistance;
		return none('refused-short', { code: 'short-on-bare-battery', wouldPass: inrush, heatInside });
	}
	if (supply.charge !== undefined && usedCharge >= usableCharge(supply.charge)) {
		return none('flat', { code: 'charge-used', usable: usableCharge(supply.charge), used: usedCharge });
	}
	const held = heldCurrent(supply) ?? Infinity;
	const blown = fuseFact(setup, Math.min(asked, held), Math.min(inrush, held));
	if (blown !== null) return none('fuse-open', blown);
	const tripAbove = tripCurrent(supply) ?? Infinity;
	const tripping = asked > tripAbove ? 'hot-current' : inrush > tripAbove ? 'inrush' : null;
	if (tripping !== null && (supply.protection.kind === 'retries' || supply.protection.kind === 'latches')) {
		const current = tripping === 'inrush' ? inrush : asked;
		const behaviour = supply.protection.kind;
		return none('tripped', { code: 'tripped-by', cause: tripping, behaviour, current, tripAbove });
	}
	if (asked > held * (1 + 1e-9)) {
		return { state: 'holding-limit', current: held, facts: [{ code: 'held-at', limit: held, asked }] };
	}
	return { state: 'on', current: asked, facts: [] };
}

function none(state: SupplyState, fact: StateFact): Verdict {
	return { state, current: 0, facts: [fact] };
}

/** A bare battery is shorted by a link in place of a wire, or by more than twice what its leads carry. */
function isBareShort({ supply, wire, leads }: Setup, inrush: Amperes): boolean {
	if (supply.protection.kind !== 'none' || supply.fuse !== undefined) return false;
	return inrush > 0 && (wire.length < shortLink || inrush > 2 * leads.rating);
}

function fuseFact({ supply }: Setup, steady: Amperes, inrush: Amperes): StateFact | null {
	if (supply.fuse === undefined) return null;
	const { rating } = supply.fuse;
	const hot = fuseVerdict({ rating, current: steady });
	if (hot.gate === 'opens') {
		return { code: 'fuse-opened-by', cause: 'hot-current', current: steady, rating, within: hot.within };
	}
	const cold = fuseVerdict({ rating, current: inrush });
	if (cold.gate !== 'opens' || cold.ratio < 4) return null;
	return { code: 'fuse-opened-by', cause: 'inrush', current: inrush, rating, within: cold.within };
}
