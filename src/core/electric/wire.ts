import type { Metres, OhmMetres, Ohms, OhmsPerMetre, SquareMetres } from '#core/quantity/unit.ts';

/**
 * Cross-section of a round wire.
 *
 *   A = π d²/4
 *
 * @param diameter in m, > 0
 * @returns area in m²
 * @throws RangeError when the diameter is not a positive number
 */
export function wireArea(diameter: Metres): SquareMetres {
	positive('diameter', diameter);
	return (Math.PI * diameter ** 2) / 4;
}

/**
 * Resistance of a uniform wire.
 *
 *   R = ρ ℓ/A
 *
 * @param wire length in m, ≥ 0; area in m², > 0; resistivity in Ω·m, > 0
 * @returns resistance in Ω
 * @throws RangeError outside these ranges
 * @see University Physics Volume 2 (OpenStax), chapter 9; checked in tests/published/electric/circuit.test.ts
 */
export function wireResistance(wire: { length: Metres; area: SquareMetres; resistivity: OhmMetres }): Ohms {
	if (!(wire.length >= 0)) throw new RangeError(`length must not be negative, got ${wire.length}`);
	positive('area', wire.area);
	positive('resistivity', wire.resistivity);
	return (wire.resistivity * wire.length) / wire.area;
}

/**
 * Resistance of one metre of round wire.
 *
 *   R′ = 4ρ/(π d²)
 *
 * @param wire diameter in m, > 0; resistivity in Ω·m, > 0
 * @returns resistance per metre in Ω/m
 * @throws RangeError outside these ranges
 */
export function wireResistancePerMetre(wire: { diameter: Metres; resistivity: OhmMetres }): OhmsPerMetre {
	return wireResistance({ length: 1, area: wireArea(wire.diameter), resistivity: wire.resistivity });
}

/**
 * Length of wire that has a given resistance.
 *
 *   ℓ = R A/ρ
 *
 * @param wire resistance in Ω, ≥ 0; area in m², > 0; resistivity in Ω·m, > 0
 * @returns length in m
 * @throws RangeError outside these ranges
 */
export function wireLength(wire: { resistance: Ohms; area: SquareMetres; resistivity: OhmMetres }): Metres {
	if (!(wire.resistance >= 0)) throw new RangeError(`resistance must not be negative, got ${wire.resistance}`);
	positive('area', wire.area);
	positive('resistivity', wire.resistivity);
	return (wire.resistance * wire.area) / wire.resistivity;
}

function positive(name: string, value: number): void {
	if (!(value > 0)) throw new RangeError(`${name} must be above zero, got ${value}`);
}
