import { expect, test } from 'vitest';
import { nearestGauge, writeLength, writeThickness } from '#ui/formula/size.ts';

test('lengths are written in the unit chosen', () => {
	expect(writeLength(0.3, { lengthUnit: 'mm' })).toBe('300\u00A0mm');
	expect(writeLength(0.254, { lengthUnit: 'inch' })).toBe('10.0\u00A0in');
});

// diameters as gauge tables print them (ASTM B258, BS 3737), in inches, from memory
test.each([
	['awg', 36, 0.005],
	['awg', 10, 0.1019],
	['awg', 28, 0.0126],
	['swg', 27, 0.0164],
	['swg', 21, 0.032],
	['swg', 10, 0.128],
] as const)('%s %i is the nearest to its own diameter', (gauge, number, inches) => {
	expect(nearestGauge(inches * 0.0254, gauge)).toBe(number);
});

test('a thickness keeps its millimetres and names the nearest gauge', () => {
	expect(writeThickness(0.0004, { gauge: 'mm' })).toBe('0.400\u00A0mm');
	expect(writeThickness(0.0004, { gauge: 'awg' })).toBe('0.400\u00A0mm (nearest AWG 26)');
});
