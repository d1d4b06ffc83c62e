import { randomStream } from '#lib/kernel';
import {
  addTo,
  copyBanded,
  entryOf,
  factorised,
  inverseWithinBand,
  logDeterminant,
  solveUpper,
  solveWith,
  type Banded,
} from './banded.js';
import type { Field } from './field.js';
import { carried, type Ties } from './interpolation.js';
import { fillNormal, normalCdf, normalDensity } from './normal.js';
import type { Evidence } from './reading-odds.js';

/** Readings as evidence, each tied to the nodes round it. */
export interface Observed {
  readonly ties: Ties;
  readonly ifBad: Float64Array;
  readonly ifSound: Float64Array;
  readonly edge: Float64Array;
}

export const observed = (ties: Ties, evidence: readonly Evidence[]): Observed => ({
  ties,
  ifBad: Float64Array.from(evidence, ({ ifBad }) => ifBad),
  ifSound: Float64Array.from(evidence, ({ ifSound }) => ifSound),
  edge: Float64Array.from(evidence, ({ edge }) => edge),
});

/** What was believed before the readings: core is bad where level + field lies above 0. */
export interface Prior {
  readonly level: number;
  readonly levelSd: number;
}

/** The field after the readings, as a Gaussian. */
export interface Posterior {
  readonly field: Field;
  readonly logEvidence: number;
  /** Mean and standard deviation of level + field at each node. */
  readonly mean: Float64Array;
  readonly sd: Float64Array;
  /** Chance that core is bad at each node. */
  readonly chance: Float64Array;
  /** Chance that each reading stood over bad core, all readings and itself considered. */
  readonly badAt: Float64Array;
  /** The Gaussian that stands for each reading; a good start for a field of another range. */
  readonly sites: Sites;
  /** Draws of the whole field in pairs that lie opposite each other about the mean. */
  readonly sampler: (seed: number) => () => readonly [Float64Array, Float64Array];
}

/** exp(pull f - weight f^2 / 2) for each reading, f being the field's height there. */
export interface Sites {
  readonly weight: Float64Array;
  readonly pull: Float64Array;
}

export const noSites = (count: number): Sites => ({
  weight: new Float64Array(count),
  pull: new Float64Array(count),
});

const MOST_SWEEPS = 20;

/** Sweeps end when the readings move by no more than this part of their spread, in the root mean square. */
const SETTLED = 0.01;

/** Share of each change that is made: all sites move at once, and whole steps can overshoot. */
const DAMPING = 0.8;

/**
 * Probability that core is bad, from readings that err, by expectation propagation.
 *
 * Core is bad where z > 0, z = level + field. A reading belongs to a place near its own, z + e, e ~ N(0, t^2), and is seen
 * with chance b over bad core and s over sound, so that its likelihood is s + (b - s) Phi(z / t): a probit regression
 * whose readings may be wrong anywhere. Each likelihood is stood for by a Gaussian whose product with all the others has
 * the right mean and variance there; all are renewed in each sweep, from one sparse factorisation. The level has a
 * normal prior of its own and is carried as one more unknown.
 *
 * z   mean, sd   -   standard deviations of the field
 * t   edge       -   the same
 *
 * Valid:  any number of readings, agreeing or not. A reading that the others contradict may say less, never more.
 * Source: [RASMUSSEN-WILLIAMS-2006] section 3.6; [LINDGREN-2011] for the field
 * Worked: test/reference/cases/extent-posterior.ts
 */
export function posteriorOf(field: Field, readings: Observed, prior: Prior, start: Sites): Posterior {
  const given: Given = { field, prior, ...readings, ties: scaledTies(readings.ties, field) };
  let sites = start;
  let solved = solve(given, sites);
  for (let sweep = 0; sweep < MOST_SWEEPS; sweep += 1) {
    const next = renewed(given, solved, sites);
    sites = next.sites;
    solved = solve(given, sites);
    if (next.change < SETTLED) break;
  }
  return described(given, solved, sites);
}

/** Everything a sweep works from; the shares of the ties are divided by the scale of the field. */
interface Given extends Observed {
  readonly field: Field;
  readonly prior: Prior;
}

const scaledTies = ({ nodes, shares }: Ties, { scale }: Field): Ties => ({
  nodes,
  shares: shares.map((share, index) => share / scale[nodes[index]]),
});

/** The Gaussian over field and level for given sites. */
interface Solved {
  /** Field before scaling. */
  readonly x: Float64Array;
  /** Level above its prior middle. */
  readonly lift: number;
  readonly factor: Banded;
  readonly inverse: Banded;
  /** H^-1 B' W 1: how the field gives way when the level moves. */
  readonly give: Float64Array;
  /** Precision of the level once the field has given way. */
  readonly levelPrecision: number;
  /** Mean and variance of level + field at each reading. */
  readonly means: Float64Array;
  readonly variances: Float64Array;
  /** r' H^-1 r, the quadratic term of the evidence. */
  readonly quadratic: number;
}

function solve(given: Given, { weight, pull }: Sites): Solved {
  const {
    field,
    prior,
    ties: { nodes, shares },
  } = given;
  const matrix = copyBanded(field.precision);
  const [linear, coupling] = [new Float64Array(matrix.size), new Float64Array(matrix.size)];
  let [levelLinear, levelWeight] = [0, 0];
  for (let index = 0; index < weight.length; index += 1) {
    const own = pull[index] - weight[index] * prior.level;
    for (let one = 4 * index; one < 4 * index + 4; one += 1) {
      linear[nodes[one]] += shares[one] * own;
      coupling[nodes[one]] += shares[one] * weight[index];
    }
    addReading(matrix, given.ties, index, weight[index]);
    levelLinear += own;
    levelWeight += weight[index];
  }
  return eliminated(
    { matrix, linear, coupling, levelLinear, levelPrecision: levelWeight + 1 / prior.levelSd ** 2 },
    given,
  );
}

/** Unused ties have a share of 0 and may lie outside the band. */
function addReading(matrix: Banded, { nodes, shares }: Ties, index: number, weight: number): void {
  for (let one = 4 * index; one < 4 * index + 4; one += 1) {
    if (shares[one] === 0) continue;
    for (let other = 4 * index; other <= one; other += 1) {
      if (shares[other] !== 0) addTo(matrix, nodes[one], nodes[other], weight * shares[one] * shares[other]);
    }
  }
}

interface Equations {
  readonly matrix: Banded;
  readonly linear: Float64Array;
  readonly coupling: Float64Array;
  readonly levelLinear: number;
  readonly levelPrecision: number;
}

/** Eliminates the field, solves for the level, and puts it back (Schur complement). */
function eliminated(
  { matrix, linear, coupling, levelLinear, levelPrecision: own }: Equations,
  { ties, prior }: Given,
): Solved {
  const factor = factorised(matrix);
  const inverse = inverseWithinBand(factor);
  const [give, alone] = [coupling.slice(), linear.slice()];
  solveWith(factor, give);
  solveWith(factor, alone);
  const levelPrecision = own - dot(coupling, give);
  const lift = (levelLinear - dot(coupling, alone)) / levelPrecision;
  const x = alone.map((value, node) => value - lift * give[node]);
  const level = prior.level + lift;
  return {
    x,
    lift,
    factor,
    inverse,
    give,
    levelPrecision,
    means: carried(x, ties).map((value) => level + value),
    variances: carried(give, ties).map(
      (given, index) => spreadAt(ties, index, inverse) + (1 - given) ** 2 / levelPrecision,
    ),
    quadratic: dot(linear, x) + levelLinear * lift,
  };
}

const dot = (a: Float64Array, b: Float64Array): number => {
  let sum = 0;
  for (let index = 0; index < a.length; index += 1) sum += a[index] * b[index];
  return sum;
};

function spreadAt({ nodes, shares }: Ties, index: number, inverse: Banded): number {
  let sum = 0;
  for (let one = 4 * index; one < 4 * index + 4; one += 1) {
    if (shares[one] === 0) continue;
    sum += shares[one] * shares[one] * entryOf(inverse, nodes[one], nodes[one]);
    for (let other = 4 * index; other < one; other += 1) {
      if (shares[other] !== 0)
        sum += 2 * shares[one] * shares[other] * entryOf(inverse, nodes[one], nodes[other]);
    }
  }
  return sum;
}

/** Every reading's Gaussian made anew from what all the others say. */
function renewed(
  { ifBad, ifSound, edge }: Given,
  { means, variances }: Solved,
  { weight, pull }: Sites,
): { readonly sites: Sites; readonly change: number } {
  const next = noSites(means.length);
  let change = 0;
  for (let index = 0; index < means.length; index += 1) {
    const cavity = cavityAt(index, means, variances, { weight, pull });
    const { mean, variance } = momentsOf(
      { ifBad: ifBad[index], ifSound: ifSound[index], edge: edge[index] },
      cavity,
    );
    const aimWeight = Math.max(0, 1 / variance - 1 / cavity.variance);
    const aimPull = mean * (1 / cavity.variance + aimWeight) - cavity.mean / cavity.variance;
    next.weight[index] = weight[index] + DAMPING * (aimWeight - weight[index]);
    next.pull[index] = pull[index] + DAMPING * (aimPull - pull[index]);
    change += (mean - means[index]) ** 2 / variances[index];
  }
  return { sites: next, change: Math.sqrt(change / Math.max(1, means.length)) };
}

interface Normal {
  readonly mean: number;
  readonly variance: number;
}

/** What all the other readings say at this one's place. */
function cavityAt(
  index: number,
  means: Float64Array,
  variances: Float64Array,
  { weight, pull }: Sites,
): Normal {
  const precision = Math.max(1 / variances[index] - weight[index], 1e-9);
  return { mean: (means[index] / variances[index] - pull[index]) / precision, variance: 1 / precision };
}

/** Mean and variance of a normal seen through one reading. */
function momentsOf({ ifBad, ifSound, edge }: Evidence, { mean, variance }: Normal): Normal {
  const total = edge * edge + variance;
  const score = mean / Math.sqrt(total);
  const chance = ifSound + (ifBad - ifSound) * normalCdf(score);
  const slope = ((ifBad - ifSound) * normalDensity(score)) / (chance * Math.sqrt(total));
  const bend = (-slope * score) / Math.sqrt(total) - slope * slope;
  return { mean: mean + variance * slope, variance: variance * (1 + variance * bend) };
}

function badBelow({ ifBad, ifSound, edge }: Evidence, { mean, variance }: Normal): number {
  const before = normalCdf(mean / Math.sqrt(edge * edge + variance));
  return (ifBad * before) / (ifSound + (ifBad - ifSound) * before);
}

function described(given: Given, solved: Solved, sites: Sites): Posterior {
  const { field, prior, ifBad, ifSound, edge } = given;
  const { scale } = field;
  const { x, lift, inverse, give, levelPrecision, factor } = solved;
  const mean = x.map((value, node) => prior.level + lift + value / scale[node]);
  const levelShare = give.map((value, node) => 1 - value / scale[node]);
  const sd = scale.map((own, node) =>
    Math.sqrt(entryOf(inverse, node, node) / own ** 2 + levelShare[node] ** 2 / levelPrecision),
  );
  return {
    field,
    mean,
    sd,
    sites,
    chance: mean.map((value, node) => normalCdf(value / sd[node])),
    badAt: ifBad.map((own, index) =>
      badBelow(
        { ifBad: own, ifSound: ifSound[index], edge: edge[index] },
        cavityAt(index, solved.means, solved.variances, sites),
      ),
    ),
    logEvidence: logEvidence(given, solved, sites),
    sampler: (seed) => samplerOf({ mean, scale, levelShare, levelPrecision, factor }, seed),
  };
}

function logEvidence({ field, prior, ifBad, ifSound, edge }: Given, solved: Solved, sites: Sites): number {
  const { means, variances, factor, levelPrecision, quadratic } = solved;
  const bySite = ifBad.reduce((sum, own, index) => {
    const { mean, variance } = cavityAt(index, means, variances, sites);
    const [weight, pull] = [sites.weight[index], sites.pull[index]];
    const chance =
      ifSound[index] + (own - ifSound[index]) * normalCdf(mean / Math.sqrt(edge[index] ** 2 + variance));
    const joint = (mean / variance + pull) ** 2 / (1 / variance + weight) - (mean * mean) / variance;
    return (
      sum +
      Math.log(chance) +
      (Math.log(1 + weight * variance) - joint) / 2 +
      pull * prior.level -
      (weight * prior.level ** 2) / 2
    );
  }, 0);
  return (
    bySite +
    (field.logDeterminant -
      logDeterminant(factor) -
      Math.log(levelPrecision * prior.levelSd ** 2) +
      quadratic) /
      2
  );
}

interface Samplable {
  readonly mean: Float64Array;
  readonly scale: Float64Array;
  readonly levelShare: Float64Array;
  readonly levelPrecision: number;
  readonly factor: Banded;
}

/** Wholly decided by the seed; opposite pairs make the mean of the draws exact for half the work. */
function samplerOf(
  { mean, scale, levelShare, levelPrecision, factor }: Samplable,
  seed: number,
): () => readonly [Float64Array, Float64Array] {
  const random = randomStream(seed);
  const noise = new Float64Array(mean.length);
  const own = new Float64Array(2);
  return () => {
    fillNormal(noise, random);
    fillNormal(own, random);
    solveUpper(factor, noise);
    const level = own[0] / Math.sqrt(levelPrecision);
    const away = noise.map((value, node) => value / scale[node] + level * levelShare[node]);
    return [mean.map((value, node) => value + away[node]), mean.map((value, node) => value - away[node])];
  };
}
