import * as v from 'valibot';
import type { DraftStore } from '#course/draft.ts';
import type { Cupboard } from '#exercise/cupboard.ts';
import type { Exercise } from '#exercise/exercise.ts';
import { markAnswer } from '#exercise/marking/mark.ts';
import type { MarkOptions, Marking, Question } from '#exercise/marking/marking.ts';
import type { Variant } from '#exercise/variant.ts';
import { consequenceOf, type Consequence } from './consequence.ts';

export type Rung = 0 | 1 | 2 | 3 | 4;
export type AnswerState = 'not-tried' | 'not-yet' | 'right' | 'right-with-help';

/** What one job came to, for whoever keeps the progress of a learner. */
export interface JobResult {
	readonly exercise: string;
	readonly seed: string;
	readonly state: AnswerState;
	/** how often it was marked */
	readonly tries: number;
	readonly marking: Marking;
}

const keptSchema = v.object({
	text: v.fallback(v.string(), ''),
	choices: v.fallback(v.record(v.string(), v.string()), {}),
	marked: v.fallback(v.object({ text: v.string(), choices: v.record(v.string(), v.string()) }), {
		text: '',
		choices: {},
	}),
	tries: v.fallback(v.pipe(v.number(), v.integer(), v.minValue(0)), 0),
	rung: v.fallback(v.picklist([0, 1, 2, 3, 4]), 0),
	isHelped: v.fallback(v.boolean(), false),
});

const nextRung = { 0: 1, 1: 2, 2: 3, 3: 4, 4: 4 } as const satisfies Record<Rung, Rung>;
const hintWaitMs = 10_000;
export const twinAfterTries = 3;

/** Everything that is handed to the marking. */
interface Answer {
	readonly text: string;
	readonly choices: Readonly<Record<string, string>>;
}

const nothing: Answer = { text: '', choices: {} };

interface Job {
	readonly exercise: Exercise;
	readonly variant: Variant;
	readonly cupboard: Cupboard;
}

/** One learner at one job: what is typed, how it was marked, which hints are open. */
export class Attempt {
	text = $state('');
	/** options taken from a list, by step */
	choices = $state.raw<Readonly<Record<string, string>>>({});
	tries = $state(0);
	rung = $state<Rung>(0);
	isNextRungOpen = $state(true);
	isHelped = $state(false);
	marking = $state.raw<Marking>();
	/** the whole text that was marked last */
	#marked = $state.raw<Answer>(nothing);
	#wait: ReturnType<typeof setTimeout> | undefined;
	readonly #job: () => Job;
	readonly #options: () => MarkOptions;
	readonly #drafts: () => DraftStore;
	readonly #key: () => string;

	constructor(
		job: () => Job,
		outside: { readonly options: () => MarkOptions; readonly drafts: () => DraftStore; readonly key: () => string },
	) {
		this.#job = job;
		this.#options = outside.options;
		this.#drafts = outside.drafts;
		this.#key = outside.key;
	}

	readonly #whole: Answer = $derived({ text: this.text, choices: this.choices });
	readonly isEmpty = $derived(this.text.trim() === '' && Object.keys(this.choices).length === 0);
	readonly isUnchanged = $derived(this.marking !== undefined && isSame(this.#whole, this.#marked));
	readonly isTwinOpen = $derived(this.rung === 4 || (this.tries >= twinAfterTries && this.marking?.isRight !== true));
	/** whether a number that can be read two ways has to be settled first */
	readonly isAsking = $derived((this.marking?.questions.length ?? 0) > 0);
	readonly state: AnswerState = $derived.by(() => {
		if (this.marking === undefined) return 'not-tried';
		if (this.isAsking || !this.marking.isRight) return 'not-yet';
		return this.isHelped ? 'right-with-help' : 'right';
	});
	readonly consequence: Consequence | undefined = $derived.by(() => {
		const answer = this.isAsking ? undefined : this.marking?.bench;
		const { exercise, variant, cupboard } = this.#job();
		// what is right is not held against its rounding
		const model = this.marking?.isRight === true && answer ? variant.expected[answer.find] : undefined;
		return answer && consequenceOf(exercise, variant, { ...answer, value: model ?? answer.value }, cupboard);
	});
	/** the text as it is understood while it is typed */
	readonly reading: Marking | undefined = $derived.by(() => (this.isEmpty ? undefined : this.#judge(this.#whole)));

	/** Marks what is written; the same as last time stays as it is, and of an empty working no old verdict is left. */
	mark(): JobResult | undefined {
		if (this.isEmpty) this.#forget();
		if (this.isEmpty || this.isUnchanged) return undefined;
		const marking = this.#judge(this.#whole);
		this.marking = marking;
		this.#marked = this.#whole;
		if (marking.questions.length === 0) {
			this.tries += 1;
			this.#openNextRung();
			if (this.isTwinOpen) this.isHelped = true;
		}
		this.keep();
		if (marking.questions.length > 0) return undefined;
		const { exercise, variant } = this.#job();
		return { exercise: exercise.id, seed: variant.seed, state: this.state, tries: this.tries, marking };
	}

	/** Takes an option from a list; an empty one takes the choice back. */
	choose(step: string, option: string): void {
		const others = Object.entries(this.choices).filter(([find]) => find !== step);
		this.choices = Object.fromEntries(option === '' ? others : [...others, [step, option]]);
		this.keep();
	}

	/** Writes the number that was meant in place of one that can be read two ways. */
	answer({ span }: Question, reading: number): void {
		this.text = `${this.text.slice(0, span.start)}${String(reading)}${this.text.slice(span.end)}`;
		this.marking = undefined;
		this.keep();
	}

	/** Opens the next rung of hints; the one after it needs a new try or ten seconds. */
	openHint(): void {
		if (!this.isNextRungOpen) return;
		this.rung = nextRung[this.rung];
		if (!this.marking?.isRight) this.isHelped = true;
		this.isNextRungOpen = false;
		clearTimeout(this.#wait);
		this.#wait = setTimeout(() => this.#openNextRung(), hintWaitMs);
		this.keep();
	}

	/** Takes over what was kept on this device. */
	recall(): void {
		const kept = readKept(this.#drafts().read(this.#key()));
		if (!kept) return;
		this.text = kept.text;
		this.choices = kept.choices;
		this.tries = kept.tries;
		this.rung = kept.rung;
		this.isHelped = kept.isHelped;
		if (kept.tries > 0 && !isSame(kept.marked, nothing)) {
			this.#marked = kept.marked;
			this.marking = this.#judge(kept.marked);
		}
	}

	/** Keeps everything typed on this device. */
	keep(): void {
		const { text, choices, tries, rung, isHelped } = this;
		const kept = { text, choices, marked: this.#marked, tries, rung, isHelped };
		this.#drafts().write(this.#key(), JSON.stringify(kept));
	}

	/** Stops waiting; to be called when the job leaves the page. */
	leave(): void {
		clearTimeout(this.#wait);
	}

	#judge({ text, choices }: Answer): Marking {
		const { exercise, variant } = this.#job();
		return markAnswer(exercise, variant, text, { ...this.#options(), choices });
	}

	#forget(): void {
		this.marking = undefined;
		this.#marked = nothing;
		this.keep();
	}

	#openNextRung(): void {
		clearTimeout(this.#wait);
		this.isNextRungOpen = true;
	}
}

function isSame(a: Answer, b: Answer): boolean {
	const steps = new Set([...Object.keys(a.choices), ...Object.keys(b.choices)]);
	return a.text === b.text && [...steps].every((step) => a.choices[step] === b.choices[step]);
}

function readKept(text: string | undefined): v.InferOutput<typeof keptSchema> | undefined {
	if (text === undefined) return undefined;
	try {
		const kept = v.safeParse(keptSchema, JSON.parse(text));
		return kept.success ? kept.output : undefined;
	} catch {
		return undefined;
	}
}
