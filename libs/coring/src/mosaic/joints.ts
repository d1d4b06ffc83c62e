import { distanceToEdge, perimeterMm, ringsOf, rotatePoint, type Point, type Region } from '#lib/geometry';
import type { MosaicNumbers } from './rules.js';
import { nearSupport, type Support } from './support.js';

/** Each joint is an edge of two cells; the edge of what is cored is none. */
export const jointLengthMm = (cells: readonly Region[], coreable: Region): number =>
  betweenCellsMm(cells, coreable, perimeterMm);

/**
 * Length of joint that runs more across the grain than along it. Such a joint cuts the plies that carry; one along the grain leaves
 * them whole.
 */
export function buttLengthMm(cells: readonly Region[], coreable: Region, grainDeg: number): number {
  const [x, y] = rotatePoint([1, 0], (grainDeg * Math.PI) / 180);
  const acrossMm = ([ax, ay]: Point, [bx, by]: Point): number => {
    const along = Math.abs((bx - ax) * x + (by - ay) * y);
    const across = Math.abs((by - ay) * x - (bx - ax) * y);
    return across > along ? Math.hypot(bx - ax, by - ay) : 0;
  };
  return betweenCellsMm(cells, coreable, (region) => sumOverEdges(region, acrossMm));
}

const betweenCellsMm = (
  cells: readonly Region[],
  coreable: Region,
  edgeMm: (region: Region) => number,
): number => Math.max(0, cells.reduce((sum, cell) => sum + edgeMm(cell), 0) - edgeMm(coreable)) / 2;

const sumOverEdges = (region: Region, of: (from: Point, to: Point) => number): number =>
  ringsOf(region).reduce(
    (sum, ring) => sum + ring.reduce((all, corner, k) => all + of(corner, ring[(k + 1) % ring.length]), 0),
    0,
  );

/** An edge of a cell nearer than this to the rim of what is cored is the rim. */
const RIM_MM = 0.1;

/** Length of joint that runs along a support in spite of everything. */
export function jointOnSupportMm(
  cells: readonly Region[],
  coreable: Region,
  { supports, numbers }: { readonly supports: readonly Support[]; readonly numbers: MosaicNumbers },
): number {
  if (supports.length === 0) return 0;
  const onEdge = (from: Point, to: Point): number => {
    const near = nearSupport({ supports, numbers }, from, to);
    const middle: Point = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
    return near > 0 && distanceToEdge(middle, coreable) > RIM_MM ? near : 0;
  };
  return cells.reduce((sum, cell) => sum + sumOverEdges(cell, onEdge), 0) / 2;
}
