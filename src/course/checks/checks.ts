import { airChecks } from './air.ts';
import { alongTheWireChecks } from './along-the-wire.ts';
import type { PublishedCheck } from './check.ts';
import { combinedUncertaintyChecks } from './combined-uncertainty.ts';
import { convectionChecks } from './convection.ts';
import { glowChecks } from './glow.ts';
import { radiationChecks } from './radiation.ts';
import { resistanceChecks } from './resistance.ts';
import { uncertaintyChecks } from './uncertainty.ts';

/** All reckoned checks by subject, in the order they are shown. */
export const checksBySubject = {
	resistance: resistanceChecks,
	air: airChecks,
	convection: convectionChecks,
	radiation: radiationChecks,
	glow: glowChecks,
	'along-the-wire': alongTheWireChecks,
	uncertainty: [...combinedUncertaintyChecks, ...uncertaintyChecks],
} as const satisfies Record<string, readonly PublishedCheck[]>;

export type CheckSubject = keyof typeof checksBySubject;

/** The same without subjects, by number. */
export const publishedChecks: readonly PublishedCheck[] = Object.values(checksBySubject)
	.flat()
	.sort((a, b) => a.number - b.number);
