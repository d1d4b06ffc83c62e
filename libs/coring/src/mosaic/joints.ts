import { distanceToEdge, perimeterMm, ringsOf, type Point, type Region } from '#lib/geometry';
import type { MosaicNumbers } from './rules.js';
import { nearSupport, type Support } from './support.js';

/** Each joint is an edge of two cells; the edge of what is cored is none. */
export const jointLengthMm = (cells: readonly Region[], coreable: Region): number =>
  Math.max(0, cells.reduce((sum, cell) => sum + perimeterMm(cell), 0) - perimeterMm(coreable)) / 2;

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
  const rings = cells.flatMap((cell) => ringsOf(cell));
  return (
    rings.reduce(
      (sum, ring) =>
        sum + ring.reduce((all, corner, k) => all + onEdge(corner, ring[(k + 1) % ring.length]), 0),
      0,
    ) / 2
  );
}
