/** One scale of a chart: letter, name and unit, as they stand beside it, and where it ends; every scale starts at zero. */
export interface ChartAxis {
	readonly letter: string;
	readonly name: string;
	readonly unit: string;
	readonly max: number;
	/** writes a value of this axis with its unit, for the table and for reading aloud */
	readonly write: (value: number) => string;
}

export interface ChartPoint {
	readonly x: number;
	readonly y: number;
}

/** Pencil is expected, ink is worked out or measured; numbered series keep the order of the palette. */
export type ChartMark = 'pencil' | 'ink' | 'series-1' | 'series-2' | 'series-3' | 'series-4' | 'series-5';

/** A line, or loose points when `joined` is false. */
export interface ChartSeries {
	readonly id: string;
	readonly name: string;
	readonly mark: ChartMark;
	readonly joined: boolean;
	readonly points: readonly ChartPoint[];
}

/** Where the loop stands now: ember while current flows, pencil while it is only expected. */
export interface ChartOperatingPoint extends ChartPoint {
	readonly isLive: boolean;
}

/** A stretch of the horizontal scale that is not allowed, hatched and named. */
export interface ChartBand {
	readonly from: number;
	readonly to: number;
	readonly label: string;
}

/** Everything a line chart shows. */
export interface ChartView {
	readonly x: ChartAxis;
	readonly y: ChartAxis;
	readonly series: readonly ChartSeries[];
	readonly operatingPoint?: ChartOperatingPoint;
	readonly bands?: readonly ChartBand[];
	/** a level across the chart, such as a ceiling */
	readonly levels?: readonly { readonly y: number; readonly label: string }[];
}

/** The next round number at or above a value: 1, 2, 2.5, 4, 5, 6, 8 times a power of ten. */
export function roundedUp(value: number): number {
	if (!(value > 0) || !Number.isFinite(value)) return 1;
	const decade = 10 ** Math.floor(Math.log10(value));
	const step = [1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10].find((step) => step * decade >= value * (1 - 1e-9)) ?? 10;
	return step * decade;
}
