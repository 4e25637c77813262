import type { Leads, Protection, Supply } from '#core/electric/supply.ts';
import type { Meter } from '#core/electric/meter.ts';
import type { Material, MaterialId } from '#core/material/material.ts';
import { materialIds, materials } from '#core/material/materials.ts';
import { awgDiameter, swgDiameter } from '#core/quantity/gauge.ts';
import type { Amperes, Kelvin, Metres, MetresPerSecond, Volts } from '#core/quantity/unit.ts';
import type { Setup } from '#core/setup/setup.ts';
import { iceZero } from '#core/thermal/physical-constants.ts';
import { stillRoom } from '#core/thermal/room.ts';
import type { Cupboard, CupboardReel, CupboardSupply } from '#exercise/cupboard.ts';

/** What a person can wish for; the length of the wire follows, or is itself the wish. */
export type WishKind = 'length' | 'current' | 'resistance' | 'temperature' | 'power' | 'power-per-metre';
export interface BenchWish {
	readonly kind: WishKind;
	/** in m, A, Ω (hot), K, W or W/m */
	readonly value: number;
}

/** What stands on the bench, as plain data: labels of the cupboard, or `typed` with the values beside it. */
export interface BenchSettings {
	readonly supply: string;
	/** of a typed or adjustable supply */
	readonly voltage: Volts;
	readonly currentLimit: Amperes;
	readonly reel: string;
	/** of a typed reel */
	readonly material: MaterialId;
	readonly size: WireSize;
	readonly length: Metres;
	readonly leads: string;
	readonly meter: string;
	readonly roomTemperature: Kelvin;
	readonly draught: MetresPerSecond;
	/** what was touched last and stays fixed */
	readonly wish: BenchWish;
}

/** A wire's thickness as it was given: mm, or a gauge number. */
export interface WireSize {
	readonly system: 'mm' | 'awg' | 'swg';
	readonly value: number;
}

/** Stands for a supply or reel that is not in the cupboard. */
export const typed = 'typed';

/** The lengths the clip can be set to, in m. */
export const lengthRange = { from: 0.01, to: 10 } as const;

/** 0 °C in K, by the name the fields of the bench use. */
export const zeroCelsius = iceZero;

export const standardSettings: BenchSettings = {
	supply: 'P1',
	voltage: 12,
	currentLimit: 5,
	reel: 'R-40',
	material: 'nicr-80-20',
	size: { system: 'mm', value: 0.4 },
	length: 0.553,
	leads: 'LA',
	meter: 'MT',
	roomTemperature: 20 + zeroCelsius,
	draught: 0,
	wish: { kind: 'length', value: 0.553 },
};

export function diameterOf({ system, value }: WireSize): Metres {
	switch (system) {
		case 'mm':
			return value / 1000;
		case 'awg':
			return awgDiameter(value);
		case 'swg':
			return swgDiameter(value);
		default:
			return system satisfies never;
	}
}

/** The metal a reel of the cupboard is made of. */
export function materialOfReel({ designation, limitCelsius }: CupboardReel): Material {
	const id = materialIds.find((id) => materials[id].designation === designation);
	if (id === undefined) throw new RangeError(`no metal called ${designation}`);
	const material = materials[id];
	if (limitCelsius === undefined) return material;
	const key = `${id} to ${limitCelsius}`;
	const limited = limitedMaterials.get(key) ?? {
		...material,
		limit: { ...material.limit, value: limitCelsius + zeroCelsius },
	};
	limitedMaterials.set(key, limited);
	return limited;
}

// kept, because the curve of a heated wire is found again by its metal
const limitedMaterials = new Map<string, Material>();

export function sizeOfReel({ diameterMillimetres, gauge }: CupboardReel): WireSize {
	if (gauge === undefined) return { system: 'mm', value: diameterMillimetres };
	return { system: gauge.system === 'AWG' ? 'awg' : 'swg', value: gauge.number };
}

/** The limit of the voltage and the current a person may set here, or undefined where the supply is fixed. */
export function adjustableUpTo(
	cupboard: Cupboard,
	supply: string,
): { voltage: Volts; currentLimit: Amperes } | undefined {
	if (supply === typed) return { voltage: 24, currentLimit: 20 };
	const found = cupboard.supplies.find(({ id }) => id === supply);
	if (found?.voltageMaximum === undefined || found.protection.kind !== 'holds') return undefined;
	return { voltage: found.voltageMaximum, currentLimit: found.protection.limitMaximum };
}

/** The set-up these settings stand for. */
export function setupOf(settings: BenchSettings, cupboard: Cupboard): Setup {
	const reel = cupboard.reels.find(({ id }) => id === settings.reel);
	return {
		supply: supplyOf(settings, cupboard),
		wire: {
			material: reel === undefined ? materials[settings.material] : materialOfReel(reel),
			diameter: diameterOf(reel === undefined ? settings.size : sizeOfReel(reel)),
			length: settings.length,
		},
		leads: leadsOf(settings, cupboard),
		room: { ...stillRoom, temperature: settings.roomTemperature, draught: settings.draught },
	};
}

export function meterOf(settings: BenchSettings, cupboard: Cupboard): Meter {
	const found = cupboard.meters.find(({ id }) => id === settings.meter) ?? cupboard.meters[0];
	if (found === undefined) throw new RangeError('the cupboard has no meter');
	return { step: found.step, relativeLimit: found.limit.percent / 100, steps: found.limit.steps };
}

function leadsOf(settings: BenchSettings, cupboard: Cupboard): Leads {
	const found = cupboard.leads.find(({ id }) => id === settings.leads) ?? cupboard.leads[0];
	if (found === undefined) throw new RangeError('the cupboard has no leads');
	return { resistance: found.resistance, rating: found.rating };
}

function supplyOf({ supply, voltage, currentLimit }: BenchSettings, cupboard: Cupboard): Supply {
	const found = cupboard.supplies.find(({ id }) => id === supply);
	if (found === undefined) {
		return { openCircuitVoltage: voltage, internalResistance: 0, protection: { kind: 'holds', limit: currentLimit } };
	}
	const { charge, fuse } = found;
	return {
		openCircuitVoltage: found.voltageMaximum === undefined ? found.voltage : voltage,
		internalResistance: found.internalResistance,
		protection: protectionOf(found, currentLimit),
		...(fuse === undefined ? {} : { fuse: { rating: fuse } }),
		...(charge === undefined
			? {}
			: { charge: { capacity: charge.ampereHours * 3600, usableFraction: charge.usableFraction } }),
	};
}

function protectionOf({ protection }: CupboardSupply, limit: Amperes): Protection {
	switch (protection.kind) {
		case 'holds':
			return { kind: 'holds', limit };
		case 'retries':
		case 'latches':
		case 'none':
			return protection;
		default:
			return protection satisfies never;
	}
}
