import { distance, distanceToRegion, type Point, type Region } from '#lib/geometry';
import type { FittingOnDeck } from '../openings/request.js';
import type { Effects } from './observed.js';

/** A place where water is likely to have come in. */
export interface Source {
  readonly at: Point;
  readonly isLeaking: boolean;
}

/** How far from its source damage is likelier than elsewhere, and so many sources are followed up. */
const REACH_MM = 220;
const MOST_SOURCES = 12;

/**
 * How much likelier, in standard deviations of the field: a fitting said to leak, and any other. Judgement: leaks at fasteners
 * are the cause told most, and most fittings do not leak. The spread lets the readings overrule either.
 */
const LEAKING_LIFT = 0.8;
const USUAL_LIFT = 0.1;
const LIFT_SD = 0.8;

/** Fittings on the panel or just beside it, those that leak first. */
export const sourcesOn = (panel: Region, fittings: readonly FittingOnDeck[]): readonly Source[] =>
  fittings
    .filter(({ at }) => distanceToRegion(at, panel) < REACH_MM)
    .map(({ at, isLeaking }) => ({ at, isLeaking: isLeaking === true }))
    .sort((one, other) => Number(other.isLeaking) - Number(one.isLeaking))
    .slice(0, MOST_SOURCES);

/** Each source has an effect of its own beside the level: a bump whose height the readings tell. */
export const withSources = (level: Effects, sources: readonly Source[]): Effects => ({
  means: [...level.means, ...sources.map(({ isLeaking }) => (isLeaking ? LEAKING_LIFT : USUAL_LIFT))],
  sds: [...level.sds, ...sources.map(() => LIFT_SD)],
  at: (place) => [
    ...level.at(place),
    ...sources.map(({ at }) => Math.exp(-((distance(at, place) / REACH_MM) ** 2))),
  ],
});
