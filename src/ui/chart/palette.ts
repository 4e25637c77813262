import type { ChartMark } from './view.ts';

export interface MarkStyle {
	readonly token: string;
	readonly dash: readonly number[];
	readonly marker: 'circle' | 'rect' | 'triangle' | 'rectRot' | 'crossRot';
	readonly isFilled: boolean;
}

/** Identity is dash and marker first, colour last; pencil's dash and hollow marker are its own. */
export const markStyles = {
	pencil: { token: '--pencil', dash: [6, 4], marker: 'circle', isFilled: false },
	ink: { token: '--ink', dash: [], marker: 'circle', isFilled: true },
	'series-1': { token: '--series-1', dash: [], marker: 'circle', isFilled: true },
	'series-2': { token: '--series-2', dash: [10, 4], marker: 'rect', isFilled: true },
	'series-3': { token: '--series-3', dash: [2, 4], marker: 'triangle', isFilled: true },
	'series-4': { token: '--series-4', dash: [10, 4, 2, 4], marker: 'rectRot', isFilled: true },
	'series-5': { token: '--series-5', dash: [16, 6], marker: 'crossRot', isFilled: true },
} as const satisfies Record<ChartMark, MarkStyle>;

/** The colour a token has on this canvas now; the browser resolves themes and forced colours for us. */
export function tokenColour(canvas: HTMLCanvasElement, token: string): string {
	canvas.style.color = `var(${token})`;
	const colour = getComputedStyle(canvas).color;
	canvas.style.color = '';
	return colour;
}
