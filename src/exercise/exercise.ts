import type { Expression } from '#core/expression/expression.ts';
import type { QuantityKindId } from './quantity-kind.ts';
import type { SlipName } from './slip/slip-name.ts';

/** Where the number of a given comes from when a variant is drawn. Numbers are in the unit of the given. */
export type GivenSource =
	| { readonly kind: 'range'; readonly from: number; readonly to: number; readonly step: number }
	| { readonly kind: 'list'; readonly values: readonly number[] }
	| { readonly kind: 'value'; readonly value: number }
	/** worked out from givens above it, in SI, then rounded to a multiple of `step` in the given's unit */
	| { readonly kind: 'derived'; readonly formula: Expression; readonly step: number }
	/** a property of the item drawn for a slot of the cupboard */
	| { readonly kind: 'cupboard'; readonly slot: CupboardSlot; readonly property: CupboardProperty };

export type CupboardSlot = 'reel' | 'supply' | 'leads' | 'meter';
export type CupboardProperty =
	'label' | 'diameter' | 'voltage' | 'internalResistance' | 'limit' | 'resistance' | 'rating';

export interface Given {
	readonly symbol: string;
	readonly quantity: QuantityKindId;
	/** the unit the number is shown in */
	readonly unit: string;
	readonly source: GivenSource;
	/** shown, but not wanted for any step */
	readonly isUnneeded: boolean;
	/** drawn to make other givens, never shown */
	readonly isHidden: boolean;
}

export interface Relation {
	readonly text: string;
	/** the right-hand side, in the symbols of the exercise */
	readonly formula: Expression;
}

export interface NumberStep {
	readonly kind: 'number';
	readonly find: string;
	readonly quantity: QuantityKindId;
	readonly unit: string;
	/** the first is the model solution; the others are equally right */
	readonly relations: readonly [Relation, ...Relation[]];
	/** how far a value may be off, in the unit of the step, where 1 % asks too much: a reading, a percentage */
	readonly margin?: number;
	/** significant figures asked for, where the exercise asks */
	readonly figures?: number;
	/** whether this line carries the idea of the lesson */
	readonly isIdea: boolean;
}

export interface Condition {
	readonly text: string;
	readonly left: Expression;
	readonly comparison: '<' | '>' | '<=' | '>=';
	readonly right: Expression;
}

export interface ChoiceOption {
	readonly id: string;
	/** shown on the screen */
	readonly label: string;
	/** words that say it in a free answer, in lower case */
	readonly words: readonly string[];
	readonly when: Condition;
}

/** A choice among conditions that exclude each other, judged with the learner's own numbers. */
export interface ConditionStep {
	readonly kind: 'choice';
	readonly find: string;
	readonly options: readonly ChoiceOption[];
	readonly isIdea: boolean;
}

/** A choice of the item whose property lies nearest to a value found before. */
export interface ItemStep {
	readonly kind: 'item';
	readonly find: string;
	readonly slot: CupboardSlot;
	readonly property: CupboardProperty;
	readonly nearest: string;
	readonly isIdea: boolean;
}

export type Step = NumberStep | ConditionStep | ItemStep;

export interface AuthoredSlip {
	readonly name: SlipName;
	readonly step: string;
	/** the wrong formula; left out where the name alone says which it is */
	readonly relation?: Relation;
}

export interface Caution {
	readonly signal: 'danger' | 'warning' | 'caution';
	readonly hazard: string;
	readonly consequence: string;
	readonly instruction: string;
}

/** An answer with the marks a teacher gives it; the tests hold the marking to it. */
export interface WorkedAnswer {
	readonly text: string;
	/** numbers that differ from the sample, in the unit of the given */
	readonly values: Readonly<Record<string, number>>;
	readonly items: Readonly<Record<string, string>>;
	/** per step, the marks earned: M, A, both, a D for a choice, or a dash for none */
	readonly marks: Readonly<Record<string, string>>;
	readonly unit: boolean;
	readonly isRight: boolean;
	readonly slips: readonly SlipName[];
}

export interface Exercise {
	readonly id: string;
	readonly title: string;
	readonly skills: readonly string[];
	/** plain text with {symbol} for a given, {item reel} for a cupboard item and {letter V} for a quantity letter */
	readonly prompt: string;
	readonly mustShowSteps: boolean;
	readonly givens: readonly Given[];
	/** cupboard items allowed per slot; every item where a slot is not named */
	readonly allowed: Readonly<Partial<Record<CupboardSlot, readonly string[]>>>;
	readonly steps: readonly Step[];
	/** what the learner has to state, by the symbol found */
	readonly wanted: readonly string[];
	/** a variant in which one of these holds is thrown away */
	readonly keepOut: readonly Condition[];
	/** one sentence on why the result makes sense, with the same placeholders as the prompt */
	readonly sense: string;
	readonly slips: readonly AuthoredSlip[];
	readonly caution: Caution;
	/** a variant with fixed numbers, in the unit of each given, and cupboard items by slot */
	readonly sample: {
		readonly values: Readonly<Record<string, number>>;
		readonly items: Readonly<Record<string, string>>;
	};
	readonly answers: readonly WorkedAnswer[];
}

/** A mistake in a content file, with its place; lines and columns count from 1. */
export interface ContentProblem {
	readonly file: string;
	readonly line: number;
	readonly column: number;
	readonly code:
		| 'yaml-syntax'
		| 'unknown-key'
		| 'missing-key'
		| 'wrong-type'
		| 'formula'
		| 'undefined-symbol'
		| 'dimension'
		| 'unknown-unit'
		| 'unknown-quantity'
		| 'unknown-slip'
		| 'unknown-item'
		| 'duplicate'
		| 'sample-missing'
		| 'no-variant';
	/** the word, unit or formula in question */
	readonly found: string;
	readonly expected?: string;
}
