import { quantityKinds } from './quantity-kind.ts';
import type { CupboardSlot, Exercise } from './exercise.ts';
import type { Variant } from './variant.ts';

/** A piece of a text for the learner. The page writes the numbers, so that decimal sign and letters follow its settings. */
export type PromptPart =
	| { readonly kind: 'text'; readonly text: string }
	| {
			readonly kind: 'value';
			readonly symbol: string;
			readonly value: number;
			readonly unit: string;
			readonly decimals: number;
	  }
	| { readonly kind: 'letter'; readonly symbol: string; readonly isVoltage: boolean }
	| { readonly kind: 'item'; readonly slot: CupboardSlot; readonly id: string };

/** The prompt of a variant, cut into text, values, letters and cupboard items. */
export function promptOf(exercise: Exercise, variant: Variant): readonly PromptPart[] {
	return fillText(exercise.prompt, exercise, variant);
}

/** A text with placeholders, filled from a variant. */
export function fillText(text: string, exercise: Exercise, variant: Variant): readonly PromptPart[] {
	return text.split(/(\{[^}]*\})/u).flatMap((piece): readonly PromptPart[] => {
		if (piece === '') return [];
		if (!piece.startsWith('{')) return [{ kind: 'text', text: piece }];
		const name = piece.slice(1, -1);
		if (name.startsWith('letter ')) return [letterOf(name.slice(7), exercise)];
		if (name.startsWith('item ')) return itemPart(name.slice(5), variant);
		return valuePart(name, exercise, variant);
	});
}

function letterOf(symbol: string, exercise: Exercise): PromptPart {
	const named = [...exercise.givens, ...exercise.steps].find(
		(part) => ('symbol' in part ? part.symbol : part.find) === symbol,
	);
	const unit = named && 'quantity' in named ? quantityKinds[named.quantity].unit : '';
	return { kind: 'letter', symbol, isVoltage: unit === 'V' };
}

function itemPart(slot: string, variant: Variant): readonly PromptPart[] {
	const found = Object.entries(variant.items).find(([name]) => name === slot);
	if (!found || !isSlot(slot)) return [{ kind: 'text', text: '' }];
	return [{ kind: 'item', slot, id: found[1] }];
}

function valuePart(symbol: string, exercise: Exercise, variant: Variant): readonly PromptPart[] {
	const given = exercise.givens.find((candidate) => candidate.symbol === symbol);
	if (given) {
		const value = variant.shown[symbol] ?? Number.NaN;
		return [{ kind: 'value', symbol, value, unit: given.unit, decimals: decimalsOf(given, value) }];
	}
	const step = exercise.steps.find((candidate) => candidate.find === symbol);
	const value = variant.expected[symbol];
	if (step?.kind !== 'number' || value === undefined) return [{ kind: 'text', text: symbol }];
	return [{ kind: 'value', symbol, value, unit: step.unit, decimals: -1 }];
}

// as many decimals as the step of the draw has, so that 12 and 12.5 stand in one column; −1: three figures
function decimalsOf({ source }: Exercise['givens'][number], value: number): number {
	const numbers =
		source.kind === 'range' || source.kind === 'derived'
			? [source.step]
			: source.kind === 'list'
				? source.values
				: [value];
	return Math.max(...numbers.map((number) => String(number).split('.')[1]?.length ?? 0));
}

function isSlot(text: string): text is CupboardSlot {
	return text === 'reel' || text === 'supply' || text === 'leads' || text === 'meter';
}
