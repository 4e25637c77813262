/** Words of the settings page. */
export const settings = {
	title: 'Settings',
	description: 'Theme, letter for voltage, units of length, wire gauge and room light, kept in this browser.',
	lead: 'These hold on every page. They are kept in this browser and sent nowhere.',
	theme: {
		legend: 'Theme',
		system: 'As the device is set',
		light: 'Light',
		dark: 'Dark',
	},
	view: {
		legend: 'Size of everything',
		desk: 'For a desk',
		wall: 'For a projector, read from six screen heights away',
	},
	voltageLetter: {
		legend: 'Letter for voltage',
		V: ', as in most English classrooms',
		U: ', as in the standard IEC 80000-6',
		note: 'Typed formulas may use V, U or E whatever you choose here.',
	},
	lengthUnit: { legend: 'Wire length in', mm: 'Millimetres', inch: 'Inches' },
	gauge: {
		legend: 'Wire thickness as',
		mm: 'Diameter in millimetres',
		awg: 'American wire gauge (AWG)',
		swg: 'Imperial standard wire gauge (SWG)',
	},
	roomLight: {
		legend: 'Room light at the bench',
		shaded: 'Shaded: a glow shows from 525 °C',
		lit: 'Lit room: from 600 °C',
		bright: 'Bright daylight: from 650 °C',
		note: 'Light hides a glow. It never makes a wire cooler.',
	},
	reset: 'Back to the standard settings',
	resetDone: 'All settings are standard again.',
} as const;
