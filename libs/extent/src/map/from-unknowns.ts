import {
  addTo,
  copyBanded,
  entryOf,
  factorised,
  inverseWithinBand,
  logDeterminant,
  solveWith,
  type Banded,
} from './banded.js';
import { designOfNodes, dot, priorAt, type Given, type Heard, type Sites } from './heard.js';
import type { Makeup } from './observed.js';
import { solvedSmall, smallFactor, type SmallFactor } from './small-matrix.js';

/**
 * The Gaussian for given sites worked out among the unknowns of the field, from one sparse factorisation and the inverse within
 * its band: the work goes with the number of nodes, however many have read.
 *
 * Source: [RASMUSSEN-WILLIAMS-2006] section 2.7 for the effects; [LINDGREN-2011] for the field
 * Worked: test/reference/cases/extent-posterior.ts
 */
export const fromUnknowns =
  (given: Given) =>
  (sites: Sites): Heard => {
    const solved = solvedFor(given, sites);
    const inverse = inverseWithinBand(solved.factor);
    return {
      ...atReadings(given, solved, inverse),
      logEvidence: logEvidenceOf(given, solved),
      atNodes: () => nodesFrom(given, solved, inverse),
    };
  };

/** The Gaussian over field and effects for given sites. */
export interface Solved {
  /** Unknowns of the field before scaling, and effects above their prior means. */
  readonly x: Float64Array;
  readonly lift: Float64Array;
  readonly factor: Banded;
  /** H^-1 B' W X, effect by effect: how the field gives way when an effect moves. */
  readonly give: readonly Float64Array[];
  /** Factor of the precision of the effects once the field has given way. */
  readonly effectFactor: SmallFactor;
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

export function solvedFor(given: Given, sites: Sites): Solved {
  const equations = equationsOf(given, sites);
  const factor = factorised(equations.matrix);
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
    give,
    effectFactor,
    quadratic: dot(equations.linear, x) + dot(equations.effectLinear, lift),
  };
}

const solvedBy = (factor: Banded, column: Float64Array): Float64Array => {
  const copy = column.slice();
  solveWith(factor, copy);
  return copy;
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
  { x, lift, give, effectFactor }: Solved,
  inverse: Banded,
): Pick<Heard, 'means' | 'variances'> {
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

function logEvidenceOf({ field, effects }: Given, { factor, effectFactor, quadratic }: Solved): number {
  const effectsBefore = effects.sds.reduce((sum, sd) => sum + 2 * Math.log(sd), 0);
  return (
    (field.logDeterminant -
      logDeterminant(factor) -
      effectFactor.logDeterminant -
      effectsBefore +
      quadratic) /
    2
  );
}

function nodesFrom(given: Given, solved: Solved, inverse: Banded): ReturnType<Heard['atNodes']> {
  const { effects } = given;
  const { unknownOf, scale } = given.field;
  const { x, lift, effectFactor } = solved;
  const design = designOfNodes(given);
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
  return { mean, sd };
}

/** At each node, what is left of each effect's share once the field has given way. */
export function restAtNodes(
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
