import type { WireState } from '#core/setup/wire-state.ts';

const wire: Readonly<Record<WireState, string>> = {
	cold: 'The wire stays cold.',
	warm: 'The wire grows warm.',
	'hot-no-glow': 'The wire gets hot without a glow, and burns.',
	'faint-red': 'The wire glows faint red, and burns.',
	'dark-red': 'The wire glows dark red, and burns.',
	red: 'The wire glows red, and burns.',
	orange: 'The wire glows orange, and burns.',
	'over-limit': 'The wire is over its limit.',
	'burnt-through': 'The wire burns through.',
};

/** Words of the practice pages and of an exercise. */
export const practice = {
	title: 'Practice',
	description:
		'Mixed sets of short jobs with your own working, marked line by line. Fresh numbers as often as you like.',
	lead: 'Mixed jobs, one a screen, with numbers that are drawn afresh. Type your working; each line is marked.',
	howMarked: 'How answers are marked',
	sets: 'Sets',
	after: (lesson: number) => `after lesson ${lesson}`,
	itemsOf: (count: number) => `${inWords(count)} jobs, about ${Math.round(count * 2)} minutes`,
	setTitle: (id: string, title: string) => `Set ${id.toUpperCase()}: ${title}`,
	toGo: (id: string, left: number) =>
		left === 0 ? `Set ${id.toUpperCase()}, done` : `Set ${id.toUpperCase()}, ${inWords(left)} to go`,
	done: 'That was the set.',
	doneLead: (alone: number, helped: number) =>
		`${sentence(inWords(alone))} right without help, ${inWords(helped)} right with help.`,
	another: 'Draw another set',
	toSets: 'All sets',
	drawing: 'Drawing the numbers …',
	needsScript: 'The numbers are drawn in your browser. Please allow scripts for this page.',
	next: 'Next job',
	skip: 'Leave this one for later',
	isLast: 'To the end of the set',
	fresh: 'Fresh numbers',
	jobCard: 'Job card',
	given: 'Given',
	wanted: 'Wanted',
	working: 'Working',
	workingHint: 'One line for each step, as on paper. End with number and unit.',
	workingKeys: 'Write Ω as ohm, √ as sqrt, powers as ^2. Cross out with ~~two waves~~.',
	readBack: 'I read',
	readBackEmpty: 'What you type is set here as I read it.',
	twofold: (text: string, [one, other]: readonly [number, number]) => `${text} is ${one} or ${other}.`,
	notRead: (text: string) => `Not read: ${text}`,
	mark: 'Mark it',
	choices: 'Your choice',
	chooseItem: 'Choose …',
	emptyAnswer: 'Nothing to mark yet. Write a line first.',
	unchanged: 'This is the same as last time. Change a line first.',
	hints: {
		open: 'Look for a hint',
		next: 'Next hint',
		wait: 'The next hint opens after a new try, or in ten seconds.',
		title: 'Hint',
		look: (symbols: string) => `Look at ${symbols} on the job card. The rest is not needed for this step.`,
		relation: 'This relation joins them:',
		setOut: 'With your numbers it begins so. Work it out:',
		twin: 'The same kind of job with other numbers, worked through:',
		and: ' and ',
	},
	twin: {
		title: 'Worked twin',
		know: 'Know',
		relation: 'Relation',
		putIn: 'Put in',
		result: 'Result',
		sense: 'Sense',
		question: 'Which line carries the idea?',
		right: 'Yes. That line decides; the rest is arithmetic.',
		wrong: 'That line only prepares or reckons. Where are two quantities joined?',
	},
	bench: {
		title: 'Try it on the bench',
		link: 'Set up the bench with this number',
		setUp: (reel: string, length: string, voltage: string, limit: string) =>
			`${length} of reel ${reel} on ${voltage}, limit ${limit}.`,
		loop: (resistance: string, current: string, voltage: string) =>
			`${resistance} on ${voltage} would let ${current} through.`,
		wished: (wished: string) => `Wanted were ${wished}.`,
		held: (limit: string, voltage: string) => `The supply holds its limit, ${limit}, and falls to ${voltage}.`,
		wire,
		needs: (current: string, resistance: string, needed: string, given: string) =>
			`${current} through ${resistance} needs ${needed}. The supply gives ${given}.`,
		over: 'That is more than it can give.',
		reading: (length: string, reel: string, reading: string, given: string) =>
			`With ${length} of ${reel} the meter would show ${reading}. It showed ${given}.`,
		readingFits: (length: string, reel: string, reading: string) =>
			`With ${length} of ${reel} the meter shows ${reading}, as it did.`,
		between: (label: string, length: string, ohms: string, given: string) =>
			`At ${label}, ${length} more wire adds ${ohms}. The meter showed ${given} more.`,
		betweenFits: (label: string, length: string, ohms: string) =>
			`At ${label}, ${length} more wire adds ${ohms}, as the meter showed.`,
		impossible: (value: string) => `${value} cannot be built. Nothing on the bench is below zero.`,
		bigger: (times: string) => `That is ${times} times what the bench would show.`,
		smaller: (times: string) => `The bench would show ${times} times as much.`,
		fits: 'The bench shows the same.',
	},
} as const;

/** How answers are marked: the page for learners and teachers. */
export const markingPage = {
	title: 'How answers are marked',
	description: 'The rules by which typed working is marked on this site, for learners and teachers.',
	lead: 'These rules hold in every exercise. Nothing is kept back.',
	parts: [
		{
			heading: 'What is collected',
			lines: [
				'Marks are only added, never taken away.',
				'Each step has a mark for the method and a mark for the value. The final result has one for its unit.',
				'The method counts when a right relation is used: numbers stand in it, it is solved for the letter, or the right value shows it.',
				'A relation that is only quoted earns nothing yet. Put your numbers in.',
				'Any right way counts, also one the author did not think of.',
			],
		},
		{
			heading: 'When a value is right',
			lines: [
				'It lies within 1 % of the exact value, or is the exact value rounded correctly to two or more figures.',
				'One figure passes only if it is exact or within 1 %.',
				'A long row of figures from a calculator is remarked on. It costs nothing.',
				'Where a job asks for a number of figures, one more mark stands for exactly that number.',
			],
		},
		{
			heading: 'When something goes off',
			lines: [
				'One cause costs one mark. A slip in copying, keying or a prefix costs the value of that step only.',
				'Your own number is followed. If the next step is right for it, that step is right.',
				'A wrong operation costs method and value of its step, even when the arithmetic is right.',
				'A step left out loses its own marks. Later steps are marked on what you used.',
				'A result that cannot be, such as a negative resistance, earns no value.',
			],
		},
		{
			heading: 'Units',
			lines: [
				'The final result needs a unit of the right kind: 0.55 m, 55 cm and 550 mm are equal.',
				'A right number without its unit keeps all marks but the one for the unit.',
				'A right number with a wrong prefix loses the unit, not the value.',
				'Where a job names a unit, an equal value in quite another one, such as hours for minutes, does not count as right.',
				'Units inside the working are not marked.',
			],
		},
		{
			heading: 'Answers without working, two answers, crossing out',
			lines: [
				'A right result with its unit earns everything, unless the job says “Show each step”.',
				'A wrong result alone earns nothing. The likely slip is named where the number shows it.',
				'A right number at the end of visibly wrong working is not counted as right.',
				'Two different results without a choice are no result. The working still counts.',
				'The last answer counts. What is crossed out and replaced is not marked; what is only crossed out is.',
			],
		},
		{
			heading: 'How you may write',
			lines: [
				'Decimal point or comma, 3e-7 or 3×10^-7, fractions, 4R7 and 4k7, V or U, words around it: all are read.',
				'What was read is shown beside your work before it is marked. What was not read is named.',
				'If a number can be read in two ways, you are asked. Asking costs nothing.',
				'Text that is no mathematics earns nothing and costs nothing.',
			],
		},
		{
			heading: 'What the site says back',
			lines: [
				'Three things: the verdict in words, what your number would do on the bench, and the next move.',
				'First try: where it goes off. Second try: the likely slip. Third try: a worked twin with other numbers.',
				'An opened hint makes a job “right, with help”. A fresh one without help settles it.',
				'There are no points against you, no clock and no ranking.',
			],
		},
	],
	sureness:
		'The site reads many ways of writing, not all. If it misreads you, the reading shows it; write that line more plainly.',
	source:
		'The rules follow the common ground of published marking instructions of several examination boards. The limit of 1 % is our own choice.',
} as const;

const small = [
	'none',
	'one',
	'two',
	'three',
	'four',
	'five',
	'six',
	'seven',
	'eight',
	'nine',
	'ten',
	'eleven',
	'twelve',
];

function inWords(count: number): string {
	return small[count] ?? String(count);
}

function sentence(words: string): string {
	return words.charAt(0).toUpperCase() + words.slice(1);
}
