import { normalQuantile } from '#lib/kernel';
import { contours } from 'd3-contour';
import { intersection, regionOf, union, type Point, type Region } from '#lib/geometry';
import type { Lattice } from './lattice.js';

/** Off the lattice no core is bad, as surely as the arithmetic allows. */
const SURELY_NOT = normalQuantile(0);

/**
 * The part of the panel where core is bad with at least this probability.
 *
 * Contours are drawn through normal quantiles, which vary more evenly than probabilities. A value stands for the middle of its
 * cell, which the contouring library places half a cell further on.
 */
export function contourAt(
  probability: number,
  chance: Float64Array,
  lattice: Lattice,
  panel: Region,
): Region {
  const { columns, rows, nodes } = lattice;
  const values = new Array<number>(columns * rows).fill(SURELY_NOT);
  for (const [node, { column, row }] of nodes.entries())
    values[column + row * columns] = normalQuantile(chance[node]);
  const found = contours().size([columns, rows]).contour(values, normalQuantile(probability));
  const onDeck = (ring: readonly (readonly number[])[]): readonly Point[] =>
    ring.slice(0, -1).map(([x, y]) => lattice.placeOf(x - 0.5, y - 0.5));
  const polygons = found.coordinates.map(([outer, ...holes]) => regionOf(onDeck(outer), holes.map(onDeck)));
  return intersection(union(...polygons), panel);
}
