import { evaluate } from '#core/expression/evaluate.ts';
import { parseExpression } from '#core/expression/parse.ts';

/**
 * The value of a formula given as text, by the reader that also reads learners' answers.
 *
 * @throws RangeError when it cannot be read or uses a letter without value
 */
export function readFormula(formula: string, values: Readonly<Record<string, number>>): number {
	const read = parseExpression(formula, {
		symbol: (name) => (Object.hasOwn(values, name) ? name : undefined),
		unit: () => undefined,
	});
	if (!read.ok) throw new RangeError(`cannot read ${formula}: ${read.problems.map(({ code }) => code).join(', ')}`);
	const value = evaluate(read.value, (name) => values[name]);
	if (!Number.isFinite(value)) throw new RangeError(`${formula} has no value`);
	return value;
}
