import type { LineRequest } from '#lib/costing';

/** Life of what is replaced, years: hull structure from an adjuster's list, the rest judged; no scale for decks is published. */
export const judgedLives = [
  { part: 'core, laminate and resin', years: 45, purposes: ['core', 'laminate', 'resin', 'filler'] },
  { part: 'fastenings', years: 20, purposes: ['fastener'] },
  { part: 'paint and nonskid', years: 10, purposes: ['finish'] },
  { part: 'sealant and what is used up', years: 7, purposes: ['consumable', 'safety'] },
] as const;

const OTHER_LIFE_YEARS = 10;

/** By the purpose that a line is bought for. */
export const judgedLifeYears = ({ stage }: Pick<LineRequest, 'stage'>): number =>
  judgedLives.find(({ purposes }) => purposes.some((purpose) => purpose === stage))?.years ??
  OTHER_LIFE_YEARS;
