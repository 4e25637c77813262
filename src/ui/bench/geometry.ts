import type { Metres } from '#core/quantity/unit.ts';

/** The spans the rule can show, in mm. */
export const viewSteps = [300, 600, 1200] as const;
export type ViewStep = (typeof viewSteps)[number];

/** The drawing's measures in CSS pixels. */
export interface Frame {
	readonly width: number;
	readonly height: number;
}

const margin = { left: 40, right: 44 } as const;

/** Where everything on the drawing stands. Along the wire it is to scale: `perMillimetre` px for each mm. */
export interface Geometry {
	readonly perMillimetre: number;
	readonly left: number;
	readonly clip: number;
	readonly right: number;
	readonly tileTop: number;
	readonly tileBottom: number;
	readonly wireHeight: number;
	readonly ruleTop: number;
	/** mm of wire that one drawn square stands for */
	readonly square: 10 | 50;
	readonly isBroken: boolean;
}

/** The smallest span that holds the wire, not below the one asked for. */
export function viewFor(length: Metres, asked: ViewStep): ViewStep {
	return viewSteps.find((step) => step >= asked && step >= length * 1000 - 1e-6) ?? 1200;
}

export function geometryOf(frame: Frame, view: ViewStep, length: Metres): Geometry {
	const right = frame.width - margin.right;
	const perMillimetre = (right - margin.left) / view;
	const isBroken = length * 1000 > view + 1e-6;
	const ruleTop = frame.height - 54;
	return {
		perMillimetre,
		left: margin.left,
		clip: isBroken ? right : margin.left + length * 1000 * perMillimetre,
		right,
		tileTop: 12,
		tileBottom: ruleTop - 8,
		wireHeight: frame.height < 240 ? 56 : 70,
		ruleTop,
		square: perMillimetre * 10 >= 5 ? 10 : 50,
		isBroken,
	};
}

/** Every tick of the rule: short each 10 mm, middling each 50, long and lettered each 100. */
export function ticks(
	view: ViewStep,
	perMillimetre: number,
): readonly { at: number; size: 'short' | 'middle' | 'long' }[] {
	const step = perMillimetre * 10 >= 4 ? 10 : 50;
	return Array.from({ length: view / step + 1 }, (_, index) => {
		const at = index * step;
		return { at, size: at % 100 === 0 ? 'long' : at % 50 === 0 ? 'middle' : 'short' };
	});
}

/** Spacing of the lettered ticks in mm, so that figures never touch. */
export function letteredEvery(perMillimetre: number): number {
	return [50, 100, 200, 300, 400].find((step) => step * perMillimetre >= 44) ?? 600;
}

/** CSS pixels in a millimetre of the screen, by the definition of the CSS inch. */
export const pixelsPerMillimetre = 96 / 25.4;

/** How much the lens enlarges: 20 times, or less for a wire that would not fit. */
export function lensRatio(diameter: Metres, radius: number): number {
	return [20, 10, 5].find((ratio) => diameter * 1000 * ratio * pixelsPerMillimetre <= radius * 1.9) ?? 2;
}
