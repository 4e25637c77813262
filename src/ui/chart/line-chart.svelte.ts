import type { Chart, ChartOptions, Point } from 'chart.js';
import type { Attachment } from 'svelte/attachments';
import { dataset, marksPlugin } from './marks.ts';
import { tokenColour } from './palette.ts';
import type { ChartAxis, ChartPoint, ChartView } from './view.ts';

/** What the chart reads afresh whenever it changes. */
export interface LineChartSource {
	readonly view: () => ChartView;
	/** the point a reader has stepped to */
	readonly reading: () => ChartPoint | undefined;
	/** touched so that a change of theme or view redraws the canvas */
	readonly appearance: () => string;
	readonly onfailure: () => void;
	/** called with the value along the horizontal axis that was tapped */
	readonly onpick: (x: number) => void;
}

/** Keeps a Chart.js line chart on a canvas; the library is fetched only where a chart is shown. */
export function lineChart({
	view,
	reading,
	appearance,
	onfailure,
	onpick,
}: LineChartSource): Attachment<HTMLCanvasElement> {
	return (canvas) => {
		let chart = $state.raw<Chart<'line', Point[]>>();
		let isRemoved = false;
		const lineWidth = () => (document.documentElement.dataset['view'] === 'wall' ? 4 : 2.25);
		void import('./registered.ts').then(({ Chart: LineChart }) => {
			if (isRemoved) return;
			chart = new LineChart(canvas, {
				type: 'line',
				data: { datasets: [] },
				plugins: [marksPlugin(view, reading, lineWidth)],
			});
		}, onfailure);
		// Chart.js draws outside Svelte
		$effect(() => {
			appearance();
			reading();
			const { series, x, y } = view();
			if (chart === undefined) return;
			chart.data = { datasets: series.map((one) => dataset(canvas, one, lineWidth())) };
			chart.options = options(canvas, x, y);
			chart.update('none');
		});
		const pick = (event: MouseEvent) => {
			const value = chart?.scales['x']?.getValueForPixel(event.offsetX);
			if (value !== undefined) onpick(value);
		};
		canvas.addEventListener('click', pick);
		return () => {
			isRemoved = true;
			canvas.removeEventListener('click', pick);
			chart?.destroy();
		};
	};
}

function options(canvas: HTMLCanvasElement, x: ChartAxis, y: ChartAxis): ChartOptions<'line'> {
	const { fontSize, fontFamily } = getComputedStyle(canvas);
	const size = Number.parseFloat(fontSize);
	const scale = (axis: ChartAxis, count: number) => ({
		type: 'linear' as const,
		min: 0,
		max: axis.max,
		border: { color: tokenColour(canvas, '--edge'), width: 1.5 },
		grid: { color: tokenColour(canvas, '--rule'), tickColor: tokenColour(canvas, '--edge'), lineWidth: 1 },
		ticks: {
			color: tokenColour(canvas, '--ink-2'),
			font: { size, family: fontFamily },
			maxTicksLimit: count,
			maxRotation: 0,
			format: { useGrouping: false },
		},
	});
	return {
		animation: false,
		responsive: true,
		maintainAspectRatio: false,
		parsing: false,
		normalized: true,
		events: [],
		layout: { padding: { top: 8, right: 12 } },
		scales: { x: scale(x, 7), y: scale(y, 6) },
	};
}
