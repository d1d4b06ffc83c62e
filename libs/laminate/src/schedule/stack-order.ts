import { neutralHeight, stripBending, withLayer, type StripSums } from '../theory/sandwich-strip.js';
import { reaches, type StackOption, type StackPanel, type StackProblem } from './stack-problem.js';

export interface PanelRatios {
  readonly bending: readonly [along: number, across: number];
  readonly moment: readonly [along: number, across: number];
}

export interface Arrangement {
  /** Places in the options, from the core outwards. */
  readonly order: readonly number[];
  /** New over old; absent without a panel. */
  readonly ratios?: PanelRatios;
}

interface Ordering {
  readonly problem: StackProblem;
  /** Strain at which the skin's first ply breaks under a pull along and across, the smaller of both signs. */
  readonly limitStrain: readonly [number, number];
  readonly counts: Int32Array;
  readonly order: number[];
  /** Options in the order they are tried from the core outwards, the least dense first. */
  readonly tried: readonly number[];
  /** Whether any order will do. */
  readonly isFirstEnough: boolean;
  best?: { readonly arrangement: Arrangement; readonly score: readonly number[] };
}

/**
 * The best order of given plies from the core outwards, over every distinct order.
 *
 * A fabric that suits the core lies first and one that prints little lies last. Among those that restore
 * the panel the outer ply that prints least wins, then the stiffest panel, or heavy plies inside where no panel is given.
 */
export function arrange(
  problem: StackProblem,
  counts: Int32Array,
  limitStrain: readonly [number, number],
): Arrangement | undefined {
  return bestOrder(problem, counts, limitStrain, false);
}

/** Whether any order of the plies meets what `arrange` asks. */
export const hasOrder = (
  problem: StackProblem,
  counts: Int32Array,
  limitStrain: readonly [number, number],
): boolean => bestOrder(problem, counts, limitStrain, true) !== undefined;

function bestOrder(
  problem: StackProblem,
  counts: Int32Array,
  limitStrain: readonly [number, number],
  isFirstEnough: boolean,
): Arrangement | undefined {
  if (!hasEnds(problem, counts) || !mayReachBending(problem, counts)) return undefined;
  const tried = [...new Set(densestOutermost(problem.options, counts, 0))];
  const ordering: Ordering = {
    problem,
    limitStrain,
    counts: counts.slice(),
    order: [],
    tried,
    isFirstEnough,
  };
  extend(
    ordering,
    counts.reduce((sum, count) => sum + count, 0),
  );
  return ordering.best?.arrangement;
}

/** A ply for the core and a ply for the outside, which may be one only where the stack is one ply. */
function hasEnds({ options, worstPrintThrough }: StackProblem, counts: Int32Array): boolean {
  let inner = false;
  let outer = false;
  for (let i = 0; i < counts.length; i += 1) {
    if (counts[i] === 0) continue;
    inner ||= options[i].suitsAgainstCore;
    outer ||= options[i].printThrough <= worstPrintThrough;
  }
  return inner && outer;
}

function extend(ordering: Ordering, left: number): void {
  if (left === 0) return weigh(ordering);
  const { options, worstPrintThrough } = ordering.problem;
  for (const i of ordering.tried) {
    if (ordering.isFirstEnough && ordering.best !== undefined) return;
    if (ordering.counts[i] === 0) continue;
    if (ordering.order.length === 0 && !options[i].suitsAgainstCore) continue;
    if (left === 1 && options[i].printThrough > worstPrintThrough) continue;
    ordering.counts[i] -= 1;
    ordering.order.push(i);
    extend(ordering, left - 1);
    ordering.order.pop();
    ordering.counts[i] += 1;
  }
}

function weigh(ordering: Ordering): void {
  const {
    problem: { options, panel },
    order,
    limitStrain,
  } = ordering;
  const outer = options[order[order.length - 1]].printThrough;
  const ratios = panel === undefined ? undefined : panelRatios(panel, options, { order, limitStrain });
  if (ratios !== undefined && ![...ratios.bending, ...ratios.moment].every((ratio) => reaches(ratio, 1)))
    return;
  const score = [-outer, ratios === undefined ? heavyInside(options, order) : Math.min(...ratios.bending)];
  if (ordering.best !== undefined && !isHigher(score, ordering.best.score)) return;
  ordering.best = {
    score,
    arrangement: ratios === undefined ? { order: [...order] } : { order: [...order], ratios },
  };
}

const isHigher = (score: readonly number[], than: readonly number[]): boolean =>
  score[0] > than[0] || (score[0] === than[0] && score[1] > than[1] * (1 + 1e-12) + 1e-12);

const heavyInside = (options: readonly StackOption[], order: readonly number[]): number =>
  order.reduce((sum, option, place) => sum - place * options[option].massGPerM2, 0);

/** Bending stiffness and moment capacity of the panel with this skin, over what they were. */
export function panelRatios(
  panel: StackPanel,
  options: readonly StackOption[],
  skin: { readonly order: readonly number[]; readonly limitStrain: readonly [number, number] },
): PanelRatios {
  const along = direction(panel, options, { ...skin, side: 0 });
  const across = direction(panel, options, { ...skin, side: 1 });
  return {
    bending: [along.bending / panel.bendingNmm[0], across.bending / panel.bendingNmm[1]],
    moment: [along.moment / panel.momentN[0], across.moment / panel.momentN[1]],
  };
}

interface Side {
  readonly order: readonly number[];
  readonly limitStrain: readonly [number, number];
  readonly side: 0 | 1;
}

function direction(panel: StackPanel, options: readonly StackOption[], { order, limitStrain, side }: Side) {
  const { sums, top } = stacked(panel, options, { order, side });
  const bending = stripBending(sums);
  return { bending, moment: momentCapacity(bending, limitStrain[side], top - neutralHeight(sums)) };
}

function stacked(
  { base, coreFaceMm }: StackPanel,
  options: readonly StackOption[],
  { order, side }: Pick<Side, 'order' | 'side'>,
) {
  let sums: StripSums = base[side];
  let top = coreFaceMm;
  for (const option of order) {
    const { aNPerMm, thicknessMm } = options[option].membrane;
    sums = withLayer(sums, aNPerMm[side === 0 ? 0 : 3], top, thicknessMm);
    top += thicknessMm;
  }
  return { sums, top };
}

/** Moment per width that strains the far face of the skin to its limit: M = D ε / c. */
export const momentCapacity = (bendingNmm: number, limitStrain: number, reachMm: number): number =>
  (bendingNmm * limitStrain) / reachMm;

/**
 * The stiffest order in one direction has the densest plies outermost; if even that falls short, no order will do.
 *
 * About any fixed axis below the skin, swapping a denser ply outwards raises Σ q ∫(z - z0)² dz; taken about the neutral
 * axis of the sorted order, that sum is its own D and bounds every other order's, whose D is least about its own axis.
 */
function mayReachBending({ panel, options }: StackProblem, counts: Int32Array): boolean {
  if (panel === undefined) return true;
  return ([0, 1] as const).every((side) => {
    const order = densestOutermost(options, counts, side === 0 ? 0 : 3);
    return reaches(stripBending(stacked(panel, options, { order, side }).sums), panel.bendingNmm[side]);
  });
}

function densestOutermost(
  options: readonly StackOption[],
  counts: Int32Array,
  place: 0 | 3,
): readonly number[] {
  const density = (i: number): number => options[i].membrane.aNPerMm[place] / options[i].membrane.thicknessMm;
  const used = [...counts.keys()].filter((i) => counts[i] > 0).sort((i, j) => density(i) - density(j));
  return used.flatMap((i) => new Array<number>(counts[i]).fill(i));
}
