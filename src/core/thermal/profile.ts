import type { Amperes, Kelvin, Metres, Ohms, OhmsPerMetre, Watts, WattsPerMetre } from '#core/quantity/unit.ts';
import { requireWithin } from './range.ts';
import { rodMesh } from './rod-mesh.ts';

/** A thin rod that carries current and leads heat along itself; a HotWire is one. */
export interface HeatedRod {
	readonly room: { readonly temperature: Kelvin };
	readonly hottest: Kelvin;
	heatLoss(temperature: Kelvin): WattsPerMetre;
	resistancePerMetre(temperature: Kelvin): OhmsPerMetre;
	/** k A in W m/K */
	conductance(temperature: Kelvin): number;
}

export interface ClippedWire {
	/** between the clips, 1 mm…100 m */
	readonly length: Metres;
	/** both clips, from room temperature up */
	readonly clipTemperature: Kelvin;
	/** current in A, or the current the loop drives through this hot resistance */
	readonly drive: Amperes | ((resistance: Ohms) => Amperes);
}

/** Steady temperatures along a wire between two clips. */
export interface WireProfile {
	/** from the left clip, in m; the clips themselves are the first and last point */
	readonly position: readonly Metres[];
	readonly temperature: readonly Kelvin[];
	readonly current: Amperes;
	readonly middle: Kelvin;
	/** over the length */
	readonly mean: Kelvin;
	readonly resistanceHot: Ohms;
	/** into both clips together */
	readonly clipLoss: Watts;
	/** into the room, over the whole length */
	readonly roomLoss: Watts;
	/** false when some part would be hotter than the wire's curve goes; the numbers are then of no use */
	readonly isInRange: boolean;
}

interface Half {
	readonly rod: HeatedRod;
	readonly widths: readonly Metres[];
	readonly clip: Kelvin;
}

interface Solution {
	readonly temperatures: readonly Kelvin[];
	readonly isSettled: boolean;
}

const cells = 200;
/** Newton's step, so that a far start does not overshoot */
const longestStep = 60;

/**
 * Temperatures along a wire whose ends are held by clips: −d/dx(k A dT/dx) = I² R′(T) − q′(T), T = T_c at both ends.
 *
 * Finite volumes on half the wire, 200 cells, fine at the clip; Newton's method, led up in steps of current.
 *
 * @param rod the wire in its room
 * @param clipped length 1 mm…100 m; clip temperature from room temperature to the rod's hottest; drive
 * @returns the profile; heat in equals clip loss plus room loss to 1e-6, temperatures within about 0.1 K of the equation
 * @throws RangeError outside these ranges
 * @see S. V. Patankar, Numerical Heat Transfer and Fluid Flow, 1980, ch. 4, for the method (from memory);
 *      checked in tests/published/core/thermal/profile.test.ts against closed forms
 */
export function wireProfile(rod: HeatedRod, clipped: ClippedWire): WireProfile {
	const { length, clipTemperature, drive } = clipped;
	requireWithin('Length', length, 1e-3, 100, 'm');
	requireWithin('Clip temperature', clipTemperature, rod.room.temperature - 1e-9, rod.hottest, 'K');
	const half = {
		rod,
		widths: rodMesh({ length: length / 2, cells, shortest: decayLength(rod) / 30 }),
		clip: clipTemperature,
	};
	if (typeof drive === 'number') return report(half, drive, solveUpTo(half, drive));
	let current = drive(halfResistance(half, atClip(half)) * 2);
	let solution = solveUpTo(half, current);
	for (let round = 0; round < 60; round += 1) {
		const next = Math.sqrt(current * drive(halfResistance(half, solution.temperatures) * 2));
		const isSettled = Math.abs(next - current) <= 1e-9 * current;
		current = next;
		solution = relax(half, current, solution.temperatures);
		if (isSettled) break;
	}
	return report(half, current, solution);
}

/** λ = √(k A ΔT/q′) at a middling temperature: over a few λ the clip is felt. */
function decayLength(rod: HeatedRod): Metres {
	const rise = Math.min(500, (rod.hottest - rod.room.temperature) / 2);
	const temperature = rod.room.temperature + rise;
	return Math.sqrt((rod.conductance(temperature) * rise) / rod.heatLoss(temperature));
}

function atClip(half: Half): readonly Kelvin[] {
	return half.widths.map(() => half.clip);
}

function solveUpTo(half: Half, current: Amperes): Solution {
	const stages = 6;
	let solution = relax(half, current / Math.sqrt(stages), atClip(half));
	for (let stage = 2; stage <= stages; stage += 1) {
		solution = relax(half, current * Math.sqrt(stage / stages), solution.temperatures);
	}
	return solution;
}

/** Newton's method from a start to a largest change of 1e-7 K; beyond the wire's curve it does not settle. */
function relax(half: Half, current: Amperes, start: readonly Kelvin[]): Solution {
	const { room, hottest } = half.rod;
	let temperatures = start;
	for (let round = 0; round < 60; round += 1) {
		const changes = newtonStep(half, current, temperatures);
		const largest = Math.max(...changes.map(Math.abs));
		const share = Math.min(1, longestStep / Math.max(largest, 1e-300));
		temperatures = temperatures.map((T, index) =>
			Math.min(hottest, Math.max(room.temperature, T + share * (changes[index] ?? 0))),
		);
		if (largest < 1e-7) return { temperatures, isSettled: true };
	}
	return { temperatures, isSettled: false };
}

/** Conductance in W/K of the face between the clip or cell `index − 1` and cell `index`. */
function faceConductance(half: Half, temperatures: readonly Kelvin[], index: number): number {
	const { rod, widths, clip } = half;
	const here = temperatures[index] ?? clip;
	const before = index === 0 ? clip : (temperatures[index - 1] ?? clip);
	const distance = ((widths[index] ?? 0) + (index === 0 ? 0 : (widths[index - 1] ?? 0))) / 2;
	return rod.conductance((here + before) / 2) / distance;
}

/** One Newton step: the tridiagonal system by elimination; conductances are taken from the last round. */
function newtonStep(half: Half, current: Amperes, temperatures: readonly Kelvin[]): readonly number[] {
	const { rod, widths, clip } = half;
	const count = widths.length;
	const faces = widths.map((_, index) => faceConductance(half, temperatures, index));
	const source = (T: Kelvin) => current ** 2 * rod.resistancePerMetre(T) - rod.heatLoss(T);
	const upper: number[] = [];
	const right: number[] = [];
	temperatures.forEach((T, index) => {
		const left = faces[index] ?? 0;
		const next = index + 1 < count ? (faces[index + 1] ?? 0) : 0;
		const width = widths[index] ?? 0;
		const before = index === 0 ? clip : (temperatures[index - 1] ?? clip);
		const after = temperatures[index + 1] ?? T;
		const value = source(T);
		const residual = left * (before - T) + next * (after - T) + width * value;
		const diagonal = left + next - width * ((source(T + 0.01) - value) / 0.01);
		const lower = index === 0 ? 0 : left;
		const pivot = diagonal - lower * (upper[index - 1] ?? 0);
		upper.push(next / pivot);
		right.push((residual + lower * (right[index - 1] ?? 0)) / pivot);
	});
	const changes: number[] = [];
	for (let index = count - 1; index >= 0; index -= 1) {
		changes[index] = (right[index] ?? 0) + (upper[index] ?? 0) * (changes[index + 1] ?? 0);
	}
	return changes;
}

/** Sum over the cells of one half. */
function sum(half: Half, temperatures: readonly Kelvin[], f: (temperature: Kelvin) => number): number {
	return temperatures.reduce((total, T, index) => total + f(T) * (half.widths[index] ?? 0), 0);
}

function halfResistance(half: Half, temperatures: readonly Kelvin[]): Ohms {
	return sum(half, temperatures, (T) => half.rod.resistancePerMetre(T));
}

function report(half: Half, current: Amperes, { temperatures, isSettled }: Solution): WireProfile {
	const { rod, widths, clip } = half;
	let edge = 0;
	const centres = widths.map((width) => (edge += width) - width / 2);
	const middle = temperatures.at(-1) ?? clip;
	const mirrored = centres.map((x) => 2 * edge - x).reverse();
	return {
		position: [0, ...centres, ...mirrored, 2 * edge],
		temperature: [clip, ...temperatures, ...temperatures.toReversed(), clip],
		current,
		middle,
		mean: sum(half, temperatures, (T) => T) / edge,
		resistanceHot: 2 * halfResistance(half, temperatures),
		clipLoss: 2 * faceConductance(half, temperatures, 0) * ((temperatures[0] ?? clip) - clip),
		roomLoss: 2 * sum(half, temperatures, (T) => rod.heatLoss(T)),
		isInRange: isSettled && Math.max(...temperatures) < rod.hottest - 1e-6,
	};
}
