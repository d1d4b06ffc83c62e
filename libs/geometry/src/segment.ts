import { orient2d } from 'robust-predicates';
import { distance, edgesOf, ringsOf, type Point, type Region, type Ring } from './point.js';

/** Closest point of the segment a-b to `point`. */
export function nearestOnSegment(point: Point, a: Point, b: Point): Point {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const lengthSquared = dx * dx + dy * dy;
  if (lengthSquared === 0) return a;
  const share = Math.min(1, Math.max(0, ((point[0] - a[0]) * dx + (point[1] - a[1]) * dy) / lengthSquared));
  return [a[0] + share * dx, a[1] + share * dy];
}

export const distanceToSegment = (point: Point, a: Point, b: Point): number =>
  distance(point, nearestOnSegment(point, a, b));

/** A point common to both segments, ends included, or nothing; decided by exact predicates, not by rounding. */
export function segmentIntersection(a: Point, b: Point, c: Point, d: Point): Point | undefined {
  const [sideA, sideB] = [side(c, d, a), side(c, d, b)];
  const [sideC, sideD] = [side(a, b, c), side(a, b, d)];
  if (sideA === 0 && isWithin(a, c, d)) return a;
  if (sideB === 0 && isWithin(b, c, d)) return b;
  if (sideC === 0 && isWithin(c, a, b)) return c;
  if (sideD === 0 && isWithin(d, a, b)) return d;
  if (sideA * sideB >= 0 || sideC * sideD >= 0) return undefined;
  return lineCrossing(a, b, c, d);
}

/** Where the infinite lines a-b and c-d cross; parallel lines do not. */
export function lineCrossing(a: Point, b: Point, c: Point, d: Point): Point | undefined {
  const [abX, abY, cdX, cdY] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]];
  const denominator = abX * cdY - abY * cdX;
  if (denominator === 0) return undefined;
  const share = ((c[0] - a[0]) * cdY - (c[1] - a[1]) * cdX) / denominator;
  return [a[0] + share * abX, a[1] + share * abY];
}

/** Parts of the segment a-b that lie inside the region. */
export function segmentWithin(region: Region, a: Point, b: Point): readonly (readonly [Point, Point])[] {
  const shares = ringsOf(region).flatMap((ring) => crossingShares(ring, a, b));
  const stops = [0, ...shares.filter((share) => share > 0 && share < 1).sort((one, other) => one - other), 1];
  const at = (share: number): Point => [a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])];
  return stops.slice(1).flatMap((stop, index) => {
    const start = stops[index];
    const isInside = stop - start > 1e-12 && containsPoint(region, at((start + stop) / 2));
    return isInside ? [[at(start), at(stop)] as const] : [];
  });
}

const crossingShares = (ring: Ring, a: Point, b: Point): readonly number[] =>
  edgesOf(ring).flatMap(([c, d]) => {
    const [abX, abY, cdX, cdY] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]];
    const denominator = abX * cdY - abY * cdX;
    if (denominator === 0) return [];
    const share = ((c[0] - a[0]) * cdY - (c[1] - a[1]) * cdX) / denominator;
    const along = ((c[0] - a[0]) * abY - (c[1] - a[1]) * abX) / denominator;
    return along >= -1e-12 && along <= 1 + 1e-12 ? [share] : [];
  });

/** True inside and on the outer edge; a point in a hole is outside. */
export const containsPoint = (region: Region, point: Point): boolean =>
  region.some(
    ({ outer, holes }) => isInsideRing(outer, point) && !holes.some((hole) => isInsideRing(hole, point)),
  );

/** Crossing count of a ray towards +x, with exact orientation so that a corner is never counted twice. */
export function isInsideRing(ring: Ring, point: Point): boolean {
  let isInside = false;
  for (let index = 0, before = ring.length - 1; index < ring.length; before = index, index += 1) {
    const [a, b] = [ring[before], ring[index]];
    const isLevel = a[1] === point[1] && b[1] === point[1];
    if (isLevel && isWithin(point, a, b)) return true;
    if (a[1] > point[1] === b[1] > point[1]) continue;
    const turn = side(a, b, point);
    if (turn === 0) return true;
    if (turn > 0 === b[1] > a[1]) isInside = !isInside;
  }
  return isInside;
}

/** Closest point of the ring's edge to `point`. */
export function nearestOnRing(point: Point, ring: Ring): Point {
  const edge = nearestEdge(point, ring);
  return nearestOnSegment(point, ring[edge], ring[(edge + 1) % ring.length]);
}

/** Distance to the ring's edge, from inside or outside. */
export function distanceToRing(point: Point, ring: Ring): number {
  const edge = nearestEdge(point, ring);
  if (edge < 0) return Number.MAX_VALUE;
  return distanceToSegment(point, ring[edge], ring[(edge + 1) % ring.length]);
}

/** The corner at which the nearest edge begins; -1 where there is none. */
function nearestEdge(point: Point, ring: Ring): number {
  let [nearest, edge] = [Number.MAX_VALUE, -1];
  for (let index = 0; index < ring.length; index += 1) {
    const squared = squaredToSegment(point, ring[index], ring[(index + 1) % ring.length]);
    if (squared < nearest) [nearest, edge] = [squared, index];
  }
  return edge;
}

/** Square of the distance to a segment, mm2: for comparing many, because it makes no points and takes no root. */
export function squaredToSegment(point: Point, a: Point, b: Point): number {
  const dx = b[0] - a[0];
  const dy = b[1] - a[1];
  const squared = dx * dx + dy * dy;
  const along = (point[0] - a[0]) * dx + (point[1] - a[1]) * dy;
  const share = squared === 0 ? 0 : Math.min(1, Math.max(0, along / squared));
  const awayX = point[0] - (a[0] + share * dx);
  const awayY = point[1] - (a[1] + share * dy);
  return awayX * awayX + awayY * awayY;
}

/** Distance to the nearest edge of the region, holes included. */
export const distanceToEdge = (point: Point, region: Region): number =>
  Math.min(Number.MAX_VALUE, ...ringsOf(region).map((ring) => distanceToRing(point, ring)));

/** Distance from the point to the region: 0 inside. */
export const distanceToRegion = (point: Point, region: Region): number =>
  containsPoint(region, point) ? 0 : distanceToEdge(point, region);

/** +1 when c lies on the y side of a-b seen along x, -1 on the other, 0 on the line. */
const side = (a: Point, b: Point, c: Point): number =>
  -Math.sign(orient2d(a[0], a[1], b[0], b[1], c[0], c[1]));

const isWithin = (point: Point, a: Point, b: Point): boolean =>
  point[0] >= Math.min(a[0], b[0]) &&
  point[0] <= Math.max(a[0], b[0]) &&
  point[1] >= Math.min(a[1], b[1]) &&
  point[1] <= Math.max(a[1], b[1]);
