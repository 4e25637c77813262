import fc from 'fast-check';
import { unit as mathUnit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import { parseGauge } from '#core/quantity/gauge.ts';
import { readQuantity } from '#core/quantity/read.ts';
import { writeQuantity } from '#core/quantity/write.ts';

const decimalSign = fc.constantFrom('.', ',');
const units = [
	'm',
	'mm',
	'in',
	'Ω',
	'mΩ',
	'A',
	'V',
	'W',
	'J',
	's',
	'min',
	'h',
	'A·h',
	'Ω/m',
	'W/m',
	'W/cm²',
	'Ω·m',
	'µΩ·m',
	'K',
];
const magnitude = fc
	.tuple(fc.double({ min: 1, max: 9.99999, noNaN: true }), fc.integer({ min: -9, max: 8 }), fc.boolean())
	.map(([mantissa, power, isNegative]) => (isNegative ? -1 : 1) * mantissa * 10 ** power);

describe('writing and reading', () => {
	test('what is written is read back to the figures written, with either decimal sign', () => {
		fc.assert(
			fc.property(
				magnitude,
				fc.constantFrom(...units),
				fc.integer({ min: 1, max: 12 }),
				decimalSign,
				(value, unit, figures, sign) => {
					const read = readQuantity(writeQuantity(value, unit, { figures, decimalSign: sign }), { decimalSign: sign });
					expect(read.ok).toBe(true);
					if (!read.ok) return;
					expect(Math.abs(read.value.value / value - 1)).toBeLessThanOrEqual(0.5 * 10 ** (1 - figures) + 1e-12);
				},
			),
			{ numRuns: 1000 },
		);
	});
});

describe('no text is too strange', () => {
	const strange = fc.oneof(
		fc.string({ unit: 'binary', maxLength: 220 }),
		fc
			.array(
				fc.constantFrom(
					...'0123456789.,+-−eE×*·^/()⁻⁶²³½ΩmµAVWkKRh%"\' °C:'.split(''),
					'AWG',
					'per',
					'ohm',
					'\u200B',
					'10',
				),
				{ maxLength: 24 },
			)
			.map((parts) => parts.join('')),
	);

	test('reading never throws, and every problem lies within the text', () => {
		fc.assert(
			fc.property(strange, decimalSign, fc.constantFrom(undefined, 'Ω', '°C', 'mm'), (text, sign, unit) => {
				const options = unit === undefined ? { decimalSign: sign } : { decimalSign: sign, defaultUnit: unit };
				for (const read of [readQuantity(text, options), parseGauge(text, sign)]) {
					if (read.ok) continue;
					expect(read.problems.length).toBeGreaterThan(0);
					for (const { span } of read.problems) {
						expect(0 <= span.start && span.start <= span.end && span.end <= text.length).toBe(true);
					}
				}
				const value = readQuantity(text, options);
				if (value.ok) expect(Number.isFinite(value.value.value)).toBe(true);
			}),
			{ numRuns: 3000 },
		);
	});
});

describe('units agree with an independent library', () => {
	const pairs: readonly (readonly [ours: string, theirs: string, base: string])[] = [
		['km', 'km', 'm'],
		['cm', 'cm', 'm'],
		['µm', 'um', 'm'],
		['in', 'inch', 'm'],
		['ft', 'ft', 'm'],
		['mil', 'mil', 'm'],
		['mA', 'mA', 'A'],
		['kV', 'kV', 'V'],
		['mΩ', 'mohm', 'ohm'],
		['MΩ', 'Mohm', 'ohm'],
		['µΩ·m', 'uohm m', 'ohm m'],
		['Ω·mm²/m', 'ohm mm^2/m', 'ohm m'],
		['Ω/ft', 'ohm/ft', 'ohm/m'],
		['W/cm²', 'W/cm^2', 'W/m^2'],
		['W/in²', 'W/inch^2', 'W/m^2'],
		['W/(m K)', 'W/(m K)', 'W/(m K)'],
		['mW', 'mW', 'W'],
		['kWh', 'kWh', 'J'],
		['A·h', 'A hour', 'C'],
		['min', 'minute', 's'],
		['h', 'hour', 's'],
		['g/cm³', 'g/cm^3', 'kg/m^3'],
		['J/(g K)', 'J/(g K)', 'J/(kg K)'],
		['°C', 'degC', 'K'],
		['°F', 'degF', 'K'],
	];

	test.each(pairs)('%s', (ours, theirs, base) => {
		fc.assert(
			fc.property(fc.integer({ min: 1, max: 99999 }), (thousandths) => {
				const value = thousandths / 1000;
				const read = readQuantity(`${value} ${ours}`);
				expect(read.ok).toBe(true);
				if (!read.ok) return;
				expect(read.value.value / mathUnit(value, theirs).toNumber(base)).toBeCloseTo(1, 9);
			}),
			{ numRuns: 20 },
		);
	});
});
