/** What a person asked for: the value, or every problem found in it at once. */
export type Outcome<T, P> =
	{ readonly ok: true; readonly value: T } | { readonly ok: false; readonly problems: readonly P[] };

/** A stretch of typed text, from `start` up to but not including `end`, counted in UTF-16 code units. */
export interface Span {
	readonly start: number;
	readonly end: number;
}

export function succeed<T>(value: T): { readonly ok: true; readonly value: T } {
	return { ok: true, value };
}

export function fail<P>(...problems: readonly P[]): { readonly ok: false; readonly problems: readonly P[] } {
	return { ok: false, problems };
}
