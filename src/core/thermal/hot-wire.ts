import { conductivityAt, resistanceRatioAt, specificHeatAt } from '#core/material/material.ts';
import type { Amperes, Kelvin, OhmsPerMetre, WattsPerMetre } from '#core/quantity/unit.ts';
import { requireWithin } from './range.ts';
import type { Room } from './room.ts';
import {
	convectedPerMetre,
	crossSection,
	emissivityOf,
	heatLossPerMetre,
	requireWireInRoom,
	resistancePerMetre,
	type BareWire,
} from './wire.ts';

/** A steady temperature; when `isInRange` is false it is only the end of the curve, and the wire would be hotter. */
export interface SteadyTemperature {
	readonly temperature: Kelvin;
	readonly isInRange: boolean;
}

/** One stretch of the curve: I² at both ends and its slope over T there. */
interface Stretch {
	readonly from: Kelvin;
	readonly to: Kelvin;
	readonly squareFrom: number;
	readonly squareTo: number;
	readonly slopeFrom: number;
	readonly slopeTo: number;
}

/** Air properties end at 2000 K. */
const hottestAir = 2000;

/**
 * A long bare wire in a room, steady: I² R′(T) = q′(T).
 *
 * The curve of I² over T is evaluated once, when first needed: exact values and slopes at some 200 temperatures,
 * cubic Hermite pieces between. Every later solve reads the curve only and stays within 1 mK of the law itself.
 * `temperatureAt` gives the lowest root from room temperature upward.
 */
export class HotWire {
	readonly wire: BareWire;
	readonly room: Room;
	/** the end of the curve: melting, the end of the resistance table, or 2000 K */
	readonly hottest: Kelvin;
	#curve: readonly Stretch[] | undefined;

	/** @throws RangeError for a diameter outside 0.05…2 mm, an emissivity outside 0…1 or a room outside its range */
	constructor(wire: BareWire, room: Room) {
		requireWireInRoom(wire, room);
		this.wire = wire;
		this.room = room;
		const { melting, resistanceRatio } = wire.material;
		this.hottest = Math.min(melting.from, resistanceRatio.temperature.at(-1) ?? 0, hottestAir);
	}

	/** Heat lost per metre at wire temperature T, in W/m. @throws RangeError below room temperature or above 2500 K */
	heatLoss(temperature: Kelvin): WattsPerMetre {
		return heatLossPerMetre(this.wire, temperature, this.room);
	}

	/** The part of the loss the air carries away, in W/m. @throws RangeError as heatLoss */
	convected(temperature: Kelvin): WattsPerMetre {
		return convectedPerMetre(this.wire, temperature, this.room);
	}

	resistancePerMetre(temperature: Kelvin): OhmsPerMetre {
		return resistancePerMetre(this.wire, temperature);
	}

	get emissivity(): number {
		return emissivityOf(this.wire);
	}

	/** Heat one metre takes up per kelvin: ρ cp A in J/(m K). */
	heatCapacityPerMetre(temperature: Kelvin): number {
		const { material, diameter } = this.wire;
		return material.density.value * specificHeatAt(material, temperature) * crossSection(diameter);
	}

	/** Heat led along the wire per kelvin per metre: k A in W m/K. */
	conductance(temperature: Kelvin): number {
		return conductivityAt(this.wire.material, temperature) * crossSection(this.wire.diameter);
	}

	/** Hot factor R(T)/R(20 °C). */
	resistanceRatio(temperature: Kelvin): number {
		return resistanceRatioAt(this.wire.material, temperature);
	}

	/**
	 * The current that holds temperature T, by the law itself: I = √(q′(T)/R′(T)).
	 *
	 * @param temperature in K, room temperature up to `hottest`
	 * @throws RangeError outside that range
	 */
	currentAt(temperature: Kelvin): Amperes {
		requireWithin('Wire temperature', temperature, this.room.temperature - 1e-9, this.hottest + 1e-9, 'K');
		return Math.sqrt(this.#squareAt(temperature));
	}

	/**
	 * The steady temperature at a current: the lowest root, read from the curve.
	 *
	 * @param current in A, 0 or more
	 * @throws RangeError for a negative current
	 */
	temperatureAt(current: Amperes): SteadyTemperature {
		requireWithin('Current', current, 0, Number.MAX_VALUE, 'A');
		const square = current ** 2;
		const stretch = this.#stretches().find(({ squareTo }) => squareTo >= square);
		if (stretch === undefined) return { temperature: this.hottest, isInRange: false };
		return { temperature: solveStretch(stretch, square), isInRange: true };
	}

	/** Electric power per metre at a current and the temperature it leads to, in W/m. */
	powerPerMetre(current: Amperes): WattsPerMetre {
		return current ** 2 * this.resistancePerMetre(this.temperatureAt(current).temperature);
	}

	/** The temperature at which the wire loses this heat per metre; out of range is told. @throws RangeError below 0 */
	temperatureAtPower(powerPerMetre: WattsPerMetre): SteadyTemperature {
		requireWithin('Power per metre', powerPerMetre, 0, Number.MAX_VALUE, 'W/m');
		let low = this.room.temperature;
		let high = this.hottest;
		if (this.heatLoss(high) < powerPerMetre) return { temperature: high, isInRange: false };
		while (high - low > 1e-7) {
			const middle = (low + high) / 2;
			if (this.heatLoss(middle) < powerPerMetre) low = middle;
			else high = middle;
		}
		return { temperature: (low + high) / 2, isInRange: true };
	}

	#squareAt(temperature: Kelvin): number {
		return this.heatLoss(temperature) / this.resistancePerMetre(temperature);
	}

	#stretches(): readonly Stretch[] {
		this.#curve ??= this.#evaluate();
		return this.#curve;
	}

	#evaluate(): readonly Stretch[] {
		const temperatures = this.#temperatures();
		return temperatures.slice(1).map((to, index) => {
			const from = temperatures[index] ?? this.room.temperature;
			// slopes from inside the stretch, because the resistance curve may bend at a table point
			const step = (to - from) * 1e-3;
			const start = [from, from + step, from + 2 * step].map((T) => this.#squareAt(T));
			const end = [to, to - step, to - 2 * step].map((T) => this.#squareAt(T));
			return {
				from,
				to,
				squareFrom: start[0] ?? 0,
				squareTo: end[0] ?? 0,
				slopeFrom: oneSidedSlope(start, step),
				slopeTo: oneSidedSlope(end, -step),
			};
		});
	}

	/** Room temperature, then rises growing by 12 %, and the points of the resistance table. */
	#temperatures(): readonly Kelvin[] {
		// a draught crosses the joint between two laws within some 30 K
		const widest = this.room.draught > 0 ? 4 : 10;
		const found = [this.room.temperature, this.hottest];
		for (let rise = 0.002; rise < this.hottest - this.room.temperature; rise += Math.min(0.12 * rise, widest)) {
			found.push(this.room.temperature + rise);
		}
		const knots = this.wire.material.resistanceRatio.temperature;
		found.push(...knots.filter((T) => T > this.room.temperature + 1 && T < this.hottest));
		return found.sort((a, b) => a - b).filter((T, index, all) => index === 0 || T - (all[index - 1] ?? 0) > 1e-6);
	}
}

function oneSidedSlope(values: readonly number[], step: number): number {
	const [a = 0, b = 0, c = 0] = values;
	return (-3 * a + 4 * b - c) / (2 * step);
}

/** I² at the share t of a stretch, 0…1. */
function squareIn(stretch: Stretch, t: number): number {
	const { from, to, squareFrom, squareTo, slopeFrom, slopeTo } = stretch;
	const width = to - from;
	return (
		(1 + 2 * t) * (1 - t) ** 2 * squareFrom +
		t * (1 - t) ** 2 * width * slopeFrom +
		t ** 2 * (3 - 2 * t) * squareTo +
		t ** 2 * (t - 1) * width * slopeTo
	);
}

/** Halves the stretch until the temperature is known to 1e-10 K; a curve too flat for slopes cannot mislead it. */
function solveStretch(stretch: Stretch, square: number): Kelvin {
	let low = 0;
	let high = 1;
	for (let round = 0; round < 40; round += 1) {
		const middle = (low + high) / 2;
		if (squareIn(stretch, middle) < square) low = middle;
		else high = middle;
	}
	return stretch.from + ((low + high) / 2) * (stretch.to - stretch.from);
}
