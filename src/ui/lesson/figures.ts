/** A value with its unit, a no-break space between. */
export function withUnit(value: number, unit: string, decimals: number): string {
	return `${value.toFixed(decimals)}\u00a0${unit}`;
}

/** Three significant figures, without a power of ten. */
export function threeFigures(value: number, unit: string): string {
	const size = Math.abs(value);
	if (size === 0) return `0\u00a0${unit}`;
	const decimals = Math.max(0, Math.min(6, 2 - Math.floor(Math.log10(size))));
	return withUnit(Number(value.toPrecision(3)), unit, decimals);
}

export const ohms = (value: number) => withUnit(value, 'Ω', 1);
export const amperes = (value: number) => withUnit(value, 'A', 2);
export const volts = (value: number) => withUnit(value, 'V', 1);
export const millimetres = (value: number) => withUnit(value, 'mm', 0);
