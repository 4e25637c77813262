import type { Kelvin } from '#core/quantity/unit.ts';
import { HotWire } from '#core/thermal/hot-wire.ts';
import type { Setup } from './setup.ts';

/** Resistances "when cold" are at this temperature, 20 °C. */
export const coldTemperature: Kelvin = 293.15;

type HeatedWire = Pick<Setup, 'wire' | 'room'>;

/** Lately used first. */
let known: readonly { readonly of: HeatedWire; readonly curve: HotWire }[] = [];
const most = 64;

/** The heated wire of a set-up; its curve does not depend on length or supply, so it is kept and shared. */
export function heatCurve({ wire, room }: HeatedWire): HotWire {
	const found = known.find(({ of }) => isSame(of, { wire, room }));
	if (found !== undefined && found === known[0]) return found.curve;
	const { material, diameter, emissivity } = wire;
	const curve =
		found?.curve ?? new HotWire({ material, diameter, ...(emissivity === undefined ? {} : { emissivity }) }, room);
	known = [{ of: { wire, room }, curve }, ...known.filter((kept) => kept !== found).slice(0, most - 1)];
	return curve;
}

function isSame(a: HeatedWire, b: HeatedWire): boolean {
	return (
		a.wire.material === b.wire.material &&
		a.wire.diameter === b.wire.diameter &&
		a.wire.emissivity === b.wire.emissivity &&
		a.room.temperature === b.room.temperature &&
		a.room.pressure === b.room.pressure &&
		a.room.draught === b.room.draught
	);
}
