import type { Material } from '#core/material/material.ts';
import { materials } from '#core/material/materials.ts';
import { operatingPoint } from '#core/setup/operating-point.ts';
import type { Setup } from '#core/setup/setup.ts';
import { sweepLength } from '#core/setup/sweep.ts';
import { stillRoom } from '#core/thermal/room.ts';
import { heatLossPerMetre, resistancePerMetre } from '#core/thermal/wire.ts';

const diameter = 0.4e-3;

/** A bench supply's 12 V across 0.40 mm NiCr 80 20 with the screw pair. */
export function sweptSetup(material: Material): Setup {
	return {
		supply: { openCircuitVoltage: 12, internalResistance: 0, protection: { kind: 'holds', limit: 5 } },
		wire: { material, diameter, length: 0.5 },
		leads: { resistance: 0.035, rating: 10 },
		room: stillRoom,
	};
}

/** Lengths where the wire stays within its data. */
export const swept = { from: 0.2, to: 1.2, points: 400 } as const;

/** The bench's own baseline: at each length the loop's balance is halved from room temperature to 1600 K, nothing kept. */
export function bisectSweep({ supply, wire, leads }: Setup): readonly number[] {
	const outside = supply.internalResistance + leads.resistance;
	return Array.from({ length: swept.points }, (_, index) => {
		const length = swept.from + ((swept.to - swept.from) * index) / (swept.points - 1);
		let low: number = stillRoom.temperature;
		let high = 1600;
		while (high - low > 1e-3) {
			const middle = (low + high) / 2;
			const resistance = resistancePerMetre(wire, middle) * length;
			const asked = supply.openCircuitVoltage / (outside + resistance);
			const held = supply.protection.kind === 'holds' ? supply.protection.limit : Infinity;
			const current = Math.min(asked, held);
			const surplus = (current ** 2 * resistance) / length - heatLossPerMetre(wire, middle, stillRoom);
			if (surplus > 0) low = middle;
			else high = middle;
		}
		return (low + high) / 2;
	});
}

/** How often a call evaluates the heat-loss law: a law reads the emissivity of its metal, and the reads are counted. */
export function lawsIn(call: (setup: Setup) => unknown): number {
	let reads = 0;
	const known = materials['nicr-80-20'];
	const material: Material = {
		...known,
		get emissivity() {
			reads += 1;
			return known.emissivity;
		},
	};
	const setup = sweptSetup(material);
	heatLossPerMetre(setup.wire, 500, stillRoom);
	const readsPerLaw = reads;
	if (readsPerLaw < 1) throw new RangeError('The heat-loss law does not read the emissivity; nothing can be counted');
	reads = 0;
	call(setup);
	return Math.floor(reads / readsPerLaw);
}

/** The furthest the swept temperatures lie from those solved one by one, in K. */
export function sweepMiss(setup: Setup): number {
	const single = (length: number) => operatingPoint({ ...setup, wire: { ...setup.wire, length } }).temperature;
	return Math.max(
		...sweepLength(setup, swept).map(({ length, temperature }) => Math.abs(temperature - single(length))),
	);
}
