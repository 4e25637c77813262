import { expect, test } from 'vitest';
import { fromCelsius } from '#core/material/material.ts';
import { materials } from '#core/material/materials.ts';
import { wireTable } from '#core/setup/wire-table.ts';
import { stillRoom } from '#core/thermal/room.ts';

const temperatures = [150, 300, 600].map(fromCelsius);

test('half the diameter has four times the ohms per metre and wants less current', () => {
	const rows = wireTable(materials['nicr-80-20'], 'mm', temperatures, stillRoom);
	const [thin, thick] = [0.2, 0.4].map((size) => rows.find((row) => row.size === size));
	expect(thin?.resistancePerMetre).toBeCloseTo(4 * (thick?.resistancePerMetre ?? 0), 10);
	thin?.currents.forEach((current, index) => expect(current).toBeLessThan(thick?.currents[index] ?? 0));
});

test('no current is given beyond the limit of the metal', () => {
	const rows = wireTable(materials['cuni-44'], 'awg', temperatures, stillRoom);
	expect(rows.length).toBeGreaterThan(20);
	for (const { currents } of rows) {
		expect(currents[1]).toBeGreaterThan(0);
		expect(currents[2]).toBeUndefined();
	}
});
