/** Words of the frame around every page, and of the front page. */
export const shell = {
	name: 'Ohm to Ember',
	skip: 'Skip to the work',
	mainMenu: 'Pages',
	menu: {
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
	front: {
		title: 'Ohm to Ember: Ohm’s law through a heated wire',
		description:
			'Choose a supply and a resistance wire, work out current, length and heat by Ohm’s law, and see what the wire does.',
		purpose: 'Choose a wire, work out its current by Ohm’s law, and know how hot it gets before you switch on.',
		lessons: 'Lessons',
		lesson: (number: number) => `Lesson ${number}`,
		carryOn: (number: number, title: string) => `Carry on: lesson ${number}, ${title}`,
	},
	missing: {
		title: 'Not in the drawer',
		sentence: 'That sheet is not in the drawer.',
		fault: 'Something on this page went wrong. Load it again, or take another sheet.',
	},
} as const;
