import { diameterRange, roomRange, withLength, type Setup } from './setup.ts';

/** A set-up with the one thing that is no part of it: how much more heat the wire loses than reckoned. */
export interface Model {
	readonly setup: Setup;
	/** heat lost over heat lost by the formulas, 1 when they are right */
	readonly heatFactor: number;
}

export type InputName =
	'resistance-per-metre' | 'diameter' | 'emissivity' | 'heat-model' | 'voltage' | 'current-limit' | 'length' | 'room';

/** A quantity a prediction rests on. */
export interface UncertainInput {
	readonly name: InputName;
	/** in the unit of `value` */
	readonly standardUncertainty: number;
	readonly value: number;
	readonly shape: 'rectangular' | 'normal';
	/** ends of what the formulas take; a shift stops there */
	readonly range: { readonly from: number; readonly to: number };
	readonly shifted: (model: Model, by: number) => Model;
}

/**
 * Limits of what is not on any label: ± of the diameter and of the set voltage and current as fractions, of the
 * length in m, of the room in K. Common practice, no source.
 */
export const usualLimits = { diameter: 0.01, voltage: 0.01, currentLimit: 0.01, length: 0.001, room: 2 } as const;

/**
 * Standard uncertainty of the heat loss by the formulas, as a fraction, for a clean long level wire in still air.
 * Found by comparing with 170 currents of resistance-wire tables: 7.1 % in heat loss.
 */
export const heatModelUncertainty = 0.07;

/** Standard uncertainty of a value known only to lie within ± a limit: limit/√3 (JCGM 100:2008, 4.3.7, from memory). */
export function rectangular(limit: number): number {
	return limit / Math.sqrt(3);
}

/**
 * What a prediction rests on, each independent of the others. The limit of a reel's resistance per metre already holds
 * that of its diameter; a changed diameter therefore keeps R′ and changes the surface alone.
 */
export function uncertainInputs(setup: Setup): readonly UncertainInput[] {
	const { supply, wire, room } = setup;
	const { resistivity, emissivity } = wire.material;
	const { min, max, value } = emissivity.oxidised;
	const limit = supply.protection.kind === 'holds' ? supply.protection.limit : 0;
	const free = { from: -Infinity, to: Infinity };
	const inputs: readonly UncertainInput[] = [
		limited('resistance-per-metre', 1, resistivity.tolerance, free, (model, by) => withResistivity(model, 1 + by)),
		limited('diameter', wire.diameter, usualLimits.diameter * wire.diameter, diameterRange, withDiameter),
		limited('emissivity', wire.emissivity ?? value, (max - min) / 2, { from: 0, to: 1 }, (model, by) =>
			withWire(model, { emissivity: (wire.emissivity ?? value) + by }),
		),
		{
			name: 'heat-model',
			value: 1,
			standardUncertainty: heatModelUncertainty,
			shape: 'normal',
			range: { from: 0.5, to: 2 },
			shifted: (model, by) => ({ ...model, heatFactor: model.heatFactor + by }),
		},
		limited('voltage', supply.openCircuitVoltage, usualLimits.voltage * supply.openCircuitVoltage, free, withVoltage),
		limited('current-limit', limit, usualLimits.currentLimit * limit, free, withCurrentLimit),
		limited('length', wire.length, usualLimits.length, { from: 1e-4, to: Infinity }, ({ setup: of, ...model }, by) => ({
			...model,
			setup: withLength(of, of.wire.length + by),
		})),
		limited('room', room.temperature, usualLimits.room, roomRange, (model, by) => ({
			...model,
			setup: { ...model.setup, room: { ...model.setup.room, temperature: model.setup.room.temperature + by } },
		})),
	];
	return inputs.filter(({ standardUncertainty }) => standardUncertainty > 0);
}

/** A shift cut off where it would leave the range of its input. */
export function withinRange({ value, range }: UncertainInput, by: number): number {
	return Math.min(range.to - value, Math.max(range.from - value, by));
}

function limited(
	name: InputName,
	value: number,
	limit: number,
	range: UncertainInput['range'],
	shifted: UncertainInput['shifted'],
): UncertainInput {
	return { name, value, standardUncertainty: rectangular(limit), shape: 'rectangular', range, shifted };
}

function withWire(model: Model, change: Partial<Setup['wire']>): Model {
	return { ...model, setup: { ...model.setup, wire: { ...model.setup.wire, ...change } } };
}

function withResistivity(model: Model, factor: number): Model {
	const { material } = model.setup.wire;
	const resistivity = { ...material.resistivity, value: material.resistivity.value * factor };
	return withWire(model, { material: { ...material, resistivity } });
}

function withDiameter(model: Model, by: number): Model {
	const { diameter } = model.setup.wire;
	const changed = withWire(model, { diameter: diameter + by });
	return withResistivity(changed, ((diameter + by) / diameter) ** 2);
}

function withVoltage(model: Model, by: number): Model {
	const { supply } = model.setup;
	const openCircuitVoltage = supply.openCircuitVoltage + by;
	return { ...model, setup: { ...model.setup, supply: { ...supply, openCircuitVoltage } } };
}

function withCurrentLimit(model: Model, by: number): Model {
	const { supply } = model.setup;
	if (supply.protection.kind !== 'holds') return model;
	const protection = { ...supply.protection, limit: supply.protection.limit + by };
	return { ...model, setup: { ...model.setup, supply: { ...supply, protection } } };
}
