import type { ThreePoint } from '#lib/kernel';
import { defineFormula } from '#lib/provenance';
import { fraction } from '#lib/units';

export const isOrdered = ({ low, likely, high }: ThreePoint): boolean =>
  Number.isFinite(low) && Number.isFinite(likely) && Number.isFinite(high) && low <= likely && likely <= high;

const threePointInputs = {
  low: { symbol: 'a', unit: '1', meaning: 'least' },
  likely: { symbol: 'm', unit: '1', meaning: 'most likely' },
  high: { symbol: 'b', unit: '1', meaning: 'most' },
} as const;

/** The mean that project planning has used with three points since 1959. */
export const threePointMean = defineFormula({
  id: 'takeoff.three-point-mean',
  title: 'Mean of a three-point estimate (beta form)',
  cite: { source: 'MALCOLM-1959', clause: 'expected elapsed time' },
  inputs: threePointInputs,
  output: { symbol: 't', unit: '1', meaning: 'mean of a three-point estimate' },
  evaluate: ({ low, likely, high }) => fraction((low + 4 * likely + high) / 6),
  // By hand: (2 + 4 x 5 + 14) / 6 = 36 / 6 = 6.
  worked: [{ at: 'by hand', given: { low: 2, likely: 5, high: 14 }, printed: '6.0' }],
});

/** A sixth of the range: the deviation that goes with the mean above. */
export const threePointDeviation = defineFormula({
  id: 'takeoff.three-point-deviation',
  title: 'Standard deviation of a three-point estimate (beta form)',
  cite: { source: 'MALCOLM-1959', clause: 'variance of elapsed time' },
  inputs: threePointInputs,
  output: { symbol: 'σ', unit: '1', meaning: 'standard deviation of a three-point estimate' },
  evaluate: ({ low, high }) => fraction((high - low) / 6),
  // By hand: (14 - 2) / 6 = 2.
  worked: [{ at: 'by hand', given: { low: 2, likely: 5, high: 14 }, printed: '2.0' }],
});
