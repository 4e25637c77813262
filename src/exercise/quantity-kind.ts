/** A kind of quantity an exercise speaks of: its SI unit, and the letters a learner may write for it. */
export interface QuantityKind {
	readonly unit: string;
	readonly letters: readonly string[];
}

const voltageLetters = ['V', 'U', 'E', 'ε', '𝓔', 'ℰ'];
const resistanceLetters = ['R'];
const lengthLetters = ['L', 'l', 'ℓ'];
const perLengthLetters = ["R'", "r'", 'r', 'R_m', 'Rm'];

/** Letters after IEC 80000-6:2022 (from memory) and classroom use; V, U and E all name a voltage, whatever the page shows. */
export const quantityKinds = {
	voltage: { unit: 'V', letters: voltageLetters },
	'source-voltage': { unit: 'V', letters: [...voltageLetters, 'U0', 'U_s', 'V_s', 'Us', 'Vs'] },
	current: { unit: 'A', letters: ['I', 'i'] },
	'current-limit': { unit: 'A', letters: ['I_max', 'Imax', 'I_lim'] },
	resistance: { unit: 'Ω', letters: resistanceLetters },
	'internal-resistance': { unit: 'Ω', letters: ['r', 'R_i', 'Ri', 'r_i', 'ri'] },
	'resistance-reading': { unit: 'Ω', letters: ['R_read', 'R_m', 'Rm', 'Rread'] },
	'lead-resistance': { unit: 'Ω', letters: ['R_leads', 'R_L', 'RL', 'R_l', 'R0', 'R_0'] },
	'resistance-per-length': { unit: 'Ω/m', letters: perLengthLetters },
	length: { unit: 'm', letters: lengthLetters },
	'clamp-length': { unit: 'm', letters: ['c'] },
	power: { unit: 'W', letters: ['P'] },
	'power-per-length': { unit: 'W/m', letters: ["P'", "p'"] },
	resistivity: { unit: 'Ω·m', letters: ['ρ', 'rho'] },
	diameter: { unit: 'm', letters: ['d', 'D'] },
	radius: { unit: 'm', letters: ['r'] },
	area: { unit: 'm^2', letters: ['A', 'S', 'q'] },
	time: { unit: 's', letters: ['t'] },
	charge: { unit: 'C', letters: ['Q', 'C'] },
	energy: { unit: 'J', letters: ['W', 'E'] },
	'temperature-difference': { unit: 'K', letters: ['ΔT', 'ΔΘ', 'Δϑ', 'dT'] },
	'temperature-coefficient': { unit: 'K^-1', letters: ['α', 'alpha', 'a'] },
	mass: { unit: 'kg', letters: ['m'] },
	'specific-heat': { unit: 'J/(kg·K)', letters: ['c'] },
	'surface-load': { unit: 'W/m^2', letters: ['p', 'q'] },
	temperature: { unit: 'K', letters: ['T', 'ϑ', 'θ', 't'] },
	count: { unit: '1', letters: ['n', 'N'] },
	ratio: { unit: '1', letters: ['c', 'k'] },
	fraction: { unit: '1', letters: ['k', 'f'] },
} as const satisfies Record<string, QuantityKind>;

export type QuantityKindId = keyof typeof quantityKinds;

export function isQuantityKindId(id: string): id is QuantityKindId {
	return Object.hasOwn(quantityKinds, id);
}
