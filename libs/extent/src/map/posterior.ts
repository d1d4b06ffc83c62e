import { normalCdf, normalDensity, randomStream } from '#lib/kernel';
import { solveUpper, solveWith, type Banded } from './banded.js';
import type { Field } from './field.js';
import { fromReadings } from './from-readings.js';
import { fromUnknowns, restAtNodes, solvedFor, type Solved } from './from-unknowns.js';
import { designOfNodes, noSites, priorAt, type Given, type Heard, type Sites } from './heard.js';
import { fillNormal } from './normal-draws.js';
import type { Makeup } from './observed.js';
import type { Evidence } from './reading-odds.js';
import { solvedSmall, type SmallFactor } from './small-matrix.js';

/** The field after the readings, as a Gaussian. */
export interface Posterior {
  readonly field: Field;
  readonly logEvidence: number;
  /** Mean and standard deviation of level + field at each node. */
  readonly mean: Float64Array;
  readonly sd: Float64Array;
  /** Chance that core is bad at each node. */
  readonly chance: Float64Array;
  /** Chance that each reading stood where it is heard as bad, all readings and itself considered. */
  readonly badAt: Float64Array;
  /** Mean and variance of what each reading is heard from. */
  readonly means: Float64Array;
  readonly variances: Float64Array;
  /** The Gaussian that stands for each reading; a good start for a field of another range. */
  readonly sites: Sites;
  /** Covariance of level + field at each node with a combination of the unknowns and effects. */
  readonly covarianceWith: (makeup: Makeup) => Float64Array;
  /** Draws of the whole field in pairs that lie opposite each other about the mean. */
  readonly sampler: (seed: number) => () => readonly [Float64Array, Float64Array];
}

/** Sweeps end when the readings move by no more than this part of their spread, in the root mean square. */
const SETTLED = 0.01;

/** Share of each change that is made: all sites move at once, and whole steps can overshoot. */
const DAMPING = 0.8;

const MOST_SWEEPS = 20;

/**
 * Probability that core is bad, from readings that err, by expectation propagation.
 *
 * Core is bad where z > 0, z = level + fittings + field. A reading belongs to a place near its own, z + e, e ~ N(0, t^2), and
 * is seen with chance b over bad core and s over sound, so that its likelihood is s + (b - s) Phi(z / t): a probit regression
 * whose readings may be wrong anywhere. Each likelihood is stood for by a Gaussian whose product with all the others has
 * the right mean and variance there; all are renewed in each sweep. Effects that reach all
 * over the deck have normal priors of their own and are carried beside the field.
 *
 * z   mean, sd   -   standard deviations of the field
 * t   edge       -   the same
 *
 * Valid:  any number of readings, agreeing or not. A reading that the others contradict may say less, never more.
 * Source: [RASMUSSEN-WILLIAMS-2006] section 3.6, and section 2.7 for the effects; [LINDGREN-2011] for the field
 * Worked: test/reference/cases/extent-posterior.ts
 */
export function posteriorOf(
  given: Given,
  start: Sites,
  { sweeps = MOST_SWEEPS, learn }: Sweeping = {},
): Posterior {
  const hear = isShortFromReadings(given) ? fromReadings(given) : fromUnknowns(given);
  let now = given;
  let sites = start;
  let heard = hear(sites);
  for (let sweep = 0; sweep < sweeps; sweep += 1) {
    const learnt = learn?.(badAtOf(now, heard, sites));
    if (learnt !== undefined) now = { ...now, evidence: learnt.evidence };
    const next = renewed(now, heard, sites);
    sites = next.sites;
    heard = hear(sites);
    if (next.change < SETTLED && learnt?.isSettled !== false) break;
  }
  return described(now, heard, sites);
}

/** Cubes of the readings against the sparse factorisation of the field. */
const isShortFromReadings = ({ evidence: { length }, field: { precision } }: Given): boolean =>
  length ** 3 <= precision.size * precision.band ** 2;

export interface Sweeping {
  readonly sweeps?: number;
  /** What the chance that each reading stood where it is heard as bad teaches of the readings themselves, before each sweep. */
  readonly learn?: (badAt: Float64Array) => {
    readonly evidence: readonly Evidence[];
    readonly isSettled: boolean;
  };
}

const badAtOf = ({ evidence }: Given, { means, variances }: Heard, sites: Sites): Float64Array =>
  Float64Array.from(evidence, (one, index) => badBelow(one, cavityAt(index, means, variances, sites)));

/** Every reading's Gaussian made anew from what all the others say. */
function renewed(
  { evidence }: Given,
  { means, variances }: Heard,
  { weight, pull }: Sites,
): { readonly sites: Sites; readonly change: number } {
  const next = noSites(means.length);
  let change = 0;
  for (let index = 0; index < means.length; index += 1) {
    const cavity = cavityAt(index, means, variances, { weight, pull });
    const { mean, variance } = momentsOf(evidence[index], cavity);
    const aimWeight = Math.max(0, 1 / variance - 1 / cavity.variance);
    const aimPull = mean * (1 / cavity.variance + aimWeight) - cavity.mean / cavity.variance;
    next.weight[index] = weight[index] + DAMPING * (aimWeight - weight[index]);
    next.pull[index] = pull[index] + DAMPING * (aimPull - pull[index]);
    change += (mean - means[index]) ** 2 / variances[index];
  }
  return { sites: next, change: Math.sqrt(change / Math.max(1, means.length)) };
}

export interface Normal {
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
export function momentsOf({ ifBad, ifSound, edge }: Evidence, { mean, variance }: Normal): Normal {
  const total = edge * edge + variance;
  const score = mean / Math.sqrt(total);
  const chance = ifSound + (ifBad - ifSound) * normalCdf(score);
  const slope = ((ifBad - ifSound) * normalDensity(score)) / (chance * Math.sqrt(total));
  const bend = (-slope * score) / Math.sqrt(total) - slope * slope;
  return { mean: mean + variance * slope, variance: variance * (1 + variance * bend) };
}

/** Chance of one reading before it is made. */
export const chanceOf = ({ ifBad, ifSound, edge }: Evidence, { mean, variance }: Normal): number =>
  ifSound + (ifBad - ifSound) * normalCdf(mean / Math.sqrt(edge * edge + variance));

function badBelow(evidence: Evidence, cavity: Normal): number {
  const before = normalCdf(cavity.mean / Math.sqrt(evidence.edge ** 2 + cavity.variance));
  return (evidence.ifBad * before) / chanceOf(evidence, cavity);
}

function described(given: Given, heard: Heard, sites: Sites): Posterior {
  const { field } = given;
  const nodes = once(() => heard.atNodes());
  const deep = once(() => {
    const solved = solvedFor(given, sites);
    return { solved, rest: restAtNodes(given, solved, designOfNodes(given)) };
  });
  return {
    field,
    get mean() {
      return nodes().mean;
    },
    get sd() {
      return nodes().sd;
    },
    means: heard.means,
    variances: heard.variances,
    sites,
    get chance() {
      const { mean, sd } = nodes();
      return mean.map((value, node) => normalCdf(value / sd[node]));
    },
    badAt: badAtOf(given, heard, sites),
    logEvidence: logEvidence(given, heard, sites),
    covarianceWith: (makeup) => covariance(given, deep(), makeup),
    sampler: (seed) => {
      const { solved, rest } = deep();
      return samplerOf({ ...solved, mean: nodes().mean, field, rest }, seed);
    },
  };
}

/** Not every part of a map is kept, drawn from or asked what goes together. */
function once<T>(work: () => T): () => T {
  let kept: { readonly value: T } | undefined;
  return () => (kept ??= { value: work() }).value;
}

interface Deep {
  readonly solved: Solved;
  /** Of the effects at each node, once the field has given way. */
  readonly rest: Float64Array;
}

function covariance(
  given: Given,
  { solved, rest }: Deep,
  { width, unknowns, shares, design }: Makeup,
): Float64Array {
  const { scale, unknownOf } = given.field;
  const many = given.effects.means.length;
  const column = new Float64Array(solved.x.length);
  const own = design.slice(0, many);
  for (let one = 0; one < width; one += 1) {
    column[unknowns[one]] += shares[one];
    for (let effect = 0; effect < many; effect += 1)
      own[effect] -= shares[one] * solved.give[effect][unknowns[one]];
  }
  solveWith(solved.factor, column);
  const moved = solvedSmall(solved.effectFactor, own);
  return scale.map((by, node) => {
    let sum = column[unknownOf[node]] / by;
    for (let effect = 0; effect < many; effect += 1) sum += rest[many * node + effect] * moved[effect];
    return sum;
  });
}

function logEvidence(given: Given, heard: Heard, sites: Sites): number {
  const { evidence } = given;
  const { means, variances } = heard;
  const bySite = evidence.reduce((sum, one, index) => {
    const cavity = cavityAt(index, means, variances, sites);
    const { mean, variance } = cavity;
    const [weight, pull] = [sites.weight[index], sites.pull[index]];
    const joint = (mean / variance + pull) ** 2 / (1 / variance + weight) - (mean * mean) / variance;
    const prior = priorAt(given, index);
    return (
      sum +
      Math.log(chanceOf(one, cavity)) +
      (Math.log(1 + weight * variance) - joint) / 2 +
      pull * prior -
      (weight * prior ** 2) / 2
    );
  }, 0);
  return bySite + heard.logEvidence;
}

interface Samplable {
  readonly mean: Float64Array;
  readonly field: Field;
  readonly rest: Float64Array;
  readonly factor: Banded;
  readonly effectFactor: SmallFactor;
}

/** Wholly decided by the seed; opposite pairs make the mean of the draws exact for half the work. */
function samplerOf(
  { mean, field: { scale, unknownOf }, rest, factor, effectFactor }: Samplable,
  seed: number,
): () => readonly [Float64Array, Float64Array] {
  const random = randomStream(seed);
  const noise = new Float64Array(factor.size);
  const many = effectFactor.size;
  const own = new Float64Array(many);
  return () => {
    fillNormal(noise, random);
    fillNormal(own, random);
    solveUpper(factor, noise);
    effectFactor.solveUpper(own);
    const [one, other] = [mean.slice(), mean.slice()];
    for (let node = 0; node < mean.length; node += 1) {
      let away = noise[unknownOf[node]] / scale[node];
      for (let effect = 0; effect < many; effect += 1) away += own[effect] * rest[many * node + effect];
      one[node] += away;
      other[node] -= away;
    }
    return [one, other];
  };
}
