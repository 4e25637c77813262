import { materials } from '#core/material/materials.ts';
import { drawnTemperature } from '#core/setup/draws.ts';
import { searchDesigns } from '#core/setup/design.ts';
import { sweepLength } from '#core/setup/sweep.ts';
import { predictionUncertainty } from '#core/setup/uncertainty.ts';
import { HotWire } from '#core/thermal/hot-wire.ts';
import { stillRoom } from '#core/thermal/room.ts';
import { heatLossPerMetre, resistancePerMetre } from '#core/thermal/wire.ts';
import { filledCupboard } from './cupboard.ts';
import { frameMs, medianMs, ratioRow, type BenchRow } from './measure.ts';
import { bisectSweep, lawsIn, swept, sweepMiss, sweptSetup } from './sweep.ts';

const wire = { material: materials['nicr-80-20'], diameter: 0.4e-3 };
const currents = Array.from({ length: 200 }, (_, index) => 0.5 + index * 0.02);

/** The bench's own baseline: halving the same balance from room temperature to 1600 K, with nothing kept. */
function bisect(current: number): number {
	let low: number = stillRoom.temperature;
	let high = 1600;
	while (high - low > 1e-3) {
		const middle = (low + high) / 2;
		const surplus = current ** 2 * resistancePerMetre(wire, middle) - heatLossPerMetre(wire, middle, stillRoom);
		if (surplus > 0) low = middle;
		else high = middle;
	}
	return (low + high) / 2;
}

export function suite(): readonly BenchRow[] {
	return [...temperatures(), ...sweeps(), search(), draws()];
}

function temperatures(): readonly BenchRow[] {
	const hotWire = new HotWire(wire, stillRoom);
	const furthest = Math.max(
		...currents.map((current) => Math.abs(hotWire.temperatureAt(current).temperature - bisect(current))),
	);
	if (furthest > 1.5e-3) throw new RangeError(`The curve and the bisection part by ${furthest} K`);
	return [
		ratioRow(
			'200 steady temperatures of one wire, curve ready',
			medianMs(() => currents.map((current) => hotWire.temperatureAt(current))),
			medianMs(() => currents.map(bisect)),
			'at least 20',
		),
		ratioRow(
			'200 steady temperatures, curve built for them',
			medianMs(() => {
				const fresh = new HotWire(wire, stillRoom);
				return currents.map((current) => fresh.temperatureAt(current));
			}),
			medianMs(() => currents.map(bisect)),
			'shown only',
		),
	];
}

function sweeps(): readonly BenchRow[] {
	const setup = sweptSetup(wire.material);
	const miss = sweepMiss(setup);
	if (miss > 0.02) throw new RangeError(`The sweep and the single solutions part by ${miss} K`);
	const [ours, baseline] = [(s: typeof setup) => sweepLength(s, swept), bisectSweep].map(
		(call) => lawsIn(call) / swept.points,
	);
	if (ours === undefined || baseline === undefined) throw new RangeError('nothing counted');
	const slow = medianMs(() => bisectSweep(setup));
	const quick = medianMs(() => sweepLength(setup, swept), 25);
	return [
		{
			name: 'heat-loss laws per point, 400-point length sweep of a new wire',
			ours: ours.toPrecision(3),
			baseline: baseline.toPrecision(3),
			ratio: (baseline / ours).toPrecision(3),
			wanted: 'shown only',
		},
		ratioRow('400-point length sweep against a tenth of a frame', quick, frameMs / 10, 'at least 1'),
		ratioRow('400-point length sweep against halving each point', quick, slow, 'shown only'),
	];
}

/** The foam bow of lesson 12 in a full cupboard, against one frame. */
function search(): BenchRow {
	const cupboard = filledCupboard({ supplies: 20, reels: 40, leads: 5 });
	const brief = { length: { from: 0.42, to: 0.44 }, temperature: { from: 523.15, to: 623.15 }, runTime: 2700 };
	const found = searchDesigns(cupboard, brief);
	if (found.length !== 4000 || !found.some(({ isFit }) => isFit)) throw new RangeError('The search found nothing');
	return ratioRow(
		'search of 20 supplies × 40 reels × 5 leads against one frame',
		medianMs(() => searchDesigns(cupboard, brief)),
		frameMs,
		'at least 1',
	);
}

/** Random draws of every uncertain input against one first-order uncertainty of the same set-up. */
function draws(): BenchRow {
	const setup = sweptSetup(wire.material);
	const plan = { draws: 10_000, seed: 1 };
	const [drawn, first] = [drawnTemperature(setup, plan), predictionUncertainty(setup)];
	if (drawn === null || first === null) throw new RangeError('no current flows');
	const share = drawn.standardDeviation / first.temperature.standardUncertainty;
	if (Math.abs(share - 1) > 0.1) throw new RangeError(`Draws and first order part: ${share}`);
	return ratioRow(
		'10 000 random draws of one set-up against one second',
		medianMs(() => drawnTemperature(setup, plan), 3),
		1000,
		'shown only',
	);
}
