import { fail, succeed, type Outcome } from '#core/outcome.ts';
import { isMaterialId } from '#core/material/materials.ts';
import type { Cupboard } from '#exercise/cupboard.ts';
import {
	adjustableUpTo,
	lengthRange,
	standardSettings,
	typed,
	zeroCelsius,
	type BenchSettings,
	type BenchWish,
	type WireSize,
	type WishKind,
} from './settings.ts';

/** Why an address gave no bench: told in one sentence, and the standard set-up stands instead. */
export type AddressProblem =
	| { readonly code: 'version'; readonly found: string }
	| { readonly code: 'part'; readonly part: AddressPart; readonly found: string };

export type AddressPart =
	| 'supply'
	| 'voltage'
	| 'limit'
	| 'reel'
	| 'alloy'
	| 'size'
	| 'length'
	| 'leads'
	| 'meter'
	| 'room'
	| 'draught'
	| 'kept';

const version = '1';
const wishes = {
	l: { kind: 'length', factor: 1000 },
	i: { kind: 'current', factor: 1 },
	r: { kind: 'resistance', factor: 1 },
	t: { kind: 'temperature', factor: 1 },
	p: { kind: 'power', factor: 1 },
	q: { kind: 'power-per-metre', factor: 1 },
} as const satisfies Record<string, { kind: WishKind; factor: number }>;

/** The bench as the query of an address, starting with `?`; lengths in mm, temperatures in °C. */
export function writeAddress(settings: BenchSettings): string {
	const { supply, reel, size, wish } = settings;
	const parts: (readonly [string, string])[] = [
		['v', version],
		['s', supply],
		['u', short(settings.voltage)],
		['i', short(settings.currentLimit)],
		['w', reel],
		...(reel === typed
			? ([
					['m', settings.material],
					['d', `${size.system}${short(size.value)}`],
				] as const)
			: []),
		['l', short(settings.length * 1000)],
		['c', settings.leads],
		['o', settings.meter],
		['t', short(settings.roomTemperature - zeroCelsius)],
		['a', short(settings.draught)],
		['k', writeWish(wish)],
	];
	return `?${parts.map(([key, value]) => `${key}=${value}`).join('&')}`;
}

/** Reads such a query; null when it holds no bench at all. Nothing of a faulty address is used. */
export function readAddress(query: string, cupboard: Cupboard): Outcome<BenchSettings, AddressProblem> | null {
	const parts = new URLSearchParams(query.slice(0, 600));
	const found = parts.get('v');
	if (found === null) return query.length > 1 && parts.has('s') ? fail({ code: 'version', found: '' }) : null;
	if (found !== version) return fail({ code: 'version', found: found.slice(0, 20) });
	const problems: AddressProblem[] = [];
	const take = <T>(key: string, part: AddressPart, read: (text: string) => T | undefined, standard: T): T => {
		const text = parts.get(key);
		const value = text === null ? undefined : read(text);
		if (value === undefined) problems.push({ code: 'part', part, found: (text ?? '').slice(0, 20) });
		return value ?? standard;
	};
	const supply = take('s', 'supply', oneOf([typed, ...cupboard.supplies.map(({ id }) => id)]), standardSettings.supply);
	const most = adjustableUpTo(cupboard, supply) ?? { voltage: 24, currentLimit: 20 };
	const reel = take('w', 'reel', oneOf([typed, ...cupboard.reels.map(({ id }) => id)]), standardSettings.reel);
	const { from, to } = lengthRange;
	const settings: BenchSettings = {
		supply,
		reel,
		voltage: take('u', 'voltage', between(0.1, most.voltage), standardSettings.voltage),
		currentLimit: take('i', 'limit', between(0.05, most.currentLimit), standardSettings.currentLimit),
		material:
			reel === typed
				? take('m', 'alloy', (text) => (isMaterialId(text) ? text : undefined), standardSettings.material)
				: standardSettings.material,
		size: reel === typed ? take('d', 'size', readSize, standardSettings.size) : standardSettings.size,
		length: take('l', 'length', between(from * 1000, to * 1000), standardSettings.length * 1000) / 1000,
		leads: take('c', 'leads', oneOf(cupboard.leads.map(({ id }) => id)), standardSettings.leads),
		meter: take('o', 'meter', oneOf(cupboard.meters.map(({ id }) => id)), standardSettings.meter),
		roomTemperature: take('t', 'room', between(-20, 60), 20) + zeroCelsius,
		draught: take('a', 'draught', between(0, 5), 0),
		wish: take('k', 'kept', readWish, standardSettings.wish),
	};
	return problems.length === 0 ? succeed(settings) : fail(...problems);
}

/** The thickest and the thinnest wire the bench takes, and the gauge numbers that lie between. */
export const sizeRange = { mm: [0.05, 2], awg: [13, 43], swg: [15, 47] } as const;

export function isSizeInRange({ system, value }: WireSize): boolean {
	const [least, most] = sizeRange[system];
	return value >= least && value <= most && (system === 'mm' || Number.isInteger(value));
}

function short(value: number): string {
	return String(Number(value.toPrecision(7)));
}

function writeWish({ kind, value }: BenchWish): string {
	const key = Object.entries(wishes).find(([, wish]) => wish.kind === kind)?.[0] ?? 'l';
	const shown = kind === 'temperature' ? value - zeroCelsius : kind === 'length' ? value * 1000 : value;
	return `${key}${short(shown)}`;
}

function readWish(text: string): BenchWish | undefined {
	const wish = Object.entries(wishes).find(([key]) => key === text[0])?.[1];
	const value = between(1e-3, 1e5)(text.slice(1));
	if (wish === undefined || value === undefined) return undefined;
	return { kind: wish.kind, value: wish.kind === 'temperature' ? value + zeroCelsius : value / wish.factor };
}

function readSize(text: string): WireSize | undefined {
	const system = oneOfSystems.find((system) => text.startsWith(system));
	if (system === undefined) return undefined;
	const [least, most] = sizeRange[system];
	const value = between(least, most)(text.slice(system.length));
	if (value === undefined) return undefined;
	return isSizeInRange({ system, value }) ? { system, value } : undefined;
}

const oneOfSystems = ['mm', 'awg', 'swg'] as const;

function oneOf(known: readonly string[]): (text: string) => string | undefined {
	return (text) => (known.includes(text) ? text : undefined);
}

function between(least: number, most: number): (text: string) => number | undefined {
	return (text) => {
		if (!/^-?\d+(\.\d+)?(e-?\d+)?$/.test(text)) return undefined;
		const value = Number(text);
		return value >= least && value <= most ? value : undefined;
	};
}
