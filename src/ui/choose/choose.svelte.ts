import { SvelteMap } from 'svelte/reactivity';
import type { Design } from '#core/setup/design.ts';
import { predictionUncertainty } from '#core/setup/uncertainty.ts';
import type { Cupboard } from '#exercise/cupboard.ts';
import { writeAddress } from './address.ts';
import {
	readBrief,
	textsOf,
	type Aim,
	type BriefSettings,
	type BriefTexts,
	type FieldName,
	type FieldProblem,
} from './brief.ts';
import { presetNames, presets, type PresetName } from './presets.ts';
import { benchAddress, findDesigns, type Findings } from './search.ts';

/** The page's brief: texts as typed, the last brief they made, and what the cupboard has for it. */
export class Choose {
	readonly #cupboard: () => Cupboard;

	texts = $state.raw<BriefTexts>(textsOf(presets.foamBow));
	aim = $state<Aim>(presets.foamBow.aim);
	supply = $state<string>(presets.foamBow.supply);
	/** the last good one */
	brief = $state.raw<BriefSettings>(presets.foamBow);
	/** fields left, so that their problems are told */
	#left = $state.raw<readonly FieldName[]>([]);
	/** twice the standard uncertainty of the temperature by the design's address; null where there is none */
	readonly #uncertainties = new SvelteMap<string, number | null>();

	readonly #read = $derived.by(() => readBrief(this.texts, this));
	readonly findings: Findings = $derived.by(() => findDesigns(this.brief, this.#cupboard()));
	readonly isStale = $derived(!this.#read.ok);
	readonly problems: readonly FieldProblem[] = $derived.by(() => {
		const problems = this.#read.ok ? [] : this.#read.problems;
		return problems.filter(({ field }) => this.#left.includes(field));
	});

	/** the brief that is shown, if it is one */
	readonly preset: PresetName | undefined = $derived.by(() => {
		const address = writeAddress(this.brief);
		return this.isStale ? undefined : presetNames.find((name) => writeAddress(presets[name]) === address);
	});

	constructor(cupboard: () => Cupboard) {
		this.#cupboard = cupboard;
	}

	type(field: FieldName, text: string): void {
		if (text === this.texts[field]) return;
		this.texts = { ...this.texts, [field]: text };
		this.#take();
	}

	/** From now on the field tells what is wrong with it, and so do those it is held against. */
	leave(field: FieldName): void {
		const others = (['from', 'shortest', 'room'] as const)
			.filter((name) => name === field)
			.map((name) => partner[name]);
		this.#left = [...this.#left.filter((name) => name !== field), field, ...others];
	}

	chooseAim(aim: Aim): void {
		if (aim === this.aim) return;
		this.aim = aim;
		this.texts = { ...this.texts, ...startOf[aim] };
		this.#take();
	}

	chooseSupply(supply: string): void {
		this.supply = supply;
		this.#take();
	}

	startFrom(preset: PresetName): void {
		this.restore(presets[preset]);
	}

	restore(brief: BriefSettings): void {
		this.texts = textsOf(brief);
		this.aim = brief.aim;
		this.supply = brief.supply;
		this.brief = brief;
		this.#left = [];
	}

	uncertaintyOf(design: Design): number | null | undefined {
		return this.#uncertainties.get(benchAddress(design));
	}

	/** Works out uncertainties still missing, for about so long; true when some are left. */
	workOutUncertainties(milliseconds: number): boolean {
		const end = performance.now() + milliseconds;
		for (const design of this.findings.fit) {
			const key = benchAddress(design);
			if (this.#uncertainties.has(key)) continue;
			this.#uncertainties.set(key, predictionUncertainty(design.setup)?.temperature.standardUncertainty ?? null);
			if (performance.now() > end) return true;
		}
		return false;
	}

	#take(): void {
		const read = this.#read;
		if (read.ok) this.brief = read.value;
	}
}

/** The field whose text a change here can make wrong. */
const partner = { from: 'to', shortest: 'longest', room: 'to' } as const;

const startOf = {
	temperature: { from: '250', to: '350' },
	'power-per-metre': { from: '95', to: '125' },
} as const satisfies Record<Aim, Partial<BriefTexts>>;
