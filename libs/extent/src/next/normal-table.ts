import { normalCdf } from '#lib/kernel';

/** Values stand 1/256 of a standard deviation apart, so that a straight line between two of them is right to 5e-7. */
const PER_SD = 256;
const FARTHEST_SD = 6;
const table = Float64Array.from({ length: 2 * FARTHEST_SD * PER_SD + 2 }, (_, index) =>
  normalCdf(index / PER_SD - FARTHEST_SD),
);

/** The normal distribution as often as a map needs it: looked up. */
export function quickCdf(score: number): number {
  const at = (score + FARTHEST_SD) * PER_SD;
  if (at <= 0) return 0;
  if (at >= table.length - 1) return 1;
  const index = Math.floor(at);
  return table[index] + (at - index) * (table[index + 1] - table[index]);
}
