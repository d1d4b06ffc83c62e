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

interface Best {
  readonly arrangement: Arrangement;
  readonly outerPrint: number;
  readonly stiffness: number;
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
  /** CARRIED numbers a depth: strip sums along, strip sums across, and the height reached. */
  readonly carried: Float64Array;
  best?: Best;
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
  const plies = counts.reduce((sum, count) => sum + count, 0);
  const ordering: Ordering = {
    problem,
    limitStrain,
    counts: counts.slice(),
    order: [],
    tried: outwardsByDensity(problem.options)[0].filter((i) => counts[i] > 0),
    isFirstEnough,
    carried: carriedFrom(problem.panel, plies),
  };
  extend(ordering, plies);
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
    carry(ordering.carried, CARRIED * ordering.order.length, options[i]);
    ordering.order.push(i);
    extend(ordering, left - 1);
    ordering.order.pop();
    ordering.counts[i] += 1;
  }
}

/** Sums S0, S1, S2 of `StripSums` along and then across, and the height of the last face. */
const CARRIED = 7;
const HEIGHT = 6;

function carriedFrom(panel: StackPanel | undefined, plies: number): Float64Array {
  const carried = new Float64Array(CARRIED * (plies + 1));
  if (panel === undefined) return carried;
  panel.base.forEach(({ s0, s1, s2 }, side) => carried.set([s0, s1, s2], 3 * side));
  carried[HEIGHT] = panel.coreFaceMm;
  return carried;
}

/** `withLayer` for both directions at once, from one depth to the next. */
function carry(carried: Float64Array, from: number, { membrane }: StackOption): void {
  const { aNPerMm, thicknessMm } = membrane;
  const to = from + CARRIED;
  const low = carried[from + HEIGHT];
  const middle = low + thicknessMm / 2;
  const square = middle * middle + (thicknessMm * thicknessMm) / 12;
  const along = aNPerMm[0];
  const across = aNPerMm[3];
  carried[to] = carried[from] + along;
  carried[to + 1] = carried[from + 1] + along * middle;
  carried[to + 2] = carried[from + 2] + along * square;
  carried[to + 3] = carried[from + 3] + across;
  carried[to + 4] = carried[from + 4] + across * middle;
  carried[to + 5] = carried[from + 5] + across * square;
  carried[to + HEIGHT] = low + thicknessMm;
}

function weigh(ordering: Ordering): void {
  const {
    problem: { options, panel },
    order,
    best,
  } = ordering;
  const outerPrint = options[order[order.length - 1]].printThrough;
  if (best !== undefined && outerPrint > best.outerPrint) return;
  const ratios = panel === undefined ? undefined : panelRatios(panel, ordering);
  if (ratios !== undefined && !isRestored(ratios)) return;
  const stiffness =
    ratios === undefined ? heavyInside(options, order) : Math.min(ratios.bending[0], ratios.bending[1]);
  if (best !== undefined && outerPrint === best.outerPrint && !isStiffer(stiffness, best.stiffness)) return;
  ordering.best = {
    outerPrint,
    stiffness,
    arrangement: ratios === undefined ? { order: [...order] } : { order: [...order], ratios },
  };
}

const isRestored = ({ bending, moment }: PanelRatios): boolean =>
  reaches(bending[0], 1) && reaches(bending[1], 1) && reaches(moment[0], 1) && reaches(moment[1], 1);

const isStiffer = (one: number, than: number): boolean => one > than * (1 + 1e-12) + 1e-12;

const heavyInside = (options: readonly StackOption[], order: readonly number[]): number =>
  order.reduce((sum, option, place) => sum - place * options[option].massGPerM2, 0);

/** Bending stiffness and moment capacity of the panel with this skin, over what they were. */
function panelRatios(panel: StackPanel, { carried, order, limitStrain }: Ordering): PanelRatios {
  const at = CARRIED * order.length;
  const top = carried[at + HEIGHT];
  const along = bendingIn(carried, at);
  const across = bendingIn(carried, at + 3);
  return {
    bending: [along / panel.bendingNmm[0], across / panel.bendingNmm[1]],
    moment: [
      momentCapacity(along, limitStrain[0], top - carried[at + 1] / carried[at]) / panel.momentN[0],
      momentCapacity(across, limitStrain[1], top - carried[at + 4] / carried[at + 3]) / panel.momentN[1],
    ],
  };
}

/** `stripBending` of three sums that stand in a row. */
const bendingIn = (sums: Float64Array, at: number): number =>
  sums[at + 2] - (sums[at + 1] * sums[at + 1]) / sums[at];

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
  const orders = outwardsByDensity(options);
  return ([0, 1] as const).every((side) =>
    reaches(bendingOf(panel, options, { counts, order: orders[side], side }), panel.bendingNmm[side]),
  );
}

interface Counted {
  readonly counts: Int32Array;
  readonly order: readonly number[];
  readonly side: 0 | 1;
}

/** Bending of the panel with the counted plies, all of one option before the next in the order. */
function bendingOf(
  { base, coreFaceMm }: StackPanel,
  options: readonly StackOption[],
  { counts, order, side }: Counted,
): number {
  let { s0, s1, s2 } = base[side];
  let top = coreFaceMm;
  for (const i of order) {
    const { aNPerMm, thicknessMm } = options[i].membrane;
    const stiffness = aNPerMm[3 * side];
    for (let ply = 0; ply < counts[i]; ply += 1) {
      const middle = top + thicknessMm / 2;
      s0 += stiffness;
      s1 += stiffness * middle;
      s2 += stiffness * (middle * middle + (thicknessMm * thicknessMm) / 12);
      top += thicknessMm;
    }
  }
  return s2 - (s1 * s1) / s0;
}

type DensityOrders = readonly [along: readonly number[], across: readonly number[]];
const densityOrders = new WeakMap<readonly StackOption[], DensityOrders>();

/** All options, the densest last, by stiffness along and across; kept, because every stack of a search asks. */
function outwardsByDensity(options: readonly StackOption[]): DensityOrders {
  const known = densityOrders.get(options);
  if (known !== undefined) return known;
  const sorted = (place: 0 | 3): readonly number[] => {
    const density = options.map(({ membrane }) => membrane.aNPerMm[place] / membrane.thicknessMm);
    return [...options.keys()].sort((i, j) => density[i] - density[j]);
  };
  const orders: DensityOrders = [sorted(0), sorted(3)];
  densityOrders.set(options, orders);
  return orders;
}
