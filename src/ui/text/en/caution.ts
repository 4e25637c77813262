/** Signal words by rising danger, and the text names of the signs. */
export const caution = {
	signal: { notice: 'Notice', caution: 'Caution', warning: 'Warning', danger: 'Danger' },
	sign: {
		general: 'General warning sign',
		electricity: 'Warning sign, electricity',
		'hot-surface': 'Warning sign, hot surface',
		sharp: 'Warning sign, sharp element',
		battery: 'Warning sign, battery charging',
	},
} as const;
