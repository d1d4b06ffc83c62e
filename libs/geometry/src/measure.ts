import { distance, edgesOf, ringsOf, type Bounds, type Point, type Region, type Ring } from './point.js';

/**
 * Signed area of a closed ring, mm2: half the sum of x_i y_(i+1) - x_(i+1) y_i (the surveyor's formula),
 * positive when the corners run from x towards y. Coordinates are taken from the first corner, so that a
 * small shape far from the origin keeps its digits.
 * Source: [SHOELACE] eq. (1)
 * Worked: test/reference/cases/geometry-closed-forms.ts
 */
export function signedAreaMm2(ring: Ring): number {
  if (ring.length < 3) return 0;
  const [x0, y0] = ring[0];
  const twice = edgesOf(ring).reduce(
    (sum, [a, b]) => sum + (a[0] - x0) * (b[1] - y0) - (b[0] - x0) * (a[1] - y0),
    0,
  );
  return twice / 2;
}

export const ringAreaMm2 = (ring: Ring): number => Math.abs(signedAreaMm2(ring));

/** Area without holes. */
export const areaMm2 = (region: Region): number =>
  ringsOf(region).reduce((sum, ring) => sum + signedAreaMm2(ring), 0);

export const ringLengthMm = (ring: Ring): number =>
  edgesOf(ring).reduce((sum, [a, b]) => sum + distance(a, b), 0);

/** Length of every edge, round holes too. */
export const perimeterMm = (region: Region): number =>
  ringsOf(region).reduce((sum, ring) => sum + ringLengthMm(ring), 0);

/** Smallest upright rectangle round the points; an empty list has none. */
export function boundsOfPoints(points: readonly Point[]): Bounds | undefined {
  if (points.length === 0) return undefined;
  const [first] = points;
  return points.reduce<Bounds>(
    (box, [x, y]) => ({
      minX: Math.min(box.minX, x),
      minY: Math.min(box.minY, y),
      maxX: Math.max(box.maxX, x),
      maxY: Math.max(box.maxY, y),
    }),
    { minX: first[0], minY: first[1], maxX: first[0], maxY: first[1] },
  );
}

/** Smallest upright rectangle round the region; the empty region has none. */
export const bounds = (region: Region): Bounds | undefined =>
  boundsOfPoints(region.flatMap(({ outer }) => outer));

/** Centre of area, holes left out; the empty region has none. */
export function centroid(region: Region): Point | undefined {
  const rings = ringsOf(region);
  const area = areaMm2(region);
  if (area === 0) return undefined;
  const [x0, y0] = rings[0][0];
  const moments = rings.map((ring) => firstMoments(ring, [x0, y0]));
  const [mx, my] = moments.reduce((sum, part) => [sum[0] + part[0], sum[1] + part[1]], [0, 0]);
  return [x0 + mx / (6 * area), y0 + my / (6 * area)];
}

const firstMoments = (ring: Ring, [x0, y0]: Point): Point =>
  edgesOf(ring).reduce<Point>(
    ([mx, my], [a, b]) => {
      const [ax, ay, bx, by] = [a[0] - x0, a[1] - y0, b[0] - x0, b[1] - y0];
      const cross = ax * by - bx * ay;
      return [mx + (ax + bx) * cross, my + (ay + by) * cross];
    },
    [0, 0],
  );
