import type { Amperes, Kelvin, Watts } from '#core/quantity/unit.ts';
import { operatingPoint, type OperatingPoint } from '#core/setup/operating-point.ts';
import type { Setup } from '#core/setup/setup.ts';

/** What has to be done at the bench before the switch works. */
export type BenchCheck = 'tile' | 'paper' | 'fuse';

/** Why the bench does not switch on, with the number that says so. */
export type Refusal =
	| { readonly code: 'short'; readonly wouldPass: Amperes; readonly heatInside: Watts }
	| { readonly code: 'over-limit'; readonly temperature: Kelvin; readonly limit: Kelvin; readonly isKnown: boolean }
	| { readonly code: 'check' };

/** The actions that fit this set-up's hazard: a battery needs its fuse, an open bench its paper moved. */
export function requiredChecks({ supply }: Setup): readonly BenchCheck[] {
	return supply.charge === undefined ? ['tile', 'paper'] : ['tile', 'fuse'];
}

/** Everything that speaks against switching on, the gravest first. */
export function refusalsOf(
	setup: Setup,
	point: OperatingPoint,
	checks: readonly { readonly id: BenchCheck; readonly isDone: boolean }[],
): readonly Refusal[] {
	const refusals: Refusal[] = [];
	const isFuseMissing = checks.some(({ id, isDone }) => id === 'fuse' && !isDone);
	const short = (isFuseMissing ? withoutFuse(setup) : point).facts.find(({ code }) => code === 'short-on-bare-battery');
	if (short?.code === 'short-on-bare-battery') {
		refusals.push({ code: 'short', wouldPass: short.wouldPass, heatInside: short.heatInside });
	}
	const limit = setup.wire.material.limit.value;
	if (point.current > 0 && (point.temperature > limit || !point.isTemperatureInRange)) {
		const { temperature, isTemperatureInRange } = point;
		refusals.push({ code: 'over-limit', temperature, limit, isKnown: isTemperatureInRange });
	}
	if (checks.some(({ isDone }) => !isDone)) refusals.push({ code: 'check' });
	return refusals;
}

function withoutFuse({ supply, wire, leads, room }: Setup): OperatingPoint {
	const { openCircuitVoltage, internalResistance, protection } = supply;
	return operatingPoint({ supply: { openCircuitVoltage, internalResistance, protection }, wire, leads, room });
}
