import type { Amperes, Kelvin, OhmsPerMetre } from '#core/quantity/unit.ts';
import type { HotWire } from '#core/thermal/hot-wire.ts';

/** Current and resistance per metre at some temperatures of one heated wire, closer where it is cool. */
interface Row {
	readonly temperature: Kelvin;
	readonly current: Amperes;
	readonly resistancePerMetre: OhmsPerMetre;
}

const size = 400;
const tables = new WeakMap<HotWire, readonly Row[]>();

/** The table of a heated wire, evaluated once; for charts, where many lengths share one wire. */
function heatTable(curve: HotWire): readonly Row[] {
	const known = tables.get(curve);
	if (known !== undefined) return known;
	const from = curve.room.temperature;
	const table = Array.from({ length: size + 1 }, (_, index) => {
		const temperature = from + (curve.hottest - from) * (index / size) ** 2;
		const current = index === 0 ? 0 : curve.currentAt(temperature);
		return { temperature, current, resistancePerMetre: curve.resistancePerMetre(temperature) };
	});
	tables.set(curve, table);
	return table;
}

/**
 * The temperature where `excess` passes zero, read from the table; null when it stays below zero to the end.
 *
 * @param excess a rising function of a row, below zero at room temperature
 */
export function temperatureFromTable(curve: HotWire, excess: (row: Row) => number): Kelvin | null {
	const table = heatTable(curve);
	let [low, high] = [0, size];
	const lowest = table[low];
	const highest = table[high];
	if (lowest === undefined || highest === undefined) throw new RangeError('an empty table');
	let [below, above] = [lowest, highest];
	if (excess(above) < 0) return null;
	while (high - low > 1) {
		const middle = (low + high) >> 1;
		const row = table[middle];
		if (row === undefined) break;
		if (excess(row) < 0) [low, below] = [middle, row];
		else [high, above] = [middle, row];
	}
	const [a, b] = [excess(below), excess(above)];
	// straight in the root of the rise, as the rows are spaced
	const share = (low + a / (a - b)) / size;
	return curve.room.temperature + (curve.hottest - curve.room.temperature) * share ** 2;
}
