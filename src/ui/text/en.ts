import { bench } from './en/bench.ts';
import { caution } from './en/caution.ts';
import { chart } from './en/chart.ts';
import { checks } from './en/checks.ts';
import { choose } from './en/choose.ts';
import { front } from './en/front.ts';
import { gallery } from './en/gallery.ts';
import { lesson } from './en/lesson.ts';
import { marking } from './en/marking.ts';
import { markingPage, practice } from './en/practice.ts';
import { primitive } from './en/primitive.ts';
import { settings } from './en/settings.ts';
import { shell } from './en/shell.ts';
import { tables } from './en/tables.ts';
import { unit } from './en/unit.ts';

/** Every English word the pages show, by area; each area keeps its own file beside this one. */
export const text = {
	bench,
	caution,
	chart,
	checks,
	choose,
	front,
	gallery,
	lesson,
	marking,
	markingPage,
	practice,
	primitive,
	settings,
	shell,
	tables,
	unit,
} as const;
