import type { HeatBand } from '#core/thermal/heat-band.ts';

const bands = {
	cold: 'cold',
	warm: 'warm',
	'hot-no-glow': 'hot, no glow',
	'faint-red': 'faint red',
	'dark-red': 'dark red',
	red: 'red',
	orange: 'orange',
	'over-limit': 'over its limit',
} as const satisfies Readonly<Record<HeatBand, string>>;

/** Words of the front page. */
export const front = {
	title: 'Ohm to Ember: Ohm’s law through a heated wire',
	description:
		'Choose a supply and a resistance wire, work out current, length and heat by Ohm’s law, and see what the wire does.',
	heading: 'Ohm’s law through a heated wire',
	purpose: 'Choose a wire, work out its current by Ohm’s law, and know how hot it gets before you switch on.',
	lessons: 'Lessons',
	begin: (number: number) => `Begin with lesson ${number}`,
	carryOn: (number: number, part: number) => `Carry on: lesson ${number}, part ${part}`,
	bench: { link: 'The bench', after: ' is for wires and supplies of your own.' },
	practice: { link: 'Practice', after: ' has exercises marked step by step.' },
	wire: {
		title: 'One wire, one slider',
		what: (designation: string, diameter: string, length: string) =>
			`${designation}, ${diameter} thick, ${length} between the posts, level in still air at 20 °C.`,
		slider: 'Voltage of the supply',
		step: '0.5 V',
		acrossPosts: 'across the posts',
		inLoop: 'in the loop',
		ofWire: 'of the warm wire',
		band: bands,
		tab: (celsius: string, spread: string, band: string, burns: boolean) =>
			`${celsius} °C${spread ? ` ± ${spread}` : ''} · ${band}${burns ? ' · burns' : ''}`,
		spread: 'The ± is twice the standard uncertainty, about 95 %.',
		spoken: (volts: string, amperes: string, celsius: string, band: string, burns: boolean) =>
			`${volts} volts, ${amperes} amperes. Wire about ${celsius} degrees, ${band}.${burns ? ' Would burn.' : ''}`,
		caution:
			'A wire that does not glow can still be hot. From 45\u00a0°C it hurts; at 200\u00a0°C it burns at a touch.',
		drawing: 'A wire between two posts on a dark tile. It sags as it warms and glows when hot enough.',
	},
} as const;
