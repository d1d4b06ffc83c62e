import {
  addTo,
  banded,
  entryOf,
  factorised,
  inverseWithinBand,
  logDeterminant,
  solveWith,
  type Banded,
} from './banded.js';
import type { Ties } from './interpolation.js';
import type { Lattice } from './lattice.js';

/** What is taken to be true of the damage before any reading: how far it hangs together. */
export interface Field {
  readonly lattice: Lattice;
  /** The geometric mean of the ranges along and across. */
  readonly rangeMm: number;
  /** How many times as far damage hangs together along the long side of the panel as across it; below 1 it is the other way. */
  readonly stretch: number;
  /** Of all unknowns: the nodes of the lattice, and others that readings may need, in an order that keeps the band narrow. */
  readonly precision: Banded;
  readonly logDeterminant: number;
  /** Where each node stands among the unknowns. */
  readonly unknownOf: Int32Array;
  /** Each node's value is divided by this, so that every place varies alike, at the edges too. */
  readonly scale: Float64Array;
  /** Standard deviation of the scaled field between nodes, where a straight-line interpolation is a little too even. */
  readonly sdAt: (ties: Ties) => Float64Array;
  /** Turns a load on the unknowns, in place, into what it moves: the covariance of the field times the load. */
  readonly solve: (load: Float64Array) => void;
}

/** Range at which the correlation has fallen to about 0.14, as a multiple of 1/kappa, for smoothness 2: sqrt(8 nu). */
export const RANGE_BY_KAPPA = 4;

/**
 * Gaussian Markov random field on the lattice whose covariance is Matern's with smoothness 2, (kappa r)^2 K2(kappa r) / 2, with
 * kappa = 4/range: Q is proportional to K K K with K = (kappa h)^2 I + G, where G is the graph Laplacian of cells that touch
 * side to side, those along the panel weighing s and those across it 1/s: the ranges are then range sqrt(s) and range / sqrt(s).
 * The graph ends at the panel's edge, so that correlation runs round a hatch or a cockpit and not across it;
 * the field is then scaled to unit variance at every node. Rims of damage are smooth at the size of a cell, as wet core is.
 *
 * kappa  derived   1/mm
 * h      lattice   mm
 * s      stretch   -
 *
 * Valid:  a step of at most half the shorter range; stationary.
 * Source: [LINDGREN-2011] section 2.2, alpha = 3, and section 3.4 (other ranges in other directions)
 * Worked: test/reference/cases/extent-covariance.ts
 */
export function fieldOn(lattice: Lattice, rangeMm: number, stretch = 1): Field {
  const diagonal = ((RANGE_BY_KAPPA * lattice.stepMm) / rangeMm) ** 2;
  const precision = precisionOn(lattice, diagonal, stretch);
  const factor = factorised(precision);
  const inverse = inverseWithinBand(factor);
  return {
    lattice,
    rangeMm,
    stretch,
    precision,
    logDeterminant: logDeterminant(factor),
    unknownOf: Int32Array.from(lattice.nodes, (_, node) => node),
    scale: Float64Array.from(lattice.nodes, (_, node) => Math.sqrt(entryOf(inverse, node, node))),
    sdAt: (ties) => interpolatedSds(ties, inverse),
    solve: (load) => {
      solveWith(factor, load);
    },
  };
}

function interpolatedSds({ nodes, shares }: Ties, inverse: Banded): Float64Array {
  const sd = (node: number) => Math.sqrt(entryOf(inverse, node, node));
  return Float64Array.from({ length: nodes.length / 4 }, (_, place) => {
    let sum = 0;
    for (let one = 4 * place; one < 4 * place + 4; one += 1) {
      if (shares[one] === 0) continue;
      for (let other = 4 * place; other < 4 * place + 4; other += 1) {
        if (shares[other] === 0) continue;
        const [i, j] = [nodes[one], nodes[other]];
        sum += (shares[one] * shares[other] * entryOf(inverse, i, j)) / (sd(i) * sd(j));
      }
    }
    return Math.sqrt(sum);
  });
}

/** K K K, row by row: a row of the product reaches three cells. */
function precisionOn(lattice: Lattice, diagonal: number, stretch: number): Banded {
  const neighbours = neighboursOf(lattice);
  const weights = { diagonal, along: stretch, across: 1 / stretch };
  const size = lattice.nodes.length;
  const matrix = banded(size, 3 * lattice.reach);
  const row = { values: new Float64Array(size), touched: new Int32Array(64), count: 0 };
  for (let node = 0; node < size; node += 1) {
    row.count = 0;
    put(row, node, 1);
    for (let turn = 0; turn < 3; turn += 1) multiply(row, neighbours, weights);
    for (let index = 0; index < row.count; index += 1) {
      const other = row.touched[index];
      if (other <= node) addTo(matrix, node, other, row.values[other]);
      row.values[other] = 0;
    }
  }
  return matrix;
}

/** A row with few entries: values by node, and the nodes that have one. */
interface SparseRow {
  readonly values: Float64Array;
  readonly touched: Int32Array;
  count: number;
}

function put(row: SparseRow, node: number, value: number): void {
  if (row.values[node] === 0) {
    row.touched[row.count] = node;
    row.count += 1;
  }
  row.values[node] += value;
}

interface Weights {
  readonly diagonal: number;
  readonly along: number;
  readonly across: number;
}

function multiply(
  row: SparseRow,
  neighbours: readonly Neighbours[],
  { diagonal, along, across }: Weights,
): void {
  const before = Array.from(row.touched.subarray(0, row.count), (node) => ({
    node,
    value: row.values[node],
  }));
  for (const { node } of before) row.values[node] = 0;
  row.count = 0;
  for (const { node, value } of before) {
    const near = neighbours[node];
    put(row, node, value * (diagonal + along * near.along.length + across * near.across.length));
    for (const other of near.along) put(row, other, -along * value);
    for (const other of near.across) put(row, other, -across * value);
  }
}

/** Nodes that touch a node side to side, along the long side of the panel and across it. */
interface Neighbours {
  readonly along: readonly number[];
  readonly across: readonly number[];
}

function neighboursOf({ nodes, nodeAt, columns, rows }: Lattice): readonly Neighbours[] {
  const nodesIn = (cells: readonly (readonly [column: number, row: number])[]): readonly number[] =>
    cells.flatMap(([column, row]) => {
      const isCell = column >= 0 && column < columns && row >= 0 && row < rows;
      const node = isCell ? nodeAt[column * rows + row] : -1;
      return node >= 0 ? [node] : [];
    });
  return nodes.map(({ column, row }) => ({
    along: nodesIn([
      [column - 1, row],
      [column + 1, row],
    ]),
    across: nodesIn([
      [column, row - 1],
      [column, row + 1],
    ]),
  }));
}
