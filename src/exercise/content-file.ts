import { isMap, isScalar, LineCounter, parseDocument, type Document } from 'yaml';
import * as v from 'valibot';
import { fail, succeed, type Outcome, type Span } from '#core/outcome.ts';
import type { ContentProblem } from './exercise.ts';

export type Path = readonly (string | number)[];

/** Builds a problem that points at a value of the file, or at a stretch inside it. */
export type Locate = (
	code: ContentProblem['code'],
	path: Path,
	found: string,
	more?: { readonly expected?: string; readonly span?: Span },
) => ContentProblem;

/** Reads a YAML text against a schema; every problem carries file, line and column. */
export function readContentFile<T>(
	text: string,
	file: string,
	schema: v.GenericSchema<unknown, T>,
): Outcome<{ readonly data: T; readonly locate: Locate }, ContentProblem> {
	const lineCounter = new LineCounter();
	const document = parseDocument(text, { lineCounter, strict: true, uniqueKeys: true });
	if (document.errors.length > 0) {
		return fail(
			...document.errors.map((error): ContentProblem => {
				const { line, col } = lineCounter.linePos(error.pos[0]);
				return { file, line, column: col, code: 'yaml-syntax', found: error.code };
			}),
		);
	}
	const locate: Locate = (code, path, found, more) => {
		const place = code === 'unknown-key' ? keyOffset(document, path) : offsetOf(document, path);
		const { line, col } = lineCounter.linePos(place + (more?.span?.start ?? 0));
		const expected = more?.expected === undefined ? {} : { expected: more.expected };
		return { file, line, column: col, code, found, ...expected };
	};
	const result = v.safeParse(schema, document.toJS());
	if (!result.success) return fail(...result.issues.flatMap((issue) => issueProblems(issue, locate)));
	return succeed({ data: result.output, locate });
}

// the place of a value, or of the nearest thing around it that is in the file
function offsetOf(document: Document, path: Path): number {
	for (let length = path.length; length > 0; length -= 1) {
		const node: unknown = document.getIn(path.slice(0, length), true);
		if (typeof node !== 'object' || node === null || !('range' in node) || !Array.isArray(node.range)) continue;
		const start: unknown = node.range[0];
		const isQuoted = 'type' in node && (node.type === 'QUOTE_SINGLE' || node.type === 'QUOTE_DOUBLE');
		if (typeof start === 'number') return length === path.length && isQuoted ? start + 1 : start;
	}
	return 0;
}

// the place of a key itself, not of what stands behind it
function keyOffset(document: Document, path: Path): number {
	const map: unknown = path.length === 1 ? document.contents : document.getIn(path.slice(0, -1), true);
	if (!isMap(map)) return offsetOf(document, path);
	const key = map.items.map((pair) => pair.key).find((found) => isScalar(found) && found.value === path.at(-1));
	return isScalar(key) ? (key.range?.[0] ?? 0) : offsetOf(document, path);
}

function issueProblems(issue: v.BaseIssue<unknown>, locate: Locate): readonly ContentProblem[] {
	const path = (issue.path ?? []).map(({ key }) => (typeof key === 'number' ? key : String(key)));
	const key = String(path.at(-1) ?? '');
	if (issue.type === 'strict_object' && issue.expected === 'never') return [locate('unknown-key', path, key)];
	if (issue.received === 'undefined') return [locate('missing-key', path, key)];
	const expected = issue.expected === null ? {} : { expected: issue.expected };
	return [locate('wrong-type', path, issue.received, expected)];
}
