import {
  addTo,
  banded,
  entryOf,
  factorised,
  inverseWithinBand,
  logDeterminant,
  type Banded,
} from './banded.js';
import type { Lattice } from './lattice.js';

/** What is taken to be true of the damage before any reading: how far it hangs together. */
export interface Field {
  readonly lattice: Lattice;
  readonly rangeMm: number;
  readonly precision: Banded;
  readonly logDeterminant: number;
  /** Each node's value is divided by this, so that every place varies alike, at the edges too. */
  readonly scale: Float64Array;
}

/** Range at which the correlation has fallen to about 0.14, as a multiple of 1/kappa, for smoothness 1. */
export const RANGE_BY_KAPPA = Math.sqrt(8);

/**
 * Gaussian Markov random field on the lattice whose covariance is Whittle's (Matern's with smoothness 1),
 * kappa r K1(kappa r), with kappa = sqrt(8)/range: Q is proportional to K K with K = (kappa h)^2 I + G, where G is the
 * graph Laplacian of cells that touch side to side. The graph ends at the panel's edge, so that correlation runs round
 * a hatch or a cockpit and not across it; the field is then scaled to unit variance at every node.
 *
 * kappa  derived   1/mm
 * h      lattice   mm
 *
 * Valid:  a step of at most half the range; isotropic, stationary.
 * Source: [LINDGREN-2011] section 2.2; [WHITTLE-1954]
 * Worked: test/reference/cases/extent-covariance.ts
 */
export function fieldOn(lattice: Lattice, rangeMm: number): Field {
  const diagonal = ((RANGE_BY_KAPPA * lattice.stepMm) / rangeMm) ** 2;
  const neighbours = neighboursOf(lattice);
  const precision = banded(lattice.nodes.length, 2 * lattice.reach);
  for (const [node, around] of neighbours.entries()) {
    const own = diagonal + around.length;
    addTo(precision, node, node, own * own + around.length);
    for (const other of around) {
      if (other < node) addTo(precision, node, other, -own - diagonal - neighbours[other].length);
      addPairs(precision, other, around);
    }
  }
  const factor = factorised(precision);
  const inverse = inverseWithinBand(factor);
  const scale = Float64Array.from(lattice.nodes, (_, node) => Math.sqrt(entryOf(inverse, node, node)));
  return { lattice, rangeMm, precision, logDeterminant: logDeterminant(factor), scale };
}

/** Two different neighbours of one node meet through it. */
function addPairs(precision: Banded, one: number, around: readonly number[]): void {
  for (const other of around) {
    if (other < one) addTo(precision, one, other, 1);
  }
}

function neighboursOf({ nodes, nodeAt, columns, rows }: Lattice): readonly (readonly number[])[] {
  return nodes.map(({ column, row }) => {
    const cells = [
      [column - 1, row],
      [column + 1, row],
      [column, row - 1],
      [column, row + 1],
    ];
    return cells.flatMap(([c, r]) => {
      const node = c >= 0 && c < columns && r >= 0 && r < rows ? nodeAt[c * rows + r] : -1;
      return node >= 0 ? [node] : [];
    });
  });
}
