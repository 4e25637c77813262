import { wireArea, wireResistancePerMetre } from '#core/electric/wire.ts';
import { iceZero } from '#core/thermal/physical-constants.ts';
import { wireProfile, type HeatedRod, type WireProfile } from '#core/thermal/profile.ts';
import { steadyTemperatureUnder, timeToReach, type WarmingMetre } from '#core/thermal/warm-up.ts';
import { check, type PublishedCheck } from './check.ts';
import { readFormula } from './read-formula.ts';

interface Rod {
	readonly diameter: number;
	readonly conductivity: number;
	/** heat transfer coefficient in W/(m² K) */
	readonly film: number;
	/** °C */
	readonly around: number;
	readonly resistivity?: number;
}

/** A rod of constant properties, as textbooks take it. */
function warmingRod({ diameter, conductivity, film, around, resistivity = 1e-6 }: Rod): HeatedRod & WarmingMetre {
	const room = { temperature: around + iceZero };
	return {
		room,
		hottest: 5000,
		heatLoss: (temperature) => film * Math.PI * diameter * (temperature - room.temperature),
		resistancePerMetre: () => wireResistancePerMetre({ diameter, resistivity }),
		conductance: () => conductivity * wireArea(diameter),
		heatCapacityPerMetre: () => 4e6 * wireArea(diameter),
	};
}

/** A fin without current, warm at both ends. */
function finProfile(fin: Rod & { readonly length: number; readonly base: number }): WireProfile {
	return wireProfile(warmingRod(fin), { length: fin.length, clipTemperature: fin.base + iceZero, drive: 0 });
}

function clippedWire({ length, current }: { readonly length: number; readonly current: number }): WireProfile {
	const diameter = 0.2e-3;
	const rod = warmingRod({ diameter, conductivity: 20, film: 0.03 / (Math.PI * diameter), around: 20 });
	return wireProfile(rod, { length, clipTemperature: 20 + iceZero, drive: current });
}

/** Time to nine tenths of the rise at a current that leads to a rise of 100 K. */
function timeTo90Percent(wire: {
	readonly density: number;
	readonly specificHeat: number;
	readonly diameter: number;
	readonly loss: number;
}): number {
	const rod: WarmingMetre = {
		room: { temperature: 20 + iceZero },
		hottest: 2000,
		heatLoss: (temperature) => wire.loss * (temperature - 20 - iceZero),
		resistancePerMetre: () => 100 * wire.loss,
		heatCapacityPerMetre: () => wire.density * wire.specificHeat * wireArea(wire.diameter),
	};
	return timeToReach(rod, 1, { from: 20 + iceZero, target: 110 + iceZero }) ?? NaN;
}

/** Heat led along wire and fins, and the time of warming up. */
export const alongTheWireChecks: readonly PublishedCheck[] = [
	check({
		number: 33,
		id: 'wire-holman-current',
		quantity: 'surface temperature of a current-carrying wire in a liquid',
		item: '200 A, 3 mm, 1 m, liquid 110 °C',
		published: 215,
		unit: '°C',
		tolerance: { relative: 0.005 },
		source: 'holman-2-6',
		had: 'looked-up',
		confidence: 0.97,
		note: 'R = 0.0990 ohm, P = 3961 W',
		inputs: { current: 200, diameter: 3e-3, resistivity: 7e-7, conductivity: 19, film: 4000, around: 110 },
		ours: (wire) => steadyTemperatureUnder(warmingRod(wire), wire.current).temperature - iceZero,
	}),
	check({
		number: 34,
		id: 'wire-holman-centre',
		quantity: 'centre temperature of the same wire',
		item: 'surface 215.07 °C',
		published: 231.7,
		unit: '°C',
		tolerance: { relative: 0.003 },
		source: 'holman-2-6',
		had: 'looked-up',
		confidence: 0.97,
		note: 'book prints 231.6; the formula of the textbook, read by our formula reader: the site takes a section of wire at one temperature',
		inputs: { T: 215.07, q: 5.604e8, r: 1.5e-3, k: 19 },
		ours: (values) => readFormula('T+q*r^2/(4*k)', values),
	}),
	check({
		number: 35,
		id: 'fin-incropera-3-9-copper',
		quantity: 'heat loss of a long rod fin',
		item: 'copper, 5 mm, base 100 °C, air 25 °C',
		published: 8.3,
		unit: 'W',
		tolerance: { relative: 0.03 },
		source: 'incropera-3-9',
		had: 'from-memory',
		confidence: 0.95,
		note: 'half of a 3 m rod warm at both ends',
		inputs: { diameter: 5e-3, conductivity: 398, film: 100, around: 25, length: 3, base: 100 },
		ours: (fin) => -finProfile(fin).clipLoss / 2,
	}),
	check({
		number: 36,
		id: 'fin-incropera-3-9-aluminium-alloy',
		quantity: 'heat loss of a long rod fin',
		item: 'aluminium alloy, 5 mm, base 100 °C, air 25 °C',
		published: 5.6,
		unit: 'W',
		tolerance: { relative: 0.03 },
		source: 'incropera-3-9',
		had: 'from-memory',
		confidence: 0.95,
		note: 'half of a 3 m rod warm at both ends',
		inputs: { diameter: 5e-3, conductivity: 180, film: 100, around: 25, length: 3, base: 100 },
		ours: (fin) => -finProfile(fin).clipLoss / 2,
	}),
	check({
		number: 37,
		id: 'fin-incropera-3-9-stainless',
		quantity: 'heat loss of a long rod fin',
		item: 'stainless steel, 5 mm, base 100 °C, air 25 °C',
		published: 1.6,
		unit: 'W',
		tolerance: { relative: 0.03 },
		source: 'incropera-3-9',
		had: 'from-memory',
		confidence: 0.95,
		note: 'half of a 3 m rod warm at both ends',
		inputs: { diameter: 5e-3, conductivity: 14, film: 100, around: 25, length: 3, base: 100 },
		ours: (fin) => -finProfile(fin).clipLoss / 2,
	}),
	check({
		number: 38,
		id: 'fin-sukhatme',
		quantity: 'tip temperature of a pin fin, insulated tip',
		item: '3 mm, 30 mm long, base 120 °C, air 20 °C',
		published: 90.06,
		unit: '°C',
		tolerance: { relative: 0.001 },
		source: 'sukhatme-2-13',
		had: 'looked-up',
		confidence: 0.95,
		note: 'an insulated tip is the middle of twice the length; inputs and method looked up, value evaluated from them',
		inputs: { diameter: 3e-3, conductivity: 15, film: 10, around: 20, length: 0.06, base: 120 },
		ours: (fin) => finProfile(fin).middle - iceZero,
	}),
	check({
		number: 39,
		id: 'fin-joule-centre',
		quantity: 'rise in the middle of a heated wire between cold clips',
		item: '40 mm',
		published: 1034.1957,
		unit: 'K',
		tolerance: { relative: 1e-5 },
		source: 'fin-closed',
		had: 'derived',
		confidence: 1,
		note: '1 A, 1 µΩ·m, 0.2 mm, k 20 W/(m·K), loss 0.03 W/(m·K)',
		inputs: { length: 0.04, current: 1 },
		ours: (wire) => clippedWire(wire).middle - 20 - iceZero,
	}),
	check({
		number: 40,
		id: 'fin-joule-mean',
		quantity: 'mean rise of the same wire',
		item: '40 mm',
		published: 818.3221,
		unit: 'K',
		tolerance: { absolute: 0.1 },
		source: 'fin-closed',
		had: 'derived',
		confidence: 1,
		note: 'a sum over 200 cells, which promises 0.1 K; the closed form itself is exact',
		inputs: { length: 0.04, current: 1 },
		ours: (wire) => clippedWire(wire).mean - 20 - iceZero,
	}),
	check({
		number: 41,
		id: 'fin-joule-centre-short',
		quantity: 'rise in the middle of the same wire, short',
		item: '6 mm',
		published: 193.229,
		unit: 'K',
		tolerance: { relative: 1e-5 },
		source: 'fin-closed',
		had: 'derived',
		confidence: 1,
		inputs: { length: 0.006, current: 1 },
		ours: (wire) => clippedWire(wire).middle - 20 - iceZero,
	}),
	check({
		number: 42,
		id: 'transient-t90',
		quantity: 'time to 90 % of a first-order warm-up',
		item: '0.2 mm, 8000 kg/m³, 500 J/(kg·K), 0.03 W/(m·K)',
		published: 9.645046,
		unit: 's',
		tolerance: { relative: 0.001 },
		source: 'first-order',
		had: 'derived',
		confidence: 1,
		inputs: { density: 8000, specificHeat: 500, diameter: 2e-4, loss: 0.03 },
		ours: (wire) => timeTo90Percent(wire),
	}),
];
