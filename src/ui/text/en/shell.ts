/** Words of the frame around every page. */
export const shell = {
	name: 'Ohm to Ember',
	skip: 'Skip to the work',
	mainMenu: 'Pages',
	menu: {
		front: 'Front page',
		lessons: 'Lessons',
		bench: 'Bench',
		practice: 'Practice',
		tables: 'Wire tables',
		choose: 'Which wire?',
		checks: 'How right is it?',
		marking: 'How answers are marked',
		settings: 'Settings',
	},
	title: (page: string) => `${page} · Ohm to Ember`,
	footer: 'A teaching sheet, not a wiring rule: defer to local codes and licensed practice.',
	offline: 'No network. Everything works; your work is saved here.',
	missing: {
		title: 'Not in the drawer',
		sentence: 'That sheet is not in the drawer.',
		fault: 'Something on this page went wrong. Load it again, or take another sheet.',
	},
} as const;
