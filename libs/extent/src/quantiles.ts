/** Three points of an uncertain number. */
export interface Quantiles {
  readonly p10: number;
  readonly p50: number;
  readonly p90: number;
}

/**
 * Quantiles of a sample, between its sorted values in proportion (the usual definition, number 7 of nine).
 * Source: [HYNDMAN-FAN-1996] definition 7
 * Worked: test/reference/cases/extent-distributions.ts
 */
export function quantileOf(sorted: ArrayLike<number>, probability: number): number {
  const place = probability * (sorted.length - 1);
  const below = Math.floor(place);
  const above = Math.min(sorted.length - 1, below + 1);
  return sorted[below] + (place - below) * (sorted[above] - sorted[below]);
}

export function quantilesOf(values: ArrayLike<number>): Quantiles {
  const sorted = Float64Array.from(values).sort();
  return { p10: quantileOf(sorted, 0.1), p50: quantileOf(sorted, 0.5), p90: quantileOf(sorted, 0.9) };
}
