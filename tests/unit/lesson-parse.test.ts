import { describeProblem } from '#course/lesson/describe.ts';
import { parseLesson } from '#course/lesson/parse.ts';
import { lessonFiles } from '#tests/support/lesson-file.ts';
import { typeset } from '#course/lesson/typeset.ts';
import { expect, test } from 'vitest';

const path = 'src/content/lessons/03-solve-for-resistance/lesson.en.md';
const source = lessonFiles.find((file) => file.path === path)?.source ?? '';
const plain = (markdown: string) => markdown;
const lineOf = (text: string) => source.slice(0, source.indexOf(text)).split('\n').length;

function problemsOf(text: string) {
	const outcome = parseLesson(text, path, plain);
	return outcome.ok ? [] : outcome.problems;
}

test('a lesson takes its number and address from its folder', () => {
	const outcome = parseLesson(source, path, plain);
	expect(outcome.ok && outcome.value.number).toBe(3);
	expect(outcome.ok && outcome.value.slug).toBe('solve-for-resistance');
});

test('a file in a folder without a number is refused', () => {
	const outcome = parseLesson(source, 'src/content/lessons/ohms/lesson.en.md', plain);
	expect(!outcome.ok && outcome.problems[0]?.code).toBe('folder-name');
});

test('a file without settings is refused', () => {
	expect(problemsOf('# Ohms\n')[0]?.code).toBe('front-matter-missing');
});

test('a wrong code is reported with its line', () => {
	const [problem] = problemsOf(source.replace('code: M8', 'code: wrong'));
	expect(problem).toMatchObject({ code: 'schema', path: 'predict.choices.0.code', line: lineOf('code: M8') });
});

test('a caution without an instruction is reported where the caution stands', () => {
	const [problem] = problemsOf(source.replace(/\n {2}instruction: .*/, ''));
	expect(problem).toMatchObject({ code: 'schema', path: 'caution.instruction', line: lineOf('  signal: caution') });
});

test('two right answers to one question are refused', () => {
	const [problem] = problemsOf(source.replace('text: 1.00 A', 'text: 1.00 A\n      right: true'));
	expect(problem).toMatchObject({ path: 'saw.choices', found: 'not-one-right' });
});

test('YAML that cannot be read is reported with its line', () => {
	const [problem] = problemsOf(source.replace('minutes: 9', 'minutes: [9'));
	expect(problem?.code).toBe('yaml');
	expect(problem?.line).toBeGreaterThan(1);
});

test('raw HTML is refused in settings and in the prose', () => {
	const marked = source.replace('text: doubled', 'text: <b>doubled</b>').concat('\n<img src="x">\n');
	expect(problemsOf(marked).map(({ found }) => found)).toContain('raw-html');
	expect(problemsOf(`${source}\n<img src="x">\n`)).toMatchObject([{ code: 'prose', found: 'raw-html' }]);
});

test('a problem is told in one line with file, line, column and what to do', () => {
	const [problem] = problemsOf(source.replace('minutes: 9', 'minutes: many'));
	expect(problem && describeProblem(problem)).toMatch(
		/^src\/content\/lessons\/03-solve-for-resistance\/lesson\.en\.md:3:\d+ mend minutes: /,
	);
});

test('a formula with the voltage is set with V and with U', () => {
	const html = typeset('$R = \\volt/I$');
	expect(html).toContain('<span class="letter-v">');
	expect(html).toContain('<span class="letter-u">');
	expect(html).toContain('<annotation encoding="application/x-tex">R = \\volt/I</annotation>');
	expect(html).toContain('<mi>U</mi>');
	expect(html).toContain('<mi>V</mi>');
});

test('a formula without the voltage is set once', () => {
	expect(typeset("$\\ell = R/R'$")).not.toContain('letter-u');
});

test('a formula that cannot be set stops with its fault', () => {
	expect(() => typeset('$\\frac{1$')).toThrow();
});

test('a formula cannot carry a link or markup', () => {
	expect(typeset('$\\href{https://example.org}{x}$')).not.toContain('href=');
	expect(() => typeset('$\\htmlClass{hidden}{x}$')).toThrow(/strict/);
});

test('links, pictures and headings are not allowed', () => {
	for (const markdown of ['[x](https://example.org)', '![x](x.png)', '# x\n\ny'])
		expect(() => typeset(markdown)).toThrow(/not-allowed/);
});

test('emphasis and paragraphs are set', () => {
	expect(typeset('**one** and *two*')).toBe('<strong>one</strong> and <em>two</em>');
	expect(typeset('one\n\ntwo')).toBe('<p>one</p>\n<p>two</p>\n');
});
