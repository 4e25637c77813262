import type { LineVerdict } from '#exercise/marking/marking.ts';
import type { SlipName } from '#exercise/slip/slip-name.ts';

/** A slip in words: what seems to have happened, and the next thing to do. */
export interface SlipWords {
	readonly said: string;
	readonly move: string;
}

/** Words for every slip of the catalogue, also for those that only some exercises can meet. */
const everySlip = {
	// algebra of the formulas
	'quotient-inverted': {
		said: 'The division stands upside down.',
		move: 'Ask for the unit of your quotient. Which way up gives the unit you want?',
	},
	'product-for-quotient': {
		said: 'You multiplied where a division belongs.',
		move: 'Say it in words first: so many of one for each of the other.',
	},
	'quotient-for-product': {
		said: 'You divided where a product belongs.',
		move: 'Work out the unit of your quotient. Is it the unit you want?',
	},
	'unlike-quantities-added': {
		said: 'Two unlike quantities were added or subtracted.',
		move: 'Volts and amperes never add. Which relation joins them?',
	},
	'wire-formula-misarranged': {
		said: 'The wire formula was solved for the wrong letter.',
		move: 'Put your length back: does length times ohm per metre give the ohms?',
	},
	'current-not-squared': {
		said: 'The current went in only once.',
		move: 'I·R is a voltage. For power the current counts twice.',
	},
	'voltage-squared-times-resistance': {
		said: 'You multiplied by the resistance.',
		move: 'On a fixed voltage, more ohms give less heat. Divide by them.',
	},
	'voltage-not-squared': {
		said: 'The voltage went in only once.',
		move: 'Volts by ohms is the current. One more factor makes power.',
	},
	'current-squared-over-resistance': {
		said: 'You divided by the resistance.',
		move: 'At a fixed current, more ohms give more heat. Multiply by them.',
	},
	'wrong-thing-squared': {
		said: 'The square went to the wrong place.',
		move: 'Write it out: current times current, then times resistance.',
	},
	'root-not-taken': {
		said: 'That is the square of what is wanted.',
		move: 'One key is missing. Take the square root.',
	},
	'halved-for-root': {
		said: 'You halved where a root belongs.',
		move: 'Square your number. Do you get the one before?',
	},
	'brackets-lost': {
		said: 'Brackets went missing in the calculator.',
		move: 'Work out the bottom line first, then divide.',
	},
	// prefixes and conversions
	'milli-unconverted': {
		said: 'Milli was left standing.',
		move: 'Turn milli into the whole unit first: 420 mA is 0.420 A.',
	},
	'prefix-wrong-way': {
		said: 'A prefix was turned the wrong way.',
		move: 'A bigger unit needs a smaller number. Check which way yours went.',
	},
	'square-millimetres-by-thousand': {
		said: 'The area was changed by a thousand only.',
		move: 'A square metre is 1000 mm by 1000 mm. Count again.',
	},
	'millimetres-left-in': {
		said: 'Millimetres stand among metres.',
		move: 'Turn every length into metres before you put it in.',
	},
	'centimetre-slip': {
		said: 'Centimetres and metres got mixed.',
		move: '100 cm make 1 m. Where should the decimal mark stand?',
	},
	'inch-slip': {
		said: 'The inch was changed by a wrong factor.',
		move: 'One inch is 25.4 mm, more than two centimetres.',
	},
	'kilo-slip': {
		said: 'A factor of a thousand went astray.',
		move: 'Write it without kilo first, then divide by 1000.',
	},
	'ampere-hours-mixed': {
		said: 'Ampere-hours, milliampere-hours and coulombs got mixed.',
		move: '1000 mA·h make 1 A·h, and 1 A·h is 3600 C.',
	},
	'hours-minutes-mixed': {
		said: 'Hours and minutes got mixed.',
		move: 'Decimals of an hour are not minutes. Multiply the hours by 60.',
	},
	'hours-for-seconds': {
		said: 'The time is not in seconds.',
		move: 'A joule is a watt for one second. Change the time first.',
	},
	'kilowatt-hours-misconverted': {
		said: 'Kilowatt-hours became joules by a wrong factor.',
		move: 'Multiply 1000 W by 3600 s: 3.6 million joules.',
	},
	'charge-over-power': {
		said: 'Ampere-hours were divided by watts.',
		move: 'Divide ampere-hours by amperes, or watt-hours by watts.',
	},
	'exponent-slip': {
		said: 'The decimal mark or a power of ten slipped.',
		move: 'Estimate the size first, then key it in again.',
	},
	'gram-kilogram-slip': {
		said: 'Grams stand where kilograms belong.',
		move: 'The heat is given for each kilogram. Change the mass.',
	},
	// geometry of the wire
	'diameter-as-radius': {
		said: 'The diameter went in as the radius.',
		move: 'Halve it first, or take a quarter of π times diameter squared.',
	},
	'radius-not-squared': {
		said: 'The radius was not squared.',
		move: 'An area needs two lengths multiplied. Check the unit you get.',
	},
	'quarter-pi-left-out': {
		said: 'The area is not that of a circle.',
		move: 'A circle fills 78.5 % of the square around it.',
	},
	'halved-twice': {
		said: 'The diameter was halved twice.',
		move: 'One halving turns diameter into radius. Stop there.',
	},
	'wrong-surface': {
		said: 'That is not the skin of the wire.',
		move: 'Unroll the skin: a strip, circumference by length.',
	},
	'gauge-order-reversed': {
		said: 'A larger gauge number was taken for thicker wire.',
		move: 'Gauge counts drawing steps. More steps, thinner wire.',
	},
	'diameter-scaled-linearly': {
		said: 'Twice as thick was taken as half the resistance.',
		move: 'Twice the diameter is four times the area.',
	},
	// circuit, source and meter
	'limit-for-current': {
		said: 'The label was taken for the current.',
		move: 'The label is a ceiling. The wire decides what flows.',
	},
	'choice-outside-limit': {
		said: 'Your choice lies outside the limit.',
		move: 'Compare your number with the ceiling, then choose again.',
	},
	'open-circuit-voltage-under-load': {
		said: 'The voltage without load was used under load.',
		move: 'While current flows, some volts stay inside. Take them off.',
	},
	'internal-resistance-forgotten': {
		said: 'The resistance inside the battery is missing.',
		move: 'The same current crosses the inside. Add its ohms.',
	},
	'sign-reversed': {
		said: 'A plus and a minus changed places.',
		move: 'Say what the term does: does it add or take away?',
	},
	'leads-not-subtracted': {
		said: 'The leads are still in your resistance.',
		move: 'Touch the probes together. That reading is in every measurement.',
	},
	'leads-added': {
		said: 'The leads were added.',
		move: 'The reading already holds the leads. Take them off.',
	},
	'leads-subtracted-twice': {
		said: 'The leads were taken off twice.',
		move: 'The reading with probes together holds both leads. Once is enough.',
	},
	'clamps-forgotten': {
		said: 'The length under the clamps is missing.',
		move: 'Each end needs its clamp length. Add both.',
	},
	'series-rule-for-parallel': {
		said: 'Side by side was reckoned like end to end.',
		move: 'More paths pass more current. The result is below the smallest.',
	},
	'parallel-rule-for-series': {
		said: 'End to end was reckoned like side by side.',
		move: 'There is one path only. Each part adds its ohms.',
	},
	'parallel-unfinished': {
		said: 'The last step of the parallel rule is missing.',
		move: 'You have one over R. Turn the fraction over.',
	},
	'current-split-equally': {
		said: 'The current was shared out equally.',
		move: 'The easier path carries more. Use each path’s own ohms.',
	},
	'current-held-fixed': {
		said: 'The current was kept though the wire changed.',
		move: 'A supply holds its voltage. Divide again with the new ohms.',
	},
	'current-used-up': {
		said: 'The current was made smaller along the loop.',
		move: 'One loop, one current. It is the same at each point.',
	},
	'voltage-shared-in-parallel': {
		said: 'The voltage was shared between side-by-side paths.',
		move: 'Each path joins the same two posts. Each gets all volts.',
	},
	'total-for-per-metre': {
		said: 'A total and a value per metre got mixed.',
		move: 'Ask at every line: for how long a piece?',
	},
	'multiplied-by-length': {
		said: 'You multiplied by the length.',
		move: 'Per metre means divided by the metres.',
	},
	'fraction-ignored': {
		said: 'The usable part was not taken, or the lost one was.',
		move: 'Read what the per cent is of. Multiply by that part.',
	},
	'fraction-inverted': {
		said: 'You divided by the fraction.',
		move: 'A part is less than the whole. Multiply by it.',
	},
	'load-left-out': {
		said: 'The wire itself is missing from the loop.',
		move: 'The current passes wire and battery. Add both resistances.',
	},
	'drop-for-terminal-voltage': {
		said: 'Those are the volts lost inside.',
		move: 'Take them off the source. What is left?',
	},
	'source-voltage-for-drop': {
		said: 'The whole voltage went in for the lost part.',
		move: 'Only the volts lost inside belong to the inner resistance.',
	},
	'one-strand-only': {
		said: 'Only one strand was reckoned.',
		move: 'Count the paths. They share the current.',
	},
	'average-for-parallel': {
		said: 'You took the average.',
		move: 'Two paths conduct better than either. Look below the smallest.',
	},
	// temperature
	'celsius-in-fourth-power': {
		said: 'Degrees Celsius went into the fourth power.',
		move: 'Radiation counts from absolute zero. Add 273 first.',
	},
	'kelvin-added-to-difference': {
		said: '273 was added to a difference.',
		move: 'A difference is the same in °C and K. Add nothing.',
	},
	'cold-for-hot': {
		said: 'The cold resistance was used for the hot wire.',
		move: 'Metals gain ohms with heat. Multiply by the hot factor.',
	},
	'temperature-for-rise': {
		said: 'The temperature went in for the rise.',
		move: 'Count only the degrees above the start.',
	},
	'one-left-out': {
		said: 'That is only the increase.',
		move: 'Add what was there before.',
	},
	'temperature-law-misbuilt': {
		said: 'The temperature law is put together wrongly.',
		move: 'The coefficient is a share of the cold ohms. Multiply by them.',
	},
	'final-temperature-for-rise': {
		said: 'The final temperature went in for the rise.',
		move: 'Heat goes with the change. Subtract the start.',
	},
	'fourth-power-of-difference': {
		said: 'The difference was raised to the fourth power.',
		move: 'Raise each temperature first, then subtract.',
	},
	'surroundings-ignored': {
		said: 'The room was left out.',
		move: 'The room shines back. Subtract its part.',
	},
	// figures and rounding
	'rounded-early': {
		said: 'A middle value was rounded too early.',
		move: 'Keep one more figure until the end.',
	},
	'too-few-figures': {
		said: 'Too few figures.',
		move: 'Give as many figures as you are asked for.',
	},
	'too-many-figures': {
		said: 'More figures than the data carry.',
		move: 'Two or three figures say all that is known.',
	},
	'rounded-wrong-way': {
		said: 'Rounded the wrong way.',
		move: 'Look only at the first figure you drop.',
	},
	// units
	'unit-missing': {
		said: 'The number is right, the unit is missing.',
		move: 'Write the unit behind your result.',
	},
	'unit-wrong-kind': {
		said: 'The unit is of another kind.',
		move: 'Carry the units through the same sum as the numbers.',
	},
	'prefix-on-right-number': {
		said: 'The number is right, its prefix is not.',
		move: 'Read it aloud with the prefix. Can that be?',
	},
	// numbers
	'arithmetic-slip': {
		said: 'The line is right, its result is not.',
		move: 'Estimate first, then key it in again.',
	},
	'miscopied-number': {
		said: 'A given was copied wrongly.',
		move: 'Tick off each given on the job card as you copy it.',
	},
	'given-swapped': {
		said: 'Another given stands in its place.',
		move: 'Look at the job card: which number belongs to which letter?',
	},
	// form of the answer
	'two-answers': {
		said: 'There are two answers.',
		move: 'Say which one you stand by.',
	},
	'working-not-shown': {
		said: 'The working is asked for here.',
		move: 'Write the line that gives each number.',
	},
	'right-by-wrong-working': {
		said: 'The number fits, the way to it does not.',
		move: 'Try the same rule with other numbers.',
	},
	'stopped-early': {
		said: 'The last step is missing.',
		move: 'Read the job again: what is still asked?',
	},
	'resistivity-for-resistance': {
		said: 'The metal’s resistivity was given for the wire’s resistance.',
		move: 'Bring in length and thickness of this piece.',
	},
	'factor-left-out': {
		said: 'One factor is missing.',
		move: 'Compare relation and line, letter by letter.',
	},
	'term-dropped': {
		said: 'One term is missing.',
		move: 'Compare relation and line, term by term.',
	},
} as const satisfies Readonly<Record<string, SlipWords>>;

const slip: Readonly<Record<SlipName, SlipWords>> = everySlip;

const line: Readonly<Record<LineVerdict, string>> = {
	right: 'right',
	'unit-not': 'number right, unit not yet',
	'carried-forward': 'right for your number',
	'method-only': 'right way, wrong number',
	wrong: 'not yet',
	'not-needed': 'not needed',
	'crossed-out': 'crossed out',
	'not-understood': 'not read',
};

/** Words that tell how an answer was marked. */
export const marking = {
	everySlip,
	slip,
	line,
	word: { right: 'Right.', helped: 'Right, with help.', notYet: 'Not yet.', question: 'One question first.' },
	numberRightUnitMissing: (number: string, unit: string) => `The number ${number} is right. It has no unit: ${unit}?`,
	readWithoutUnit: (unit: string) => `Without a unit I read it in ${unit}.`,
	unitWrong: 'The number is right. Its unit is not.',
	wentOff: (find: string) => `Your work is sound up to ${find}. There it goes off.`,
	wentOffAtOnce: (find: string) => `It goes off where you find ${find}.`,
	carriedOn: (find: string) => `The step for ${find} is right for your number.`,
	choiceWrong: 'The number is fine. The choice does not follow from it.',
	choiceMissing: 'The number is fine. Now say what it means for the choice.',
	missing: (find: string) => `I find no value for ${find} yet.`,
	nothingRead: 'I can read no mathematics in this yet.',
	onlyRelation: 'The relation is a good start. Now put the numbers in.',
	maybe: 'Maybe so: ',
	or: 'Or: ',
	twoReadings: (text: string) => `I can read ${text} in two ways. Which do you mean?`,
	reading: (value: string) => `It is ${value}`,
	moves: {
		again: 'Check that line and mark again.',
		twin: 'A worked twin with other numbers is open below.',
		fresh: 'One fresh one without help would settle it.',
		next: 'Go on to the next one.',
		write: 'Write a line such as R = … with numbers and a unit.',
	},
	remark: {
		tooLong: 'Only the first part of this long text was read.',
		relationOnly: 'A relation alone is not marked. Put your numbers in.',
		tooManyFigures: 'Two or three figures would do.',
		runOn: 'One equals sign joins two unequal things. It costs nothing; a new line is clearer.',
		workingNotShown: 'Next time show how you got there.',
		impossible: (value: string) => `${value} cannot be. Look at it once more.`,
		notRead: (text: string) => `Not read: ${text}`,
	},
	steps: {
		caption: 'Step by step',
		step: 'Step',
		method: 'Method',
		value: 'Value',
		unit: 'Unit',
		result: 'Result',
		earned: 'right',
		carried: 'right for your number',
		lost: 'not yet',
		absent: 'not seen',
		none: '–',
		choice: 'Choice',
	},
	lines: { caption: 'Line by line', yours: 'What you wrote', verdict: 'Verdict' },
} as const;
