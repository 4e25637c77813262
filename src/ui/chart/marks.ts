import type { Chart, ChartDataset, Plugin, Point } from 'chart.js';
import { markStyles, tokenColour } from './palette.ts';
import type { ChartBand, ChartPoint, ChartSeries, ChartView } from './view.ts';

/** One of our series in the form Chart.js draws. */
export function dataset(
	canvas: HTMLCanvasElement,
	{ name, mark, joined, points }: ChartSeries,
	lineWidth: number,
): ChartDataset<'line', Point[]> {
	const style = markStyles[mark];
	const colour = tokenColour(canvas, style.token);
	return {
		label: name,
		data: points.map(({ x, y }) => ({ x, y })),
		showLine: joined,
		// a measured point on the edge of the scale is drawn whole
		...(joined ? {} : { clip: false as const }),
		borderColor: colour,
		// the projector's thicker lines need longer dashes: 18 10 for pencil
		borderDash: style.dash.map((part) => part * (lineWidth > 3 ? 3 : 1)),
		borderWidth: lineWidth,
		pointStyle: style.marker,
		pointRadius: joined ? 0 : 5,
		pointBackgroundColor: style.isFilled ? colour : tokenColour(canvas, '--sheet'),
		pointBorderColor: colour,
		pointBorderWidth: 2,
	};
}

/** Draws what Chart.js has no shape for: forbidden stretches, levels, the operating point and the point being read. */
export function marksPlugin(
	view: () => ChartView,
	reading: () => ChartPoint | undefined,
	lineWidth: () => number,
): Plugin<'line'> {
	return {
		id: 'marks',
		beforeDatasetsDraw: (chart) => {
			for (const band of view().bands ?? []) drawBand(chart, band);
		},
		afterDatasetsDraw: (chart) => {
			for (const level of view().levels ?? []) drawLevel(chart, level);
			drawOperatingPoint(chart, view(), lineWidth());
			const point = reading();
			if (point !== undefined) drawReading(chart, point);
		},
	};
}

function place(chart: Chart<'line'>, { x, y }: ChartPoint): ChartPoint {
	const across = chart.scales['x'];
	const up = chart.scales['y'];
	return { x: across?.getPixelForValue(x) ?? 0, y: up?.getPixelForValue(y) ?? 0 };
}

function drawBand(chart: Chart<'line'>, { from, to, label }: ChartBand): void {
	const { ctx, chartArea, canvas } = chart;
	const left = Math.max(chartArea.left, place(chart, { x: from, y: 0 }).x);
	const right = Math.min(chartArea.right, place(chart, { x: to, y: 0 }).x);
	if (right - left < 1) return;
	ctx.save();
	ctx.beginPath();
	ctx.rect(left, chartArea.top, right - left, chartArea.height);
	ctx.clip();
	ctx.strokeStyle = tokenColour(canvas, '--edge');
	ctx.lineWidth = 1;
	ctx.beginPath();
	for (let x = left - chartArea.height; x < right; x += 9) {
		ctx.moveTo(x, chartArea.bottom);
		ctx.lineTo(x + chartArea.height, chartArea.top);
	}
	ctx.stroke();
	ctx.restore();
	ctx.save();
	ctx.strokeStyle = tokenColour(canvas, '--ink');
	ctx.lineWidth = 1.5;
	ctx.beginPath();
	ctx.moveTo(right, chartArea.top);
	ctx.lineTo(right, chartArea.bottom);
	ctx.stroke();
	ctx.restore();
	ctx.font = canvasFont(canvas);
	const isWide = right + ctx.measureText(label).width + 16 > chartArea.right;
	const top = chartArea.top + 0.8 * Number.parseFloat(getComputedStyle(canvas).fontSize);
	drawLabel(chart, label, { x: (isWide ? left : right) + 6, y: top });
}

function drawLevel(chart: Chart<'line'>, { y, label }: { readonly y: number; readonly label: string }): void {
	const { ctx, chartArea, canvas } = chart;
	const height = place(chart, { x: 0, y }).y;
	if (height < chartArea.top || height > chartArea.bottom) return;
	ctx.save();
	ctx.strokeStyle = tokenColour(canvas, '--ink');
	ctx.lineWidth = 1.5;
	ctx.setLineDash([2, 3]);
	ctx.beginPath();
	ctx.moveTo(chartArea.left, height);
	ctx.lineTo(chartArea.right, height);
	ctx.stroke();
	ctx.restore();
	const below = height - chartArea.top < 20;
	drawLabel(chart, label, { x: chartArea.right - 6, y: below ? height + 12 : height - 10 }, 'right');
}

function drawLabel(chart: Chart<'line'>, label: string, at: ChartPoint, align: 'left' | 'right' = 'left'): void {
	const { ctx, canvas } = chart;
	ctx.save();
	ctx.font = canvasFont(canvas);
	ctx.textAlign = align;
	ctx.textBaseline = 'middle';
	ctx.lineJoin = 'round';
	ctx.lineWidth = 5;
	ctx.strokeStyle = tokenColour(canvas, '--sheet');
	ctx.strokeText(label, at.x, at.y);
	ctx.fillStyle = tokenColour(canvas, '--ink-2');
	ctx.fillText(label, at.x, at.y);
	ctx.restore();
}

function drawOperatingPoint(chart: Chart<'line'>, { operatingPoint }: ChartView, lineWidth: number): void {
	if (operatingPoint === undefined) return;
	const { ctx, chartArea, canvas } = chart;
	const { x, y } = place(chart, operatingPoint);
	if (x < chartArea.left - 1 || x > chartArea.right + 1 || y < chartArea.top - 1) return;
	const colour = tokenColour(canvas, operatingPoint.isLive ? '--ember' : '--pencil');
	ctx.save();
	ctx.strokeStyle = colour;
	ctx.lineWidth = Math.max(1.5, lineWidth * 0.75);
	ctx.setLineDash(operatingPoint.isLive ? [] : lineWidth > 3 ? [18, 10] : [6, 4]);
	ctx.beginPath();
	ctx.moveTo(x, chartArea.bottom);
	ctx.lineTo(x, y);
	ctx.lineTo(chartArea.left, y);
	ctx.stroke();
	ctx.setLineDash([]);
	ctx.lineWidth = lineWidth;
	ctx.fillStyle = operatingPoint.isLive ? colour : tokenColour(canvas, '--sheet');
	ctx.beginPath();
	ctx.arc(x, y, 3 + lineWidth, 0, 2 * Math.PI);
	ctx.fill();
	ctx.stroke();
	ctx.restore();
}

function drawReading(chart: Chart<'line'>, point: ChartPoint): void {
	const { ctx, chartArea, canvas } = chart;
	const { x, y } = place(chart, point);
	if (y < chartArea.top - 1) return;
	ctx.save();
	ctx.strokeStyle = tokenColour(canvas, '--link');
	ctx.lineWidth = 2;
	ctx.strokeRect(x - 7, y - 7, 14, 14);
	ctx.restore();
}

/** The page's own face at its note size, so that canvas lettering follows theme, view and zoom. */
export function canvasFont(canvas: HTMLCanvasElement): string {
	const { fontSize, fontFamily } = getComputedStyle(canvas);
	return `${fontSize} ${fontFamily}`;
}
