import { invertSymmetric } from '../theory/compliance.js';
import { stackStrength } from './stack-diagnosis.js';
import { arrange, type Arrangement } from './stack-order.js';
import { EQUAL, reaches, type StackOption, type StackProblem } from './stack-problem.js';

export interface Stack extends Arrangement {
  readonly counts: readonly number[];
  readonly thicknessMm: number;
  readonly price: number;
  readonly massGPerM2: number;
  readonly plyCount: number;
}

export interface SearchEffort {
  /** Every choice of up to the most plies from the options, order apart. */
  readonly space: number;
  /** Stacks looked at one by one. */
  readonly examined: number;
  /** Branches cut off because nothing below them could be better, fit, or reach the target. */
  readonly cut: {
    /** Branches left because they cannot beat what was found. */
    readonly dearer: number;
    /** Branches left because the stack is too thick. */
    readonly tooThick: number;
    /** Branches left because what is missing cannot be made good. */
    readonly outOfReach: number;
    /** Branches left because they use too many fabrics. */
    readonly tooManyKinds: number;
  };
}

export interface StackSearch {
  readonly best: readonly Stack[];
  readonly effort: SearchEffort;
}

interface State {
  readonly problem: StackProblem;
  readonly bounds: Bounds;
  readonly counts: Int32Array;
  readonly kindCounts: Int32Array;
  /** Six numbers a depth. */
  readonly a: Float64Array;
  readonly thickness: Float64Array;
  readonly price: Float64Array;
  readonly mass: Float64Array;
  readonly inverse: Float64Array;
  best: readonly Stack[];
  kinds: number;
  examined: number;
  dearer: number;
  tooThick: number;
  outOfReach: number;
  tooManyKinds: number;
}

/**
 * The best stacks by price, then mass, then plies: branch and bound over multisets of options.
 *
 * A branch is cut only when a bound that no stack below it can beat says so: thickness and price only grow; A11 and A22
 * bound 1/a11 and 1/a22 from above; the price still needed is at least the missing stiffness or thickness at the
 * cheapest rate left. So the answer is the same as that of listing everything (test/property/laminate.spec.ts).
 */
export function searchStacks(given: StackProblem): StackSearch {
  const places = [...given.options.keys()].sort((i, j) => rate(given.options[i]) - rate(given.options[j]));
  const problem = { ...given, options: places.map((i) => given.options[i]) };
  const state = startOf(problem);
  descend(state, 0, 0);
  return {
    best: state.best.map((stack) => inGivenOrder(stack, places)),
    effort: {
      space: combinations(problem.options.length + problem.mostPlies, problem.mostPlies) - 1,
      examined: state.examined,
      cut: {
        dearer: state.dearer,
        tooThick: state.tooThick,
        outOfReach: state.outOfReach,
        tooManyKinds: state.tooManyKinds,
      },
    },
  };
}

/** Price of a unit of stiffness in the better direction: cheap stiffness first finds good stacks early. */
const rate = ({ price, membrane }: StackOption): number =>
  price / Math.max(membrane.aNPerMm[0], membrane.aNPerMm[3]);

function inGivenOrder(stack: Stack, places: readonly number[]): Stack {
  const counts = new Array<number>(places.length).fill(0);
  for (const [i, place] of places.entries()) counts[place] = stack.counts[i];
  return { ...stack, counts, order: stack.order.map((i) => places[i]) };
}

function combinations(n: number, k: number): number {
  let result = 1;
  for (let i = 1; i <= k; i += 1) result = (result * (n - k + i)) / i;
  return Math.round(result);
}

/** For each option, the extremes over it and all later ones. */
interface Bounds {
  readonly pricePerMm: Float64Array;
  readonly pricePerAlong: Float64Array;
  readonly pricePerAcross: Float64Array;
  readonly thickest: Float64Array;
  readonly mostAlong: Float64Array;
  readonly mostAcross: Float64Array;
  readonly alongPerMm: Float64Array;
  readonly acrossPerMm: Float64Array;
}

function boundsOf(options: readonly StackOption[]): Bounds {
  const suffix = (
    value: (option: StackOption) => number,
    pick: (x: number, y: number) => number,
  ): Float64Array => {
    const result = new Float64Array(options.length);
    for (let i = options.length - 1; i >= 0; i -= 1) {
      const own = value(options[i]);
      result[i] = i === options.length - 1 ? own : pick(own, result[i + 1]);
    }
    return result;
  };
  const along = ({ membrane }: StackOption) => membrane.aNPerMm[0];
  const across = ({ membrane }: StackOption) => membrane.aNPerMm[3];
  const thick = ({ membrane }: StackOption) => membrane.thicknessMm;
  return {
    pricePerMm: suffix((option) => option.price / thick(option), Math.min),
    pricePerAlong: suffix((option) => option.price / along(option), Math.min),
    pricePerAcross: suffix((option) => option.price / across(option), Math.min),
    thickest: suffix(thick, Math.max),
    mostAlong: suffix(along, Math.max),
    mostAcross: suffix(across, Math.max),
    alongPerMm: suffix((option) => along(option) / thick(option), Math.max),
    acrossPerMm: suffix((option) => across(option) / thick(option), Math.max),
  };
}

function startOf(problem: StackProblem): State {
  const depths = problem.mostPlies + 1;
  return {
    problem,
    bounds: boundsOf(problem.options),
    counts: new Int32Array(problem.options.length),
    kindCounts: new Int32Array(1 + Math.max(...problem.options.map(({ kind }) => kind))),
    a: new Float64Array(6 * depths),
    thickness: new Float64Array(depths),
    price: new Float64Array(depths),
    mass: new Float64Array(depths),
    inverse: new Float64Array(6),
    best: [],
    kinds: 0,
    examined: 0,
    dearer: 0,
    tooThick: 0,
    outOfReach: 0,
    tooManyKinds: 0,
  };
}

function descend(state: State, from: number, depth: number): void {
  const {
    problem: { options, mostPlies },
  } = state;
  for (let i = from; i < options.length; i += 1) {
    if (!mayAdd(state, i, depth)) continue;
    add(state, i, depth);
    state.examined += 1;
    consider(state, depth + 1);
    if (depth + 1 < mostPlies && mayReach(state, i, depth + 1)) descend(state, i, depth + 1);
    remove(state, i);
  }
}

function mayAdd(state: State, i: number, depth: number): boolean {
  const { problem, kindCounts } = state;
  const { kind, membrane, price } = problem.options[i];
  if (kindCounts[kind] === 0 && state.kinds === problem.mostKinds) {
    state.tooManyKinds += 1;
    return false;
  }
  if (state.thickness[depth] + membrane.thicknessMm > problem.thickestMm * (1 + EQUAL)) {
    state.tooThick += 1;
    return false;
  }
  if (isDearer(state, state.price[depth] + price)) {
    state.dearer += 1;
    return false;
  }
  return true;
}

const isDearer = ({ best, problem }: State, price: number): boolean =>
  best.length === problem.keep && price > best[best.length - 1].price * (1 + EQUAL) + EQUAL;

function add(state: State, i: number, depth: number): void {
  const { membrane, price, massGPerM2, kind } = state.problem.options[i];
  for (let j = 0; j < 6; j += 1) state.a[6 * (depth + 1) + j] = state.a[6 * depth + j] + membrane.aNPerMm[j];
  state.thickness[depth + 1] = state.thickness[depth] + membrane.thicknessMm;
  state.price[depth + 1] = state.price[depth] + price;
  state.mass[depth + 1] = state.mass[depth] + massGPerM2;
  state.counts[i] += 1;
  if (state.kindCounts[kind] === 0) state.kinds += 1;
  state.kindCounts[kind] += 1;
}

function remove(state: State, i: number): void {
  const { kind } = state.problem.options[i];
  state.counts[i] -= 1;
  state.kindCounts[kind] -= 1;
  if (state.kindCounts[kind] === 0) state.kinds -= 1;
}

/** Whether any stack below, made of option `i` and later ones, can still be stiff and thick enough and not dearer than the worst kept. */
function mayReach(state: State, i: number, depth: number): boolean {
  const { bounds, problem } = state;
  const room = problem.thickestMm - state.thickness[depth];
  const plies = problem.mostPlies - depth;
  const lacksMm = problem.thinnestMm - state.thickness[depth];
  const lacksAlong = problem.target.alongNPerMm * (1 - EQUAL) - state.a[6 * depth];
  const lacksAcross = problem.target.acrossNPerMm * (1 - EQUAL) - state.a[6 * depth + 3];
  const isReachable =
    lacksMm <= plies * bounds.thickest[i] &&
    lacksAlong <= Math.min(plies * bounds.mostAlong[i], room * bounds.alongPerMm[i]) &&
    lacksAcross <= Math.min(plies * bounds.mostAcross[i], room * bounds.acrossPerMm[i]);
  if (!isReachable) {
    state.outOfReach += 1;
    return false;
  }
  const still = Math.max(
    0,
    lacksMm * bounds.pricePerMm[i],
    lacksAlong * bounds.pricePerAlong[i],
    lacksAcross * bounds.pricePerAcross[i],
  );
  if (isDearer(state, (state.price[depth] + still) * (1 - EQUAL))) {
    state.dearer += 1;
    return false;
  }
  return true;
}

function consider(state: State, depth: number): void {
  const { problem, a, inverse } = state;
  const { target } = problem;
  if (!reaches(state.thickness[depth], problem.thinnestMm)) return;
  if (!reaches(a[6 * depth], target.alongNPerMm) || !reaches(a[6 * depth + 3], target.acrossNPerMm)) return;
  if (!isBetterThanKept(state, depth)) return;
  invertSymmetric(a.subarray(6 * depth, 6 * depth + 6), inverse);
  const isStiff =
    reaches(1 / inverse[0], target.alongNPerMm) &&
    reaches(1 / inverse[3], target.acrossNPerMm) &&
    reaches(1 / inverse[5], target.shearNPerMm);
  if (!isStiff) return;
  const strengths = [0, 1, 2, 3].map((pull) => stackStrength(problem, state, pull));
  if (!strengths.every((strength, pull) => reaches(strength, target.strengthNPerMm[pull]))) return;
  const limitStrain = [
    Math.min(strengths[0], strengths[1]) * inverse[0],
    Math.min(strengths[2], strengths[3]) * inverse[3],
  ] as const;
  const arrangement = arrange(problem, state.counts, limitStrain);
  if (arrangement !== undefined) keep(state, depth, arrangement);
}

function isBetterThanKept(state: State, depth: number): boolean {
  const { best, problem } = state;
  if (best.length < problem.keep) return true;
  const last = best[best.length - 1];
  return (
    compareStacks({ price: state.price[depth], massGPerM2: state.mass[depth], plyCount: depth }, last) < 0
  );
}

type Weighed = Pick<Stack, 'price' | 'massGPerM2' | 'plyCount'>;

/** Below zero when `x` is the better: by price, then mass, then plies, with sums of the same parts counting as equal. */
export function compareStacks(x: Weighed, y: Weighed): number {
  if (Math.abs(x.price - y.price) > EQUAL * (Math.abs(x.price) + Math.abs(y.price)) + EQUAL)
    return x.price - y.price;
  if (Math.abs(x.massGPerM2 - y.massGPerM2) > EQUAL * (x.massGPerM2 + y.massGPerM2))
    return x.massGPerM2 - y.massGPerM2;
  return x.plyCount - y.plyCount;
}

function keep(state: State, depth: number, arrangement: Arrangement): void {
  const stack: Stack = {
    ...arrangement,
    counts: [...state.counts],
    plyCount: depth,
    thicknessMm: state.thickness[depth],
    price: state.price[depth],
    massGPerM2: state.mass[depth],
  };
  state.best = [...state.best, stack].sort(compareStacks).slice(0, state.problem.keep);
}
