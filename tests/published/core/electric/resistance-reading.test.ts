import { expect, test } from 'vitest';
import { branchesInParallel, segmentsInSeries } from '#core/electric/bundle.ts';
import { resistancePerMetreFromReadings } from '#core/electric/resistance-reading.ts';

const gum = 'JCGM 100:2008 (GUM), annex H.3, table H.6; from memory';
const college = 'College Physics 2e (OpenStax), chapter 21, Examples 21.1 and 21.2; looked up';

// the readings of the annex stand for lengths, its corrections raised by 1 for ohms: a shift moves the intercept only
const readings = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511];
const corrections = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16];
const outcome = resistancePerMetreFromReadings(
	readings.map((reading, i) => ({ length: reading - 20, resistance: 1 + (corrections[i] ?? Number.NaN) })),
);
if (!outcome.ok) throw new Error('no fit');
const fit = outcome.value;

const row = segmentsInSeries([1, 6, 13], 0.6);
const branches = branchesInParallel([1, 6, 13], 12 / 0.80412371);

test.each([
	{ source: gum, item: 'y1', found: fit.leads - 1, expected: -0.1712, tolerance: 0.00005 },
	{ source: gum, item: 's(y1)', found: fit.leadsUncertainty, expected: 0.0029, tolerance: 0.00005 },
	{ source: gum, item: 'y2', found: fit.resistancePerMetre, expected: 0.00218, tolerance: 0.000005 },
	{ source: gum, item: 's(y2)', found: fit.resistancePerMetreUncertainty, expected: 0.00067, tolerance: 0.000005 },
	{ source: gum, item: 'r(y1, y2)', found: fit.correlation, expected: -0.93, tolerance: 0.0005 },
	{ source: gum, item: 's', found: fit.scatter, expected: 0.0035, tolerance: 0.00005 },
	{ source: college, item: 'resistance in a row', found: row.resistance, expected: 20, tolerance: 0.05 },
	{ source: college, item: 'heat of 1 Ω', found: row.parts[0]?.power, expected: 0.36, tolerance: 0.0005 },
	{ source: college, item: 'heat of 6 Ω', found: row.parts[1]?.power, expected: 2.16, tolerance: 0.005 },
	{ source: college, item: 'heat of 13 Ω', found: row.parts[2]?.power, expected: 4.68, tolerance: 0.005 },
	{ source: college, item: 'resistance side by side', found: branches.resistance, expected: 0.804, tolerance: 0.0005 },
	{ source: college, item: 'current of 6 Ω', found: branches.parts[1]?.current, expected: 2, tolerance: 0.005 },
	{ source: college, item: 'current of 13 Ω', found: branches.parts[2]?.current, expected: 0.923, tolerance: 0.005 },
	{ source: college, item: 'heat of 13 Ω', found: branches.parts[2]?.power, expected: 11.1, tolerance: 0.05 },
])('$item ($source)', ({ found, expected, tolerance }) => {
	expect(Math.abs((found ?? Number.NaN) - expected)).toBeLessThanOrEqual(tolerance);
});
