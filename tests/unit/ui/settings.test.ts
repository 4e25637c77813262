import { expect, test } from 'vitest';
import { readSettings } from '#ui/settings.svelte.ts';

const standard = {
	theme: 'system',
	view: 'desk',
	voltageLetter: 'V',
	lengthUnit: 'mm',
	gauge: 'mm',
	roomLight: 'lit',
};

test('nothing kept means the standard settings', () => {
	expect(readSettings(null)).toEqual(standard);
});

test('text that is no JSON means the standard settings', () => {
	expect(readSettings('{"theme":')).toEqual(standard);
	expect(readSettings('null')).toEqual(standard);
});

test('one unknown value falls back alone, the others hold', () => {
	expect(readSettings('{"theme":"loud","voltageLetter":"U","gauge":"swg"}')).toEqual({
		...standard,
		voltageLetter: 'U',
		gauge: 'swg',
	});
});
