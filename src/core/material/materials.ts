import { cral255 } from './cral-25-5.ts';
import { cral205 } from './cral-20-5.ts';
import { nicr8020 } from './nicr-80-20.ts';
import { nicr7030 } from './nicr-70-30.ts';
import { nicr6015 } from './nicr-60-15.ts';
import { cuni44 } from './cuni-44.ts';
import { x5crni1810 } from './x5crni18-10.ts';
import { x5crnimo17122 } from './x5crnimo17-12-2.ts';
import { ni992 } from './ni-99-2.ts';
import { tiGrade1 } from './ti-grade-1.ts';
import { tungsten } from './tungsten.ts';
import { cuEtp } from './cu-etp.ts';
import { softSteel } from './soft-steel.ts';
import type { Material, MaterialId } from './material.ts';

/** Every metal of the course, the heating alloys first. */
export const materials: Readonly<Record<MaterialId, Material>> = {
	'cral-25-5': cral255,
	'cral-20-5': cral205,
	'nicr-80-20': nicr8020,
	'nicr-70-30': nicr7030,
	'nicr-60-15': nicr6015,
	'cuni-44': cuni44,
	'x5crni18-10': x5crni1810,
	'x5crnimo17-12-2': x5crnimo17122,
	'ni-99-2': ni992,
	'ti-grade-1': tiGrade1,
	w: tungsten,
	'cu-etp': cuEtp,
	'soft-steel': softSteel,
};

export const materialIds: readonly MaterialId[] = [
	'cral-25-5',
	'cral-20-5',
	'nicr-80-20',
	'nicr-70-30',
	'nicr-60-15',
	'cuni-44',
	'x5crni18-10',
	'x5crnimo17-12-2',
	'ni-99-2',
	'ti-grade-1',
	'w',
	'cu-etp',
	'soft-steel',
];

export function isMaterialId(text: string): text is MaterialId {
	return Object.hasOwn(materials, text);
}
