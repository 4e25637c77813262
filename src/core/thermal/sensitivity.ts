import type { Amperes, Kelvin } from '#core/quantity/unit.ts';
import type { HotWire } from './hot-wire.ts';
import { heatLossPerMetre } from './wire.ts';

/** Share the temperature rise changes by when an input changes by a small share: ∂ln(T − T∞)/∂ln x. */
export interface RiseSensitivities {
	readonly current: number;
	readonly diameter: number;
	readonly resistivity: number;
	readonly emissivity: number;
	/** of the convection law, which stands for everything uncertain about it */
	readonly convection: number;
	/** of the whole loss, convection and radiation together */
	readonly heatLoss: number;
	/** K of wire per K of room; a plain slope, not a share */
	readonly roomTemperature: number;
}

/** Central difference quotient. */
function slope(f: (x: number) => number, at: number, step: number): number {
	return (f(at + step) - f(at - step)) / (2 * step);
}

/**
 * How the steady rise answers to each input, from the implicit law F = I² R′ − q′ = 0: ∂T/∂x = −(∂F/∂x)/(∂F/∂T).
 *
 * @param hot the wire in its room
 * @param current in A, above 0, leading to a rise of at least 1 K within the curve
 * @returns undefined when there is no steady temperature in range
 * @throws RangeError for a current that is not above 0 or warms the wire by less than 1 K
 * @see JCGM 100:2008, 5.1; the implicit rule from memory; checked in tests/unit/core/thermal/sensitivity.test.ts
 */
export function riseSensitivities(hot: HotWire, current: Amperes): RiseSensitivities | undefined {
	const { temperature, isInRange } = hot.temperatureAt(current);
	if (!isInRange) return undefined;
	const rise = temperature - hot.room.temperature;
	if (!(rise >= 1)) throw new RangeError(`a rise of ${rise} K is too small to take sensitivities of`);
	const gain = current ** 2 * hot.resistancePerMetre(temperature);
	const loss = hot.heatLoss(temperature);
	const convected = hot.convected(temperature);
	const stiffness = lossSlope(hot, temperature) - gainSlope(hot, temperature, current);
	const share = (change: number) => change / (stiffness * rise);
	return {
		current: share(2 * gain),
		diameter: share(-2 * gain - lossSlopeOverDiameter(hot, temperature)),
		resistivity: share(gain),
		emissivity: share(convected - loss),
		convection: share(-convected),
		heatLoss: share(-loss),
		roomTemperature: -lossSlopeOverRoom(hot, temperature) / stiffness,
	};
}

function lossSlope(hot: HotWire, temperature: Kelvin): number {
	return slope((T) => hot.heatLoss(T), temperature, 0.05);
}

function gainSlope(hot: HotWire, temperature: Kelvin, current: Amperes): number {
	return current ** 2 * slope((T) => hot.resistancePerMetre(T), temperature, 0.05);
}

/** ∂q′/∂ln d; taken inwards at the ends of the range of diameters. */
function lossSlopeOverDiameter(hot: HotWire, temperature: Kelvin): number {
	const { wire, room } = hot;
	const lossAt = (factor: number) => {
		return heatLossPerMetre({ ...wire, diameter: wire.diameter * factor }, temperature, room);
	};
	const middle = wire.diameter < 0.0501e-3 ? 1.0011 : wire.diameter > 1.999e-3 ? 0.9989 : 1;
	return slope((logarithm) => lossAt(middle * Math.exp(logarithm)), 0, 1e-3);
}

/** ∂q′/∂T∞ with air and walls together; taken inwards at the ends of the range of rooms. */
function lossSlopeOverRoom(hot: HotWire, temperature: Kelvin): number {
	const { wire, room } = hot;
	const at = Math.min(332.9, Math.max(233.1, room.temperature));
	return slope(
		(roomTemperature) => heatLossPerMetre(wire, temperature, { ...room, temperature: roomTemperature }),
		at,
		0.1,
	);
}
