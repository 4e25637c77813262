import { solveOde, valueInStep, type OdeStep } from '#core/numeric/ode.ts';
import type { Amperes, Kelvin, OhmsPerMetre, Seconds, WattsPerMetre } from '#core/quantity/unit.ts';
import { iceZero } from './physical-constants.ts';
import { requireWithin } from './range.ts';

/** One metre of something that heats up under current; a HotWire is one. */
export interface WarmingMetre {
	readonly room: { readonly temperature: Kelvin };
	readonly hottest: Kelvin;
	heatLoss(temperature: Kelvin): WattsPerMetre;
	resistancePerMetre(temperature: Kelvin): OhmsPerMetre;
	/** in J/(m K) */
	heatCapacityPerMetre(temperature: Kelvin): number;
}

/** A constant current, or the current the loop drives through a wire of this resistance per metre. */
export type Drive = Amperes | ((resistancePerMetre: OhmsPerMetre) => Amperes);

/** Temperatures at equally spaced times; `isInRange` is false when the wire left its curve and the last value is its end. */
export interface WarmUpCourse {
	readonly time: readonly Seconds[];
	readonly temperature: readonly Kelvin[];
	readonly isInRange: boolean;
}

/** Error of one step in K, far below what the model is worth. */
const tolerance = 1e-4;

function currentOf(drive: Drive, resistancePerMetre: OhmsPerMetre): Amperes {
	return typeof drive === 'number' ? drive : drive(resistancePerMetre);
}

/**
 * How fast the wire warms: dT/dt = (I² R′(T) − q′(T))/(ρ cp A), in K/s. The whole section is at one temperature
 * (Biot number under 0.004) and the ends do not count; the air film is taken as settled, which makes the first half
 * second of a wire under 0.2 mm uncertain by 10–15 %.
 */
export function warmingRate(wire: WarmingMetre, drive: Drive, temperature: Kelvin): number {
	const T = Math.min(wire.hottest, Math.max(wire.room.temperature, temperature));
	const resistance = wire.resistancePerMetre(T);
	const gain = currentOf(drive, resistance) ** 2 * resistance;
	return (gain - wire.heatLoss(T)) / wire.heatCapacityPerMetre(T);
}

function solve(
	wire: WarmingMetre,
	drive: Drive,
	run: { from: Kelvin; duration: Seconds; stopWhen?: (step: OdeStep) => boolean },
): readonly OdeStep[] {
	requireWithin('Start temperature', run.from, wire.room.temperature - 1e-9, wire.hottest, 'K');
	requireWithin('Duration', run.duration, 0, 1e6, 's');
	return solveOde({
		derivative: (_, temperature) => warmingRate(wire, drive, temperature),
		from: 0,
		to: run.duration,
		value: run.from,
		tolerance,
		stopWhen: (step) => step.valueTo >= wire.hottest || run.stopWhen?.(step) === true,
	});
}

/**
 * Time course of the temperature.
 *
 * @param run start temperature in K (room temperature when left out), duration in s, 0…1e6; points, 2 or more
 * @throws RangeError outside these ranges
 */
export function warmUpCourse(
	wire: WarmingMetre,
	drive: Drive,
	run: { readonly from?: Kelvin; readonly duration: Seconds; readonly points?: number },
): WarmUpCourse {
	const { from = wire.room.temperature, duration, points = 101 } = run;
	requireWithin('Number of points', points, 2, 100_000, '');
	const steps = solve(wire, drive, { from, duration });
	const isInRange = (steps.at(-1)?.valueTo ?? from) < wire.hottest;
	const time = Array.from({ length: points }, (_, index) => (duration * index) / (points - 1));
	let at = 0;
	const temperature = time.map((t) => {
		while ((steps[at]?.to ?? Infinity) < t) at += 1;
		const step = steps[at];
		if (step === undefined) return steps.length === 0 ? from : wire.hottest;
		return Math.min(wire.hottest, valueInStep(step, t));
	});
	return { time, temperature, isInRange };
}

/**
 * The temperature after a stretch of time, for a bench that runs live.
 *
 * @param run temperature now, in K; duration in s
 * @returns the temperature then, at most `hottest`
 * @throws RangeError as warmUpCourse
 */
export function temperatureAfter(
	wire: WarmingMetre,
	drive: Drive,
	run: { readonly from: Kelvin; readonly duration: Seconds },
): Kelvin {
	const end = solve(wire, drive, run).at(-1)?.valueTo ?? run.from;
	return Math.min(wire.hottest, Math.max(wire.room.temperature, end));
}

/**
 * Time until the wire passes a temperature, warming or cooling.
 *
 * @param run start and target in K; `atMost` in s, an hour when left out
 * @returns seconds, or undefined when it does not get there in that time
 * @throws RangeError for a start outside the wire's range
 */
export function timeToReach(
	wire: WarmingMetre,
	drive: Drive,
	run: { readonly from: Kelvin; readonly target: Kelvin; readonly atMost?: Seconds },
): Seconds | undefined {
	const { from, target, atMost = 3600 } = run;
	if (from === target) return 0;
	const isPast = (temperature: Kelvin) => (target > from ? temperature >= target : temperature <= target);
	const last = solve(wire, drive, { from, duration: atMost, stopWhen: ({ valueTo }) => isPast(valueTo) }).at(-1);
	if (last === undefined || !isPast(last.valueTo)) return undefined;
	let low = last.from;
	let high = last.to;
	for (let round = 0; round < 50; round += 1) {
		const middle = (low + high) / 2;
		if (isPast(valueInStep(last, middle))) high = middle;
		else low = middle;
	}
	return high;
}

/**
 * The steady temperature a drive leads to from room temperature: the lowest root of I² R′ = q′, found by marching.
 *
 * @returns the end of the curve and `isInRange: false` when the wire gains heat all the way
 */
export function steadyTemperatureUnder(
	wire: WarmingMetre,
	drive: Drive,
): { readonly temperature: Kelvin; readonly isInRange: boolean } {
	const start = wire.room.temperature;
	const marches = 120;
	// finer near room temperature, where the loss rises from nothing
	const at = (index: number) => start + (wire.hottest - start) * (index / marches) ** 2;
	for (let index = 1; index <= marches; index += 1) {
		if (warmingRate(wire, drive, at(index)) > 0) continue;
		let low = at(index - 1);
		let high = at(index);
		for (let round = 0; round < 50; round += 1) {
			const middle = (low + high) / 2;
			if (warmingRate(wire, drive, middle) > 0) low = middle;
			else high = middle;
		}
		return { temperature: high, isInRange: true };
	}
	return { temperature: wire.hottest, isInRange: false };
}

/**
 * Time constant near a temperature: τ = −1/(d(dT/dt)/dT), for constant current ρ cp A/(dq′/dT − I² dR′/dT).
 *
 * @param temperature in K; meant for the steady temperature of this drive, where τ is how fast the last part goes
 * @returns seconds; negative or infinite where the wire runs away
 */
export function timeConstant(wire: WarmingMetre, drive: Drive, temperature: Kelvin): Seconds {
	const step = Math.min(0.5, (temperature - wire.room.temperature) / 4 + 1e-6);
	const high = Math.min(wire.hottest, temperature + step);
	const low = Math.max(wire.room.temperature, temperature - step);
	return (low - high) / (warmingRate(wire, drive, high) - warmingRate(wire, drive, low));
}

/**
 * Time from room temperature to 95 % of the steady rise.
 *
 * @returns seconds, 0 when no current flows, or undefined when there is no steady temperature in range
 */
export function timeTo95Percent(wire: WarmingMetre, drive: Drive): Seconds | undefined {
	const steady = steadyTemperatureUnder(wire, drive);
	if (!steady.isInRange) return undefined;
	const from = wire.room.temperature;
	const rise = steady.temperature - from;
	return rise < 1e-3 ? 0 : timeToReach(wire, drive, { from, target: from + 0.95 * rise });
}

/**
 * Time after switching off until the wire is down to 45 °C, below which a short touch does not burn.
 *
 * @returns seconds, 0 when it starts below, or undefined in a room too hot for it to get there within an hour
 */
export function timeToCool(wire: WarmingMetre, from: Kelvin, target: Kelvin = 45 + iceZero): Seconds | undefined {
	return from <= target ? 0 : timeToReach(wire, 0, { from, target });
}
