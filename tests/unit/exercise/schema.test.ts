import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parseCupboard, parseExercise } from '#exercise/schema.ts';

const lines = [
	'format: 1',
	"id: 'x.1'",
	'title: A title',
	'skills: [K4]',
	"prompt: 'A supply of {V} drives {I}.'",
	'givens:',
	'  - { symbol: V, quantity: voltage, unit: V, from: 3, to: 24, step: 0.5 }',
	'  - { symbol: I, quantity: current, unit: A, value: 2 }',
	'steps:',
	'  - { find: R, quantity: resistance, unit: Ω, relation: R = V / I }',
	'wanted: [R]',
	'keepOut: [R < 1 Ω]',
	'sense: It is {R}.',
	'caution: { signal: caution, hazard: a, consequence: b, instruction: c }',
	'sample: { values: { V: 12 } }',
	"answers: [{ text: '6 Ω', marks: { R: MA }, unit: true, right: true }]",
];
const whole = lines.join('\n');

function problemsWith(find: string, by: string) {
	if (!whole.includes(find)) throw new Error(`nothing to exchange: ${find}`);
	const parsed = parseExercise(whole.replace(find, by), 'x.yaml');
	return parsed.ok ? [] : parsed.problems;
}

test('a whole file is read', () => expect(parseExercise(whole, 'x.yaml').ok).toBe(true));

describe('a mistake is reported with its file, line and column', () => {
	test.each([
		['unknown key', 'keepOut:', 'keepIn:', { line: 12, column: 1, code: 'unknown-key', found: 'keepIn' }],
		['unknown key deeper', 'value: 2', 'valeu: 2', { line: 8, column: 46, code: 'unknown-key', found: 'valeu' }],
		['wrong type', 'step: 0.5', "step: 'x'", { line: 7, code: 'wrong-type', expected: 'number' }],
		['missing key', 'title: A title\n', '', { code: 'missing-key', found: 'title' }],
		[
			'undefined symbol in a relation',
			'V / I }',
			'V / J }',
			{ line: 10, column: 65, code: 'undefined-symbol', found: 'J' },
		],
		['undefined symbol in the prompt', '{I}', '{J}', { line: 5, code: 'undefined-symbol', found: 'J' }],
		[
			'unlike units in a relation',
			'V / I }',
			'V * I }',
			{ line: 10, code: 'dimension', found: 'power', expected: 'Ω' },
		],
		[
			'unlike units added',
			'V / I }',
			'V / (I + V) }',
			{ line: 10, code: 'dimension', found: 'voltage', expected: 'current' },
		],
		['a unit of another kind', 'unit: Ω', 'unit: A', { line: 10, code: 'dimension', found: 'A', expected: 'Ω' }],
		['an unknown unit', 'unit: Ω', 'unit: foo', { line: 10, code: 'unknown-unit', found: 'foo' }],
		[
			'an unknown quantity',
			'quantity: current',
			'quantity: flow',
			{ line: 8, code: 'unknown-quantity', found: 'flow' },
		],
		['a formula that does not end', 'V / I }', 'V / (I }', { line: 10, code: 'formula' }],
		['a condition of unlike units', 'R < 1 Ω', 'R < 1 V', { line: 12, code: 'dimension' }],
		['a condition without a sign', 'R < 1 Ω', 'R 1 Ω', { line: 12, code: 'formula' }],
		['a wanted value nobody finds', '[R]', '[Q]', { line: 11, column: 10, code: 'undefined-symbol', found: 'Q' }],
		['a sample without a number', '{ V: 12 }', '{}', { line: 15, code: 'sample-missing', found: 'V' }],
		['a symbol used twice', 'symbol: I', 'symbol: V', { line: 8, code: 'duplicate', found: 'V' }],
		['another version', 'format: 1', 'format: 2', { line: 1, column: 9, code: 'wrong-type' }],
		['broken YAML', 'skills: [K4]', 'skills: [K4', { code: 'yaml-syntax' }],
	])('%s', (_, find, by, expected) => {
		expect(problemsWith(find, by)).toContainEqual(expect.objectContaining({ file: 'x.yaml', ...expected }));
	});

	test('all problems come at once', () => {
		const text = whole.replace('V / I }', 'V / J }').replace('R < 1 Ω', 'R < 1 V').replace('[R]', '[Q]');
		const parsed = parseExercise(text, 'x.yaml');
		expect(parsed.ok ? [] : parsed.problems.map(({ line }) => line).toSorted()).toEqual([10, 11, 12]);
	});
});

test('the cupboard holds what the yard owns, each thing once', () => {
	const text = readFileSync('src/content/cupboard.yaml', 'utf8');
	const cupboard = parseCupboard(text, 'cupboard.yaml');
	if (!cupboard.ok) throw new Error(JSON.stringify(cupboard.problems));
	expect(cupboard.value.supplies.map(({ id }) => id)).toEqual(['P1', 'P2', 'P3', 'P4', 'P5', 'P6']);
	expect(cupboard.value.reels).toHaveLength(10);
	expect(Math.max(...cupboard.value.supplies.map(({ voltage }) => voltage))).toBeLessThanOrEqual(24);
	const twice = parseCupboard(text.replace('id: P2', 'id: P1'), 'cupboard.yaml');
	expect(twice.ok ? [] : twice.problems).toMatchObject([{ code: 'duplicate', found: 'P1' }]);
});
