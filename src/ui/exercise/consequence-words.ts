import { writeQuantity } from '#core/quantity/write.ts';
import type { Exercise } from '#exercise/exercise.ts';
import { text } from '#ui/text/en.ts';
import type { Consequence } from './consequence.ts';
import type { Sentence } from './feedback.ts';

const words = text.practice.bench;

/** What the learner's number would do on the bench, in at most three short sentences. */
export function consequenceSentences(told: Consequence, exercise: Exercise): readonly Sentence[] {
	return sentences(told, exercise).map((sentence) => ({ text: sentence }));
}

function sentences(told: Consequence, exercise: Exercise): readonly string[] {
	switch (told.code) {
		case 'loop':
			return loop(told);
		case 'needed-voltage': {
			const { current, resistance, needed, given } = told;
			const said = words.needs(A(current), ohms(resistance), V(needed), V(given));
			return needed > given * 1.01 ? [said, words.over] : [said];
		}
		case 'reading': {
			const length = writeQuantity(told.length, 'm');
			return isNear(told.reading, told.given)
				? [words.readingFits(length, told.reel, ohms(told.reading))]
				: [words.reading(length, told.reel, ohms(told.reading), ohms(told.given))];
		}
		case 'between': {
			const label = writeQuantity(told.perMetre, 'Ω/m');
			const length = writeQuantity(told.length, 'm');
			return isNear(told.ohms, told.given)
				? [words.betweenFits(label, length, ohms(told.ohms))]
				: [words.between(label, length, ohms(told.ohms), ohms(told.given))];
		}
		case 'impossible': {
			const unit = exercise.steps.flatMap((step) => (step.kind === 'number' ? [step.unit] : [])).at(-1) ?? '';
			return [words.impossible(writeQuantity(told.value, unit))];
		}
		case 'ratio': {
			const { ratio } = told;
			if (isNear(ratio, 1)) return [words.fits];
			return [ratio > 1 ? words.bigger(times(ratio)) : words.smaller(times(1 / ratio))];
		}
		default:
			return told satisfies never;
	}
}

function loop(told: Extract<Consequence, { code: 'loop' }>): readonly string[] {
	const { resistance, voltage, current, wished, supplyState, wireState, postsVoltage, plan } = told;
	const flows = words.loop(ohms(resistance), A(current), V(voltage));
	if (supplyState === 'holding-limit') {
		return [flows, words.held(A(plan.currentLimit), V(postsVoltage)), words.wire[wireState]];
	}
	const isWished = wished === undefined || isNear(current, wished);
	return isWished ? [flows, words.wire[wireState]] : [flows, words.wished(A(wished)), words.wire[wireState]];
}

function isNear(a: number, b: number): boolean {
	return Math.abs(a - b) <= 0.011 * Math.abs(b);
}

function times(ratio: number): string {
	return ratio >= 9.5 ? String(Math.round(ratio)) : ratio.toFixed(1);
}

function ohms(value: number): string {
	return writeQuantity(value, 'Ω');
}

function A(value: number): string {
	return writeQuantity(value, 'A');
}

function V(value: number): string {
	return writeQuantity(value, 'V');
}
