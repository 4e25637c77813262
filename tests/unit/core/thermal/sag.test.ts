import { expect, test } from 'vitest';
import { sagOfLengthenedWire, thermalGrowth } from '#core/thermal/sag.ts';

test.each([
	{ celsius: 200, millimetres: 19 },
	{ celsius: 400, millimetres: 28 },
	{ celsius: 600, millimetres: 35 },
])('553 mm of NiCr at $celsius °C sags about $millimetres mm: sample value of the bench drawing', (row) => {
	const growth = thermalGrowth({ length: 0.553, expansion: 18e-6, rise: row.celsius - 20 });
	expect(Math.abs(sagOfLengthenedWire({ length: 0.553, growth }) * 1000 - row.millimetres)).toBeLessThan(0.6);
});

test('the arc of that parabola is as long as the wire, added up in 10 000 pieces', () => {
	const length = 0.8;
	const growth = 0.012;
	const sag = sagOfLengthenedWire({ length, growth });
	const y = (x: number) => 4 * sag * (x / length) * (1 - x / length);
	let arc = 0;
	for (let piece = 0; piece < 10_000; piece += 1) {
		const [from, to] = [(piece * length) / 10_000, ((piece + 1) * length) / 10_000];
		arc += Math.hypot(to - from, y(to) - y(from));
	}
	expect(Math.abs((arc - length) / growth - 1)).toBeLessThan(0.02);
});

test('a cold wire hangs straight', () => {
	expect(sagOfLengthenedWire({ length: 1, growth: 0 })).toBe(0);
});

test.each([
	{ length: 0, growth: 0 },
	{ length: 101, growth: 0 },
	{ length: 1, growth: -0.001 },
	{ length: 1, growth: 0.201 },
])('refuses %o', (wire) => {
	expect(() => sagOfLengthenedWire(wire)).toThrow(RangeError);
});
