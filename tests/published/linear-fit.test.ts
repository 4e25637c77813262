import { expect, test } from 'vitest';
import { linearFit } from '#core/numeric/linear-fit.ts';

const source = 'JCGM 100:2008 (GUM), annex H.3, tables H.6 and equations H.14; from memory';

const readings = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511];
const corrections = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16];

// calibration of a thermometer, correction against reading, reference 20 °C
const fit = linearFit(readings.map((reading, i) => ({ x: reading - 20, y: corrections[i] ?? Number.NaN })));

test.each([
	{ source, item: 'y1', inputs: fit.intercept, expected: -0.1712, tolerance: 0.00005 },
	{ source, item: 's(y1)', inputs: fit.interceptUncertainty, expected: 0.0029, tolerance: 0.00005 },
	{ source, item: 'y2', inputs: fit.slope, expected: 0.00218, tolerance: 0.000005 },
	{ source, item: 's(y2)', inputs: fit.slopeUncertainty, expected: 0.00067, tolerance: 0.000005 },
	{ source, item: 'r(y1, y2)', inputs: fit.correlation, expected: -0.93, tolerance: 0.0005 },
	{ source, item: 's', inputs: fit.scatter, expected: 0.0035, tolerance: 0.00005 },
])('$item', ({ inputs, expected, tolerance }) => {
	expect(Math.abs(inputs - expected)).toBeLessThanOrEqual(tolerance);
});
