/** One comparison; times are the median of several rounds. */
export interface BenchRow {
	readonly name: string;
	readonly ours: string;
	readonly baseline: string;
	readonly ratio: string;
	readonly wanted: string;
}

/** One picture of a screen that shows 60 a second. */
export const frameMs = 1000 / 60;

/** Median time of one call in ms: rounds of at least 20 ms each, after a warm-up. */
export function medianMs(call: () => unknown, rounds = 9): number {
	let calls = 1;
	while (timeOf(call, calls) < 20) calls *= 2;
	const times = Array.from({ length: rounds }, () => timeOf(call, calls) / calls).sort((a, b) => a - b);
	return times[Math.floor(rounds / 2)] ?? NaN;
}

function timeOf(call: () => unknown, calls: number): number {
	const start = performance.now();
	for (let index = 0; index < calls; index += 1) call();
	return performance.now() - start;
}

export function ratioRow(name: string, oursMs: number, baselineMs: number, wanted: string): BenchRow {
	return {
		name,
		ours: `${oursMs.toPrecision(3)} ms`,
		baseline: `${baselineMs.toPrecision(3)} ms`,
		ratio: (baselineMs / oursMs).toPrecision(3),
		wanted,
	};
}
