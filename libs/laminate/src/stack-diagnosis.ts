import { measureMembrane, type Membrane } from './skin.js';
import { arrange } from './stack-order.js';
import { reaches, type StackProblem } from './stack-problem.js';

export const constraints = [
  'flush-proud', 'flush-low', 'stiffness-along', 'stiffness-across', 'stiffness-shear',
  'strength-tension-along', 'strength-compression-along', 'strength-tension-across', 'strength-compression-across',
  'kinds', 'order',
] as const;
export type Constraint = (typeof constraints)[number];

export interface ConstraintReport {
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
  readonly a: Float64Array;
  examined: number;
}

/** How much thicker than flush the diagnosis looks, so that it can say what a little room would do. */
export const LOOK_BEYOND_MM = 3;

/** Looks at every stack without cutting and counts, constraint by constraint, what is met and what stands alone in the way. */
export function diagnose(problem: StackProblem): readonly ConstraintReport[] {
  const tally: Tally = { metBy: zeros(), best: zeros(), sole: zeros(), nearest: zeros() };
  const walk: Walk = { problem, tally, counts: new Int32Array(problem.options.length), a: new Float64Array(6), examined: 0 };
  step(walk, 0, { plies: 0, thicknessMm: 0 });
  return constraints.map((constraint, i) => ({
    constraint, metBy: tally.metBy[i], bestRatio: tally.best[i], soleObstacleOf: tally.sole[i],
    ...(tally.nearest[i] > 0 ? { nearestRatio: tally.nearest[i] } : {}),
  }));
}

const zeros = (): Float64Array => new Float64Array(constraints.length);

function step(walk: Walk, from: number, so: { readonly plies: number; readonly thicknessMm: number }): void {
  const { problem: { options, mostPlies, thickestMm } } = walk;
  for (let i = from; i < options.length; i += 1) {
    const thicknessMm = so.thicknessMm + options[i].membrane.thicknessMm;
    if (thicknessMm > thickestMm + LOOK_BEYOND_MM) continue;
    change(walk, i, 1);
    count(walk, thicknessMm);
    if (so.plies + 1 < mostPlies) step(walk, i, { plies: so.plies + 1, thicknessMm });
    change(walk, i, -1);
  }
}

function change(walk: Walk, i: number, sign: 1 | -1): void {
  walk.counts[i] += sign;
  const { aNPerMm } = walk.problem.options[i].membrane;
  for (let j = 0; j < 6; j += 1) walk.a[j] += sign * aNPerMm[j];
}

function count(walk: Walk, thicknessMm: number): void {
  const { problem, tally } = walk;
  const membrane: Membrane = {
    thicknessMm, aNPerMm: walk.a, hasLimits: true,
    layers: problem.options.flatMap(({ membrane: { layers } }, i) => (walk.counts[i] > 0 ? layers : [])),
  };
  const measure = measureMembrane(membrane);
  const { target } = problem;
  const kinds = new Set(problem.options.flatMap(({ kind }, i) => (walk.counts[i] > 0 ? [kind] : []))).size;
  const ratios = [
    problem.thickestMm / thicknessMm, problem.thinnestMm > 0 ? thicknessMm / problem.thinnestMm : 1,
    measure.alongNPerMm / target.alongNPerMm, measure.acrossNPerMm / target.acrossNPerMm,
    target.shearNPerMm > 0 ? measure.shearNPerMm / target.shearNPerMm : 1,
    ...measure.strengthNPerMm.map((strength, pull) => strength / target.strengthNPerMm[pull]),
    problem.mostKinds / kinds,
  ];
  tallyUp(tally, ratios, () => hasOrder(walk, measure));
}

function tallyUp(tally: Tally, ratios: readonly number[], order: () => boolean): void {
  const failed = ratios.flatMap((ratio, i) => {
    tally.best[i] = Math.max(tally.best[i], ratio);
    if (reaches(ratio, 1)) tally.metBy[i] += 1;
    return reaches(ratio, 1) ? [] : [i];
  });
  const last = constraints.length - 1;
  const isOrdered = failed.length <= 1 && order();
  if (isOrdered) {
    tally.metBy[last] += 1;
    tally.best[last] = 1;
  }
  if (failed.length === 1 && isOrdered) {
    tally.sole[failed[0]] += 1;
    tally.nearest[failed[0]] = Math.max(tally.nearest[failed[0]], ratios[failed[0]]);
  }
  if (failed.length === 0 && !isOrdered) tally.sole[last] += 1;
}

function hasOrder({ problem, counts }: Walk, measure: ReturnType<typeof measureMembrane>): boolean {
  const [t1, c1, t2, c2] = measure.strengthNPerMm;
  return arrange(problem, counts, [Math.min(t1, c1) / measure.alongNPerMm, Math.min(t2, c2) / measure.acrossNPerMm]) !== undefined;
}
