/** Unit symbols as written, and the name a screen reader should say. */
export const unit = {
	volt: { symbol: 'V', name: 'volts' },
	ampere: { symbol: 'A', name: 'amperes' },
	ohm: { symbol: 'Ω', name: 'ohms' },
	ohmPerMetre: { symbol: 'Ω/m', name: 'ohms per metre' },
	watt: { symbol: 'W', name: 'watts' },
	wattPerMetre: { symbol: 'W/m', name: 'watts per metre' },
	wattPerSquareCentimetre: { symbol: 'W/cm²', name: 'watts per square centimetre' },
	millimetre: { symbol: 'mm', name: 'millimetres' },
	metre: { symbol: 'm', name: 'metres' },
	inch: { symbol: 'in', name: 'inches' },
	celsius: { symbol: '°C', name: 'degrees Celsius' },
	ampereHour: { symbol: 'A·h', name: 'ampere hours' },
	minute: { symbol: 'min', name: 'minutes' },
	second: { symbol: 's', name: 'seconds' },
	percent: { symbol: '%', name: 'per cent' },
	nearestGauge: (thickness: string, gauge: string, number: number) => `${thickness} (nearest ${gauge} ${number})`,
} as const;
