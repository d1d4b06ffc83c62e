import type { Reading, Survey } from '#lib/extent';
import { normalCdf } from '#lib/kernel';
import type { Point } from '#lib/geometry';
import { SCALE, type Team } from './survey.js';

/**
 * What could be known at best, nearly: a probit process on all pairs of readings, told the deck's bad share, the team's error rates
 * and the range that fits this kind of damage best (found once, on other decks, by the least Brier score). It does not know the
 * kind of damage beyond that, nor where errors hang together. Own code: it shares nothing with the map.
 */
export const bestRangeMm: Readonly<Record<string, number>> = {
  'leaks with flow': 600,
  'rounded patches': 600,
  'rough domains': 200,
  'smooth field': 650,
  'along seams': 450,
  'in from the edge': 300,
  'grown from seeds': 500,
  'blocks of scored core': 280,
  // Set before the first run from the size of what is drawn, not found by a search.
  'soaked': 500,
  'ponds': 400,
  'whole planks': 350,
  'walked rot': 450,
  'one wavelength': 450,
  'wandering cracks': 300,
  'pieces of core': 400,
  'bands over beams': 300,
};

export interface Known {
  readonly team: Team;
  readonly share: number;
  readonly rangeMm: number;
}

export function oracleChances(survey: Survey, places: readonly Point[], known: Known): Float64Array {
  const { readings } = survey;
  const likelihoods = readings.map((reading) => likelihoodOf(reading, known.team));
  const level = quantile(known.share);
  const kernel = (a: Point, b: Point) => matern52(Math.hypot(a[0] - b[0], a[1] - b[1]), known.rangeMm);
  const count = readings.length;
  const prior = readings.map(({ at }) => Float64Array.from(readings, (other) => kernel(at, other.at)));
  const weight = new Float64Array(count);
  const pull = new Float64Array(count);
  let solved = posterior(prior, weight, pull, level);
  for (let sweep = 0; sweep < 12; sweep += 1) {
    for (let index = 0; index < count; index += 1) {
      const [mean, variance] = [solved.mean[index], solved.variance[index]];
      const precision = Math.max(1e-6, 1 / variance - weight[index]);
      const cavity = { mean: (mean / variance - pull[index]) / precision, variance: 1 / precision };
      const tilted = moments(likelihoods[index], cavity);
      const aim = Math.max(0, 1 / tilted.variance - precision);
      const aimPull = tilted.mean * (precision + aim) - cavity.mean * precision;
      weight[index] += 0.7 * (aim - weight[index]);
      pull[index] += 0.7 * (aimPull - pull[index]);
    }
    solved = posterior(prior, weight, pull, level);
  }
  return predicted(places, readings, { kernel, level, weight, solved });
}

interface Likelihood {
  readonly ifBad: number;
  readonly ifSound: number;
  readonly edge: number;
}

function likelihoodOf(reading: Reading, team: Team): Likelihood {
  if (reading.kind === 'plug') {
    const isBad = reading.condition === 'rotten';
    return { ifBad: isBad ? 1 : 0, ifSound: isBad ? 0 : 1, edge: 0.03 };
  }
  if (reading.kind === 'sounding') {
    const isAlarm = reading.sound !== 'sharp';
    const own = reading.sound === 'void' ? [0.6, 0.35] : [0.4, 0.65];
    return isAlarm
      ? { ifBad: team.heardOverBad * own[0], ifSound: (1 - team.sharpOverSound) * own[1], edge: 0.12 }
      : { ifBad: 1 - team.heardOverBad, ifSound: team.sharpOverSound, edge: 0.12 };
  }
  const { sound, bad, sd, metal } = team.meter;
  const wet = (reading.value - SCALE.dryReference) / (SCALE.wetReference - SCALE.dryReference);
  const seen = (middle: number) =>
    (1 - metal) * Math.exp(-(((wet - middle) / sd) ** 2) / 2) +
    metal * Math.exp(-(((wet - 1.2) / sd) ** 2) / 2);
  return { ifBad: seen(bad) + 1e-4, ifSound: seen(sound) + 1e-4, edge: 0.15 };
}

const matern52 = (distanceMm: number, rangeMm: number): number => {
  const a = (Math.sqrt(20) * distanceMm) / rangeMm;
  return (1 + a + (a * a) / 3) * Math.exp(-a);
};

function moments(
  { ifBad, ifSound, edge }: Likelihood,
  { mean, variance }: { readonly mean: number; readonly variance: number },
) {
  const total = edge * edge + variance;
  const z = mean / Math.sqrt(total);
  const chance = ifSound + (ifBad - ifSound) * normalCdf(z);
  const slope = ((ifBad - ifSound) * Math.exp((-z * z) / 2)) / Math.sqrt(2 * Math.PI * total) / chance;
  return {
    mean: mean + variance * slope,
    variance: Math.max(
      1e-9,
      variance + variance * variance * ((-slope * z) / Math.sqrt(total) - slope * slope),
    ),
  };
}

interface Solved {
  readonly mean: Float64Array;
  readonly variance: Float64Array;
  readonly alpha: Float64Array;
  readonly factor: readonly Float64Array[];
}

/** Posterior of the heights at the readings, from B = I + S K S with S = sqrt(weight). */
function posterior(
  prior: readonly Float64Array[],
  weight: Float64Array,
  pull: Float64Array,
  level: number,
): Solved {
  const count = weight.length;
  const root = weight.map(Math.sqrt);
  const factor = cholesky(
    prior.map((row, i) => row.map((value, j) => root[i] * value * root[j] + (i === j ? 1 : 0))),
  );
  const shifted = pull.map((value, index) => value - weight[index] * level);
  const scaled = Float64Array.from(prior, (row, i) => root[i] * dot(row, shifted));
  backward(factor, forward(factor, scaled));
  const alpha = shifted.map((value, i) => value - root[i] * scaled[i]);
  const mean = Float64Array.from(prior, (row) => level + dot(row, alpha));
  const variance = Float64Array.from({ length: count }, (_, i) => {
    const column = forward(
      factor,
      Float64Array.from(prior[i], (value, j) => root[j] * value),
    );
    return Math.max(1e-9, prior[i][i] - dot(column, column));
  });
  return { mean, variance, alpha, factor };
}

function predicted(
  places: readonly Point[],
  readings: readonly Reading[],
  {
    kernel,
    level,
    weight,
    solved,
  }: {
    readonly kernel: (a: Point, b: Point) => number;
    readonly level: number;
    readonly weight: Float64Array;
    readonly solved: Solved;
  },
): Float64Array {
  const root = weight.map(Math.sqrt);
  return Float64Array.from(places, (place) => {
    const row = Float64Array.from(readings, ({ at }) => kernel(place, at));
    const column = forward(
      solved.factor,
      row.map((value, j) => root[j] * value),
    );
    return normalCdf((level + dot(row, solved.alpha)) / Math.sqrt(Math.max(1e-6, 1 - dot(column, column))));
  });
}

function cholesky(matrix: readonly Float64Array[]): readonly Float64Array[] {
  const factor = matrix.map((row) => row.slice());
  for (let i = 0; i < factor.length; i += 1) {
    for (let j = 0; j <= i; j += 1) {
      let sum = factor[i][j];
      for (let k = 0; k < j; k += 1) sum -= factor[i][k] * factor[j][k];
      factor[i][j] = i === j ? Math.sqrt(sum) : sum / factor[j][j];
    }
  }
  return factor;
}

function forward(factor: readonly Float64Array[], values: Float64Array): Float64Array {
  for (let i = 0; i < values.length; i += 1) {
    let sum = values[i];
    for (let k = 0; k < i; k += 1) sum -= factor[i][k] * values[k];
    values[i] = sum / factor[i][i];
  }
  return values;
}

function backward(factor: readonly Float64Array[], values: Float64Array): Float64Array {
  for (let i = values.length - 1; i >= 0; i -= 1) {
    let sum = values[i];
    for (let k = i + 1; k < values.length; k += 1) sum -= factor[k][i] * values[k];
    values[i] = sum / factor[i][i];
  }
  return values;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let index = 0; index < a.length; index += 1) sum += a[index] * b[index];
  return sum;
}

/** Bisection is enough here. */
function quantile(share: number): number {
  let [low, high] = [-6, 6];
  for (let turn = 0; turn < 50; turn += 1) {
    const middle = (low + high) / 2;
    if (normalCdf(middle) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
