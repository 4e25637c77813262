import { resistivityAt, type Material } from '#core/material/material.ts';
import type { Kelvin, Metres, OhmsPerMetre, SquareMetres, WattsPerMetre } from '#core/quantity/unit.ts';
import { airAt } from './air.ts';
import { fujii, fujiiFormula } from './convection.ts';
import { nusseltCrossDraught, nusseltMixed } from './forced-convection.ts';
import { standardGravity } from './physical-constants.ts';
import { radiatedPerMetre } from './radiation.ts';
import { requireWithin } from './range.ts';
import type { Room } from './room.ts';

/** A bare round wire, long against its diameter. */
export interface BareWire {
	readonly material: Material;
	/** 0.05…2 mm */
	readonly diameter: Metres;
	/** total hemispherical, 0…1; the material's oxidised value when left out */
	readonly emissivity?: number;
	/** horizontal when left out; an upright wire keeps about 0.72 of the convection, ± 20 % */
	readonly orientation?: 'horizontal' | 'upright';
}

/** Where the heat model was compared with measurements. */
export const wireRange = {
	diameter: [0.05e-3, 2e-3],
	roomTemperature: [233, 333],
	pressure: [50_000, 110_000],
	draught: [0, 5],
} as const;

/** An upright long thin wire convects 0.65–0.80 of a level one; the middle of it. Judgement, heat tables in print. */
const uprightShare = 0.72;

/** Diameters in decimal millimetres reach the core a rounding error off. */
const slack = 1e-12;

/** @throws RangeError when the wire or the room is outside `wireRange` */
export function requireWireInRoom(wire: BareWire, room: Room): void {
	const [thinnest, thickest] = wireRange.diameter;
	requireWithin('Wire diameter', wire.diameter, thinnest - slack, thickest + slack, 'm');
	requireWithin('Emissivity', emissivityOf(wire), 0, 1, '');
	requireWithin('Room temperature', room.temperature, ...wireRange.roomTemperature, 'K');
	requireWithin('Room pressure', room.pressure, ...wireRange.pressure, 'Pa');
	requireWithin('Draught', room.draught, ...wireRange.draught, 'm/s');
}

export function emissivityOf(wire: BareWire): number {
	return wire.emissivity ?? wire.material.emissivity.oxidised.value;
}

export function crossSection(diameter: Metres): SquareMetres {
	return (Math.PI * diameter ** 2) / 4;
}

/** R′ = ρ(T)/A in Ω/m. @throws RangeError when the temperature is not above 0 K */
export function resistancePerMetre(wire: BareWire, temperature: Kelvin): OhmsPerMetre {
	return resistivityAt(wire.material, temperature) / crossSection(wire.diameter);
}

/** Rayleigh number of the wire, β = 1/T∞, properties at T∞ + 0.62 (T − T∞): Sparrow & Gregg 1958 (from memory). */
export function rayleighNumber(wire: BareWire, temperature: Kelvin, room: Room): number {
	const air = referenceAir(temperature, room, fujii.referenceFactor);
	const buoyancy = (standardGravity * Math.abs(temperature - room.temperature)) / room.temperature;
	return (buoyancy * wire.diameter ** 3) / (air.kinematicViscosity * air.diffusivity);
}

function referenceAir(temperature: Kelvin, room: Room, factor: number) {
	return airAt({
		temperature: room.temperature + factor * (temperature - room.temperature),
		pressure: room.pressure,
	});
}

/** Forced convection of the draught alone: Nusselt number times conductivity, film properties. */
function draughtConductance(wire: BareWire, temperature: Kelvin, room: Room): number {
	const air = referenceAir(temperature, room, 0.5);
	const nusselt = nusseltCrossDraught({
		reynolds: (room.draught * wire.diameter) / air.kinematicViscosity,
		prandtl: air.prandtl,
		filmOverAir: 0.5 + 0.5 * (temperature / room.temperature),
	});
	return nusselt * air.conductivity;
}

/**
 * Heat one metre of bare wire loses to the air: q′ = π k Nu (T − T∞).
 *
 * Still air: Fujii, Fujii & Honda with air at T∞ + 0.62 (T − T∞) and β = 1/T∞. A cross-draught is blended in with
 * exponent 4. Below Ra 1e-10 (a few kelvin on the thinnest wire) the formula runs smoothly on into conduction.
 *
 * @param wire diameter 0.05…2 mm
 * @param temperature of the wire in K, from room temperature to 2500 K
 * @param room air 233…333 K, 50…110 kPa, draught 0…5 m/s
 * @returns W/m, ± 7 % (one standard uncertainty) with radiation included, in really still air
 * @throws RangeError outside these ranges
 * @see fujii in convection.ts; Sparrow & Gregg, Trans. ASME 80 (1958) 879–886 for the reference temperature
 *      (from memory); checked in tests/published/core/thermal/convection.test.ts
 */
export function convectedPerMetre(wire: BareWire, temperature: Kelvin, room: Room): WattsPerMetre {
	requireWireInRoom(wire, room);
	requireWithin('Wire temperature', temperature, room.temperature - 1e-9, 2500, 'K');
	const rise = temperature - room.temperature;
	if (rise <= 0) return 0;
	const air = referenceAir(temperature, room, fujii.referenceFactor);
	const share = wire.orientation === 'upright' ? uprightShare : 1;
	const still = share * fujiiFormula(rayleighNumber(wire, temperature, room), air.prandtl) * air.conductivity;
	const moved = room.draught > 0 ? draughtConductance(wire, temperature, room) : 0;
	return Math.PI * nusseltMixed({ natural: still, forced: moved }) * rise;
}

/**
 * Heat one metre of bare wire loses in all: convection and radiation, q′ = q′_conv + q′_rad.
 *
 * @throws RangeError as convectedPerMetre
 */
export function heatLossPerMetre(wire: BareWire, temperature: Kelvin, room: Room): WattsPerMetre {
	const { diameter } = wire;
	const radiated = radiatedPerMetre({ emissivity: emissivityOf(wire), diameter, temperature }, room.temperature);
	return convectedPerMetre(wire, temperature, room) + radiated;
}
