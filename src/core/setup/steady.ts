import { loopCurrent } from '#core/electric/circuit.ts';
import { rootBetween } from '#core/numeric/root.ts';
import type { Amperes, Kelvin, OhmsPerMetre, Volts } from '#core/quantity/unit.ts';
import type { HotWire } from '#core/thermal/hot-wire.ts';
import { heatCurve } from './heat-curve.ts';
import { temperatureFromTable } from './heat-table.ts';
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
	return steadyBy(setup, (curve, excess) => {
		const atEnd = excess({
			current: curve.currentAt(curve.hottest),
			resistancePerMetre: curve.resistancePerMetre(curve.hottest),
		});
		if (atEnd < 0) return null;
		return rootBetween(
			(temperature) =>
				excess({
					current: curve.currentAt(temperature),
					resistancePerMetre: curve.resistancePerMetre(temperature),
				}),
			{ from: setup.room.temperature, to: curve.hottest, tolerance: 1e-8 },
		);
	});
}

/** The same read from a table, within 0.02 K: for charts, where many lengths share one wire. */
export function steadyTemperatureFromTable(setup: Setup): Steady {
	return steadyBy(setup, temperatureFromTable);
}

type Excess = (at: { readonly current: Amperes; readonly resistancePerMetre: OhmsPerMetre }) => Volts;

function steadyBy(setup: Setup, find: (curve: HotWire, excess: Excess) => Kelvin | null): Steady {
	const { supply, wire, room } = setup;
	const sourceVoltage = supply.openCircuitVoltage;
	const seriesResistance = seriesResistanceOf(setup);
	if (sourceVoltage === 0) return { current: 0, temperature: room.temperature, isInRange: true };
	const curve = heatCurve(setup);
	const root = find(
		curve,
		(at) => at.current * (seriesResistance + at.resistancePerMetre * wire.length) - sourceVoltage,
	);
	const temperature = root ?? curve.hottest;
	const loadResistance = curve.resistancePerMetre(temperature) * wire.length;
	const current = loopCurrent({ sourceVoltage, seriesResistance, loadResistance });
	return { current, temperature, isInRange: root !== null };
}
