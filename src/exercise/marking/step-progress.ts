import type { NumberStep } from '#exercise/exercise.ts';
import type { StatedValue } from './claim.ts';
import type { Judgement } from './judge.ts';
import type { FoundSlip } from './marking.ts';

/** What one step has earned so far. */
export interface StepProgress {
	readonly step: NumberStep;
	isAttempted: boolean;
	isStated: boolean;
	hasWork: boolean;
	method: boolean;
	accuracy: boolean;
	carriedForward: boolean;
	value?: number;
	unitText?: string;
	unit?: Judgement['unit'];
	slip?: FoundSlip;
	figures?: number;
	/** what was written, in its own unit */
	written?: StatedValue;
	/** the value it was held against, SI */
	against?: number;
	isTwoAnswers: boolean;
}
