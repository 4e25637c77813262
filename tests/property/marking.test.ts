import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import { markAnswer } from '#exercise/marking/mark.ts';
import { drawVariant, type Variant } from '#exercise/variant.ts';
import { readCupboard, readExerciseFiles } from '#tests/support/content.ts';

// hundreds of answers each; slow machines are no reason to fail
vi.setConfig({ testTimeout: 60_000 });
const cupboard = readCupboard();
const exercises = readExerciseFiles().map(({ exercise }) => exercise);
const seed = fc.integer({ min: 0, max: 400 }).map(String);

/** One person's way of writing: signs, letters, spaces, decimal sign, rounding. */
const style = fc.record({
	times: fc.constantFrom(' · ', '*', ' × ', 'x', ' x '),
	over: fc.constantFrom(' / ', '/', ' ÷ ', ' : '),
	equals: fc.constantFrom(' = ', '=', ' -> ', ' => ', ' ≈ ', '\n= ', ' is '),
	letter: fc.constantFrom('V', 'U', 'E'),
	comma: fc.boolean(),
	space: fc.constantFrom('', ' ', '\u00a0', '\u202f'),
	hasUnits: fc.boolean(),
	hasName: fc.boolean(),
	hasFormula: fc.boolean(),
	figures: fc.integer({ min: 3, max: 6 }),
	lead: fc.constantFrom('', 'So ', 'First: ', 'the wire has, I think, ', 'Answer:\n', '1) '),
	break: fc.constantFrom('\n', '; ', '\n\n', ', then ', '. Next, '),
	ohm: fc.constantFrom('Ω', 'ohm', 'ohms', 'Ohm', '\u2126'),
	length: fc.constantFrom('m', 'mm', 'cm'),
});
type Style = typeof style extends fc.Arbitrary<infer T> ? T : never;

function number(value: number, { comma, figures }: Style, exact = false): string {
	const text = String(exact ? Number(value.toPrecision(12)) : Number(value.toPrecision(figures)));
	return comma ? text.replace('.', ',') : text;
}

function given(variant: Variant, symbol: string, unit: string, s: Style): string {
	return number(variant.givens[symbol] ?? 0, s, true) + (s.hasUnits ? s.space + unit : '');
}

function line(s: Style, name: string, formula: string, work: string, result: string): string {
	return [...(s.hasName ? [name] : []), ...(s.hasFormula ? [formula] : []), work, result].join(s.equals);
}

// a comma between digits with three places behind it is asked about, not guessed
const isUnambiguous = (text: string) => !/(?<!\d)[1-9]\d{0,2},\d{3}(?!\d)/u.test(text);

function lengthText(metres: number, s: Style): string {
	const factor = { m: 1, mm: 1000, cm: 100 }[s.length] ?? 1;
	return `${number(metres * factor, s)}${s.space}${s.length}`;
}

const writers: Readonly<Record<string, (variant: Variant, s: Style) => string>> = {
	'3.1': (v, s) => s.lead + ohmLine(v, s),
	'3.2': (v, s) => s.lead + ohmLine(v, s),
	'4.1': (v, s) => {
		const R = v.expected['R'] ?? 0;
		const middle = `${number(R, s)}${s.space}${s.ohm}`;
		const first = line(
			s,
			'R',
			'R_read - R_leads',
			`${given(v, 'R_read', 'Ω', s)} - ${given(v, 'R_leads', 'Ω', s)}`,
			middle,
		);
		const work = `${number(R, s)}${s.hasUnits ? `${s.space}Ω` : ''}${s.over}${given(v, "R'", 'Ω/m', s)}`;
		return s.lead + first + s.break + line(s, 'L', `R${s.over}R′`, work, lengthText(v.expected['L'] ?? 0, s));
	},
	'4.3': (v, s) => {
		const cut = lengthText(v.expected['L_cut'] ?? 0, s);
		const first = line(
			s,
			'L_cut',
			`L + 2${s.times}c`,
			`${given(v, 'L', 'm', s)} + 2${s.times}${given(v, 'c', 'm', s)}`,
			cut,
		);
		const last = `${number(v.expected['R_read'] ?? 0, s)}${s.space}${s.ohm}`;
		const work = `${number(v.expected['L_cut'] ?? 0, s)}${s.times}${given(v, "R'", 'Ω/m', s)} + ${given(v, 'R_leads', 'Ω', s)}`;
		return s.lead + first + s.break + line(s, 'R_read', `L_cut${s.times}R′ + R_leads`, work, last);
	},
};

function ohmLine(v: Variant, s: Style): string {
	const work = `${given(v, 'V', 'V', s)}${s.over}${given(v, 'I', 'A', s)}`;
	return line(s, 'R', `${s.letter}${s.over}I`, work, `${number(v.expected['R'] ?? 0, s)}${s.space}${s.ohm}`);
}

describe.each(Object.keys(writers))('a right solution of exercise %s', (id) => {
	test('gets full marks in any notation', () => {
		const exercise = exercises.find((candidate) => candidate.id === id);
		const write = writers[id];
		if (!exercise || !write) throw new Error(`no exercise ${id}`);
		fc.assert(
			fc.property(seed, style, (drawn, s) => {
				const variant = drawVariant(exercise, drawn, cupboard);
				const text = write(variant, s);
				fc.pre(isUnambiguous(text));
				const marking = markAnswer(exercise, variant, text, { decimalSign: '.', voltageLetter: 'V' });
				expect({ text, got: marking.score.got, isRight: marking.isRight }).toEqual({
					text,
					got: marking.score.of,
					isRight: true,
				});
			}),
			{ numRuns: 120 },
		);
	});
});

const pieces = fc.constantFrom(
	..."0 1 2.5 12 4.8 0.3 8.67 , . = -> + - * / ^ ² √ ( ) [ ] V I R R' L U E Ω A mA m mm Ω/m or so ~~ ~ \n ; 4R8 1,234 1·5 ½ ∥ || :".split(
		' ',
	),
	' ',
	'\u{1d4d4}',
	'\ud800',
	'<script>',
);

describe('no text breaks the marking', () => {
	const texts = fc.oneof(
		fc.string({ unit: 'binary', maxLength: 300 }),
		fc.array(pieces, { maxLength: 60 }).map((list) => list.join('')),
		fc.array(pieces, { maxLength: 60 }).map((list) => list.join(' ')),
	);
	test.each(exercises)('of exercise $id', (exercise) => {
		fc.assert(
			fc.property(texts, fc.constantFrom('.' as const, ',' as const), (text, decimalSign) => {
				const variant = drawVariant(exercise, 'fuzz', cupboard);
				const { score, lines } = markAnswer(exercise, variant, text, { decimalSign, voltageLetter: 'U' });
				expect(score.got).toBeGreaterThanOrEqual(0);
				expect(score.got).toBeLessThanOrEqual(score.of);
				for (const { span } of lines) expect(span.end).toBeGreaterThanOrEqual(span.start);
			}),
			{ numRuns: 100 },
		);
	});

	test('the longest texts are marked to the limit of an answer', () => {
		const exercise = exercises.find(({ id }) => id === '4.1');
		if (!exercise) throw new Error('no exercise 4.1');
		const variant = drawVariant(exercise, 'long', cupboard);
		const hard = [
			'('.repeat(5000),
			'√'.repeat(5000),
			'2^'.repeat(3000),
			'5.1-0.3='.repeat(900),
			'VIVIVIR'.repeat(600),
			'1 000 '.repeat(900),
			'5.1+0.3*8.67/5.1-'.repeat(300),
			'~~'.repeat(2500),
			'1/2/'.repeat(900),
			'R^('.repeat(900),
			'R('.repeat(1200),
		];
		for (const text of hard) {
			const { score, remarks } = markAnswer(exercise, variant, text, { decimalSign: '.', voltageLetter: 'V' });
			expect(score.got, text.slice(0, 12)).toBe(0);
			expect(
				remarks.map(({ code }) => code),
				text.slice(0, 12),
			).toContain('too-long');
		}
	});
});
