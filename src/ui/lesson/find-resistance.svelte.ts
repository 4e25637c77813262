import { heldSupply } from '#course/lesson/demo.ts';
import type { Watch } from '#course/lesson/schema.ts';
import type { LessonWork } from './lesson-work.svelte.ts';

export type FindResistanceData = Extract<Watch, { demo: 'find-resistance' }>;
export type Refusal = 'predict' | 'wish' | 'off-first';

export const leastWish = 0.5;

/** A held supply, one resistance between its posts, an ammeter: which resistance gives the wished current? */
export class FindResistance {
	readonly data: FindResistanceData;
	readonly #work: LessonWork;
	/** Ω between the posts; undefined while they are empty */
	between = $state<number>();
	isOn = $state(false);
	refusal = $state<Refusal>();

	/** the wished current in A, or undefined while the field holds none within the supply's limit */
	readonly wish = $derived.by(() => {
		const value = Number(this.wishText.replace(',', '.').replace(/\s*A$/, ''));
		return value >= leastWish && value <= this.data.limit ? value : undefined;
	});
	readonly isWishTyped = $derived.by(() => this.wishText.trim() !== '');
	readonly reading = $derived.by(() =>
		this.isOn ? heldSupply(this.data, this.between) : { current: 0, voltage: 0, isHoldingLimit: false },
	);
	/** what the ammeter says about the wish, once current flows */
	readonly finding = $derived.by(() => {
		if (!this.isOn || this.wish === undefined) return undefined;
		if (this.between === undefined) return 'empty';
		if (this.reading.isHoldingLimit) return 'held';
		if (Math.abs(this.reading.current - this.wish) <= 0.01 * this.wish) return 'confirmed';
		return this.reading.current < this.wish ? 'less' : 'more';
	});

	constructor(data: FindResistanceData, work: LessonWork) {
		this.data = data;
		this.#work = work;
	}

	get wishText(): string {
		return this.#work.typed('wish');
	}

	set wishText(text: string) {
		this.#work.type('wish', text);
	}

	put(resistance: number | undefined): void {
		this.refusal = this.isOn ? 'off-first' : undefined;
		if (!this.isOn) this.between = resistance;
	}

	/** The first press waits for a prediction and a wish; every run with a resistance is noted. */
	flick(): void {
		if (this.isOn) {
			this.isOn = false;
			this.refusal = undefined;
			return;
		}
		this.refusal = !this.#work.isPredicted ? 'predict' : this.wish === undefined ? 'wish' : undefined;
		if (this.refusal !== undefined) return;
		this.isOn = true;
		if (this.between === undefined) return;
		const isNoted = this.#work.readings.some(({ x }) => x === this.between);
		if (!isNoted) this.#work.note({ x: this.between, y: this.reading.current, label: '' });
	}
}
