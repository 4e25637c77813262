import { materials } from '#core/material/materials.ts';
import { unitSpace, writeNumber, writeQuantity } from '#core/quantity/write.ts';
import { runCheck, type CheckFacts, type CheckResult, type CheckValue } from '#course/checks/check.ts';
import { checksBySubject, type CheckSubject } from '#course/checks/checks.ts';
import { checkSources } from '#course/checks/sources.ts';
import { unreckonedChecks } from '#course/checks/unreckoned.ts';
import {
	lawAgainstSolution,
	measuredSpreads,
	misjudgements,
	plannedTemperatures,
	type Spread,
} from '#course/checks/weak-spots.ts';
import type { PageServerLoad } from './$types.js';

// everything is reckoned and written while the site is built: the browser gets text only
export const load: PageServerLoad = () => {
	const subjects = subjectIds.map(subjectOf);
	const emissivity = materials['nicr-80-20'].emissivity.oxidised;
	return {
		subjects,
		within: total(subjects.map(({ within }) => within)),
		counted: total(subjects.map(({ counted }) => counted)),
		leftOut: byReason(),
		leftOutCount: unreckonedChecks.length,
		spreads: measuredSpreads.map((entry) => ({
			against: entry.against,
			had: entry.had,
			count: String(entry.count),
			heatLoss: 'heatLoss' in entry ? written(entry.heatLoss, 1) : undefined,
			current: 'current' in entry ? written(entry.current, 1) : undefined,
		})),
		law: { ...written(lawAgainstSolution()), count: lawAgainstSolution().count },
		planned: plannedTemperatures.map(degrees),
		effects: misjudgements().map(({ cause, reached }) => ({
			cause,
			reached: reached.map((temperature) => (temperature === undefined ? undefined : degrees(temperature))),
		})),
		emissivity: {
			value: writeNumber(emissivity.value, { figures: 2 }),
			min: writeNumber(emissivity.min, { figures: 2 }),
			max: writeNumber(emissivity.max, { figures: 2 }),
		},
	};
};

const subjectIds: readonly CheckSubject[] = [
	'resistance',
	'air',
	'convection',
	'radiation',
	'glow',
	'along-the-wire',
	'uncertainty',
];

function subjectOf(id: CheckSubject) {
	const results = checksBySubject[id].map(runCheck);
	const counted = results.filter(({ isGate }) => isGate);
	return {
		id,
		within: counted.filter(({ isWithin }) => isWithin).length,
		counted: counted.length,
		shown: results.length - counted.length,
		groups: bySource(results),
	};
}

/** Rows of one source and one way of having it stand together under its citation. */
function bySource(results: readonly CheckResult[]) {
	const keys = [...new Set(results.map(keyOf))];
	return keys.map((key) => {
		const members = results.filter((result) => keyOf(result) === key);
		const [first] = members;
		if (first === undefined) throw new RangeError(`no check of ${key}`);
		// a remark on all rows is said once
		const note = members.every((member) => member.note === first.note) ? first.note : undefined;
		const rows = members.map((member) => ({ ...rowOf(member), note: note === undefined ? member.note : undefined }));
		return { key, citation: checkSources[first.source], had: first.had, note, rows };
	});
}

/** What is left out for the same reason stands together. */
function byReason() {
	const reasons = [...new Set(unreckonedChecks.map(({ reason }) => reason))];
	return reasons.map((reason) => {
		const members = unreckonedChecks.filter((entry) => entry.reason === reason);
		const citations = [...new Map(members.map((entry) => [keyOf(entry), citationOf(entry)])).values()];
		return { reason, entries: members.map(described), citations };
	});
}

function keyOf({ source, had }: CheckFacts): string {
	return `${source} ${had}`;
}

function citationOf({ source, had }: CheckFacts) {
	return { text: checkSources[source], had };
}

function described(entry: CheckFacts) {
	const { number, quantity, item, published, unit } = entry;
	return {
		number,
		quantity: quantity.charAt(0).toUpperCase() + quantity.slice(1),
		item: heldTogether(item),
		published: valueText(published, figuresOf, unit),
	};
}

/** Numbers stay on one line with the unit behind or the letter before them. */
function heldTogether(item: string): string {
	return item
		.replaceAll(/(?<=\d) (?=[°µΩ/a-zA-Z])/g, unitSpace)
		.replaceAll(/(?<=\b(?:Re|Ra|Gr|Pr|AWG|of)|ε) (?=\d)/g, '\u00A0');
}

function rowOf(result: CheckResult) {
	const { ours, published, deviation, tolerance, unit, isWithin, isGate } = result;
	const figures = Math.max(...[published].flat().map(figuresOf));
	const within = isWithin ? ('within' as const) : ('outside' as const);
	return {
		...described(result),
		ours: valueText(ours, () => Math.min(10, Math.max(4, figures + 1)), unit),
		deviation: Math.abs(deviation) < 1e-12 ? undefined : signed(deviation, 'relative' in tolerance, unit),
		tolerance:
			'relative' in tolerance
				? percent(tolerance.relative, 1)
				: withUnit(writeNumber(tolerance.absolute, { figures: leastFigures(tolerance.absolute) }), unit),
		verdict: isGate ? within : (`${within}-shown` as const),
	};
}

function valueText(value: CheckValue, figures: (part: number) => number, unit: string): string {
	return withUnit(
		[value]
			.flat()
			.map((part) => writeNumber(part, { figures: figures(part) }))
			.join('; '),
		unit,
	);
}

/** Figures a published value was printed with, ten at most. */
function figuresOf(value: number): number {
	const digits = String(Math.abs(value)).replace(/e.*$/, '').replace('.', '').replace(/^0+/, '');
	return Math.min(10, Math.max(1, digits.length));
}

function leastFigures(value: number): number {
	return Number(value.toPrecision(1)) === value ? 1 : 2;
}

function signed(deviation: number, isRelative: boolean, unit: string): string {
	const size = Math.abs(deviation);
	const text = isRelative ? percent(size, 2) : withUnit(writeNumber(size, { figures: 2 }), unit);
	return `${deviation < 0 ? '−' : '+'}${text}`;
}

function percent(share: number, figures: number): string {
	const rounded = Number((share * 100).toPrecision(12));
	return `${writeNumber(rounded, { figures: Math.max(figures, leastFigures(rounded) === 1 ? 1 : 2) })}${unitSpace}%`;
}

/** Cited spreads keep the figures they were cited with. */
function written({ mean, rms }: Spread, figures = 2) {
	const sign = mean < 0 ? '−' : '+';
	return { mean: `${sign}${percent(Math.abs(mean), figures)}`, rms: percent(rms, figures) };
}

function withUnit(text: string, unit: string): string {
	if (unit === '') return text;
	// a long unit may go to the next line of a narrow cell
	return `${text}${unit.length > 5 ? ' ' : unitSpace}${unit}`;
}

function degrees(temperature: number): string {
	return writeQuantity(temperature, '°C', { decimals: 0 });
}

function total(values: readonly number[]): number {
	return values.reduce((sum, value) => sum + value, 0);
}
