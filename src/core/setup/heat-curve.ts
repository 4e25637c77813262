import type { Kelvin } from '#core/quantity/unit.ts';
import { HotWire } from '#core/thermal/hot-wire.ts';
import type { Setup } from './setup.ts';

/** Resistances "when cold" are at this temperature, 20 °C. */
export const coldTemperature: Kelvin = 293.15;

const known = new Map<string, HotWire>();
const most = 64;

/** The heated wire of a set-up; its curve does not depend on length or supply, so it is kept and shared. */
export function heatCurve({ wire, room }: Pick<Setup, 'wire' | 'room'>): HotWire {
	const { material, diameter, emissivity } = wire;
	const key = [material.id, material.resistivity.value, diameter, emissivity, ...Object.values(room)].join(' ');
	const kept = known.get(key);
	if (kept !== undefined) return kept;
	const made = new HotWire({ material, diameter, ...(emissivity === undefined ? {} : { emissivity }) }, room);
	const oldest = known.keys().next().value;
	if (known.size >= most && oldest !== undefined) known.delete(oldest);
	known.set(key, made);
	return made;
}
