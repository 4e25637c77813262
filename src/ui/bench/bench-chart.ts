import { writeNumber } from '#core/quantity/write.ts';
import type { Kelvin } from '#core/quantity/unit.ts';
import { sweepLength, type SweepPoint } from '#core/setup/sweep.ts';
import type { Setup } from '#core/setup/setup.ts';
import { roundedUp, type ChartAxis, type ChartBand, type ChartPoint, type ChartView } from '#ui/chart/view.ts';
import { text } from '#ui/text/en.ts';
import type { Bench } from './bench.svelte.ts';
import { viewFor } from './geometry.ts';
import { zeroCelsius } from './settings.ts';
import { degrees, lengthScale } from './words.ts';

const words = text.bench.chart;

/** What can be drawn against the length. */
export const chartQuantities = ['power', 'current', 'temperature', 'power-per-metre'] as const;
export type ChartQuantity = (typeof chartQuantities)[number];

const axes = {
	power: { letter: 'P', unit: 'W', of: ({ power }: Plotted) => power },
	current: { letter: 'I', unit: 'A', of: ({ current }: Plotted) => current },
	temperature: { letter: 'ϑ', unit: '°C', of: ({ temperature }: Plotted) => temperature - zeroCelsius },
	'power-per-metre': { letter: 'P′', unit: 'W/m', of: ({ powerPerMetre }: Plotted) => powerPerMetre },
} as const;

interface Plotted {
	readonly power: number;
	readonly current: number;
	readonly temperature: number;
	readonly powerPerMetre: number;
}

/** The lengths of a set-up from 10 mm up to the end of the rule, with what each settles to. */
export function sweepFor(setup: Setup): { readonly end: number; readonly points: readonly SweepPoint[] } {
	const { length } = setup.wire;
	const end = length * 1000 > 1200 ? Math.ceil(length * 1.2) : viewFor(length, 600) / 1000;
	return { end, points: sweepLength(setup, { from: end / 120, to: end, points: 120 }) };
}

export interface BenchChart {
	readonly view: ChartView;
	readonly summary: string;
}

/** The chart of one quantity against the length, with the summary made from the same points. */
export function benchChart(
	bench: Bench,
	{ end, points }: { readonly end: number; readonly points: readonly SweepPoint[] },
	quantity: ChartQuantity,
	lengthUnit: 'mm' | 'inch' = 'mm',
): BenchChart {
	const { perMetre, symbol, decimals } = lengthScale(lengthUnit);
	const writeLength = (value: number) => `${writeNumber(value, { decimals })} ${symbol}`;
	const { letter, unit, of } = axes[quantity];
	const { limit } = bench.setup.wire.material;
	const forbidden = lastForbidden(points, limit.value);
	const allowed = points.slice(forbidden + 1);
	const line = allowed.map((point): ChartPoint => ({ x: point.length * perMetre, y: of(point) }));
	const here = {
		x: bench.settings.length * perMetre,
		y: of(bench.isOn ? { ...bench.live, temperature: bench.temperature } : bench.point),
	};
	// past the end of its data a temperature is not known, so no point is drawn for it
	const isUnknown = quantity === 'temperature' && !bench.isOn && !bench.point.isTemperatureInRange;
	const most = Math.max(isUnknown ? 0 : here.y, ...line.map(({ y }) => y));
	const write = (value: number) => `${writeNumber(value, quantity === 'temperature' ? { decimals: 0 } : {})} ${unit}`;
	const x: ChartAxis = { letter: 'ℓ', name: words.length, unit: symbol, max: end * perMetre, write: writeLength };
	const y: ChartAxis = { letter, name: words[quantity], unit, max: roundedUp(most * 1.05), write };
	const bands = bandsOf(points, forbidden, end, perMetre);
	const noted = bench.log.filter((reading) => reading.bench === bench.benchKey);
	return {
		view: {
			x,
			y,
			series: [
				{
					id: 'curve',
					name: bench.isOn ? words.curveLive : words.curveExpected,
					mark: bench.isOn ? 'ink' : 'pencil',
					joined: true,
					points: line,
				},
				...(noted.length === 0
					? []
					: [
							{
								id: 'noted',
								name: words.noted,
								mark: 'ink' as const,
								joined: false,
								points: noted.map((reading) => ({ x: reading.length * perMetre, y: of(reading) })),
							},
						]),
			],
			...(isUnknown ? {} : { operatingPoint: { ...here, isLive: bench.isOn && bench.live.current > 0 } }),
			bands,
		},
		summary: [
			...refusedBelow(points, forbidden, limit.value, (length) => writeLength(length * perMetre)),
			courseOf(line, { flatTo: flatUpTo(allowed, line), write, writeLength }),
			words.here(writeLength(here.x), isUnknown ? words.beyond(degrees(bench.point.temperature)) : write(here.y)),
		].join(' '),
	};
}

/** Lengths that are refused or stop the supply, then lengths at which it holds its limit. */
function bandsOf(
	points: readonly SweepPoint[],
	forbidden: number,
	end: number,
	perMetre: number,
): readonly ChartBand[] {
	const startOf = (index: number) => (index < 0 ? 0 : (points[index]?.length ?? end) * perMetre);
	const held = points.findLastIndex(({ state }) => state === 'holding-limit');
	const bands: ChartBand[] = [];
	if (forbidden >= 0) bands.push({ from: 0, to: startOf(forbidden + 1), label: words.forbidden });
	if (held > forbidden) {
		bands.push({ from: forbidden < 0 ? 0 : startOf(forbidden + 1), to: startOf(held + 1), label: words.held });
	}
	return bands;
}

function isTooHot({ temperature, isTemperatureInRange }: SweepPoint, limit: Kelvin): boolean {
	return !isTemperatureInRange || temperature > limit;
}

/** Index of the longest wire that is over a limit: too hot, or the supply acts; −1 when none is. */
function lastForbidden(points: readonly SweepPoint[], limit: number): number {
	return points.findLastIndex(
		(point) => isTooHot(point, limit) || (point.state !== 'on' && point.state !== 'holding-limit'),
	);
}

/** Last point of a level start at which the supply holds its limit, −1 where the line is not level there. */
function flatUpTo(points: readonly SweepPoint[], line: readonly ChartPoint[]): number {
	const held = points.findLastIndex(({ state }) => state === 'holding-limit');
	const [first] = line;
	const isLevel = line.slice(0, held + 1).every(({ y }) => Math.abs(y - (first?.y ?? 0)) <= 1e-3 * y);
	return isLevel ? held : -1;
}

/** Why the shortest wires are not drawn, where some are not. */
function refusedBelow(
	points: readonly SweepPoint[],
	forbidden: number,
	limit: Kelvin,
	writeLength: (length: number) => string,
): readonly string[] {
	const last = points[forbidden];
	const next = points[forbidden + 1];
	if (last === undefined || next === undefined) return [];
	const from = writeLength(next.length);
	return [isTooHot(last, limit) ? words.beyondBelow(degrees(limit), from) : words.stoppedBelow(from)];
}

/** How a line runs from its shortest wire to its longest; `flatTo` is the last point of a level start, −1 for none. */
function courseOf(
	line: readonly ChartPoint[],
	{ flatTo, write, writeLength }: CourseWords & { readonly flatTo: number },
): string {
	const [first] = line;
	const last = line.at(-1);
	if (first === undefined || last === undefined) return words.nothing;
	const flatEnd = line[flatTo];
	if (flatEnd === last) return words.heldThroughout(write(last.y), writeLength(last.x));
	if (flatEnd !== undefined) {
		return words.heldThenFalls(write(first.y), write(last.y), writeLength(flatEnd.x), writeLength(last.x));
	}
	const highest = line.reduce((most, point) => (point.y > most.y * (1 + 1e-9) ? point : most), first);
	const from = highest === last ? first : highest;
	const sentence = last.y < from.y ? words.falls : words.rises;
	return sentence(write(from.y), write(last.y), writeLength(from.x), writeLength(last.x));
}

interface CourseWords {
	readonly write: (value: number) => string;
	readonly writeLength: (value: number) => string;
}
