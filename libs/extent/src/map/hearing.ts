import type { Point } from '#lib/geometry';
import { addTo, banded, entryOf, type Banded } from './banded.js';
import type { Field } from './field.js';
import type { Ties } from './interpolation.js';

/**
 * A second field, of the observer and not of the deck: neighbouring taps may err together, because the laminate is thick there,
 * a tank lies below, or the hand was heavy. It is added to what a hammer hears and to nothing else, so that plugs and a
 * meter tell it from damage. Its values are independent on a grid of about a hand's breadth, between which they run straight,
 * so that errors hang together over one to two of its steps.
 * Source: [DIGGLE-RIBEIRO-2007] section 3.5 (a second, short-range process beside the signal)
 */
export interface Hearing {
  readonly field: Field;
  /** Unknowns of the observer's field that each reading takes part in, four to a reading; none for what is not a hammer. */
  readonly ties: Ties;
}

/** About a hand's breadth between the values of the observer's field. */
const SPACING_MM = 120;

export function withHearing(field: Field, places: readonly Point[], isHammer: readonly boolean[]): Hearing {
  const { lattice } = field;
  const every = Math.max(1, Math.round(SPACING_MM / lattice.stepMm));
  const grid = gridTies(places, isHammer, (place) => {
    const [column, row] = lattice.cellAt(place);
    return [column / every, row / every];
  });
  const order = ordered(field, grid.cells, every);
  const ties: Ties = {
    nodes: grid.ties.nodes.map((own, index) => (grid.ties.shares[index] === 0 ? 0 : order.observerOf[own])),
    shares: grid.ties.shares,
  };
  return { field: besideObserver(field, order), ties };
}

/** Before anything is heard the observer's values have nothing to do with the deck's, and unit variance. */
const besideObserver = (field: Field, { precision, unknownOf }: Order): Field => ({
  ...field,
  precision,
  unknownOf,
  solve: (load) => {
    const own = new Float64Array(unknownOf.length);
    for (let node = 0; node < own.length; node += 1) own[node] = load[unknownOf[node]];
    field.solve(own);
    for (let node = 0; node < own.length; node += 1) load[unknownOf[node]] = own[node];
  },
});

interface GridTies {
  readonly ties: Ties;
  /** Column and row of each grid point that some tap needs. */
  readonly cells: readonly (readonly [number, number])[];
}

function gridTies(
  places: readonly Point[],
  isHammer: readonly boolean[],
  gridAt: (place: Point) => Point,
): GridTies {
  const ties = { nodes: new Int32Array(4 * places.length), shares: new Float64Array(4 * places.length) };
  const known = new Map<string, number>();
  const cells: (readonly [number, number])[] = [];
  for (const [index, place] of places.entries()) {
    if (!isHammer[index]) continue;
    const [x, y] = gridAt(place);
    for (let corner = 0; corner < 4; corner += 1) {
      const [column, row] = [Math.floor(x) + (corner >> 1), Math.floor(y) + (corner & 1)];
      const share = (1 - Math.abs(x - column)) * (1 - Math.abs(y - row));
      if (share < 1e-6) continue;
      const key = `${column} ${row}`;
      if (!known.has(key)) known.set(key, cells.push([column, row]) - 1);
      ties.nodes[4 * index + corner] = known.get(key) ?? 0;
      ties.shares[4 * index + corner] = share;
    }
    evened(ties.shares.subarray(4 * index, 4 * index + 4));
  }
  return { ties, cells };
}

/** Every tap's error varies alike, wherever it lies between the values. */
function evened(shares: Float64Array): void {
  const length = Math.hypot(...shares);
  for (let corner = 0; corner < 4; corner += 1) shares[corner] /= length;
}

interface Order {
  readonly precision: Banded;
  readonly unknownOf: Int32Array;
  readonly observerOf: Int32Array;
}

/** Both kinds of unknowns by column and row, so that those that meet in a reading stand near each other. */
function ordered(field: Field, cells: GridTies['cells'], every: number): Order {
  const { lattice, precision } = field;
  const all = [
    ...lattice.nodes.map(({ column, row }, node) => ({ column, row, node, own: -1 })),
    ...cells.map(([column, row], own) => ({ column: column * every, row: row * every, node: -1, own })),
  ].sort((one, other) => one.column - other.column || one.row - other.row || one.own - other.own);
  const unknownOf = new Int32Array(lattice.nodes.length);
  const observerOf = new Int32Array(cells.length);
  for (const [place, { node, own }] of all.entries()) {
    if (node >= 0) unknownOf[node] = place;
    else observerOf[own] = place;
  }
  const matrix = banded(all.length, bandOf(field, unknownOf, all, every));
  for (const place of observerOf) addTo(matrix, place, place, 1);
  for (let i = 0; i < precision.size; i += 1) {
    for (let j = Math.max(0, i - precision.band); j <= i; j += 1) {
      const value = entryOf(precision, i, j);
      if (value !== 0) addTo(matrix, unknownOf[i], unknownOf[j], value);
    }
  }
  return { precision: matrix, unknownOf, observerOf };
}

/** Farthest apart that two unknowns stand which meet in the field or in a reading. */
function bandOf(
  { precision }: Field,
  unknownOf: Int32Array,
  all: readonly { readonly column: number }[],
  every: number,
): number {
  let band = 1;
  for (let i = 0; i < precision.size; i += 1) {
    for (let j = Math.max(0, i - precision.band); j < i; j += 1) {
      if (entryOf(precision, i, j) !== 0) band = Math.max(band, Math.abs(unknownOf[i] - unknownOf[j]));
    }
  }
  let first = 0;
  for (const [place, { column }] of all.entries()) {
    while (all[first].column < column - every) first += 1;
    band = Math.max(band, place - first);
  }
  return Math.min(band, all.length - 1);
}
