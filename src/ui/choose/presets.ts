import { zeroCelsius } from '#ui/bench/settings.ts';
import { anySupply, type BriefSettings } from './brief.ts';

/** Three briefs to start from. */
export const presets = {
	foamBow: {
		aim: 'temperature',
		from: 250 + zeroCelsius,
		to: 350 + zeroCelsius,
		shortest: 0.42,
		longest: 0.44,
		runTime: 45 * 60,
		room: 20 + zeroCelsius,
		supply: 'P4',
	},
	// 400 bags of 3 s each: 20 min of current in all
	sealingBar: {
		aim: 'power-per-metre',
		from: 95,
		to: 125,
		shortest: 0.22,
		longest: 0.22,
		runTime: 400 * 3,
		room: 20 + zeroCelsius,
		supply: 'P4',
	},
	// the lesson asks for 420 °C; the band of 20 K to either side is our choice
	cordTip: {
		aim: 'temperature',
		from: 400 + zeroCelsius,
		to: 440 + zeroCelsius,
		shortest: 0.06,
		longest: 0.06,
		room: 20 + zeroCelsius,
		supply: anySupply,
	},
} as const satisfies Record<string, BriefSettings>;

export type PresetName = keyof typeof presets;
export const presetNames = ['foamBow', 'sealingBar', 'cordTip'] as const satisfies readonly PresetName[];
