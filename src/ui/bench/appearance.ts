import type { Kelvin, Metres } from '#core/quantity/unit.ts';
import type { Setup } from '#core/setup/setup.ts';
import { burnThreshold } from '#core/setup/wire-state.ts';
import { glowHue, glowStrength, glowThreshold, type RoomLight } from '#core/thermal/glow.ts';
import { sagOfLengthenedWire, thermalGrowth } from '#core/thermal/sag.ts';

/** How a wire looks at a temperature: all of it computed. */
export interface Appearance {
	/** depth of the middle below the posts */
	readonly sag: Metres;
	/** colour of the glow for a style sheet */
	readonly hue: string;
	/** 0 where this room hides the glow, up to 1 */
	readonly strength: number;
	readonly isHot: boolean;
}

export function appearanceOf({ wire, room }: Setup, temperature: Kelvin, light: RoomLight): Appearance {
	const rise = Math.max(0, temperature - room.temperature);
	const growth = thermalGrowth({ length: wire.length, expansion: wire.material.expansion.value, rise });
	const isSeen = temperature >= glowThreshold[light];
	return {
		sag: sagOfLengthenedWire({ length: wire.length, growth }),
		hue: isSeen ? `rgb(${glowHue(temperature, { pale: true }).join(' ')})` : 'none',
		strength: isSeen ? Math.max(0.08, glowStrength(temperature)) : 0,
		isHot: temperature >= burnThreshold,
	};
}
