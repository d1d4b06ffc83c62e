/** A quantity nobody knows exactly: least, most likely and most. */
export interface ThreePoint {
  /** Low end of the spread. */
  readonly low: number;
  /** Most likely value of the spread. */
  readonly likely: number;
  /** High end of the spread. */
  readonly high: number;
}

export const scaled = ({ low, likely, high }: ThreePoint, factor: number): ThreePoint => ({
  low: low * factor,
  likely: likely * factor,
  high: high * factor,
});

/**
 * Mean of the triangular distribution: (a + m + b)/3, in the unit of the points. Any order of points has one.
 *
 * Source: [TRIANGULAR] standard result
 * Worked: libs/kernel/src/three-point.spec.ts
 */
export const triangularMean = ({ low, likely, high }: ThreePoint): number => (low + likely + high) / 3;

/**
 * Variance of the triangular distribution: (a2 + m2 + b2 - am - ab - mb)/18, in the square of the points' unit.
 *
 * Source: [TRIANGULAR] standard result
 * Worked: libs/kernel/src/three-point.spec.ts
 */
export const triangularVariance = ({ low, likely, high }: ThreePoint): number =>
  (low ** 2 + likely ** 2 + high ** 2 - low * likely - low * high - likely * high) / 18;

/**
 * Quantile of the triangular distribution on least, most likely and most.
 *
 * With c = (m - a)/(b - a): below c the quantile is a + sqrt(p (b-a)(m-a)), above it b - sqrt((1-p)(b-a)(b-m)).
 *
 * p  argument   1       probability, 0 to 1
 * x  returned   as the points
 *
 * Valid:  a <= m <= b; a certain quantity is returned as it is.
 * Source: [TRIANGULAR] standard result, inversion of the piecewise quadratic distribution function
 * Worked: test/reference/cases/extent-distributions.ts
 */
export function triangularQuantile({ low, likely, high }: ThreePoint, p: number): number {
  const width = high - low;
  if (width <= 0) return likely;
  const split = (likely - low) / width;
  return p <= split
    ? low + Math.sqrt(p * width * (likely - low))
    : high - Math.sqrt((1 - p) * width * (high - likely));
}
