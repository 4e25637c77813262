/** Holds a stated range: throws when a number lies outside it, or is no number at all. */
export function requireWithin(name: string, value: number, from: number, to: number, unit: string): void {
	if (!(value >= from && value <= to)) {
		throw new RangeError(`${name} ${value} ${unit} is outside ${from} to ${to} ${unit}`);
	}
}
