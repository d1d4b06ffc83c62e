import { distance } from '#lib/geometry';
import type { Lattice } from '../map/lattice.js';
import { APART_MM } from './places.js';
import type { ReadingKind } from './questions.js';

/** A reading that could be made: where, how, how long it takes, and the share of the doubt that it removes at each node. */
export interface Candidate {
  readonly node: number;
  readonly kind: ReadingKind;
  readonly hours: number;
  readonly told: Float64Array;
}

export interface Picked extends Candidate {
  /** Hours saved beyond those that the readings before it save. */
  readonly worthH: number;
}

export interface Limits {
  readonly count: number;
  readonly hours?: number;
}

/**
 * The readings that together save most, one after another: each where it saves most beyond those before it, whose share of the
 * doubt is taken off first, so that they spread out by themselves. Such a sum has less and less to add, for which taking the
 * best next is never far from the best set.
 *
 * Without a limit of time the next is the one that saves most beyond its own time; with one, the one that saves most in its
 * time. Nothing is taken that saves less than its time.
 * Source: [NEMHAUSER-1978] taking the best next of a sum with diminishing returns
 */
export function batchOf(
  candidates: readonly Candidate[],
  doubtH: Float64Array,
  { count, hours }: Limits,
  { nodes }: Lattice,
): readonly Picked[] {
  const left = doubtH.slice();
  const picked: Picked[] = [];
  let time = hours ?? Infinity;
  while (picked.length < count) {
    const open = candidates.filter(
      (one) =>
        one.hours <= time &&
        picked.every(({ node }) => distance(nodes[node].place, nodes[one.node].place) >= APART_MM),
    );
    const best = bestOf(open, left, hours !== undefined);
    if (best === undefined) break;
    picked.push(best);
    time -= best.hours;
    for (let node = 0; node < left.length; node += 1) left[node] *= 1 - best.told[node];
  }
  return picked;
}

function bestOf(
  candidates: readonly Candidate[],
  doubtH: Float64Array,
  isByTime: boolean,
): Picked | undefined {
  const scoreOf = ({ worthH, hours }: Picked) => (isByTime ? worthH / hours : worthH - hours);
  return candidates
    .map((one) => ({ ...one, worthH: savedBy(one, doubtH) }))
    .filter(({ worthH, hours }) => worthH > hours)
    .reduce<Picked | undefined>(
      (best, one) => (best === undefined || scoreOf(one) > scoreOf(best) ? one : best),
      undefined,
    );
}

function savedBy({ told }: Candidate, doubtH: Float64Array): number {
  let sum = 0;
  for (let node = 0; node < told.length; node += 1) sum += told[node] * doubtH[node];
  return sum;
}
