import { shownReading, readingLimit } from '#core/electric/meter.ts';
import { loopCurrent } from '#core/electric/circuit.ts';
import { heldCurrent } from '#core/electric/supply.ts';
import type { Amperes, Kelvin, Metres, Ohms, Seconds, Volts, Watts, WattsPerMetre } from '#core/quantity/unit.ts';
import { heatCurve } from '#core/setup/heat-curve.ts';
import {
	operatingPoint,
	prospectiveCurrent,
	type OperatingPoint,
	type StateFact,
	type SupplyState,
} from '#core/setup/operating-point.ts';
import { seriesResistanceOf, type Setup } from '#core/setup/setup.ts';
import { solveWish, type WishProblem } from '#core/setup/solve.ts';
import { predictionUncertainty } from '#core/setup/uncertainty.ts';
import { burnThreshold, wireState, type WireState } from '#core/setup/wire-state.ts';
import { temperatureAfter } from '#core/thermal/warm-up.ts';
import type { MaterialId } from '#core/material/material.ts';
import type { Cupboard } from '#exercise/cupboard.ts';
import { refusalsOf, requiredChecks, type BenchCheck, type Refusal } from './refusal.ts';
import {
	adjustableUpTo,
	lengthRange,
	materialOfReel,
	meterOf,
	setupOf,
	sizeOfReel,
	standardSettings,
	typed,
	type BenchSettings,
	type BenchWish,
	type WireSize,
	type WishKind,
} from './settings.ts';

/** Why the supply is off although someone wanted it on. */
export type Halt =
	| { readonly code: 'refused'; readonly refusal: Refusal }
	| { readonly code: 'stopped'; readonly state: SupplyState; readonly fact: StateFact }
	| { readonly code: 'moved-live' }
	| { readonly code: 'changed-live' };

/** One line of the log. */
export interface Reading {
	readonly number: number;
	readonly time: Seconds;
	readonly length: Metres;
	readonly voltage: Volts;
	readonly current: Amperes;
	readonly power: Watts;
	readonly powerPerMetre: WattsPerMetre;
	readonly temperature: Kelvin;
	/** everything but the length; readings of one bench share it */
	readonly bench: string;
}

/** What the meters would show this moment. */
export interface Live {
	readonly current: Amperes;
	readonly postsVoltage: Volts;
	readonly resistance: Ohms;
	readonly power: Watts;
	readonly powerPerMetre: WattsPerMetre;
}

/** A bench with one supply, one wire and one switch; whoever shows it gives it the cupboard. */
export class Bench {
	readonly #cupboard: () => Cupboard;

	settings = $state.raw<BenchSettings>(standardSettings);
	isOn = $state(false);
	halt = $state.raw<Halt>();
	/** the wish that could not be met, until another is made */
	wishProblem = $state.raw<{ readonly wish: BenchWish; readonly problem: WishProblem }>();
	/** a kept wish the newest set-up cannot meet */
	released = $state.raw<BenchWish>();
	log = $state.raw<readonly Reading[]>([]);
	/** of the wire now */
	temperature = $state<Kelvin>(standardSettings.roomTemperature);
	timeOn = $state<Seconds>(0);
	/** 0 start, 1 one time constant, 2 settled; only where motion is not wanted */
	still = $state(2);
	#checksDone = $state.raw<readonly BenchCheck[]>([]);
	#stillFrom = $state<Kelvin>(standardSettings.roomTemperature);

	readonly setup: Setup = $derived.by(() => setupOf(this.settings, this.#cupboard()));
	/** where the loop settles with the supply on */
	readonly point: OperatingPoint = $derived(operatingPoint(this.setup));
	readonly uncertainty = $derived(predictionUncertainty(this.setup));
	readonly checks = $derived(requiredChecks(this.setup).map((id) => ({ id, isDone: this.#checksDone.includes(id) })));
	readonly refusals: readonly Refusal[] = $derived(refusalsOf(this.setup, this.point, this.checks));
	/** what the supply does, or would do while it is off; a battery without its fuse is refused a short */
	readonly forecast: { readonly state: SupplyState; readonly wouldPass: Amperes | null } = $derived.by(() => {
		const short = this.refusals.find(({ code }) => code === 'short');
		if (short?.code === 'short') return { state: 'refused-short', wouldPass: short.wouldPass };
		return { state: this.point.state, wouldPass: prospectiveCurrent(this.point) };
	});
	/** where the wire is heading */
	readonly target: Kelvin = $derived(this.isOn ? this.point.temperature : this.setup.room.temperature);
	readonly isMoving = $derived(Math.abs(this.temperature - this.target) > 0.25);
	readonly isHot = $derived(this.temperature >= burnThreshold);
	readonly live: Live = $derived.by(() => this.#liveAt(this.temperature));
	readonly supplyState: SupplyState = $derived.by(() => {
		if (this.isOn) return this.point.state;
		return this.halt?.code === 'stopped' ? this.halt.state : 'off';
	});
	readonly wireState: WireState = $derived(this.#wireStateAt(this.temperature));
	readonly adjustable = $derived.by(() => adjustableUpTo(this.#cupboard(), this.settings.supply));
	/** what the chosen ohmmeter shows across wire and leads, cold */
	readonly ohms = $derived.by(() => {
		const meter = meterOf(this.settings, this.#cupboard());
		const { wire, leads, room } = this.setup;
		const value = heatCurve(this.setup).resistancePerMetre(room.temperature) * wire.length + leads.resistance;
		const reading = shownReading(meter, value);
		return { reading, limit: readingLimit(meter, reading), step: meter.step };
	});

	/** @param start a set-up to begin with, and the bench checks that need not be done here */
	constructor(
		cupboard: () => Cupboard,
		start: { readonly settings?: BenchSettings; readonly checksDone?: readonly BenchCheck[] } = {},
	) {
		this.#cupboard = cupboard;
		this.#checksDone = start.checksDone ?? [];
		if (start.settings !== undefined) this.restore(start.settings);
	}

	get cupboard(): Cupboard {
		return this.#cupboard();
	}

	/** Puts a whole set-up on the bench, switched off and cold. */
	restore(settings: BenchSettings): void {
		this.settings = settings;
		this.isOn = false;
		this.halt = undefined;
		this.wishProblem = undefined;
		this.released = undefined;
		this.temperature = settings.roomTemperature;
		// the length follows the wish, whatever stood beside it
		this.#follow({});
	}

	/** Slides the clip; a live wire is switched off first. */
	setLength(length: Metres): void {
		this.#stop('moved-live');
		const within = Math.min(lengthRange.to, Math.max(lengthRange.from, length));
		this.wishProblem = undefined;
		this.released = undefined;
		this.#take({ length: within, wish: { kind: 'length', value: within } });
	}

	moveClip(byMillimetres: number): void {
		this.setLength(Math.round(this.settings.length * 1000 + byMillimetres) / 1000);
	}

	/** Finds the length that gives what is wished; where there is none, everything stays and the problem is kept. */
	wish(kind: WishKind, value: number): void {
		if (kind === 'length') {
			this.setLength(value);
			return;
		}
		const wish: BenchWish = { kind, value };
		const solved = solveWish(this.setup, wish);
		const problem = solved.ok ? undefined : solved.problems[0];
		const length = solved.ok ? solved.value.length : undefined;
		if (length === undefined || length < lengthRange.from || length > lengthRange.to) {
			this.wishProblem = { wish, problem: problem ?? lengthProblem(length ?? 0) };
			return;
		}
		this.#stop('moved-live');
		this.wishProblem = undefined;
		this.released = undefined;
		this.#take({ length, wish });
	}

	chooseSupply(supply: string): void {
		this.#stop('changed-live');
		this.#checksDone = this.#checksDone.filter((id) => id !== 'fuse');
		const most = adjustableUpTo(this.#cupboard(), supply);
		const { voltage, currentLimit } = this.settings;
		this.#follow({
			supply,
			voltage: Math.min(voltage, most?.voltage ?? voltage),
			currentLimit: Math.min(currentLimit, most?.currentLimit ?? currentLimit),
		});
	}

	/** May be turned while on: the wire then stays as long as it is. */
	setVoltage(voltage: Volts): void {
		this.#turn({ voltage });
	}

	setCurrentLimit(currentLimit: Amperes): void {
		this.#turn({ currentLimit });
	}

	/** A typed reel starts as a copy of the one on the bench. */
	chooseReel(reel: string): void {
		const found = this.cupboard.reels.find(({ id }) => id === this.settings.reel);
		const isCopied = reel === typed && found !== undefined;
		this.#exchangeWire(isCopied ? { reel, material: materialOfReel(found).id, size: sizeOfReel(found) } : { reel });
	}

	chooseMaterial(material: MaterialId): void {
		this.#exchangeWire({ material });
	}

	setSize(size: WireSize): void {
		this.#exchangeWire({ size });
	}

	chooseLeads(leads: string): void {
		this.#stop('changed-live');
		this.#follow({ leads });
	}

	chooseMeter(meter: string): void {
		this.#take({ meter });
	}

	setRoomTemperature(roomTemperature: Kelvin): void {
		const wasCold = !this.isOn && !this.isMoving;
		this.#turn({ roomTemperature });
		if (wasCold) this.temperature = roomTemperature;
	}

	setDraught(draught: number): void {
		this.#turn({ draught });
	}

	doCheck(id: BenchCheck): void {
		if (!this.#checksDone.includes(id)) this.#checksDone = [...this.#checksDone, id];
		if (this.halt?.code === 'refused' && this.refusals.length === 0) this.halt = undefined;
	}

	/** Switches on if nothing speaks against it; what trips or blows does so at once and says why. */
	switchOn(): void {
		const [refusal] = this.refusals;
		if (refusal !== undefined) {
			this.halt = { code: 'refused', refusal };
			return;
		}
		const { state, facts, current } = this.point;
		const [fact] = facts;
		if (current === 0 && fact !== undefined) {
			this.halt = { code: 'stopped', state, fact };
			return;
		}
		this.halt = undefined;
		this.isOn = true;
		this.timeOn = 0;
		this.#beginStills();
	}

	switchOff(): void {
		this.isOn = false;
		this.halt = undefined;
		this.#beginStills();
	}

	toggle(): void {
		if (this.isOn) this.switchOff();
		else this.switchOn();
	}

	/** Lets the wire warm or cool for a while, in true time. */
	advance(seconds: Seconds): void {
		if (this.isOn) this.timeOn += seconds;
		if (!this.isMoving) {
			this.temperature = this.target;
			return;
		}
		const next = temperatureAfter(
			heatCurve(this.setup),
			(resistancePerMetre) => this.#currentAt(resistancePerMetre * this.setup.wire.length),
			{ from: Math.max(this.temperature, this.setup.room.temperature), duration: seconds },
		);
		const { target } = this;
		const hasPassed = (this.temperature - target) * (next - target) < 0;
		this.temperature = hasPassed ? target : next;
	}

	/** Shows the next of three stills: start, one time constant, settled. */
	nextStill(): void {
		this.still = Math.min(2, this.still + 1);
		const share = this.still === 1 ? 1 - Math.exp(-1) : 1;
		this.temperature = this.#stillFrom + share * (this.target - this.#stillFrom);
	}

	noteIt(): void {
		if (!this.isOn) return;
		const { current, postsVoltage, power, powerPerMetre } = this.live;
		const { temperature, timeOn, settings } = this;
		this.log = [
			...this.log,
			{
				number: (this.log.at(-1)?.number ?? 0) + 1,
				time: timeOn,
				length: settings.length,
				voltage: postsVoltage,
				current,
				power,
				powerPerMetre,
				temperature,
				bench: this.benchKey,
			},
		];
	}

	clearLog(): void {
		this.log = [];
	}

	/** Everything but the length, as text to compare. */
	get benchKey(): string {
		const { supply, voltage, currentLimit, reel, material, size, leads, roomTemperature, draught } = this.settings;
		return JSON.stringify([supply, voltage, currentLimit, reel, material, size, leads, roomTemperature, draught]);
	}

	#beginStills(): void {
		this.#stillFrom = this.temperature;
		this.still = 0;
	}

	#take(patch: Partial<BenchSettings>): void {
		this.settings = { ...this.settings, ...patch };
		if (this.halt?.code === 'refused' || this.halt?.code === 'stopped') this.halt = undefined;
	}

	/** Changes the set-up and keeps the wish: the length follows, or stays where the wish cannot be met. */
	#follow(patch: Partial<BenchSettings>): void {
		const { wish } = this.settings;
		this.#take(patch);
		this.wishProblem = undefined;
		this.released = undefined;
		if (wish.kind === 'length') return;
		const solved = solveWish(this.setup, wish);
		const length = solved.ok ? solved.value.length : 0;
		if (length >= lengthRange.from && length <= lengthRange.to) {
			this.#take({ length });
			return;
		}
		this.released = wish;
		this.#take({ wish: { kind: 'length', value: this.settings.length } });
	}

	#turn(patch: Partial<BenchSettings>): void {
		if (!this.isOn) {
			this.#follow(patch);
			return;
		}
		this.#take({ ...patch, wish: { kind: 'length', value: this.settings.length } });
		const [refusal] = this.refusals;
		const [fact] = this.point.facts;
		if (refusal !== undefined) this.halt = { code: 'refused', refusal };
		else if (this.point.current === 0 && fact !== undefined) {
			this.halt = { code: 'stopped', state: this.point.state, fact };
		} else return;
		this.isOn = false;
		this.#beginStills();
	}

	/** A fresh piece of wire is cold. */
	#exchangeWire(patch: Partial<BenchSettings>): void {
		this.#stop('changed-live');
		this.#follow(patch);
		this.temperature = this.settings.roomTemperature;
	}

	#stop(code: 'moved-live' | 'changed-live'): void {
		if (!this.isOn) {
			if (this.halt?.code === 'moved-live' || this.halt?.code === 'changed-live') this.halt = undefined;
			return;
		}
		this.isOn = false;
		this.halt = { code };
		this.#beginStills();
	}

	#liveAt(temperature: Kelvin): Live {
		const { length } = this.setup.wire;
		const resistancePerMetre = heatCurve(this.setup).resistancePerMetre(temperature);
		const current = this.#currentAt(resistancePerMetre * length);
		const powerPerMetre = current ** 2 * resistancePerMetre;
		const resistance = resistancePerMetre * length;
		return { current, postsVoltage: current * resistance, resistance, power: powerPerMetre * length, powerPerMetre };
	}

	/** What flows through a wire of this resistance now. */
	#currentAt(loadResistance: Ohms): Amperes {
		if (!this.isOn) return 0;
		const { supply } = this.setup;
		const asked = loopCurrent({
			sourceVoltage: supply.openCircuitVoltage,
			seriesResistance: seriesResistanceOf(this.setup),
			loadResistance,
		});
		return Math.min(asked, heldCurrent(supply) ?? Infinity);
	}

	#wireStateAt(temperature: Kelvin): WireState {
		const { wire, room } = this.setup;
		const limit = wire.material.limit.value;
		return wireState({
			temperature,
			roomTemperature: room.temperature,
			limit,
			melting: wire.material.melting.from,
			isInRange: true,
		});
	}
}

function lengthProblem(length: Metres): WishProblem {
	const { from: least, to: most } = lengthRange;
	return length < least ? { code: 'too-short', length, least } : { code: 'too-long', length, most };
}
