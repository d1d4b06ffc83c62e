import type { ThreePoint } from '#lib/kernel';

/** Hours of what is done once, for a hand's breadth under one fitting, a spot, a panel and a deck; by the area that is opened or painted. */
export interface HoursBySize {
  readonly by: SizedBy;
  readonly hand: ThreePoint;
  readonly spot: ThreePoint;
  readonly panel: ThreePoint;
  readonly deck: ThreePoint;
}

export type SizedBy = 'opened-m2' | 'finish-m2';

/** Areas for which the hours stand: a hand of 0.02 m2, a spot of 0.15, a panel of 0.8, a deck of 4; and what is painted with them. */
export const sizeAnchorsM2 = {
  'opened-m2': { hand: 0.02, spot: 0.15, panel: 0.8, deck: 4 },
  'finish-m2': { hand: 0.04, spot: 0.3, panel: 2, deck: 12 },
} as const satisfies Readonly<Record<SizedBy, Readonly<Record<JobSize, number>>>>;

const jobSizes = ['hand', 'spot', 'panel', 'deck'] as const;
type JobSize = (typeof jobSizes)[number];

/**
 * Hours of what is done once, straight in the logarithm of the area between the sizes and level beyond them: a job
 * that is one per cent larger never jumps.
 *
 * Source: judgement from told jobs and bills; a fixed part of 2 h (hand), 4.5 h (spot), 10 h (panel) and 23 h (deck) under a roof
 * Worked: operations.spec.ts of this room
 */
export function hoursAtSize({ by, ...hours }: HoursBySize, areaM2: number): ThreePoint {
  const anchorsM2 = sizeAnchorsM2[by];
  if (areaM2 <= anchorsM2.hand) return hours.hand;
  const upper = jobSizes.findIndex((size) => areaM2 < anchorsM2[size]);
  if (upper === -1) return hours.deck;
  const [from, to] = [jobSizes[upper - 1], jobSizes[upper]];
  const share = Math.log(areaM2 / anchorsM2[from]) / Math.log(anchorsM2[to] / anchorsM2[from]);
  return between(hours[from], hours[to], share);
}

const between = (from: ThreePoint, to: ThreePoint, share: number): ThreePoint => ({
  low: from.low + share * (to.low - from.low),
  likely: from.likely + share * (to.likely - from.likely),
  high: from.high + share * (to.high - from.high),
});

/** A thing done once whose mean is given: it seldom takes less than three fifths and now and then takes half as much again. */
export const aboutHours = (mean: number): ThreePoint => ({
  low: mean * 0.6,
  likely: mean * 0.9,
  high: mean * 1.5,
});
