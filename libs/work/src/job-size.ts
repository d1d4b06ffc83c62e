import type { ThreePoint } from '#lib/kernel';

/** Hours of what is done once, for a spot, a panel and a deck; by the area that is opened or that is painted. */
export interface HoursBySize {
  readonly by: SizedBy;
  readonly spot: ThreePoint;
  readonly panel: ThreePoint;
  readonly deck: ThreePoint;
}

export type SizedBy = 'opened-m2' | 'finish-m2';

/** Areas for which the three hours stand: a spot of 0.15 m2, a panel of 0.8, a deck of 4; and what is painted with them. */
export const sizeAnchorsM2: Readonly<Record<SizedBy, readonly [spot: number, panel: number, deck: number]>> =
  {
    'opened-m2': [0.15, 0.8, 4],
    'finish-m2': [0.3, 2, 12],
  };

/**
 * Hours of what is done once, straight in the logarithm of the area between the three sizes and level beyond them: a job
 * that is one per cent larger never jumps.
 *
 * Source: judgement from told jobs and bills; a fixed part of 4.5 h (spot), 10 h (panel) and 23 h (deck) under a roof
 * Worked: libs/work/src/operations.spec.ts
 */
export function hoursAtSize({ by, spot, panel, deck }: HoursBySize, areaM2: number): ThreePoint {
  const [spotM2, panelM2, deckM2] = sizeAnchorsM2[by];
  if (areaM2 <= spotM2) return spot;
  if (areaM2 >= deckM2) return deck;
  return areaM2 <= panelM2
    ? between(spot, panel, Math.log(areaM2 / spotM2) / Math.log(panelM2 / spotM2))
    : between(panel, deck, Math.log(areaM2 / panelM2) / Math.log(deckM2 / panelM2));
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
