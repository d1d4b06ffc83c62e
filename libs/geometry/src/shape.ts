import { orient2d } from 'robust-predicates';
import polylabel from 'polylabel';
import { areaMm2, bounds, centroid, signedAreaMm2 } from './measure.js';
import type { Point, Polygon, Region, Ring } from './point.js';
import { distanceToRing, squaredToSegment } from './segment.js';

/**
 * Smallest convex ring round the points (monotone chain), with corners in line left out.
 * Source: [ANDREW-1979]
 */
export function convexHull(points: readonly Point[]): Ring {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  if (sorted.length < 3) return sorted;
  const lower = chain(sorted);
  const upper = chain([...sorted].reverse());
  return [...lower.slice(0, -1), ...upper.slice(0, -1)];
}

/** robust-predicates turns the other way from the shoelace formula: positive is a turn from y towards x. */
const turnsIn = (a: Point, b: Point, c: Point): boolean => orient2d(a[0], a[1], b[0], b[1], c[0], c[1]) < 0;

function chain(sorted: readonly Point[]): readonly Point[] {
  const kept: Point[] = [];
  for (const point of sorted) {
    while (kept.length >= 2 && !turnsIn(kept[kept.length - 2], kept[kept.length - 1], point)) kept.pop();
    kept.push(point);
  }
  return kept;
}

/**
 * Leaves out corners that lie within `toleranceMm` of the line between their neighbours that stay
 * (Douglas and Peucker's method on a closed ring). It starts from the two corners farthest apart, so the answer
 * does not depend on where the ring starts. The result may cross itself where the ring is narrower than the tolerance.
 * Source: [DOUGLAS-PEUCKER-1973]
 */
export function simplifyRing(ring: Ring, toleranceMm: number): Ring {
  if (ring.length <= 3 || toleranceMm <= 0) return ring;
  const [one, other] = farthestPair(ring);
  const first = thinned([...ring.slice(one, other + 1)], toleranceMm);
  const second = thinned([...ring.slice(other), ...ring.slice(0, one + 1)], toleranceMm);
  const kept = [...first.slice(0, -1), ...second.slice(0, -1)];
  return kept.length >= 3 && signedAreaMm2(kept) !== 0 ? kept : ring;
}

/** Distances nearer to each other than this are the same, so that the rounding of a turned ring decides between no two corners. */
const SAME_MM = 0.02;

/** The square from which a distance is clearly more than one of the square given. */
const clearlyMore = (squaredMm2: number): number => (Math.sqrt(squaredMm2) + SAME_MM) ** 2;

function farthestPair(ring: Ring): readonly [number, number] {
  const hull = new Set(convexHull(ring));
  const candidates = ring.flatMap((point, index) => (hull.has(point) ? [index] : []));
  const xs = Float64Array.from(candidates, (index) => ring[index][0]);
  const ys = Float64Array.from(candidates, (index) => ring[index][1]);
  let [one, other, bar] = [-1, -1, -1];
  for (let order = 0; order < candidates.length; order += 1) {
    for (let later = order + 1; later < candidates.length; later += 1) {
      const [dx, dy] = [xs[later] - xs[order], ys[later] - ys[order]];
      const apart = dx * dx + dy * dy;
      if (apart > bar) [one, other, bar] = [order, later, clearlyMore(apart)];
    }
  }
  return one < 0 ? [0, Math.floor(ring.length / 2)] : [candidates[one], candidates[other]];
}

function thinned(line: readonly Point[], toleranceMm: number): readonly Point[] {
  const keep = new Set([0, line.length - 1]);
  const open: (readonly [number, number])[] = [[0, line.length - 1]];
  for (let span = open.pop(); span !== undefined; span = open.pop()) {
    const [from, to] = span;
    const { far, farthestMm } = farthestFrom(line, from, to);
    if (far < 0 || farthestMm <= toleranceMm) continue;
    keep.add(far);
    open.push([from, far], [far, to]);
  }
  return line.filter((_, index) => keep.has(index));
}

/** Of the corners between two, the first of those farthest from the line through both, -1 where there is none; and how far they lie. */
function farthestFrom(
  line: readonly Point[],
  from: number,
  to: number,
): { readonly far: number; readonly farthestMm: number } {
  let [far, farthest, bar] = [-1, 0, -1];
  for (let index = from + 1; index < to; index += 1) {
    const away = squaredToSegment(line[index], line[from], line[to]);
    if (away > farthest) farthest = away;
    if (away > bar) [far, bar] = [index, clearlyMore(away)];
  }
  return { far, farthestMm: Math.sqrt(farthest) };
}

/** A place well inside the largest polygon (the centre of its largest inscribed circle, to 1 %); the empty region has none. */
export function interiorPoint(
  region: Region,
): { readonly at: Point; readonly clearanceMm: number } | undefined {
  const largest = largestPolygon(region);
  const box = bounds(region);
  if (largest === undefined || box === undefined) return undefined;
  const rings = [largest.outer, ...largest.holes];
  const ownBox = bounds([largest]) ?? box;
  const precision = Math.min(ownBox.maxX - ownBox.minX, ownBox.maxY - ownBox.minY) / 100;
  const [x, y] = polylabel(
    rings.map((ring) => ring.map(([px, py]) => [px, py])),
    precision,
  );
  const at: Point = [x, y];
  return { at, clearanceMm: Math.min(...rings.map((ring) => distanceToRing(at, ring))) };
}

export function largestPolygon(region: Region): Polygon | undefined {
  return region.reduce<Polygon | undefined>(
    (best, polygon) => (best === undefined || areaMm2([polygon]) > areaMm2([best]) ? polygon : best),
    undefined,
  );
}

/** A ring of chords with its corners on the circle, leaving it by at most `toleranceMm`. */
export function circle(centre: Point, radiusMm: number, toleranceMm = 0.01): Ring {
  const half = Math.acos(Math.max(0, 1 - toleranceMm / radiusMm));
  const count = Math.max(8, Math.ceil(Math.PI / half));
  return Array.from({ length: count }, (_, index): Point => {
    const angle = (2 * Math.PI * index) / count;
    return [centre[0] + radiusMm * Math.cos(angle), centre[1] + radiusMm * Math.sin(angle)];
  });
}

export const rectangle = (minX: number, minY: number, maxX: number, maxY: number): Ring => [
  [minX, minY],
  [maxX, minY],
  [maxX, maxY],
  [minX, maxY],
];

/** Centre and direction of the longest axis (from second moments of area), for laying lines along a shape. */
export function principalAxisRad(region: Region): number {
  const centre = centroid(region);
  if (centre === undefined) return 0;
  const [xx, yy, xy] = region
    .flatMap(({ outer, holes }) => [outer, ...holes])
    .map((ring) => secondMoments(ring, centre))
    .reduce((sum, part) => [sum[0] + part[0], sum[1] + part[1], sum[2] + part[2]], [0, 0, 0]);
  return xx === yy && xy === 0 ? 0 : Math.atan2(2 * xy, xx - yy) / 2;
}

function secondMoments(ring: Ring, [cx, cy]: Point): readonly [number, number, number] {
  let [xx, yy, xy] = [0, 0, 0];
  for (let index = 0, before = ring.length - 1; index < ring.length; before = index, index += 1) {
    const [ax, ay, bx, by] = [
      ring[before][0] - cx,
      ring[before][1] - cy,
      ring[index][0] - cx,
      ring[index][1] - cy,
    ];
    const cross = ax * by - bx * ay;
    xx += ((ax * ax + ax * bx + bx * bx) * cross) / 12;
    yy += ((ay * ay + ay * by + by * by) * cross) / 12;
    xy += ((ax * by + 2 * ax * ay + 2 * bx * by + bx * ay) * cross) / 24;
  }
  return [xx, yy, xy];
}
