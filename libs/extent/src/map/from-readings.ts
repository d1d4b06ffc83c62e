import { addTo, banded, factorised, logDeterminant, solveLower, solveWith, type Banded } from './banded.js';
import { designOfNodes, dot, priorAt, type Given, type Heard, type Sites } from './heard.js';
import type { Makeup } from './observed.js';

/** How the readings and the unknowns go together before anything is heard. */
interface Together {
  readonly prior: Float64Array;
  /** Covariance of each reading with every unknown of the field. */
  readonly columns: readonly Float64Array[];
  /** Of each reading with each, row by row, effects counted. */
  readonly covariance: Float64Array;
}

const togetherBy = new WeakMap<Makeup, Together>();

/** A makeup belongs to one field and one set of effects: asked again with other errors of the team it is known. */
function togetherOf(given: Given): Together {
  const known = togetherBy.get(given.makeup) ?? workedTogether(given);
  togetherBy.set(given.makeup, known);
  return known;
}

function workedTogether(given: Given): Together {
  const { field, effects, makeup, evidence } = given;
  const count = evidence.length;
  const columns = evidence.map((_, index) => {
    const column = new Float64Array(field.precision.size);
    for (let one = makeup.width * index; one < makeup.width * (index + 1); one += 1)
      column[makeup.unknowns[one]] += makeup.shares[one];
    field.solve(column);
    return column;
  });
  const covariance = new Float64Array(count * count);
  for (let index = 0; index < count; index += 1) {
    for (let other = 0; other <= index; other += 1) {
      const value = readIn(columns[other], makeup, index) + byEffects(given, index, other);
      covariance[index * count + other] = value;
      covariance[other * count + index] = value;
    }
  }
  return { prior: Float64Array.from(evidence, (_, index) => priorAt(given, index)), columns, covariance };

  function byEffects({ makeup: { design, effects: many } }: Given, index: number, other: number): number {
    let sum = 0;
    for (let effect = 0; effect < many; effect += 1)
      sum += design[many * index + effect] * design[many * other + effect] * effects.sds[effect] ** 2;
    return sum;
  }
}

/** Values of the unknowns as a reading sees them. */
function readIn(values: Float64Array, { width, unknowns, shares }: Makeup, index: number): number {
  let sum = 0;
  for (let one = width * index; one < width * (index + 1); one += 1)
    sum += shares[one] * values[unknowns[one]];
  return sum;
}

/**
 * The Gaussian for given sites worked out among the readings alone: with prior covariance K and weights W, the covariance is
 * K - K W^(1/2) B^-1 W^(1/2) K with B = I + W^(1/2) K W^(1/2), so that a sweep costs the cube of the number of readings however
 * fine the lattice is.
 *
 * Valid:  weights of 0 or more; the same as from the unknowns, for less work where readings are few.
 * Source: [RASMUSSEN-WILLIAMS-2006] section 3.6.3, eq. (3.67) and (3.68)
 * Worked: libs/extent/src/map/posterior.spec.ts
 */
export function fromReadings(given: Given): (sites: Sites) => Heard {
  const together = togetherOf(given);
  return (sites) => heardWith(given, together, sites);
}

function heardWith(given: Given, together: Together, { weight, pull }: Sites): Heard {
  const { prior, covariance } = together;
  const count = prior.length;
  const roots = weight.map(Math.sqrt);
  const factor = factorOf(covariance, roots);
  const own = pull.map((value, index) => value - weight[index] * prior[index]);
  const moved = times(covariance, own);
  const held = moved.map((value, index) => value * roots[index]);
  solveWith(factor, held);
  const load = own.map((value, index) => value - roots[index] * held[index]);
  const lifted = times(covariance, load);
  const rowOf = (index: number): Float64Array => covariance.subarray(index * count, (index + 1) * count);
  return {
    means: prior.map((value, index) => value + lifted[index]),
    variances: prior.map((_, index) => covariance[index * count + index] - told(factor, roots, rowOf(index))),
    logEvidence: (dot(own, lifted) - logDeterminant(factor)) / 2,
    atNodes: () => nodesFrom(given, together, { factor, roots, load }),
  };
}

function factorOf(covariance: Float64Array, roots: Float64Array): Banded {
  const { length: count } = roots;
  const matrix = banded(count, count - 1);
  for (let i = 0; i < count; i += 1) {
    for (let j = 0; j <= i; j += 1) addTo(matrix, i, j, roots[i] * roots[j] * covariance[i * count + j]);
    addTo(matrix, i, i, 1);
  }
  return factorised(matrix);
}

function times(covariance: Float64Array, values: Float64Array): Float64Array {
  const { length: count } = values;
  return values.map((_, index) => dot(covariance.subarray(index * count, (index + 1) * count), values));
}

/** How much of the variance of something the readings take away, from its covariance with each of them. */
function told(
  factor: Banded,
  roots: Float64Array,
  covariances: Float64Array,
  seen = new Float64Array(roots.length),
): number {
  for (let index = 0; index < seen.length; index += 1) seen[index] = covariances[index] * roots[index];
  solveLower(factor, seen);
  return dot(seen, seen);
}

interface Weighed {
  readonly factor: Banded;
  readonly roots: Float64Array;
  readonly load: Float64Array;
}

/** The field has unit variance at every node. */
function nodesFrom(
  given: Given,
  { columns }: Together,
  { factor, roots, load }: Weighed,
): { readonly mean: Float64Array; readonly sd: Float64Array } {
  const { field, effects, makeup } = given;
  const many = effects.means.length;
  const design = designOfNodes(given);
  const [mean, sd] = [new Float64Array(field.scale.length), new Float64Array(field.scale.length)];
  const shared = new Float64Array(load.length);
  const seen = new Float64Array(load.length);
  for (let node = 0; node < mean.length; node += 1) {
    let [middle, variance] = [0, 1];
    const unknown = field.unknownOf[node];
    for (let index = 0; index < shared.length; index += 1)
      shared[index] = columns[index][unknown] / field.scale[node];
    for (let effect = 0; effect < many; effect += 1) {
      const share = design[many * node + effect];
      const spread = share * effects.sds[effect] ** 2;
      middle += share * effects.means[effect];
      variance += share * spread;
      for (let index = 0; index < shared.length; index += 1)
        shared[index] += spread * makeup.design[many * index + effect];
    }
    mean[node] = middle + dot(shared, load);
    sd[node] = Math.sqrt(variance - told(factor, roots, shared, seen));
  }
  return { mean, sd };
}
