import { materials } from '#core/material/materials.ts';
import { operatingPoint } from '#core/setup/operating-point.ts';
import type { Setup } from '#core/setup/setup.ts';
import { predictionUncertainty } from '#core/setup/uncertainty.ts';
import type { Volts } from '#core/quantity/unit.ts';
import { glowHue, glowStrength, glowThreshold, type RoomLight } from '#core/thermal/glow.ts';
import { heatBand, hotFrom } from '#core/thermal/heat-band.ts';
import { iceZero } from '#core/thermal/physical-constants.ts';
import { stillRoom } from '#core/thermal/room.ts';
import { sagOfLengthenedWire, thermalGrowth } from '#core/thermal/sag.ts';

const material = materials['nicr-80-20'];

/** The wire of the front page on a bench supply that holds 5 A; only its voltage can be turned. */
export class FrontWire {
	readonly wire = { material, diameter: 0.0004, length: 0.3 } as const;
	readonly highest: Volts = 12;
	voltage: Volts = $state(11);
	readonly #light: () => RoomLight;

	readonly #setup = $derived<Setup>({
		supply: {
			openCircuitVoltage: this.voltage,
			internalResistance: 0,
			protection: { kind: 'holds', limit: 5 },
		},
		wire: this.wire,
		leads: { resistance: 0.035, rating: 10 },
		room: stillRoom,
	});
	readonly point = $derived(operatingPoint(this.#setup));
	readonly celsius = $derived(this.point.temperature - iceZero);
	/** twice the standard uncertainty of the temperature, in K; 0 for a wire without current */
	readonly spread = $derived(predictionUncertainty(this.#setup)?.temperature.expandedUncertainty ?? 0);
	readonly isHot = $derived(this.point.temperature >= hotFrom);
	readonly band = $derived.by(() =>
		heatBand(this.point.temperature, { limit: material.limit.value, light: this.#light() }),
	);
	/** depth of the sag in the middle, in m */
	readonly sag = $derived.by(() => {
		const rise = Math.max(0, this.point.temperature - stillRoom.temperature);
		const growth = thermalGrowth({ length: this.wire.length, expansion: material.expansion.value, rise });
		return sagOfLengthenedWire({ length: this.wire.length, growth });
	});
	/** colour of the glow and how strongly it is seen, 0…1 */
	readonly glow = $derived.by(() => {
		const { temperature } = this.point;
		if (temperature < glowThreshold[this.#light()]) return { colour: 'none', strength: 0 };
		const [red, green, blue] = glowHue(temperature, { pale: true });
		return { colour: `rgb(${red} ${green} ${blue})`, strength: glowStrength(temperature) };
	});

	constructor(light: () => RoomLight) {
		this.#light = light;
	}

	/** Turns the voltage by this much, within what the supply has. */
	turn(by: Volts): void {
		this.voltage = Math.min(this.highest, Math.max(0, Math.round((this.voltage + by) * 10) / 10));
	}
}
