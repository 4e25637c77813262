import { kindOf, type Dimension } from '#core/quantity/dimension.ts';
import { readUnit } from '#core/quantity/read-unit.ts';

export interface UnitText {
	readonly factor: number;
	readonly dimension: Dimension;
}

const cache = new Map<string, UnitText | undefined>();

/** A unit of a kind this site speaks of, written in plain signs: Ω/m, Ω·mm^2/m, A·h.
 * A degree Celsius is a step of temperature here; a degree of another scale is no unit. */
export function readUnitText(text: string): UnitText | undefined {
	if (cache.has(text)) return cache.get(text);
	const reading = text === '' ? undefined : readUnit(text);
	const isKnown =
		reading?.ok === true &&
		(reading.unit.zero === 0 || reading.unit.factor === 1) &&
		kindOf(reading.unit.dimension) !== undefined;
	const found = isKnown ? { factor: reading.unit.factor, dimension: reading.unit.dimension } : undefined;
	// words a person typed must not fill the memory
	if (cache.size < 500) cache.set(text, found);
	return found;
}
