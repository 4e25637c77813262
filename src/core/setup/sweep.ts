import type { Amperes, Kelvin, Metres, Volts, Watts, WattsPerMetre } from '#core/quantity/unit.ts';
import { settle, type SupplyState } from './operating-point.ts';
import { steadyTemperatureFromTable } from './steady.ts';
import { withLength, type Setup } from './setup.ts';
import type { WireState } from './wire-state.ts';

/** One length of a sweep and what it settles to. */
export interface SweepPoint {
	readonly length: Metres;
	readonly current: Amperes;
	readonly askedCurrent: Amperes;
	readonly temperature: Kelvin;
	/** false where the wire would be hotter than its data reach; the temperature is then their end */
	readonly isTemperatureInRange: boolean;
	readonly power: Watts;
	readonly powerPerMetre: WattsPerMetre;
	readonly postsVoltage: Volts;
	readonly state: SupplyState;
	readonly wireState: WireState;
	/** true where the supply's limit, trip or fuse decides and not the wire */
	readonly isSupplyActing: boolean;
}

/**
 * What every length settles to, evenly from `from` to `to` m with both ends; temperatures within 0.02 K of
 * `operatingPoint`.
 *
 * @throws RangeError for fewer than two points or lengths that do not rise from above zero
 */
export function sweepLength(setup: Setup, range: { from: Metres; to: Metres; points?: number }): readonly SweepPoint[] {
	const { from, to, points = 400 } = range;
	if (!(from > 0 && to > from)) throw new RangeError(`lengths must rise from above zero, got ${from}…${to} m`);
	if (!(points >= 2)) throw new RangeError(`a sweep needs two points, got ${points}`);
	return Array.from({ length: points }, (_, index) => {
		const share = index / (points - 1);
		const length = from * (1 - share) + to * share;
		const cut = withLength(setup, length);
		const point = settle(cut, steadyTemperatureFromTable(cut));
		return {
			length,
			current: point.current,
			askedCurrent: point.askedCurrent,
			temperature: point.temperature,
			isTemperatureInRange: point.isTemperatureInRange,
			power: point.power,
			powerPerMetre: point.powerPerMetre,
			postsVoltage: point.postsVoltage,
			state: point.state,
			wireState: point.wireState,
			isSupplyActing: point.state !== 'on',
		};
	});
}
