/** Words of the page that compares our figures with published ones. */
export const checks = {
	title: 'How right is it?',
	description: 'Every published value we compare our figures with, where it stands, and where the model is weak.',
	lead: 'Each figure here stands in print somewhere; beside it is what this site reckons, and how far apart they lie.',
	all: (within: number, counted: number) => `${within} of ${counted} published values within tolerance.`,
	contents: 'On this page',
	summary: (within: number, counted: number) => `${within} of ${counted} within tolerance`,
	shown: (count: number) =>
		count === 1
			? 'One more is shown and not counted: we are less than 90 % sure we restate it rightly.'
			: `${count} more are shown and not counted: we are less than 90 % sure we restate them rightly.`,
	subject: {
		resistance: 'Wire sizes and resistance',
		air: 'Properties of air',
		convection: 'Heat carried off by air',
		radiation: 'Radiation and its constants',
		glow: 'Colour and brightness of glow',
		'along-the-wire': 'Heat along the wire, and warming up',
		uncertainty: 'Uncertainty and random draws',
	},
	column: {
		what: 'What',
		published: 'Published',
		ours: 'Ours',
		deviation: 'Deviation',
		tolerance: 'Allowed',
		verdict: 'Verdict',
	},
	caption: (subject: string) => `${subject}: published values and ours`,
	verdict: {
		within: 'within',
		outside: 'outside',
		'within-shown': 'within, not counted',
		'outside-shown': 'outside, not counted',
	},
	none: 'none',
	had: {
		'looked-up': 'looked up',
		'from-memory': 'from memory',
		derived: 'derived',
		'common-practice': 'common practice, no source',
		'own-choice': 'our own choice',
	},
	reading:
		'A deviation is our value minus the published one, the worst part where there are several. Looked up: we read it in the source or a copy of it. From memory: we did not see it again. Derived: it follows from a stated formula.',
	leftOut: {
		title: 'Left out, and why',
		lead: (count: number) => `${count} published values have no figure of ours beside them.`,
	},
	weak: {
		title: 'Where the model is weak',
		claim:
			'For a clean, long, level wire in really still air, one standard uncertainty is ± 7 % of the heat lost, ± 4 % of the current for a temperature and ± 5 % of the temperature rise. Twice that covers about 95 of 100 cases.',
		spreadCaption: 'Our model minus measurements: average and spread',
		spreadColumns: {
			against: 'Compared with',
			count: 'Values',
			heatLoss: 'Heat lost',
			current: 'Current',
			parts: 'average, spread (rms)',
		},
		spreadNote:
			'These spreads were found when the model was chosen; the tables themselves are not copied here. They do not say how their currents were measured. Where no author stands, none was noted.',
		law: (values: { count: number; mean: string; rms: string }) =>
			`Reckoned here: at ${values.count} Rayleigh numbers from 0.0001 to 100 our law of convection lies ${values.mean} from our numerical solution on average, with a spread of ${values.rms}.`,
		memory:
			'The law of convection and the temperature at which air is taken are quoted from memory. The numerical solution, our own, is what pins them down.',
		effectCaption: 'NiCr 80 20, 0.32 mm, driven for the temperature in the head: what it reaches instead',
		effectHead: 'If in truth',
		planned: (temperature: string) => `for ${temperature}`,
		effect: {
			'surface-brighter': (values: { min: string }) => `the surface is brighter, emissivity ${values.min}`,
			'surface-blacker': (values: { max: string }) => `the surface is blacker, emissivity ${values.max}`,
			'draught-faint': () => 'a draught of 0.1 m/s crosses the wire',
			'draught-light': () => 'a draught of 0.5 m/s crosses the wire',
			upright: () => 'the wire hangs upright (itself known to ± 20 %)',
			short: () => 'the piece is 60 mm long between cold clips: its average',
		},
		beyond: 'over its curve',
		effectNote: (emissivity: string) =>
			`Emissivity is the weakest figure of all: we take ${emissivity} for oxidised wire, and books differ by more than 0.1. The bench takes every wire as long; a short one is cooler near its clips, and its average is lower.`,
	},
	print: 'Print this page',
} as const;
