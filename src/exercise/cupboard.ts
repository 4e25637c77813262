import * as v from 'valibot';

const id = v.pipe(v.string(), v.regex(/^[A-Z][A-Z0-9]?(-\d+)?$/u));
const positive = v.pipe(v.number(), v.gtValue(0));

const protection = v.variant('kind', [
	v.strictObject({ kind: v.literal('holds'), limitMaximum: positive }),
	v.strictObject({ kind: v.literal('retries'), rated: positive, tripAbove: positive }),
	v.strictObject({ kind: v.literal('latches'), rated: positive, tripAbove: positive }),
	v.strictObject({ kind: v.literal('none') }),
]);

const supply = v.strictObject({
	id,
	name: v.string(),
	/** V; for an adjustable supply the value it is set to */
	voltage: positive,
	/** V; only where the voltage can be set, up to this */
	voltageMaximum: v.optional(positive),
	/** Ω */
	internalResistance: v.pipe(v.number(), v.minValue(0)),
	protection,
	/** A */
	fuse: v.optional(positive),
	charge: v.optional(
		v.strictObject({
			ampereHours: positive,
			usableFraction: v.pipe(positive, v.maxValue(1)),
			atCurrent: v.optional(positive),
		}),
	),
});

const leads = v.strictObject({ id, name: v.string(), resistance: positive, rating: positive });

const meter = v.strictObject({
	id,
	name: v.string(),
	/** Ω */
	step: positive,
	limit: v.strictObject({ percent: positive, steps: positive }),
});

const reel = v.strictObject({
	id,
	/** standard designation of the alloy */
	designation: v.string(),
	diameterMillimetres: positive,
	gauge: v.optional(v.strictObject({ system: v.picklist(['AWG', 'SWG']), number: v.number() })),
	/** R′ at 20 °C as printed on the reel, Ω/m */
	label: positive,
	/** °C; only where the reel's metal must stay below its alloy's own limit */
	limitCelsius: v.optional(positive),
});

export const cupboardSchema = v.strictObject({
	format: v.literal(1),
	supplies: v.pipe(v.array(supply), v.minLength(1)),
	leads: v.pipe(v.array(leads), v.minLength(1)),
	meters: v.pipe(v.array(meter), v.minLength(1)),
	reels: v.pipe(v.array(reel), v.minLength(1)),
});

/** The store cupboard every exercise draws on. Numbers in the unit beside each field. */
export type Cupboard = Readonly<v.InferOutput<typeof cupboardSchema>>;
export type CupboardReel = Readonly<v.InferOutput<typeof reel>>;
export type CupboardSupply = Readonly<v.InferOutput<typeof supply>>;
