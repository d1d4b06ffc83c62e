import type { AtExtent } from '../cost-line.js';

/**
 * What a line comes to at an extent, as a factor of its amount: straight between the extents at which it was planned
 * again and the recorded one, level beyond the last. A line without any does not grow.
 *
 * Source: [ARITHMETIC] linear interpolation
 * Worked: libs/costing/src/risk/at-extents.spec.ts
 */
export function amountFactorAt(points: readonly AtExtent[], extentFactor: number): number {
  if (points.length === 0) return 1;
  let before: AtExtent = recorded;
  for (const point of withRecorded(points)) {
    if (extentFactor <= point.extentFactor)
      return point.extentFactor === before.extentFactor || extentFactor <= before.extentFactor
        ? point.amountFactor
        : between(before, point, extentFactor);
    before = point;
  }
  return before.amountFactor;
}

const recorded: AtExtent = { extentFactor: 1, amountFactor: 1 };

const between = (from: AtExtent, to: AtExtent, extentFactor: number): number =>
  from.amountFactor +
  ((extentFactor - from.extentFactor) / (to.extentFactor - from.extentFactor)) *
    (to.amountFactor - from.amountFactor);

/** The recorded extent stands at one by definition, wherever it falls among the others. */
const withRecorded = (points: readonly AtExtent[]): readonly AtExtent[] =>
  points.some(({ extentFactor }) => extentFactor === 1)
    ? points
    : [...points, recorded].sort((a, b) => a.extentFactor - b.extentFactor);
