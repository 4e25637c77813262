import { expect, test } from 'vitest';
import { meltables } from '#core/thermal/meltable.ts';

const crystal =
	'heat of melting of wholly crystalline polyethylene 293 kJ/kg, B. Wunderlich, Thermal Analysis; from memory';
const kelvin = 273.15;

const { 'pe-ld': low, 'pe-hd': high, 'expanded-polystyrene': foam, 'pmma-sheet': sheet } = meltables;

test.each([
	{ source: `${crystal}, two fifths crystalline`, item: 'low-density', range: low.meltingHeat, expected: 0.4 * 293e3 },
	{
		source: `${crystal}, seven tenths crystalline`,
		item: 'high-density',
		range: high.meltingHeat,
		expected: 0.7 * 293e3,
	},
	{
		source: 'Callister, Fundamentals of Materials Science and Engineering, Appendix E; looked up',
		item: 'low-density melts, K',
		range: low.givesWayAt,
		expected: 115 + kelvin,
	},
	{
		source: 'Callister, Fundamentals of Materials Science and Engineering, Appendix E; looked up',
		item: 'high-density melts, K',
		range: high.givesWayAt,
		expected: 137 + kelvin,
	},
	{
		source: 'encyclopedia article on cutting foam with a hot wire: wire at about 200 °C; looked up, secondary',
		item: 'foam beside the wire, K',
		range: foam.givesWayAt,
		expected: 200 + kelvin,
	},
	{
		// from 20 to 100 °C about 1.37, above about 1.9 kJ/(kg K); the mean up to 150 °C
		source: 'U. Gaur and B. Wunderlich, J. Phys. Chem. Ref. Data 11 (1982) 313, polystyrene; from memory',
		item: 'specific heat of polystyrene, J/(kg K)',
		range: foam.specificHeat,
		expected: (1370 * 80 + 1900 * 50) / 130,
	},
	{
		source: 'acrylic bends at 160 °C; common practice, no source',
		item: 'acrylic bends, K',
		range: sheet.givesWayAt,
		expected: 160 + kelvin,
	},
])('$item lies in its range ($source)', ({ range, expected }) => {
	expect(expected).toBeGreaterThanOrEqual(range.least - 1e-9);
	expect(expected).toBeLessThanOrEqual(range.most + 1e-9);
});
