import { writeNumber } from '#core/quantity/write.ts';
import { burnThreshold } from '#core/setup/wire-state.ts';
import { iceZero } from '#core/thermal/physical-constants.ts';
import { settings } from '#ui/settings.svelte.ts';
import { text } from '#ui/text/en.ts';
import type { Bench } from './bench.svelte.ts';
import { amperes, wireWord } from './words.ts';

/** What a screen reader says about a bench: at most every two seconds, and only what changed. */
export function spokenSummary(bench: () => Bench): { readonly text: string } {
	let spoken = $state('');
	let isFirst = true;
	const summary = $derived(sentence(bench()));
	// the clock: a pause of two seconds gathers what changes meanwhile
	$effect(() => {
		const next = summary;
		if (isFirst) {
			isFirst = false;
			return;
		}
		const timer = setTimeout(() => (spoken = next), 2000);
		return () => clearTimeout(timer);
	});
	return {
		get text() {
			return spoken;
		},
	};
}

function sentence({ isOn, live, temperature, wireState, point, settings: { length } }: Bench): string {
	const words = text.bench.spoken;
	const tens = (kelvin: number) => writeNumber(Math.round((kelvin - iceZero) / 10) * 10, { decimals: 0 });
	if (!isOn) {
		return words.off(amperes(point.current), writeNumber(length * 1000, { decimals: 0 }), tens(point.temperature));
	}
	const word = wireWord(wireState, temperature, settings.roomLight);
	const told = words.on(writeNumber(live.postsVoltage), amperes(live.current), tens(temperature), word);
	return temperature >= burnThreshold ? `${told} ${words.burns}` : told;
}
