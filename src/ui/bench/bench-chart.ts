import { writeNumber } from '#core/quantity/write.ts';
import { sweepLength, type SweepPoint } from '#core/setup/sweep.ts';
import type { Setup } from '#core/setup/setup.ts';
import { roundedUp, type ChartAxis, type ChartBand, type ChartPoint, type ChartView } from '#ui/chart/view.ts';
import { text } from '#ui/text/en.ts';
import type { Bench } from './bench.svelte.ts';
import { viewFor } from './geometry.ts';
import { zeroCelsius } from './settings.ts';
import { lengthScale } from './words.ts';

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
	const most = Math.max(here.y, ...line.map(({ y }) => y));
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
			operatingPoint: { ...here, isLive: bench.isOn && bench.live.current > 0 },
			bands,
		},
		summary: summaryOf(line, here, write, writeLength),
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

/** Index of the longest wire that is over a limit: too hot, or the supply acts; −1 when none is. */
function lastForbidden(points: readonly SweepPoint[], limit: number): number {
	return points.findLastIndex(
		({ temperature, state }) => temperature > limit || (state !== 'on' && state !== 'holding-limit'),
	);
}

function summaryOf(
	line: readonly ChartPoint[],
	here: ChartPoint,
	write: (value: number) => string,
	writeLength: (value: number) => string,
): string {
	const [first] = line;
	const last = line.at(-1);
	if (first === undefined || last === undefined) return words.nothing;
	const highest = line.reduce((most, point) => (point.y > most.y * (1 + 1e-9) ? point : most), first);
	const from = highest === last ? first : highest;
	const sentence = last.y < from.y ? words.falls : words.rises;
	const told = sentence(write(from.y), write(last.y), writeLength(from.x), writeLength(last.x));
	return `${told} ${words.here(writeLength(here.x), write(here.y))}`;
}
