import { expect, test } from 'vitest';
import { parseExpression } from '#core/expression/parse.ts';
import { fromChain, fromExpression, plainText, symbolNode, unitNode } from '#ui/formula/from-expression.ts';

const vocabulary = {
	symbol: (name: string) => (['V', 'I', 'R', 'r', 'L', "R'", 'I_max', 'rho'].includes(name) ? name : undefined),
	unit: (text: string) => (['Ω', 'V', 'A', 'm^2', 'mm^2'].includes(text) ? { factor: 1 } : undefined),
};

function read(text: string) {
	const parsed = parseExpression(text, vocabulary);
	if (!parsed.ok) throw new Error(`cannot read ${text}`);
	return parsed.value;
}
const set = (text: string) => plainText(fromExpression(read(text)));

test('a quotient becomes a fraction, so that its parts need no brackets', () => {
	expect(fromExpression(read('V/I'))).toEqual({
		tag: 'fraction',
		parts: [
			{ tag: 'letter', text: 'V' },
			{ tag: 'letter', text: 'I' },
		],
	});
	expect(set('V/(R+r)')).toBe('(V)/(R+r)');
});

test('brackets come back where leaving them out would change the value', () => {
	expect(set('I*(R+r)')).toBe('I·(R+r)');
	expect(set('V-(R-r)')).toBe('V−(R−r)');
	expect(set('V-R-r')).toBe('V−R−r');
	expect(set('(R+r)^2')).toBe('(R+r)^2');
	expect(set('(I*R)^2')).toBe('(I·R)^2');
	expect(set('I*R^2')).toBe('I·R^2');
	expect(set('R*(-I)')).toBe('R·(−I)');
	expect(set('sqrt(V/R)')).toBe('√((V)/(R))');
});

test('a power of a value with its unit keeps the value together', () => {
	expect(set('(2 A)^2')).toBe('(2\u00A0A)^2');
});

test('figures are kept as written and powers of ten are raised', () => {
	expect(set('4.80')).toBe('4.80');
	expect(set('3e-7')).toBe('3×10^−7');
	expect(set('12000')).toBe('12\u202F000');
});

test('the page decides between V and U, and between point and comma', () => {
	const style = { voltageLetter: 'U', decimalSign: ',' } as const;
	expect(plainText(fromExpression(read('V/2.5'), style))).toBe('(U)/(2,5)');
});

test('letters are told from what names the thing, and primes stay', () => {
	expect(symbolNode('I_max')).toEqual({
		tag: 'index',
		parts: [
			{ tag: 'letter', text: 'I' },
			{ tag: 'unit', text: 'max' },
		],
	});
	expect(plainText(symbolNode("R'"))).toBe('R′');
	expect(plainText(symbolNode('rho'))).toBe('ρ');
	expect(plainText(symbolNode('?S'))).toBe('S');
});

test('powers of units are raised', () => {
	expect(unitNode('mm^2')).toEqual({
		tag: 'power',
		parts: [
			{ tag: 'unit', text: 'mm' },
			{ tag: 'number', text: '2' },
		],
	});
	expect(plainText(unitNode('m^-1'))).toBe('m^−1');
});

test('a chain is joined by equals signs', () => {
	expect(plainText(fromChain([read('R'), read('V/I'), read('4.8 Ω')]))).toBe('R=(V)/(I)=4.8\u00A0Ω');
});
