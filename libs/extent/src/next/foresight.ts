import { randomStream } from '#lib/kernel';
import type { ReadingOdds } from '../map/reading-odds.js';
import type { Picked } from './batch.js';
import { foreseen } from './kinds.js';
import { quickCdf } from './normal-table.js';
import type { Standing } from './standing.js';
import { answered, spreadLeft } from './telling.js';

/** What deciding place by place loses, in hours: opened wherever that costs less than leaving, with the area of each node. */
export interface Stakes {
  readonly areasM2: Float64Array;
  readonly takeHPerM2: number;
  readonly leaveHPerM2: number;
}

export interface Foresight {
  /** Hours that deciding after the readings is expected to save. */
  readonly savedH: number;
  /** Variance of the area of bad core that the readings are expected to take away, m4. */
  readonly areaVarianceM4: number;
}

interface Ahead {
  readonly standings: readonly Standing[];
  readonly batch: readonly Picked[];
  readonly stakes: Stakes;
  readonly odds: ReadingOdds;
  readonly seed: number;
}

/** Courses that the readings may take; every second one is the mirror of the one before it. */
const COURSES = 48;

/**
 * The readings are made up as the map expects them, one answer after another, and the deck is decided on again after the last:
 * what that saves on average, and how far the expected area of bad core then strays from what is expected now. Expected hours of
 * leaving everything are known beforehand, and what the courses happen to have more or less of it is taken off.
 * Source: [RAIFFA-SCHLAIFER-1961] value of information, before it is there
 */
export function foresightOf(ahead: Ahead): Foresight {
  const random = randomStream(ahead.seed);
  const before = outcomeOf(ahead.standings, ahead.stakes);
  let mirror: readonly number[] = [];
  const courses = Array.from({ length: COURSES }, (_, course) => {
    mirror = course % 2 === 0 ? ahead.batch.map(() => random()) : mirror.map((value) => 1 - value);
    return outcomeOf(courseOf(ahead, mirror), ahead.stakes);
  });
  const [lossH, areaM2] = [mean(courses.map((one) => one.lossH)), mean(courses.map((one) => one.areaM2))];
  const both = mean(courses.map((one) => (one.lossH - lossH) * (one.areaM2 - areaM2)));
  const areaVarianceM4 = mean(courses.map((one) => (one.areaM2 - areaM2) ** 2));
  const slope = areaVarianceM4 > 0 ? both / areaVarianceM4 : 0;
  return {
    savedH: Math.max(0, before.lossH - lossH + slope * (areaM2 - before.areaM2)),
    areaVarianceM4,
  };
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

type Stood = Pick<Standing, 'weight' | 'mean' | 'variance'>;

interface Outcome {
  readonly lossH: number;
  readonly areaM2: number;
}

/** Expected loss of the best decision at every node, and expected area of bad core. */
export function outcomeOf(stood: readonly Stood[], { areasM2, takeHPerM2, leaveHPerM2 }: Stakes): Outcome {
  let [lossH, areaM2] = [0, 0];
  for (let node = 0; node < areasM2.length; node += 1) {
    if (areasM2[node] === 0) continue;
    let chance = 0;
    for (const { weight, mean: means, variance } of stood)
      chance += weight * quickCdf(means[node] / Math.sqrt(variance[node]));
    areaM2 += chance * areasM2[node];
    lossH += Math.min(takeHPerM2, leaveHPerM2 * chance) * areasM2[node];
  }
  return { lossH, areaM2 };
}

/** One course: each reading answers as the parts of the map, weighed by the answers before it, let expect. */
function courseOf({ standings, batch, odds }: Ahead, chances: readonly number[]): readonly Stood[] {
  const stood = standings.map((standing) => ({
    ...standing,
    mean: standing.mean.slice(),
    variance: standing.variance.slice(),
    ties: batch.map(({ node }) => standing.covarianceWith(node).slice()),
  }));
  let weights = standings.map(({ weight }) => weight);
  for (const [index, { node, kind }] of batch.entries()) {
    const answers = stood.map((part) => {
      const own = { mean: part.mean[node], variance: Math.max(1e-9, part.ties[index][node]) };
      const { bad, sound } = foreseen(kind, part.team, odds, part.hearingSd);
      return { bad: answered(bad, own), sound: answered(sound, own) };
    });
    const isBad =
      chances[index] < answers.reduce((sum, { bad }, part) => sum + weights[part] * bad.chance, 0);
    const given = answers.map(({ bad, sound }) => (isBad ? bad : sound));
    weights = given.map(({ chance }, part) => weights[part] * chance);
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    weights = weights.map((weight) => weight / total);
    for (const [part, { shift, shrink }] of given.entries())
      moveBy(stood[part], index, { shift, shrink }, batch);
  }
  return stood.map((part, index) => ({ ...part, weight: weights[index] }));
}

interface Moved {
  readonly mean: Float64Array;
  readonly variance: Float64Array;
  readonly ties: readonly Float64Array[];
}

/** The field gives way to one answer, and with it what later readings are tied to. */
function moveBy(
  { mean: means, variance, ties }: Moved,
  index: number,
  { shift, shrink }: { readonly shift: number; readonly shrink: number },
  batch: readonly Picked[],
): void {
  const tie = ties[index];
  for (let node = 0; node < means.length; node += 1) {
    means[node] += tie[node] * shift;
    variance[node] = spreadLeft(variance[node], tie[node], shrink);
  }
  for (let later = index + 1; later < batch.length; later += 1) {
    const other = ties[later];
    const shared = other[batch[index].node] * shrink;
    for (let node = 0; node < other.length; node += 1) other[node] -= tie[node] * shared;
  }
}
