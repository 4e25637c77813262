import { readingLimit, shownReading } from '#core/electric/meter.ts';
import { fromCelsius } from '#core/material/material.ts';
import { isMaterialId, materials } from '#core/material/materials.ts';
import { HotWire } from '#core/thermal/hot-wire.ts';
import { stillRoom } from '#core/thermal/room.ts';
import { coldResistancePerMetre, ohmmeters, type OhmmeterId } from '#course/lesson/demo.ts';
import type { Watch } from '#course/lesson/schema.ts';
import type { LessonWork } from './lesson-work.svelte.ts';

export type MeasureLengthData = Extract<Watch, { demo: 'measure-length' }>;
export type MeasureRefusal = 'predict' | 'live' | 'plugged' | 'hot' | 'glasses';
export type Probes = 'apart' | 'together' | 'on-wire';

export const clipRange = { from: 100, to: 750 } as const;
const burnsFrom = fromCelsius(45);

/** A wire on a rule, a supply still at its ends, an ohmmeter: made safe first, then measured at several lengths. */
export class MeasureLength {
	readonly data: MeasureLengthData;
	readonly #work: LessonWork;
	readonly #wire: HotWire;
	/** Ω/m at 20 °C */
	readonly resistancePerMetre: number;

	isOn = $state(false);
	isPlugged = $state(true);
	hasGlasses = $state(false);
	/** stays true after switching off until a minute has been waited */
	isHot = $state(false);
	probes = $state<Probes>('apart');
	meter = $state<OhmmeterId>('MT');
	lengthMillimetres = $state(300);
	isHeld = $state(false);
	hasMovedLive = $state(false);
	refusal = $state<MeasureRefusal>();
	#flicker = $state<-1 | 0 | 1>(0);

	readonly current = $derived.by(() =>
		this.isOn ? this.data.voltage / (this.resistancePerMetre * (this.lengthMillimetres / 1000)) : 0,
	);
	/** steady temperature in K at this current; what the wire comes to while it is on */
	readonly temperature = $derived.by(() =>
		this.isOn ? this.#wire.temperatureAt(this.current).temperature : stillRoom.temperature,
	);
	/** what the display shows in Ω; undefined while the probes touch nothing */
	readonly reading = $derived.by(() => {
		if (this.probes === 'apart') return undefined;
		const wire = this.probes === 'together' ? 0 : this.resistancePerMetre * (this.lengthMillimetres / 1000);
		const meter = ohmmeters[this.meter];
		return Math.max(0, shownReading(meter, this.data.leads + wire + this.#flicker * meter.step));
	});
	readonly points = $derived.by(() => this.#work.readings.filter(({ x }) => x > 0));

	constructor(data: MeasureLengthData, work: LessonWork) {
		if (!isMaterialId(data.material)) throw new RangeError(`no such material: ${data.material}`);
		const material = materials[data.material];
		const diameter = data.diameterMillimetres / 1000;
		this.data = data;
		this.#work = work;
		this.#wire = new HotWire({ material, diameter }, stillRoom);
		this.resistancePerMetre = coldResistancePerMetre(material, diameter);
	}

	flick(): void {
		this.refusal = !this.isOn && !this.#work.isPredicted ? 'predict' : undefined;
		if (this.refusal !== undefined || (!this.isOn && !this.isPlugged)) return;
		this.hasMovedLive = false;
		if (this.isOn) this.#off();
		else {
			this.probes = 'apart';
			this.isOn = true;
		}
	}

	plug(isPlugged: boolean): void {
		if (!isPlugged) this.#off();
		if (isPlugged) this.probes = 'apart';
		this.isPlugged = isPlugged;
		this.refusal = undefined;
	}

	wear(hasGlasses: boolean): void {
		this.hasGlasses = hasGlasses;
		this.refusal = undefined;
	}

	waitAMinute(): void {
		this.isHot = false;
		this.refusal = undefined;
	}

	/** Puts the probes somewhere, or says what must be done first. */
	measure(probes: Probes): void {
		this.refusal = probes === 'apart' ? undefined : this.#whatIsMissing();
		if (this.refusal === undefined) this.probes = probes;
	}

	moveClip(lengthMillimetres: number): void {
		this.hasMovedLive = this.isOn;
		if (this.isOn) this.#off();
		this.lengthMillimetres = Math.round(Math.min(clipRange.to, Math.max(clipRange.from, lengthMillimetres)));
	}

	note(): void {
		if (this.reading === undefined) return;
		const x = this.probes === 'together' ? 0 : this.lengthMillimetres / 1000;
		this.#work.note({ x, y: this.reading, label: this.meter });
	}

	/** Lets the last digit move by a step, unless it is held. */
	flickerTo(steps: -1 | 0 | 1): void {
		if (!this.isHeld) this.#flicker = steps;
	}

	/** ± limit of a noted reading in Ω. */
	limitOf(reading: { readonly y: number; readonly label: string }): number {
		return readingLimit(reading.label === 'MH' ? ohmmeters.MH : ohmmeters.MT, reading.y);
	}

	#off(): void {
		if (this.isOn && this.temperature > burnsFrom) this.isHot = true;
		this.isOn = false;
	}

	#whatIsMissing(): MeasureRefusal | undefined {
		if (!this.#work.isPredicted) return 'predict';
		if (this.isOn) return 'live';
		if (this.isPlugged) return 'plugged';
		if (this.isHot) return 'hot';
		return this.hasGlasses ? undefined : 'glasses';
	}
}
