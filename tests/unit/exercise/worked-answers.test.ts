import { describe, expect, test } from 'vitest';
import { markAnswer } from '#exercise/marking/mark.ts';
import { sampleVariant } from '#exercise/variant.ts';
import { readCupboard, readExerciseFiles } from '#tests/support/content.ts';

const cupboard = readCupboard();

describe.each(readExerciseFiles())('$file', ({ exercise }) => {
	test.each(exercise.answers)('marks as its author does: $text', (answer) => {
		const variant = sampleVariant(exercise, cupboard, answer);
		const marking = markAnswer(exercise, variant, answer.text, { decimalSign: '.', voltageLetter: 'V' });
		const marks = marking.steps.map(({ find, kind, method, accuracy }) => {
			const letters = kind === 'number' ? `${method ? 'M' : ''}${accuracy ? 'A' : ''}` : method ? 'D' : '';
			return [find, letters === '' ? '-' : letters];
		});
		expect({
			marks: Object.fromEntries(marks),
			unit: marking.unit ?? false,
			isRight: marking.isRight,
			slips: marking.slips.map(({ names }) => names[0]),
		}).toEqual({ marks: answer.marks, unit: answer.unit, isRight: answer.isRight, slips: answer.slips });
	});
});
