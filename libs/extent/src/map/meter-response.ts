import type { Survey } from '../reading.js';

/** Where this meter reads over sound and over bad core, as a share of the way from its dry to its wet reference, and how far it strays. */
export interface MeterResponse {
  readonly overSound: number;
  readonly overBad: number;
  readonly sd: number;
}

/**
 * What is taken of a meter beforehand: near its dry reference over sound core, most of the way to the wet one over bad core.
 * Judgement; no published response was found. The readings correct it.
 */
export const usualResponse: MeterResponse = { overSound: 0.15, overBad: 0.7, sd: 0.22 };

/** What is taken beforehand weighs as so many readings over either core. */
export const METERED_BEFOREHAND = 4;

/** Metal, a tank or a thick spot can make a meter read anything; the share, spread over twice the scale. */
const ANYTHING = 0.04 / 2;

export const shareOfScale = (
  value: number,
  { dryReference, wetReference }: NonNullable<Survey['meter']>,
): number => Math.min(1.5, Math.max(-0.5, (value - dryReference) / (wetReference - dryReference)));

/** How likely the reading is over bad and over sound core. */
export function seenBy(
  { overBad, overSound, sd }: MeterResponse,
  share: number,
): { readonly ifBad: number; readonly ifSound: number } {
  const density = (middle: number) =>
    Math.exp(-(((share - middle) / sd) ** 2) / 2) / (sd * Math.sqrt(2 * Math.PI));
  return { ifBad: density(overBad) + ANYTHING, ifSound: density(overSound) + ANYTHING };
}

/**
 * The response anew from the chance that each reading stood over bad core: the means and the common spread of two normal
 * kinds of readings, held to what was taken beforehand. Unreliable readings teach nothing.
 * Source: [DAWID-SKENE-1979] section 3 for the step; [GELMAN-2013] section 3.3 for holding means and spread to a prior
 * Worked: test/reference/cases/extent-hammer.ts
 */
export function learntResponse(
  before: MeterResponse,
  { readings, meter }: Survey,
  badAt: ArrayLike<number>,
): MeterResponse {
  if (meter === undefined) return before;
  const read = readings.flatMap((reading, index) =>
    reading.kind === 'moisture' && reading.isUnreliable !== true
      ? [{ share: shareOfScale(reading.value, meter), bad: badAt[index] }]
      : [],
  );
  const meanOf = (prior: number, weightOf: (bad: number) => number): number => {
    const total = METERED_BEFOREHAND + read.reduce((sum, { bad }) => sum + weightOf(bad), 0);
    return (
      (METERED_BEFOREHAND * prior + read.reduce((sum, { share, bad }) => sum + weightOf(bad) * share, 0)) /
      total
    );
  };
  const overBad = meanOf(before.overBad, (bad) => bad);
  const overSound = Math.min(
    overBad - 0.1,
    meanOf(before.overSound, (bad) => 1 - bad),
  );
  const squares = read.reduce(
    (sum, { share, bad }) =>
      sum + bad * strayed(share - overBad, before.sd) + (1 - bad) * strayed(share - overSound, before.sd),
    2 * METERED_BEFOREHAND * before.sd ** 2,
  );
  return { overBad, overSound, sd: Math.sqrt(squares / (2 * METERED_BEFOREHAND + read.length)) };
}

/** A reading gone astray altogether does not widen the spread of the rest. */
const strayed = (off: number, sd: number): number => Math.min(off ** 2, (3 * sd) ** 2);
