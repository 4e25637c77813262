import * as v from 'valibot';

const schema = v.object({
	theme: v.fallback(v.picklist(['system', 'light', 'dark']), 'system'),
	view: v.fallback(v.picklist(['desk', 'wall']), 'desk'),
	voltageLetter: v.fallback(v.picklist(['V', 'U']), 'V'),
	lengthUnit: v.fallback(v.picklist(['mm', 'inch']), 'mm'),
	gauge: v.fallback(v.picklist(['mm', 'awg', 'swg']), 'mm'),
	roomLight: v.fallback(v.picklist(['shaded', 'lit', 'bright']), 'lit'),
});

export type SettingsRecord = v.InferOutput<typeof schema>;

const storageKey = 'ohm-to-ember:settings';
const standard = v.parse(schema, {});

/** What a person chose for this browser; the same on every page, kept between visits where storage allows. */
class Settings {
	theme = $state(standard.theme);
	view = $state(standard.view);
	voltageLetter = $state(standard.voltageLetter);
	lengthUnit = $state(standard.lengthUnit);
	gauge = $state(standard.gauge);
	roomLight = $state(standard.roomLight);

	/** Everything as plain data. */
	get record(): SettingsRecord {
		const { theme, view, voltageLetter, lengthUnit, gauge, roomLight } = this;
		return { theme, view, voltageLetter, lengthUnit, gauge, roomLight };
	}

	/** Takes over what was kept; what cannot be read falls back, field by field. */
	recall(): void {
		Object.assign(this, readSettings(storedText()));
	}

	/** Keeps the choices and lets the style sheets see them. */
	keep(): void {
		const { dataset } = document.documentElement;
		dataset['view'] = this.view;
		dataset['voltageLetter'] = this.voltageLetter;
		if (this.theme === 'system') delete dataset['theme'];
		else dataset['theme'] = this.theme;
		try {
			localStorage.setItem(storageKey, JSON.stringify(this.record));
		} catch {
			// storage refused: the choices hold until the page is closed
		}
	}

	/** Back to how everyone begins. */
	reset(): void {
		Object.assign(this, standard);
	}
}

/** Reads kept settings from text; anything missing or unknown becomes the standard. */
export function readSettings(text: string | null): SettingsRecord {
	try {
		return v.parse(schema, JSON.parse(text ?? '{}'));
	} catch {
		return standard;
	}
}

function storedText(): string | null {
	try {
		return localStorage.getItem(storageKey);
	} catch {
		return null;
	}
}

export const settings = new Settings();
