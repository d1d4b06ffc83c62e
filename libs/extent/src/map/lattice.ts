import { areaMm2, ringsOf, type Point, type Region } from '#lib/geometry';
import { deckFrameOf, toDeck, toFrame, type DeckFrame } from './deck-frame.js';

/** Square cells over the panel, laid along its smallest rectangle, so that turning or mirroring the deck does so with the cells and their numbers. */
export interface Lattice {
  readonly frame: DeckFrame;
  readonly stepMm: number;
  /** Along the long side. */
  readonly columns: number;
  readonly rows: number;
  /** Middle of cell (column, row) on the deck. */
  readonly placeOf: (column: number, row: number) => Point;
  /** Column and row, with fractions, of a place on the deck. */
  readonly cellAt: (place: Point) => Point;
  /** Number of the node in a cell, or -1 where the lattice has none (well off the panel). */
  readonly nodeAt: Int32Array;
  readonly nodes: readonly LatticeNode[];
  /** Greatest difference between the numbers of cells that touch, corner to corner too. */
  readonly reach: number;
}

export interface LatticeNode {
  readonly column: number;
  readonly row: number;
  readonly place: Point;
  /** Panel within the cell, mm2. */
  readonly areaMm2: number;
}

/** Cells are not made smaller than this: finer than anybody sounds. */
const LEAST_STEP_MM = 15;

/** A lattice of about so many cells. */
export const latticeOver = (panel: Region, cells: number, frame = deckFrameOf(panel)): Lattice =>
  latticeWithStep(panel, Math.max(LEAST_STEP_MM, Math.sqrt(areaMm2(panel) / cells)), frame);

export function latticeWithStep(panel: Region, stepMm: number, frame = deckFrameOf(panel)): Lattice {
  const [columns, rows] = [frame.lengthMm, frame.widthMm].map((side) => Math.ceil(side / stepMm - 1e-6) + 2);
  const placeOf = (column: number, row: number): Point =>
    toDeck(frame, [(column - (columns - 1) / 2) * stepMm, (row - (rows - 1) / 2) * stepMm]);
  const cellAt = (place: Point): Point => {
    const [x, y] = toFrame(frame, place);
    return [x / stepMm + (columns - 1) / 2, y / stepMm + (rows - 1) / 2];
  };
  const shape = { frame, stepMm, columns, rows, placeOf, cellAt };
  return { ...shape, ...numbered(cellAreas(panel, shape), shape) };
}

type Shape = Pick<Lattice, 'frame' | 'columns' | 'rows' | 'placeOf' | 'cellAt' | 'stepMm'>;

/** Nodes stand in every cell that holds panel and in the cells round those, so that contours reach the panel's edge. */
function numbered(areas: Float64Array, shape: Shape): Pick<Lattice, 'nodeAt' | 'nodes' | 'reach'> {
  const { columns, rows, placeOf } = shape;
  const nodeAt = new Int32Array(columns * rows).fill(-1);
  const nodes: LatticeNode[] = [];
  for (let column = 0; column < columns; column += 1) {
    for (let row = 0; row < rows; row += 1) {
      if (!touchesPanel(areas, column, row, shape)) continue;
      nodeAt[column * rows + row] = nodes.length;
      nodes.push({ column, row, place: placeOf(column, row), areaMm2: areas[column * rows + row] });
    }
  }
  return { nodeAt, nodes, reach: reachOf(nodeAt, nodes, rows) };
}

function touchesPanel(areas: Float64Array, column: number, row: number, { columns, rows }: Shape): boolean {
  for (let c = Math.max(0, column - 1); c <= Math.min(columns - 1, column + 1); c += 1) {
    for (let r = Math.max(0, row - 1); r <= Math.min(rows - 1, row + 1); r += 1) {
      if (areas[c * rows + r] > 0) return true;
    }
  }
  return false;
}

function reachOf(nodeAt: Int32Array, nodes: readonly LatticeNode[], rows: number): number {
  return nodes.reduce((reach, { column, row }, index) => {
    const ahead = [row - 1, row, row + 1]
      .filter((r) => r >= 0 && r < rows)
      .map((r) => nodeAt[(column + 1) * rows + r] ?? -1);
    return Math.max(reach, ...ahead.map((other) => other - index));
  }, 1);
}

/** Panel within each cell, exactly: the panel's rings, in cells, are cut into columns first and then into rows. */
function cellAreas(panel: Region, { frame, columns, rows, cellAt, stepMm }: Shape): Float64Array {
  // A ring that is seen in the other hand runs the other way round.
  const cellMm2 = stepMm * stepMm * frame.signs[0] * frame.signs[1];
  const areas = new Float64Array(columns * rows);
  for (const ring of ringsOf(panel)) {
    const inCells = ring.map(cellAt);
    for (let column = 0; column < columns; column += 1) {
      const strip = between(inCells, 0, column);
      if (strip.length === 0) continue;
      for (let row = 0; row < rows; row += 1)
        areas[column * rows + row] += signedArea(between(strip, 1, row)) * cellMm2;
    }
  }
  return areas.map((area) => Math.max(0, area));
}

/** The part of a ring within half a cell of a column (axis 0) or row (axis 1). Source: [SUTHERLAND-HODGMAN-1974] */
const between = (ring: readonly Point[], axis: 0 | 1, middle: number): readonly Point[] =>
  onSide(onSide(ring, axis, middle - 0.5, 1), axis, middle + 0.5, -1);

function onSide(ring: readonly Point[], axis: 0 | 1, limit: number, side: 1 | -1): readonly Point[] {
  const kept: Point[] = [];
  for (const [index, point] of ring.entries()) {
    const before = ring[(index + ring.length - 1) % ring.length];
    const [here, there] = [side * (point[axis] - limit), side * (before[axis] - limit)];
    if (here >= 0 !== there >= 0) {
      const share = there / (there - here);
      kept.push([before[0] + share * (point[0] - before[0]), before[1] + share * (point[1] - before[1])]);
    }
    if (here >= 0) kept.push(point);
  }
  return kept;
}

function signedArea(ring: readonly Point[]): number {
  let sum = 0;
  for (const [index, [x, y]] of ring.entries()) {
    const next = ring[(index + 1) % ring.length];
    sum += x * next[1] - next[0] * y;
  }
  return sum / 2;
}
