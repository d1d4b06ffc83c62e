/** A moment, and that of the absolute values for scale. */
export interface Moment {
  readonly value: number;
  readonly size: number;
}

/** Moments nearer than this share of their greatest size are the same: it is the rounding to micrometres that parts them. */
const SAME_SHARE = 1e-5;

/**
 * The one of several ways to look at a deck in which it leans most to the far side: the first moment that tells them apart
 * decides. Those that no moment tells apart show a deck that is its own mirror image, and the first of them is taken.
 */
export function leaningMost<T>(ways: readonly T[], moments: readonly ((way: T) => Moment)[]): T {
  let left = ways;
  for (const momentIn of moments) {
    if (left.length === 1) break;
    const found = left.map(momentIn);
    const most = Math.max(...found.map(({ value }) => value));
    left = left.filter((_, index) => found[index].value >= most - SAME_SHARE * found[index].size);
  }
  return left[0];
}
