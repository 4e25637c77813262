import type { Material } from '#core/material/material.ts';
import { awgDiameter, shopSizesMillimetres, swgDiameter } from '#core/quantity/gauge.ts';
import type { Amperes, Kelvin, Metres, OhmsPerMetre } from '#core/quantity/unit.ts';
import { HotWire } from '#core/thermal/hot-wire.ts';
import type { Room } from '#core/thermal/room.ts';

/** One line of the table; a current is missing where the metal's limit in air forbids the temperature. */
export interface WireTableRow {
	readonly size: number;
	readonly diameter: Metres;
	/** cold, at 20 °C */
	readonly resistancePerMetre: OhmsPerMetre;
	readonly currents: readonly (Amperes | undefined)[];
}

/** Sizes kept in millimetres, or a numbered gauge. */
export type SizeSeries = 'mm' | 'awg' | 'swg';

const awgNumbers = numbers(16, 44);
const swgNumbers = numbers(16, 48);

/**
 * Resistance per metre cold, and the current that holds each temperature, for one metal in every size of a series
 * between 0.05 and 2 mm: a long level wire in the given room, I = √(q′(T)/R′(T)).
 *
 * @param temperatures in K, from the room's up to the metal's limit; beyond it the current is left out
 * @throws RangeError for a room outside its range or a temperature below the room's
 * @see heat law and sources: HotWire
 */
export function wireTable(
	material: Material,
	series: SizeSeries,
	temperatures: readonly Kelvin[],
	room: Room,
): readonly WireTableRow[] {
	return sizesOf(series).map(({ size, diameter }) => {
		const wire = new HotWire({ material, diameter }, room);
		const highest = Math.min(material.limit.value, wire.hottest);
		return {
			size,
			diameter,
			resistancePerMetre: wire.resistancePerMetre(293.15),
			currents: temperatures.map((temperature) => (temperature > highest ? undefined : wire.currentAt(temperature))),
		};
	});
}

function sizesOf(series: SizeSeries): readonly { readonly size: number; readonly diameter: Metres }[] {
	switch (series) {
		case 'mm':
			return shopSizesMillimetres.map((size) => ({ size, diameter: size / 1000 }));
		case 'awg':
			return awgNumbers.map((size) => ({ size, diameter: awgDiameter(size) }));
		case 'swg':
			return swgNumbers.map((size) => ({ size, diameter: swgDiameter(size) }));
	}
}

function numbers(from: number, to: number): readonly number[] {
	return Array.from({ length: to - from + 1 }, (_, index) => from + index);
}
