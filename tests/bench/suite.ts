import { materials } from '#core/material/materials.ts';
import { HotWire } from '#core/thermal/hot-wire.ts';
import { stillRoom } from '#core/thermal/room.ts';
import { heatLossPerMetre, resistancePerMetre } from '#core/thermal/wire.ts';
import { medianMs, ratioRow, type BenchRow } from './measure.ts';

const wire = { material: materials['nicr-80-20'], diameter: 0.4e-3 };
const currents = Array.from({ length: 200 }, (_, index) => 0.5 + index * 0.02);

/** The bench's own baseline: halving the same balance from room temperature to 1600 K, with nothing kept. */
function bisect(current: number): number {
	let low: number = stillRoom.temperature;
	let high = 1600;
	while (high - low > 1e-3) {
		const middle = (low + high) / 2;
		const surplus = current ** 2 * resistancePerMetre(wire, middle) - heatLossPerMetre(wire, middle, stillRoom);
		if (surplus > 0) low = middle;
		else high = middle;
	}
	return (low + high) / 2;
}

export function suite(): readonly BenchRow[] {
	const hotWire = new HotWire(wire, stillRoom);
	const furthest = Math.max(
		...currents.map((current) => Math.abs(hotWire.temperatureAt(current).temperature - bisect(current))),
	);
	if (furthest > 1.5e-3) throw new RangeError(`The curve and the bisection part by ${furthest} K`);
	return [
		ratioRow(
			'200 steady temperatures of one wire, curve ready',
			medianMs(() => currents.map((current) => hotWire.temperatureAt(current))),
			medianMs(() => currents.map(bisect)),
			'at least 20',
		),
		ratioRow(
			'200 steady temperatures, curve built for them',
			medianMs(() => {
				const fresh = new HotWire(wire, stillRoom);
				return currents.map((current) => fresh.temperatureAt(current));
			}),
			medianMs(() => currents.map(bisect)),
			'shown only',
		),
	];
}
