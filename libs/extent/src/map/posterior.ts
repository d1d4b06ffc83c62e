import { normalCdf, normalDensity, randomStream } from '#lib/kernel';
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
import { fillNormal } from './normal-draws.js';
import { designAt, type Effects, type Makeup } from './observed.js';
import type { Evidence } from './reading-odds.js';
import { solvedSmall, smallFactor, type SmallFactor } from './small-matrix.js';

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
  /** The Gaussian that stands for each reading; a good start for a field of another range. */
  readonly sites: Sites;
  /** Covariance of level + field at each node with a combination of the unknowns and effects. */
  readonly covarianceWith: (makeup: Makeup) => Float64Array;
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

/** Everything that a posterior is worked out from. */
export interface Given {
  readonly field: Field;
  readonly effects: Effects;
  readonly makeup: Makeup;
  readonly evidence: readonly Evidence[];
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
 * the right mean and variance there; all are renewed in each sweep, from one sparse factorisation. Effects that reach all
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
  let now = given;
  let sites = start;
  let solved = solve(now, sites);
  for (let sweep = 0; sweep < sweeps; sweep += 1) {
    const learnt = learn?.(badAtOf(now, solved, sites));
    if (learnt !== undefined) now = { ...now, evidence: learnt.evidence };
    const next = renewed(now, solved, sites);
    sites = next.sites;
    solved = solve(now, sites);
    if (next.change < SETTLED && learnt?.isSettled !== false) break;
  }
  return described(now, solved, sites);
}

export interface Sweeping {
  readonly sweeps?: number;
  /** What the chance that each reading stood where it is heard as bad teaches of the readings themselves, before each sweep. */
  readonly learn?: (badAt: Float64Array) => {
    readonly evidence: readonly Evidence[];
    readonly isSettled: boolean;
  };
}

const badAtOf = ({ evidence }: Given, { means, variances }: Solved, sites: Sites): Float64Array =>
  Float64Array.from(evidence, (one, index) => badBelow(one, cavityAt(index, means, variances, sites)));

/** The Gaussian over field and effects for given sites. */
interface Solved {
  /** Unknowns of the field before scaling, and effects above their prior means. */
  readonly x: Float64Array;
  readonly lift: Float64Array;
  readonly factor: Banded;
  readonly inverse: Banded;
  /** H^-1 B' W X, effect by effect: how the field gives way when an effect moves. */
  readonly give: readonly Float64Array[];
  /** Factor of the precision of the effects once the field has given way. */
  readonly effectFactor: SmallFactor;
  /** Mean and variance at each reading. */
  readonly means: Float64Array;
  readonly variances: Float64Array;
  /** r' H^-1 r, the quadratic term of the evidence. */
  readonly quadratic: number;
}

interface Equations {
  readonly matrix: Banded;
  readonly linear: Float64Array;
  readonly coupling: readonly Float64Array[];
  readonly effectLinear: Float64Array;
  readonly effectMatrix: Float64Array;
}

function solve(given: Given, sites: Sites): Solved {
  const equations = equationsOf(given, sites);
  const factor = factorised(equations.matrix);
  const inverse = inverseWithinBand(factor);
  const give = equations.coupling.map((column) => solvedBy(factor, column));
  const alone = solvedBy(factor, equations.linear);
  const { effectFactor, lift } = effectsOf(equations, give, alone);
  const x = alone.slice();
  for (const [effect, column] of give.entries()) {
    for (let node = 0; node < x.length; node += 1) x[node] -= lift[effect] * column[node];
  }
  return {
    x,
    lift,
    factor,
    inverse,
    give,
    effectFactor,
    ...atReadings(given, { x, lift, give, inverse, effectFactor }),
    quadratic: dot(equations.linear, x) + dot(equations.effectLinear, lift),
  };
}

const solvedBy = (factor: Banded, column: Float64Array): Float64Array => {
  const copy = column.slice();
  solveWith(factor, copy);
  return copy;
};

const priorAt = ({ makeup: { effects, design }, effects: { means } }: Given, index: number): number => {
  let sum = 0;
  for (let effect = 0; effect < effects; effect += 1) sum += design[effects * index + effect] * means[effect];
  return sum;
};

function equationsOf(given: Given, { weight, pull }: Sites): Equations {
  const { field, effects, makeup } = given;
  const { width, unknowns, shares, effects: many, design } = makeup;
  const matrix = copyBanded(field.precision);
  const linear = new Float64Array(matrix.size);
  const coupling = effects.means.map(() => new Float64Array(matrix.size));
  const effectLinear = new Float64Array(many);
  const effectMatrix = new Float64Array(many * many);
  for (let effect = 0; effect < many; effect += 1)
    effectMatrix[effect * many + effect] = 1 / effects.sds[effect] ** 2;
  for (let index = 0; index < weight.length; index += 1) {
    const own = pull[index] - weight[index] * priorAt(given, index);
    for (let one = width * index; one < width * index + width; one += 1) {
      if (shares[one] === 0) continue;
      linear[unknowns[one]] += shares[one] * own;
      for (let effect = 0; effect < many; effect += 1)
        coupling[effect][unknowns[one]] += shares[one] * weight[index] * design[many * index + effect];
    }
    addReading(matrix, makeup, index, weight[index]);
    for (let effect = 0; effect < many; effect += 1) {
      const share = design[many * index + effect];
      effectLinear[effect] += share * own;
      for (let other = 0; other < many; other += 1)
        effectMatrix[effect * many + other] += weight[index] * share * design[many * index + other];
    }
  }
  return { matrix, linear, coupling, effectLinear, effectMatrix };
}

/** Unused shares are 0 and may lie outside the band. */
function addReading(
  matrix: Banded,
  { width, unknowns, shares }: Makeup,
  index: number,
  weight: number,
): void {
  for (let one = width * index; one < width * index + width; one += 1) {
    if (shares[one] === 0) continue;
    for (let other = width * index; other <= one; other += 1) {
      if (shares[other] !== 0)
        addTo(matrix, unknowns[one], unknowns[other], weight * shares[one] * shares[other]);
    }
  }
}

/** The field is eliminated (Schur complement) and the effects are solved for. */
function effectsOf(
  { coupling, effectLinear, effectMatrix }: Equations,
  give: readonly Float64Array[],
  alone: Float64Array,
): { readonly effectFactor: SmallFactor; readonly lift: Float64Array } {
  const many = give.length;
  const reduced = effectMatrix.slice();
  const right = effectLinear.slice();
  for (let effect = 0; effect < many; effect += 1) {
    right[effect] -= dot(coupling[effect], alone);
    for (let other = 0; other < many; other += 1)
      reduced[effect * many + other] -= dot(coupling[effect], give[other]);
  }
  const effectFactor = smallFactor(reduced, many);
  return { effectFactor, lift: solvedSmall(effectFactor, right) };
}

/** Mean and variance of what each reading reads. */
function atReadings(
  given: Given,
  { x, lift, give, inverse, effectFactor }: Pick<Solved, 'x' | 'lift' | 'give' | 'inverse' | 'effectFactor'>,
): Pick<Solved, 'means' | 'variances'> {
  const { width, unknowns, shares, effects: many, design } = given.makeup;
  const count = given.evidence.length;
  const [means, variances] = [new Float64Array(count), new Float64Array(count)];
  const rest = new Float64Array(many);
  for (let index = 0; index < count; index += 1) {
    let sum = priorAt(given, index);
    for (let effect = 0; effect < many; effect += 1) {
      rest[effect] = design[many * index + effect];
      sum += rest[effect] * lift[effect];
    }
    for (let one = width * index; one < width * index + width; one += 1) {
      if (shares[one] === 0) continue;
      sum += shares[one] * x[unknowns[one]];
      for (let effect = 0; effect < many; effect += 1)
        rest[effect] -= shares[one] * give[effect][unknowns[one]];
    }
    means[index] = sum;
    variances[index] = spreadAt(given.makeup, index, inverse) + quadraticOf(effectFactor, rest);
  }
  return { means, variances };
}

const quadraticOf = (factor: SmallFactor, vector: Float64Array): number =>
  dot(vector, solvedSmall(factor, vector));

const dot = (a: Float64Array, b: Float64Array): number => {
  let sum = 0;
  for (let index = 0; index < a.length; index += 1) sum += a[index] * b[index];
  return sum;
};

function spreadAt({ width, unknowns, shares }: Makeup, index: number, inverse: Banded): number {
  let sum = 0;
  for (let one = width * index; one < width * index + width; one += 1) {
    if (shares[one] === 0) continue;
    sum += shares[one] * shares[one] * entryOf(inverse, unknowns[one], unknowns[one]);
    for (let other = width * index; other < one; other += 1) {
      if (shares[other] !== 0)
        sum += 2 * shares[one] * shares[other] * entryOf(inverse, unknowns[one], unknowns[other]);
    }
  }
  return sum;
}

/** Every reading's Gaussian made anew from what all the others say. */
function renewed(
  { evidence }: Given,
  { means, variances }: Solved,
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

function described(given: Given, solved: Solved, sites: Sites): Posterior {
  const { field, effects } = given;
  const { unknownOf, scale, lattice } = field;
  const { x, lift, inverse, factor, effectFactor } = solved;
  const design = designAt(
    lattice.nodes.map(({ place }) => place),
    effects,
  );
  const rest = restAtNodes(given, solved, design);
  const many = effects.means.length;
  const mean = Float64Array.from(scale, (own, node) => {
    let sum = x[unknownOf[node]] / own;
    for (let effect = 0; effect < many; effect += 1)
      sum += design[many * node + effect] * (effects.means[effect] + lift[effect]);
    return sum;
  });
  const sd = Float64Array.from(scale, (own, node) =>
    Math.sqrt(
      entryOf(inverse, unknownOf[node], unknownOf[node]) / own ** 2 +
        quadraticOf(effectFactor, rest.subarray(many * node, many * node + many)),
    ),
  );
  return {
    field,
    mean,
    sd,
    sites,
    chance: mean.map((value, node) => normalCdf(value / sd[node])),
    badAt: badAtOf(given, solved, sites),
    logEvidence: logEvidence(given, solved, sites),
    covarianceWith: (makeup) => covariance(given, solved, rest, makeup),
    sampler: (seed) => samplerOf({ mean, field, rest, factor, effectFactor }, seed),
  };
}

/** At each node, what is left of each effect's share once the field has given way. */
function restAtNodes(
  { field: { unknownOf, scale } }: Given,
  { give }: Solved,
  design: Float64Array,
): Float64Array {
  const many = give.length;
  return design.map((share, index) => {
    const node = Math.floor(index / many);
    return share - give[index % many][unknownOf[node]] / scale[node];
  });
}

function covariance(
  given: Given,
  solved: Solved,
  rest: Float64Array,
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
  return Float64Array.from(scale, (by, node) => {
    let sum = column[unknownOf[node]] / by;
    for (let effect = 0; effect < many; effect += 1) sum += rest[many * node + effect] * moved[effect];
    return sum;
  });
}

function logEvidence(given: Given, solved: Solved, sites: Sites): number {
  const { field, effects, evidence } = given;
  const { means, variances, factor, effectFactor, quadratic } = solved;
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
  const effectsBefore = effects.sds.reduce((sum, sd) => sum + 2 * Math.log(sd), 0);
  return (
    bySite +
    (field.logDeterminant -
      logDeterminant(factor) -
      effectFactor.logDeterminant -
      effectsBefore +
      quadratic) /
      2
  );
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
    const away = Float64Array.from(scale, (by, node) => {
      let sum = noise[unknownOf[node]] / by;
      for (let effect = 0; effect < many; effect += 1) sum += own[effect] * rest[many * node + effect];
      return sum;
    });
    return [mean.map((value, node) => value + away[node]), mean.map((value, node) => value - away[node])];
  };
}
