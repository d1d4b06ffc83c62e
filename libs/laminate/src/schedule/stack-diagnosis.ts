import { invertSymmetric } from '../theory/compliance.js';
import { membraneStrength } from '../theory/skin.js';
import { hasOrder } from './stack-order.js';
import { reaches, type StackProblem } from './stack-problem.js';

export const constraints = [
  'flush-proud',
  'flush-low',
  'stiffness-along',
  'stiffness-across',
  'stiffness-shear',
  'strength-tension-along',
  'strength-compression-along',
  'strength-tension-across',
  'strength-compression-across',
  'kinds',
  'order',
] as const;
export type Constraint = (typeof constraints)[number];

export interface ConstraintReport {
  /** Constraint that stood in the way. */
  readonly constraint: Constraint;
  /** Stacks that meet it, whatever else they miss. */
  readonly metBy: number;
  /** Best value over all stacks against what is needed; at least 1 where `metBy` is above 0. */
  readonly bestRatio: number;
  /** Stacks that meet everything but this one. */
  readonly soleObstacleOf: number;
  /** Best ratio among those: how near the catalogue comes when all else is met. */
  readonly nearestRatio?: number;
}

interface Tally {
  readonly metBy: Float64Array;
  readonly best: Float64Array;
  readonly sole: Float64Array;
  readonly nearest: Float64Array;
}

interface Walk {
  readonly problem: StackProblem;
  readonly tally: Tally;
  readonly counts: Int32Array;
  readonly kindCounts: Int32Array;
  readonly a: Float64Array;
  readonly inverse: Float64Array;
  readonly ratios: Float64Array;
  kinds: number;
  examined: number;
}

export interface Diagnosis {
  readonly reports: readonly ConstraintReport[];
  readonly examined: number;
  /** False when there were more stacks than are looked at. */
  readonly isComplete: boolean;
}

/** How much thicker than flush the diagnosis looks, so that it can say what a little room would do. */
export const LOOK_BEYOND_MM = 2;

/** A quarter of a second's worth. */
const MOST_EXAMINED = 150_000;

/** Looks at stacks without cutting and counts, constraint by constraint, what is met and what stands alone in the way. */
export function diagnose(problem: StackProblem): Diagnosis {
  const tally: Tally = { metBy: zeros(), best: zeros(), sole: zeros(), nearest: zeros() };
  const kinds = 1 + Math.max(...problem.options.map(({ kind }) => kind));
  const walk: Walk = {
    problem,
    tally,
    counts: new Int32Array(problem.options.length),
    kindCounts: new Int32Array(kinds),
    a: new Float64Array(6),
    inverse: new Float64Array(6),
    ratios: zeros(),
    kinds: 0,
    examined: 0,
  };
  step(walk, 0, 0, 0);
  return {
    examined: walk.examined,
    isComplete: walk.examined < MOST_EXAMINED,
    reports: constraints.map((constraint, i) => ({
      constraint,
      metBy: tally.metBy[i],
      bestRatio: tally.best[i],
      soleObstacleOf: tally.sole[i],
      ...(tally.nearest[i] > 0 ? { nearestRatio: tally.nearest[i] } : {}),
    })),
  };
}

const zeros = (): Float64Array => new Float64Array(constraints.length);

/** One kind more than allowed is looked at, so that the answer can say whether it would help. */
function step(walk: Walk, from: number, plies: number, thicknessMm: number): void {
  const {
    problem: { options, mostPlies, thickestMm, mostKinds },
  } = walk;
  for (let i = from; i < options.length && walk.examined < MOST_EXAMINED; i += 1) {
    const thicker = thicknessMm + options[i].membrane.thicknessMm;
    const isNewKind = walk.kindCounts[options[i].kind] === 0;
    if (thicker > thickestMm + LOOK_BEYOND_MM || (isNewKind && walk.kinds > mostKinds)) continue;
    change(walk, i, 1);
    count(walk, thicker);
    if (plies + 1 < mostPlies) step(walk, i, plies + 1, thicker);
    change(walk, i, -1);
  }
}

function change(walk: Walk, i: number, sign: 1 | -1): void {
  const {
    kind,
    membrane: { aNPerMm },
  } = walk.problem.options[i];
  walk.counts[i] += sign;
  const before = walk.kindCounts[kind];
  walk.kindCounts[kind] += sign;
  if (before === 0 || walk.kindCounts[kind] === 0) walk.kinds += sign;
  for (let j = 0; j < 6; j += 1) walk.a[j] += sign * aNPerMm[j];
}

function count(walk: Walk, thicknessMm: number): void {
  const { problem, ratios, inverse } = walk;
  const { target } = problem;
  walk.examined += 1;
  invertSymmetric(walk.a, inverse);
  ratios[0] = problem.thickestMm / thicknessMm;
  ratios[1] = problem.thinnestMm > 0 ? thicknessMm / problem.thinnestMm : 1;
  ratios[2] = 1 / (inverse[0] * target.alongNPerMm);
  ratios[3] = 1 / (inverse[3] * target.acrossNPerMm);
  ratios[4] = target.shearNPerMm > 0 ? 1 / (inverse[5] * target.shearNPerMm) : 1;
  for (let pull = 0; pull < 4; pull += 1)
    ratios[5 + pull] = stackStrength(walk.problem, walk, pull) / target.strengthNPerMm[pull];
  ratios[9] = problem.mostKinds / walk.kinds;
  tallyUp(walk);
}

/** Force per width at which the first of the plies counted breaks; `inverse` is that of their A. */
export function stackStrength(
  { options }: StackProblem,
  { counts, inverse }: { readonly counts: Int32Array; readonly inverse: Float64Array },
  pull: number,
): number {
  let least = Number.MAX_VALUE;
  for (let i = 0; i < counts.length; i += 1) {
    if (counts[i] > 0) least = Math.min(least, membraneStrength(inverse, options[i].membrane.layers, pull));
  }
  return least;
}

const ORDER = constraints.length - 1;

function tallyUp(walk: Walk): void {
  const { tally, ratios } = walk;
  let failed = -1;
  let failures = 0;
  for (let i = 0; i < ORDER; i += 1) {
    tally.best[i] = Math.max(tally.best[i], ratios[i]);
    const isMet = reaches(ratios[i], 1);
    tally.metBy[i] += isMet ? 1 : 0;
    failures += isMet ? 0 : 1;
    if (!isMet) failed = i;
  }
  if (failures > 1) return;
  const isOrdered = canBeOrdered(walk);
  tally.metBy[ORDER] += isOrdered ? 1 : 0;
  tally.best[ORDER] = Math.max(tally.best[ORDER], isOrdered ? 1 : 0);
  if (failures === 0) tally.sole[ORDER] += isOrdered ? 0 : 1;
  else if (isOrdered) {
    tally.sole[failed] += 1;
    tally.nearest[failed] = Math.max(tally.nearest[failed], ratios[failed]);
  }
}

function canBeOrdered({ problem, counts, ratios, inverse }: Walk): boolean {
  const force = (pull: number): number => ratios[5 + pull] * problem.target.strengthNPerMm[pull];
  return hasOrder(problem, counts, [
    Math.min(force(0), force(1)) * inverse[0],
    Math.min(force(2), force(3)) * inverse[3],
  ]);
}
