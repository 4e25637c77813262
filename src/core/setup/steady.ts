import { loopCurrent } from '#core/electric/circuit.ts';
import { rootBetween } from '#core/numeric/root.ts';
import type { Amperes, Kelvin } from '#core/quantity/unit.ts';
import { heatCurve } from './heat-curve.ts';
import { seriesResistanceOf, type Setup } from './setup.ts';

/** Where a loop settles when only its resistance limits the current. */
export interface Steady {
	readonly current: Amperes;
	readonly temperature: Kelvin;
	/** false when the wire would settle hotter than its curve reaches */
	readonly isInRange: boolean;
}

/**
 * The root in T of I(T) (Rs + R′(T) ℓ) = Us, from room temperature up to the end of the wire's curve (melting, or the last
 * known resistance); current and resistance per metre are explicit functions of the temperature, so one unknown is
 * left. Without a root in that range, the temperature is the end of the curve and the current what the loop passes
 * there.
 */
export function steadyTemperature(setup: Setup): Steady {
	const { supply, wire, room } = setup;
	const { openCircuitVoltage } = supply;
	const outside = seriesResistanceOf(setup);
	const curve = heatCurve(setup);
	if (openCircuitVoltage === 0) return { current: 0, temperature: room.temperature, isInRange: true };
	const currentAt = (temperature: Kelvin) =>
		loopCurrent({
			sourceVoltage: openCircuitVoltage,
			seriesResistance: outside,
			loadResistance: curve.resistancePerMetre(temperature) * wire.length,
		});
	const excess = (temperature: Kelvin) => curve.currentAt(temperature) - currentAt(temperature);
	const { hottest } = curve;
	if (excess(hottest) < 0) return { current: currentAt(hottest), temperature: hottest, isInRange: false };
	const temperature = rootBetween(excess, { from: room.temperature, to: hottest, tolerance: 1e-8 });
	return { current: currentAt(temperature), temperature, isInRange: true };
}
