import type { Design } from './latin-hypercube.js';

/** Quantile of values that stand in rising order: linear between neighbours, the ends are the least and the most. */
export function quantileOfSorted(sorted: Float64Array, p: number): number {
  const place = p * (sorted.length - 1);
  const cell = Math.min(sorted.length - 2, Math.floor(place));
  if (sorted.length === 1) return sorted[0];
  return sorted[cell] + (place - cell) * (sorted[cell + 1] - sorted[cell]);
}

/**
 * Quantile of values that stand in rising order, as a mean of those about it: the i-th of n weighs as the density of
 * Beta((n + 1) p, (n + 1) (1 - p)) at (i - 1/2)/n. One value alone strays with the accident of its neighbours.
 *
 * sorted  values, of any unit, at least 200 of them: fewer ask for the weights of whole intervals
 * p       1   share below, 0.05 to 0.95
 *
 * Source: [HARRELL-DAVIS-1982]
 * Worked: libs/costing/src/risk/job-risk.spec.ts
 */
export function steadyQuantile(sorted: Float64Array, p: number): number {
  const { from, weights } = weightsOf(sorted.length, p);
  const least = sorted[from];
  return weights.reduce((sum, weight, place) => sum + weight * (sorted[from + place] - least), least);
}

interface Weights {
  /** Place of the first value that counts. */
  readonly from: number;
  readonly weights: Float64Array;
}

const knownWeights = new Map<string, Weights>();

function weightsOf(count: number, p: number): Weights {
  const key = `${count} ${p}`;
  const found = knownWeights.get(key) ?? betaWeights(count, p);
  knownWeights.set(key, found);
  return found;
}

/** Further off than so many deviations of the beta law no value counts. */
const REACH = 6;

function betaWeights(count: number, p: number): Weights {
  const reach = Math.ceil(REACH * Math.sqrt(p * (1 - p) * count));
  const from = Math.max(0, Math.floor(p * count) - reach);
  const upTo = Math.min(count, Math.ceil(p * count) + reach);
  const atTop = logDensity(p, p, count);
  const raw = Float64Array.from({ length: upTo - from }, (_, place) =>
    Math.exp(logDensity((from + place + 0.5) / count, p, count) - atTop),
  );
  const whole = raw.reduce((sum, one) => sum + one, 0);
  return { from, weights: raw.map((one) => one / whole) };
}

/** But for a constant. */
const logDensity = (x: number, p: number, count: number): number =>
  ((count + 1) * p - 1) * Math.log(x) + ((count + 1) * (1 - p) - 1) * Math.log(1 - x);

export const mean = (values: Float64Array): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

export function deviation(values: Float64Array): number {
  const centre = mean(values);
  return Math.sqrt(values.reduce((sum, value) => sum + (value - centre) ** 2, 0) / (values.length - 1));
}

/** Standard error of a quantile, from its scatter over the replicates of the design. */
export function quantileError(values: Float64Array, { replicates, strata }: Design, p: number): number {
  const found = Float64Array.from({ length: replicates }, (_, replicate) =>
    quantileOfSorted(values.slice(replicate * strata, (replicate + 1) * strata).sort(), p),
  );
  return deviation(found) / Math.sqrt(replicates);
}

const SHARE_BINS = 20;

/** The bin of each level when the levels are shared out evenly. */
export const binsOfLevels = (count: number): Uint8Array =>
  Uint8Array.from({ length: count }, (_, level) => Math.floor((level * SHARE_BINS) / count));

interface Whole {
  readonly mean: number;
  readonly variance: number;
  readonly bins: Uint8Array;
}

/**
 * First-order share of the variance that one variable explains: the variance of the means of its bins over the whole
 * variance, freed of what 20 bins of noise would show (which can leave a share a little below zero: it is then none).
 */
export function varianceShare(values: Float64Array, levels: Int32Array, whole: Whole): number {
  if (whole.variance <= 0) return 0;
  const sums = new Float64Array(SHARE_BINS);
  const counts = new Float64Array(SHARE_BINS);
  for (let i = 0; i < values.length; i += 1) {
    const bin = whole.bins[levels[i]];
    sums[bin] += values[i];
    counts[bin] += 1;
  }
  const between = sums.reduce(
    (sum, total, bin) =>
      counts[bin] === 0 ? sum : sum + counts[bin] * (total / counts[bin] - whole.mean) ** 2,
    0,
  );
  const raw = between / values.length / whole.variance;
  const freed = 1 - ((1 - raw) * (values.length - 1)) / (values.length - SHARE_BINS);
  return Math.max(0, freed);
}

export interface HistogramBar {
  /** Low edge of the bar. */
  readonly from: number;
  /** High edge of the bar. */
  readonly to: number;
  /** Draws that fell in the bar. */
  readonly count: number;
}

export function histogram(sorted: Float64Array, bars: number): readonly HistogramBar[] {
  const from = sorted[0];
  const width = (sorted[sorted.length - 1] - from) / bars;
  if (width === 0) return [{ from, to: from, count: sorted.length }];
  const counts = new Int32Array(bars);
  for (const value of sorted) counts[Math.min(bars - 1, Math.floor((value - from) / width))] += 1;
  return Array.from(counts, (count, bar) => ({
    from: from + bar * width,
    to: from + (bar + 1) * width,
    count,
  }));
}
