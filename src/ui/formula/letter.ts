/** How a quantity is written: an italic letter, then an upright or italic index, then primes for "per metre". */
export interface Letter {
	readonly letter: string;
	/** index in upright type, as it names a thing and not a quantity */
	readonly index?: string;
	readonly prime?: true;
}

/** Letters after IEC 80000-6:2022 (wording from memory) and, for lengths and heat, other parts of the same series. */
export const letters = {
	voltage: { letter: 'V' },
	sourceVoltage: { letter: 'V', index: 's' },
	current: { letter: 'I' },
	resistance: { letter: 'R' },
	internalResistance: { letter: 'R', index: 'i' },
	resistancePerMetre: { letter: 'R', prime: true },
	resistivity: { letter: 'ρ' },
	power: { letter: 'P' },
	powerPerMetre: { letter: 'P', prime: true },
	energy: { letter: 'W' },
	charge: { letter: 'Q' },
	length: { letter: 'ℓ' },
	diameter: { letter: 'd' },
	area: { letter: 'A' },
	surfaceLoad: { letter: 'p' },
	temperature: { letter: 'ϑ' },
	absoluteTemperature: { letter: 'T' },
	hotFactor: { letter: 'c' },
	time: { letter: 't' },
} as const satisfies Readonly<Record<string, Letter>>;

export type LetterName = keyof typeof letters;

/** Quantities whose letter follows the person's choice between V and U. */
export function isVoltage(name: LetterName): boolean {
	return name === 'voltage' || name === 'sourceVoltage';
}
