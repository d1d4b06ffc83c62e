import { distance, type Point } from '#lib/geometry';
import type { Lattice } from './lattice.js';

/** Nodes round places, four to a place, each with its share of a straight-line interpolation; the shares of a place sum to 1, and where fewer nodes are needed the rest have a share of 0. */
export interface Ties {
  readonly nodes: Int32Array;
  readonly shares: Float64Array;
}

export function tiesTo(lattice: Lattice, places: readonly Point[]): Ties {
  const ties = { nodes: new Int32Array(4 * places.length), shares: new Float64Array(4 * places.length) };
  for (const [index, place] of places.entries())
    tie(place, lattice, { nodes: ties.nodes.subarray(4 * index), shares: ties.shares.subarray(4 * index) });
  return ties;
}

/** A share smaller than this is rounding. */
const LEAST_SHARE = 1e-9;

/** Writes the ties of one place; off the panel, where some nodes are missing, those there are share it, or the nearest of all has it. */
function tie(place: Point, lattice: Lattice, { nodes, shares }: Ties): void {
  const { cellAt, nodeAt, columns, rows } = lattice;
  const [x, y] = cellAt(place);
  const column = Math.min(columns - 2, Math.max(0, Math.floor(x)));
  const row = Math.min(rows - 2, Math.max(0, Math.floor(y)));
  let total = 0;
  for (let corner = 0; corner < 4; corner += 1) {
    const [right, up] = [corner >> 1, corner & 1];
    const node = nodeAt[(column + right) * rows + row + up];
    const share = (right === 1 ? x - column : 1 - x + column) * (up === 1 ? y - row : 1 - y + row);
    if (node < 0 || share <= LEAST_SHARE) continue;
    [nodes[corner], shares[corner]] = [node, share];
    total += share;
  }
  if (total === 0) [nodes[0], shares[0], total] = [nearestNode(place, lattice), 1, 1];
  for (let corner = 0; corner < 4; corner += 1) shares[corner] /= total;
}

const nearestNode = (place: Point, { nodes }: Lattice): number =>
  nodes.reduce(
    (best, node, index) => (distance(node.place, place) < distance(nodes[best].place, place) ? index : best),
    0,
  );

/** Values at the nodes, carried to the places that are tied to them. */
export function carried(values: Float64Array, ties: Ties): Float64Array {
  const there = new Float64Array(ties.nodes.length / 4);
  for (let index = 0; index < there.length; index += 1) there[index] = carriedTo(index, values, ties);
  return there;
}

/** The value at one of the places. */
export function carriedTo(place: number, values: Float64Array, { nodes, shares }: Ties): number {
  const at = 4 * place;
  return (
    shares[at] * values[nodes[at]] +
    shares[at + 1] * values[nodes[at + 1]] +
    shares[at + 2] * values[nodes[at + 2]] +
    shares[at + 3] * values[nodes[at + 3]]
  );
}
