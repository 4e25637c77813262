/** Exponents of the SI base quantities that occur here. */
export interface Dimension {
	readonly length: number;
	readonly mass: number;
	readonly time: number;
	readonly current: number;
	readonly temperature: number;
}

function dimension(parts: Partial<Dimension>): Dimension {
	return { length: 0, mass: 0, time: 0, current: 0, temperature: 0, ...parts };
}

export function multiplyDimensions(a: Dimension, b: Dimension): Dimension {
	return {
		length: a.length + b.length,
		mass: a.mass + b.mass,
		time: a.time + b.time,
		current: a.current + b.current,
		temperature: a.temperature + b.temperature,
	};
}

export function raiseDimension(a: Dimension, exponent: number): Dimension {
	return {
		length: a.length * exponent,
		mass: a.mass * exponent,
		time: a.time * exponent,
		current: a.current * exponent,
		temperature: a.temperature * exponent,
	};
}

export function isSameDimension(a: Dimension, b: Dimension): boolean {
	return (
		a.length === b.length &&
		a.mass === b.mass &&
		a.time === b.time &&
		a.current === b.current &&
		a.temperature === b.temperature
	);
}

/** The kinds of quantity this site speaks of. */
export const dimensions = {
	number: dimension({}),
	length: dimension({ length: 1 }),
	area: dimension({ length: 2 }),
	mass: dimension({ mass: 1 }),
	time: dimension({ time: 1 }),
	current: dimension({ current: 1 }),
	temperature: dimension({ temperature: 1 }),
	temperatureCoefficient: dimension({ temperature: -1 }),
	charge: dimension({ time: 1, current: 1 }),
	voltage: dimension({ length: 2, mass: 1, time: -3, current: -1 }),
	resistance: dimension({ length: 2, mass: 1, time: -3, current: -2 }),
	conductance: dimension({ length: -2, mass: -1, time: 3, current: 2 }),
	resistancePerLength: dimension({ length: 1, mass: 1, time: -3, current: -2 }),
	resistivity: dimension({ length: 3, mass: 1, time: -3, current: -2 }),
	power: dimension({ length: 2, mass: 1, time: -3 }),
	powerPerLength: dimension({ length: 1, mass: 1, time: -3 }),
	powerPerArea: dimension({ mass: 1, time: -3 }),
	energy: dimension({ length: 2, mass: 1, time: -2 }),
	force: dimension({ length: 1, mass: 1, time: -2 }),
	pressure: dimension({ length: -1, mass: 1, time: -2 }),
	frequency: dimension({ time: -1 }),
	speed: dimension({ length: 1, time: -1 }),
	density: dimension({ length: -3, mass: 1 }),
	specificHeat: dimension({ length: 2, time: -2, temperature: -1 }),
	thermalConductivity: dimension({ length: 1, mass: 1, time: -3, temperature: -1 }),
} as const satisfies Record<string, Dimension>;

export type QuantityKind = keyof typeof dimensions;

/** The name of a dimension, or undefined for one this site has no name for. */
export function kindOf(found: Dimension): QuantityKind | undefined {
	return kinds.find((kind) => isSameDimension(dimensions[kind], found));
}

const kinds = [
	'number',
	'length',
	'area',
	'mass',
	'time',
	'current',
	'temperature',
	'temperatureCoefficient',
	'charge',
	'voltage',
	'resistance',
	'conductance',
	'resistancePerLength',
	'resistivity',
	'power',
	'powerPerLength',
	'powerPerArea',
	'energy',
	'force',
	'pressure',
	'frequency',
	'speed',
	'density',
	'specificHeat',
	'thermalConductivity',
] as const satisfies readonly QuantityKind[];
