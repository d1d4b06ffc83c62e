/** Three points of an uncertain number. */
export interface Quantiles {
  /** Value that one case in ten stays below. */
  readonly p10: number;
  /** Value that half of the cases stay below. */
  readonly p50: number;
  /** Value that nine cases in ten stay below. */
  readonly p90: number;
}

/**
 * Quantiles of a sample, between its sorted values in proportion (the usual definition, number 7 of nine).
 * Source: [HYNDMAN-FAN-1996] definition 7
 * Worked: test/reference/cases/extent-distributions.ts
 */
export const quantileOf = (sorted: ArrayLike<number>, probability: number): number =>
  quantileAmong(sorted.length, (place) => sorted[place], probability);

/** The same of so many values that rise with their place, of which only two need to be known. */
export function quantileAmong(
  count: number,
  valueAt: (place: number) => number,
  probability: number,
): number {
  const place = probability * (count - 1);
  const below = Math.floor(place);
  const above = Math.min(count - 1, below + 1);
  return valueAt(below) + (place - below) * (valueAt(above) - valueAt(below));
}

export function quantilesOf(values: ArrayLike<number>): Quantiles {
  const sorted = Float64Array.from(values).sort();
  return { p10: quantileOf(sorted, 0.1), p50: quantileOf(sorted, 0.5), p90: quantileOf(sorted, 0.9) };
}

/** The same of values that count for more or less: each stands at the middle of its share of the weight. */
export function weighedQuantilesOf(
  values: readonly { readonly value: number; readonly weight: number }[],
): Quantiles {
  const sorted = [...values].sort((one, other) => one.value - other.value);
  const total = sorted.reduce((sum, { weight }) => sum + weight, 0);
  const at = (probability: number): number => {
    let passed = 0;
    for (const { value, weight } of sorted) {
      passed += weight / total;
      if (passed >= probability) return value;
    }
    return sorted[sorted.length - 1].value;
  };
  return { p10: at(0.1), p50: at(0.5), p90: at(0.9) };
}
