import type { SlipName } from '#exercise/slip/slip-name.ts';
import { readUnitText } from '#exercise/unit-text.ts';
import type { StepProgress } from './step-progress.ts';

/** Whether a value has exactly the figures asked for, rightly rounded; undefined where the step asks for none. */
export function figuresMark(progress: StepProgress): boolean | undefined {
	if (progress.step.figures === undefined) return undefined;
	return progress.accuracy && figuresSlip(progress) === undefined;
}

/** The slip in the figures of a right value, where figures are asked for. */
export function figuresSlip({ step, written, against, accuracy }: StepProgress): SlipName | undefined {
	if (step.figures === undefined || !written || against === undefined || !accuracy) return undefined;
	if (written.figures > step.figures) return 'too-many-figures';
	if (written.figures < step.figures) return 'too-few-figures';
	const factor = written.unit === undefined ? (readUnitText(step.unit)?.factor ?? 1) : written.factor;
	const rounded = Number((against / factor).toPrecision(step.figures));
	return Math.abs(rounded - written.number) <= 1e-9 * Math.abs(rounded) ? undefined : 'rounded-wrong-way';
}
