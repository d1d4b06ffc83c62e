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
  let [twice, before] = [0, ring[0]];
  for (let index = 1; index <= ring.length; index += 1) {
    const corner = ring[index % ring.length];
    twice = twice + (before[0] - x0) * (corner[1] - y0) - (corner[0] - x0) * (before[1] - y0);
    before = corner;
  }
  return twice / 2;
}

export const ringAreaMm2 = (ring: Ring): number => Math.abs(signedAreaMm2(ring));

/** Area without holes. */
export const areaMm2 = (region: Region): number => summed(region, signedAreaMm2);

export function ringLengthMm(ring: Ring): number {
  let sum = 0;
  for (let index = 1; index <= ring.length; index += 1)
    sum += distance(ring[index - 1], ring[index % ring.length]);
  return sum;
}

/** Length of every edge, round holes too. */
export const perimeterMm = (region: Region): number => summed(region, ringLengthMm);

function summed(region: Region, of: (ring: Ring) => number): number {
  let sum = 0;
  for (const { outer, holes } of region) {
    sum += of(outer);
    for (const hole of holes) sum += of(hole);
  }
  return sum;
}

/** Smallest upright rectangle round the points; an empty list has none. */
export function boundsOfPoints(points: readonly Point[]): Bounds | undefined {
  if (points.length === 0) return undefined;
  let [[minX, minY], [maxX, maxY]] = [points[0], points[0]];
  for (let index = 1; index < points.length; index += 1) {
    const x = points[index][0];
    const y = points[index][1];
    minX = Math.min(minX, x);
    minY = Math.min(minY, y);
    maxX = Math.max(maxX, x);
    maxY = Math.max(maxY, y);
  }
  return { minX, minY, maxX, maxY };
}

/** Smallest upright rectangle round the region; the empty region has none. */
export const bounds = (region: Region): Bounds | undefined =>
  boundsOfPoints(region.length === 1 ? region[0].outer : region.flatMap(({ outer }) => outer));

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
