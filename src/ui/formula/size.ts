import { awgDiameter, awgRange, swgDiameter, swgRange } from '#core/quantity/gauge.ts';
import type { Metres } from '#core/quantity/unit.ts';
import { writeQuantity } from '#core/quantity/write.ts';
import { text } from '#ui/text/en.ts';
import type { SettingsRecord } from '#ui/settings.svelte.ts';

/** A length as chosen in the settings: 300 mm or 11.8 in. */
export function writeLength(length: Metres, { lengthUnit }: Pick<SettingsRecord, 'lengthUnit'>): string {
	return writeQuantity(length, 'm', { lengthUnit });
}

/** A wire's thickness as chosen in the settings: 0.400 mm, or that with the gauge number nearest to it. */
export function writeThickness(diameter: Metres, { gauge }: Pick<SettingsRecord, 'gauge'>): string {
	const written = writeQuantity(diameter, 'm');
	if (gauge === 'mm') return written;
	const number = nearestGauge(diameter, gauge);
	return text.unit.nearestGauge(written, gauge === 'awg' ? 'AWG' : 'SWG', number);
}

/** The whole gauge number whose wire is nearest in diameter, by ratio. */
export function nearestGauge(diameter: Metres, gauge: 'awg' | 'swg'): number {
	const [range, diameterOf] = gauge === 'awg' ? [awgRange, awgDiameter] : [swgRange, swgDiameter];
	let nearest: number = range.from;
	for (let number = range.from; number <= range.to; number += 1) {
		if (distance(diameterOf(number), diameter) < distance(diameterOf(nearest), diameter)) nearest = number;
	}
	return nearest;
}

function distance(one: Metres, other: Metres): number {
	return Math.abs(Math.log(one / other));
}
