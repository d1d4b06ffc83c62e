import { CURE_REFERENCE_C, rateRatioOf } from '../arrhenius.js';
import type { GateLimits } from './gates.js';

const STEPS_PER_HOUR = 2;

/**
 * When resin that goes on at an hour of a forecast has gelled, in hours after the forecast begins: its age is added up
 * along the deck's temperature, each half hour at the slower of the rates at its ends, so that it never gels before.
 * Without end where the forecast does not reach.
 */
export function gelEnds(
  deckC: Float64Array,
  gel: NonNullable<GateLimits['gel']>,
): (fromHour: number) => number {
  const marks = deckC.length * STEPS_PER_HOUR + 1;
  const rates = Float64Array.from({ length: marks }, (_, mark) =>
    rateRatioOf(gel.activationEnergyKJPerMol, CURE_REFERENCE_C, deckAtMark(deckC, mark)),
  );
  const ages = new Float64Array(marks);
  for (let mark = 1; mark < marks; mark += 1)
    ages[mark] = ages[mark - 1] + Math.min(rates[mark - 1], rates[mark]) / STEPS_PER_HOUR;
  return (fromHour) => {
    const from = fromHour * STEPS_PER_HOUR;
    if (from >= marks) return Number.POSITIVE_INFINITY;
    const mark = firstAt(ages, ages[from] + gel.ageH, from);
    return mark < marks ? mark / STEPS_PER_HOUR : Number.POSITIVE_INFINITY;
  };
}

/** Straight between the hours; the last one lasts to its end. */
function deckAtMark(deckC: Float64Array, mark: number): number {
  const hour = Math.min(deckC.length - 1, mark / STEPS_PER_HOUR);
  const [before, after] = [deckC[Math.floor(hour)], deckC[Math.ceil(hour)]];
  return before + (after - before) * (hour - Math.floor(hour));
}

/** The first place, not before `from`, at which rising numbers reach one; the length when they do not. */
function firstAt(rising: Float64Array, wanted: number, from: number): number {
  let [low, high] = [from, rising.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (rising[middle] < wanted) low = middle + 1;
    else high = middle;
  }
  return low;
}
