import type { Amperes, Coulombs, Joules, Seconds, Volts, Watts } from '#core/quantity/unit.ts';
import { heatPerCell, packCapacity, packCutOff, packSource, type Pack, type PackSource } from './cell/pack.ts';

/** The current a load draws from a source, in A, ≥ 0; null when the source cannot serve it. */
export type Load = (source: PackSource) => Amperes | null;

/** One moment of a discharge. */
export interface DischargePoint {
	readonly time: Seconds;
	/** state of charge, 0…1 */
	readonly charge: number;
	readonly current: Amperes;
	/** at the posts of the pack, under load */
	readonly voltage: Volts;
	/** heat inside one cell */
	readonly heatPerCell: Watts;
}

export interface Discharge {
	/** what ended it; `cut-off` at time 0 when the pack is too weak from the start */
	readonly end: 'cut-off' | 'empty' | 'not-served' | 'no-load';
	/** infinite when nothing is drawn */
	readonly runTime: Seconds;
	readonly deliveredCharge: Coulombs;
	/** out of the posts */
	readonly deliveredEnergy: Joules;
	/** heat inside cells and contacts */
	readonly lostEnergy: Joules;
	/** from start to end, at least two when any time passes */
	readonly points: readonly DischargePoint[];
}

interface Moment {
	readonly current: Amperes;
	readonly voltage: Volts;
	readonly source: PackSource;
}

interface Integrals {
	readonly time: Seconds;
	readonly charge: Coulombs;
	readonly delivered: Joules;
	readonly lost: Joules;
	readonly points: readonly DischargePoint[];
}

const accuracy = 1e-6;
const fewest = 40;
const most = 2560;

/**
 * Discharge of a pack into a load, down to its cut-off.
 *
 *   dz/dt = −I(z)/Q(I),  U = U₀(z) − I R(z)
 *
 * The charge z is the only state, so time is an integral over it: t = ∫ Q/I dz, by Simpson's rule with steps halved
 * until time and energy change by less than 1e-6. Q(I) is the charge the cells give at that current: what a higher
 * current cannot fetch counts as used up. Temperature, rest and age of the cells are left out.
 *
 * @param start state of charge, 0…1, full by default
 * @throws RangeError outside this range or for a load that draws a negative current
 * @see checked in tests/property/core/discharge.test.ts against another solver
 */
export function discharge(pack: Pack, load: Load, { start = 1 }: { start?: number } = {}): Discharge {
	const nothing = { runTime: 0, deliveredCharge: 0, deliveredEnergy: 0, lostEnergy: 0, points: [] };
	const first = momentAt(pack, load, start);
	if (first === null) return { end: 'not-served', ...nothing };
	if (first.current === 0) return { end: 'no-load', ...nothing, runTime: Infinity };
	if (first.voltage < packCutOff(pack)) return { end: 'cut-off', ...nothing };
	if (start === 0) return { end: 'empty', ...nothing };
	const { charge: stop, end } = lastCharge(pack, load, start);
	let found = integrate(pack, load, { start, stop, steps: fewest });
	for (let steps = 2 * fewest; steps <= most; steps *= 2) {
		const finer = integrate(pack, load, { start, stop, steps });
		const isSettled = isNear(finer.time, found.time) && isNear(finer.delivered, found.delivered);
		found = finer;
		if (isSettled) break;
	}
	return {
		end,
		runTime: found.time,
		deliveredCharge: found.charge,
		deliveredEnergy: found.delivered,
		lostEnergy: found.lost,
		points: found.points,
	};
}

function momentAt(pack: Pack, load: Load, charge: number): Moment | null {
	const source = packSource(pack, charge);
	const current = load(source);
	if (current === null) return null;
	if (!(current >= 0)) throw new RangeError(`a load must not draw a negative current, got ${current}`);
	return { current, voltage: source.voltage - current * source.resistance, source };
}

/** The charge at which the load is no longer carried, looked for from the start down and then by halving. */
function lastCharge(
	pack: Pack,
	load: Load,
	start: number,
): { charge: number; end: 'cut-off' | 'empty' | 'not-served' } {
	const cutOff = packCutOff(pack);
	const isCarried = (charge: number) => (momentAt(pack, load, charge)?.voltage ?? -Infinity) >= cutOff;
	const looks = 100;
	for (let look = 1; look <= looks; look += 1) {
		let low = start * (1 - look / looks);
		if (isCarried(low)) continue;
		let high = start * (1 - (look - 1) / looks);
		while (high - low > 1e-10) {
			const middle = (low + high) / 2;
			if (isCarried(middle)) high = middle;
			else low = middle;
		}
		return { charge: high, end: momentAt(pack, load, low) === null ? 'not-served' : 'cut-off' };
	}
	return { charge: 0, end: 'empty' };
}

function integrate(pack: Pack, load: Load, range: { start: number; stop: number; steps: number }): Integrals {
	let [time, charge, delivered, lost] = [0, 0, 0, 0];
	let from = rates(pack, load, range.start);
	const points = [from.point(0)];
	for (const stretch of stretches(pack, range)) {
		const steps = Math.ceil((range.steps * (stretch.start - stretch.stop)) / (range.start - range.stop));
		const width = (stretch.start - stretch.stop) / steps;
		for (let step = 1; step <= steps; step += 1) {
			const middle = rates(pack, load, stretch.start - (step - 0.5) * width);
			const to = rates(pack, load, step === steps ? stretch.stop : stretch.start - step * width);
			const simpson = (key: 'time' | 'charge' | 'delivered' | 'lost') =>
				(width / 6) * (from[key] + 4 * middle[key] + to[key]);
			time += simpson('time');
			charge += simpson('charge');
			delivered += simpson('delivered');
			lost += simpson('lost');
			points.push(to.point(time));
			from = to;
		}
	}
	return { time, charge, delivered, lost, points };
}

/** The range cut where the curves of the cell bend, so that no step reaches over a bend. */
function stretches({ cell }: Pack, { start, stop }: { start: number; stop: number }) {
	const bends = new Set([...cell.openCircuit.charge, ...cell.resistance.charge]);
	const inside = [...bends].filter((z) => z > stop + 1e-9 && z < start - 1e-9).sort((a, b) => b - a);
	return [...inside, stop].map((to, i) => ({ start: i === 0 ? start : (inside[i - 1] ?? start), stop: to }));
}

/** How fast each sum grows per unit of charge used. */
function rates(pack: Pack, load: Load, charge: number) {
	const moment = momentAt(pack, load, charge);
	if (moment === null) throw new RangeError(`the load is served at the ends but not at a charge of ${charge}`);
	const { current, voltage, source } = moment;
	const capacity = packCapacity(pack, current);
	return {
		time: capacity / current,
		charge: capacity,
		delivered: capacity * voltage,
		lost: capacity * current * source.resistance,
		point: (time: Seconds): DischargePoint => ({
			time,
			charge,
			current,
			voltage,
			heatPerCell: heatPerCell(pack, { charge, current }),
		}),
	};
}

function isNear(a: number, b: number): boolean {
	return a === b || Math.abs(a - b) <= accuracy * Math.abs(a);
}

/** A load of one resistance at every current, in Ω, > 0: leads and a wire whose resistance does not change. */
export function resistanceLoad(resistance: number): Load {
	if (!(resistance > 0)) throw new RangeError(`a load must resist, got ${resistance}`);
	return (source) => source.voltage / (source.resistance + resistance);
}

/** A load that draws the same current whatever the voltage, in A, ≥ 0. */
export function currentLoad(current: Amperes): Load {
	return () => current;
}

/**
 * A load that draws the same power, in W, ≥ 0: the smaller current of U I − R I² = P. Not served above U²/(4 R).
 */
export function powerLoad(power: Watts): Load {
	if (!(power >= 0)) throw new RangeError(`a power must not be negative, got ${power}`);
	return ({ voltage, resistance }) => {
		const root = voltage ** 2 - 4 * resistance * power;
		// the form without a difference of near numbers
		return root < 0 || voltage <= 0 ? null : (2 * power) / (voltage + Math.sqrt(root));
	};
}
