import { fail, succeed, type Outcome } from '#core/outcome.ts';
import * as v from 'valibot';
import { isNode, LineCounter, parseDocument, type Document } from 'yaml';
import { lessonSchema, type Lesson, type Typesetter } from './schema.ts';

/** Something in a content file that must be mended before the site can be built. */
export interface LessonProblem {
	readonly code: 'folder-name' | 'front-matter-missing' | 'yaml' | 'schema' | 'prose';
	readonly file: string;
	readonly line: number;
	readonly column: number;
	/** where in the front matter, e.g. "predict.choices.2.code" */
	readonly path: string;
	/** the schema's own message or short code */
	readonly found: string;
}

/**
 * Reads one lesson file: YAML between two lines of three dashes, then the prose of "Why".
 *
 * @param file its path, ending in "NN-name/lesson.en.md"; the folder gives number and address
 */
export function parseLesson(source: string, file: string, typeset: Typesetter): Outcome<Lesson, LessonProblem> {
	const problem = (code: LessonProblem['code'], line: number, column: number, found: string, path = '') =>
		({ code, file, line, column, path, found }) as const;
	const folder = /(\d+)-([a-z0-9-]+)\/lesson\.[a-z]+\.md$/.exec(file);
	if (folder === null) return fail(problem('folder-name', 1, 1, file));
	const parts = /^---\n([\s\S]*?\n)---\n([\s\S]*)$/.exec(source.replaceAll('\r\n', '\n'));
	if (parts === null) return fail(problem('front-matter-missing', 1, 1, ''));
	const [front, prose] = [kept(parts[1]), kept(parts[2])];

	const lines = new LineCounter();
	const document = parseDocument(front, { lineCounter: lines });
	const place = (offset: number) => {
		const { line, col } = lines.linePos(offset);
		return [line + 1, col] as const; // the line of dashes comes first
	};
	if (document.errors.length > 0)
		return fail(...document.errors.map((error) => problem('yaml', ...place(error.pos[0]), error.code)));

	const data: unknown = document.toJS();
	const result = v.safeParse(lessonSchema(typeset), data, { abortPipeEarly: true });
	const proseLine = front.split('\n').length + 2;
	const set = setProse(prose, typeset);
	if (result.success && set.ok)
		return succeed({ ...result.output, slug: folder[2] ?? '', number: Number(folder[1]), prose: set.value });
	const proseProblems = set.ok ? [] : set.problems.map((found) => problem('prose', proseLine, 1, found));
	const schemaProblems = (result.issues ?? []).map((issue) => {
		const keys = (issue.path ?? []).map(({ key }) => key);
		return problem('schema', ...place(offsetOf(document, keys)), issue.message, keys.join('.'));
	});
	return fail(...schemaProblems, ...proseProblems);
}

/** The same text with a number and its unit kept on one line; offsets stay as they are. */
function kept(text = ''): string {
	return text.replaceAll(/(?<=\d) (?=(?:[mk]?[VAΩW]|m|mm|min|s|°C)(?![\p{L}\d]))/gu, '\u00a0');
}

function setProse(prose: string, typeset: Typesetter): Outcome<string, string> {
	if (prose.trim() === '') return fail('empty');
	if (/<[a-z!/?]/i.test(prose)) return fail('raw-html');
	try {
		return succeed(typeset(prose));
	} catch (reason) {
		return fail(reason instanceof Error ? reason.message : 'cannot-be-set');
	}
}

/** Where the deepest part of the path that exists begins. */
function offsetOf(document: Document, keys: readonly unknown[]): number {
	for (let depth = keys.length; depth > 0; depth -= 1) {
		const node = document.getIn(keys.slice(0, depth), true);
		if (isNode(node) && node.range) return node.range[0];
	}
	return 0;
}
