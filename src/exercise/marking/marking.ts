import type { Expression } from '#core/expression/expression.ts';
import type { Span } from '#core/outcome.ts';
import type { SlipName } from '#exercise/slip/slip-name.ts';

export interface MarkOptions {
	/** the decimal sign of the page */
	readonly decimalSign: '.' | ',';
	/** the letter the page shows for voltage; V, U and E are understood whatever it is */
	readonly voltageLetter: 'V' | 'U';
	/** options picked on the page, by the step that asks for them; they go before the words of the answer */
	readonly choices?: Readonly<Record<string, string>>;
}

export type LineVerdict =
	'right' | 'unit-not' | 'carried-forward' | 'method-only' | 'wrong' | 'not-needed' | 'crossed-out' | 'not-understood';

/** One run of mathematics in the answer, and what became of it. */
export interface MarkedLine {
	readonly span: Span;
	readonly text: string;
	/** the formulas between the equals signs; empty where nothing mathematical was found */
	readonly understood: readonly Expression[];
	readonly verdict: LineVerdict;
	/** the step it was taken for */
	readonly find?: string;
}

export interface MarkedStep {
	readonly find: string;
	readonly kind: 'number' | 'choice' | 'item';
	readonly isAttempted: boolean;
	/** M, or for a choice D */
	readonly method: boolean;
	/** A; always false for a choice */
	readonly accuracy: boolean;
	/** S: exactly the figures asked for, rightly rounded; undefined where none are asked */
	readonly figures?: boolean;
	/** right for the learner's own earlier number, which was not the model's */
	readonly carriedForward: boolean;
	/** SI; undefined where no value was stated */
	readonly value?: number;
	/** SI */
	readonly expected?: number;
	readonly chosen?: string;
	readonly expectedChoice?: string;
	readonly slip?: SlipName;
}

export interface MarkedFinal {
	readonly find: string;
	/** SI */
	readonly value?: number;
	readonly unit?: string;
	readonly chosen?: string;
	readonly isValueRight: boolean;
	readonly isUnitRight: boolean;
	readonly isRight: boolean;
}

export interface FoundSlip {
	/** the likeliest first; more than one where the number alone cannot tell them apart */
	readonly names: readonly [SlipName, ...SlipName[]];
	readonly step: string;
	/** the learner's number, SI */
	readonly value?: number;
	/** whether the working shows it, or only the number */
	readonly isSeen: boolean;
}

export type Remark =
	| { readonly code: 'too-long'; readonly characters: number; readonly lines: number }
	| { readonly code: 'relation-only'; readonly span: Span }
	| { readonly code: 'too-many-figures'; readonly span: Span; readonly figures: number }
	| { readonly code: 'run-on-equals'; readonly span: Span }
	| { readonly code: 'working-not-shown' }
	| { readonly code: 'impossible-value'; readonly step: string; readonly value: number }
	| { readonly code: 'not-read'; readonly span: Span; readonly text: string };

/** A number that can be read two ways; the learner is asked, and nothing is lost by it. */
export interface Question {
	readonly code: 'ambiguous-number';
	readonly span: Span;
	readonly text: string;
	readonly readings: readonly [number, number];
}

export interface Marking {
	readonly lines: readonly MarkedLine[];
	readonly steps: readonly MarkedStep[];
	/** the unit mark; undefined where the exercise sets none */
	readonly unit?: boolean;
	readonly finals: readonly MarkedFinal[];
	readonly slips: readonly FoundSlip[];
	readonly remarks: readonly Remark[];
	readonly questions: readonly Question[];
	readonly score: { readonly got: number; readonly of: number };
	readonly isRight: boolean;
	/** the learner's number for the last wanted value, to be tried on the bench; SI */
	readonly bench?: { readonly find: string; readonly value: number };
}
