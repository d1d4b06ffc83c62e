import { Clipper, EndType, FillRule, JoinType, type Path64 } from 'clipper2-ts';
import { convexParts } from './convex-parts.js';
import {
  anticlockwise,
  doubleArea,
  isConvex,
  isRectilinear,
  mirrored,
  reversed,
  ringsOf,
  shifted,
  tidied,
  type Region,
  type Ring,
} from './ring.js';

/**
 * No-fit region of two pieces: where the moving piece's reference point may not be, seen from the fixed piece's, so that
 * their interiors stay apart. It is the Minkowski sum of the fixed piece and the mirrored moving piece.
 *
 * Returned  rings, whole grid steps  the forbidden open set, by the even-odd rule; touching (the boundary) is allowed
 *
 * Never smaller than the true region: where clipping had to round a corner to the grid, the region is grown by two steps.
 * Valid:  simple rings, coordinates below 2^24. Passages of zero width are closed.
 * Source: [BENNELL-OLIVEIRA-2008] section 3.3 (Minkowski sums of convex parts)
 * Worked: libs/nesting/src/no-fit.spec.ts
 */
export function noFitRings(fixed: Region, moving: Region): readonly Ring[] {
  const rings = sumOf(fixed, moving);
  return isExactPair(fixed, moving) ? rings : grownOnSlopes(rings, marginSteps);
}

/**
 * Sloping edges are moved out by `marginSteps`, so that corners rounded to the grid, and overlaps of up to `slackSteps` left
 * by a search, still leave the true outlines apart. Edges along the axes stay: pieces may fill a width exactly.
 */
export const marginSteps = 24;
export const slackSteps = 10;

const isExactPair = (one: Region, other: Region): boolean =>
  [...ringsOf(one), ...ringsOf(other)].every(isRectilinear);

function sumOf(fixed: Region, moving: Region): readonly Ring[] {
  if (fixed.holes.length + moving.holes.length > 0) return unionOf(sweptParts(fixed, moving));
  const mirror = mirrored(moving.outer);
  if (isConvex(fixed.outer) && isConvex(mirror)) return [convexSum(fixed.outer, mirror)];
  return unionOf(convexParts(fixed.outer).flatMap((a) => convexParts(mirror).map((b) => convexSum(a, b))));
}

/** Sum of two convex anticlockwise rings: their edges in order of direction. */
export function convexSum(one: Ring, other: Ring): Ring {
  const a = fromLowest(one);
  const b = fromLowest(other);
  const sum = [a[0] + b[0], a[1] + b[1]];
  let i = 0;
  let j = 0;
  while (i < a.length || j < b.length) {
    const step = i >= a.length ? 1 : j >= b.length ? -1 : edgeTurn(a, i, b, j);
    const last = sum.length - 2;
    const dx = (step <= 0 ? edgeX(a, i) : 0) + (step >= 0 ? edgeX(b, j) : 0);
    const dy = (step <= 0 ? edgeX(a, i + 1) : 0) + (step >= 0 ? edgeX(b, j + 1) : 0);
    if (step <= 0) i += 2;
    if (step >= 0) j += 2;
    sum.push(sum[last] + dx, sum[last + 1] + dy);
  }
  return tidied(Float64Array.from(sum.slice(0, -2)));
}

const edgeX = (ring: Ring, i: number): number => ring[(i + 2) % ring.length] - ring[i];

/** Negative when the edge at `i` of `a` comes before the edge at `j` of `b` in direction, both being scanned from the lowest point. */
function edgeTurn(a: Ring, i: number, b: Ring, j: number): number {
  const ax = edgeX(a, i);
  const ay = edgeX(a, i + 1);
  const bx = edgeX(b, j);
  const by = edgeX(b, j + 1);
  const halfA = ay > 0 || (ay === 0 && ax > 0) ? 0 : 1;
  const halfB = by > 0 || (by === 0 && bx > 0) ? 0 : 1;
  return halfA === halfB ? Math.sign(bx * ay - ax * by) : halfA - halfB;
}

function fromLowest(ring: Ring): Ring {
  let lowest = 0;
  for (let i = 2; i < ring.length; i += 2) {
    const isLower =
      ring[i + 1] < ring[lowest + 1] || (ring[i + 1] === ring[lowest + 1] && ring[i] < ring[lowest]);
    if (isLower) lowest = i;
  }
  return Float64Array.from([...ring.subarray(lowest), ...ring.subarray(0, lowest)]);
}

/**
 * Parts whose union is the sum of two regions with holes: each edge of one swept along each edge of the other,
 * and a copy of each region at a point of the other (for when one lies wholly inside the other).
 */
function sweptParts(fixed: Region, moving: Region): readonly Ring[] {
  const mirror = { outer: mirrored(moving.outer), holes: moving.holes.map(mirrored) };
  const sweeps = ringsOf(fixed).flatMap((a) => ringsOf(mirror).flatMap((b) => edgeSweeps(a, b)));
  const copies = [
    ...ringsOf(fixed).map((ring) => shifted(ring, mirror.outer[0], mirror.outer[1])),
    ...ringsOf(mirror).map((ring) => shifted(ring, fixed.outer[0], fixed.outer[1])),
  ];
  return [
    ...unionOf(copies.slice(0, 1 + fixed.holes.length)),
    ...unionOf(copies.slice(1 + fixed.holes.length)),
    ...sweeps,
  ];
}

function edgeSweeps(a: Ring, b: Ring): readonly Ring[] {
  const sweeps: Ring[] = [];
  for (let i = 0; i < a.length; i += 2) {
    for (let j = 0; j < b.length; j += 2) sweeps.push(sweep(a, i, b, j));
  }
  return sweeps.filter((quad) => doubleArea(quad) !== 0);
}

function sweep(a: Ring, i: number, b: Ring, j: number): Ring {
  const x = a[i] + b[j];
  const y = a[i + 1] + b[j + 1];
  const ax = edgeX(a, i);
  const ay = edgeX(a, i + 1);
  const bx = edgeX(b, j);
  const by = edgeX(b, j + 1);
  return anticlockwise(Float64Array.of(x, y, x + ax, y + ay, x + ax + bx, y + ay + by, x + bx, y + by));
}

export const pathOf = (ring: Ring): Path64 =>
  Array.from({ length: ring.length / 2 }, (_, i) => ({ x: ring[2 * i], y: ring[2 * i + 1] }));

export const ringOf = (path: Path64): Ring => Float64Array.from(path.flatMap(({ x, y }) => [x, y]));

const unionOf = (rings: readonly Ring[]): readonly Ring[] =>
  Clipper.union(rings.map(pathOf), FillRule.NonZero)
    .map((path) => tidied(ringOf(path)))
    .filter((ring) => ring.length >= 6);

/** Grown by at least `steps` across sloping edges only. Where that would turn a short edge round, all edges are moved. */
export function grownOnSlopes(rings: readonly Ring[], steps: number): readonly Ring[] {
  const moved = rings.map((ring) => slopesMoved(ring, steps));
  const whole = moved.flatMap((ring) => (ring === undefined ? [] : [ring]));
  if (whole.length < rings.length) return grown(rings, steps);
  return whole.length === 1 && isConvex(whole[0]) ? whole : unionOf(whole);
}

function slopesMoved(ring: Ring, steps: number): Ring | undefined {
  const size = ring.length;
  const result = new Float64Array(size);
  for (let i = 0; i < size; i += 2) {
    const [x, y] = corner(ring, i, steps);
    result[i] = x;
    result[i + 1] = y;
  }
  for (let i = 0; i < size; i += 2) {
    const isKept = edgeX(result, i) * edgeX(ring, i) + edgeX(result, i + 1) * edgeX(ring, i + 1) > 0;
    if (!isKept) return undefined;
  }
  return tidied(result);
}

/** A corner so sharp that it would move further than this many margins is not moved at all: the caller then moves all edges. */
const sharpest = 200;
/** No corner of a no-fit region lies further than this outside the true one. */
export const mostGrowth = sharpest * marginSteps;

/** Where the moved lines of the two edges at vertex `i` meet; not a number where that is too far away. */
function corner(ring: Ring, i: number, steps: number): readonly [number, number] {
  const before = (i + ring.length - 2) % ring.length;
  const [ax, ay, bx, by] = [edgeX(ring, before), edgeX(ring, before + 1), edgeX(ring, i), edgeX(ring, i + 1)];
  const [a, b] = [
    ax === 0 || ay === 0 ? 0 : steps * Math.hypot(ax, ay),
    bx === 0 || by === 0 ? 0 : steps * Math.hypot(bx, by),
  ];
  const turn = ax * by - ay * bx;
  const isStraight = Math.abs(turn) < 1e-4 * Math.hypot(ax, ay) * Math.hypot(bx, by);
  if (isStraight && ax * bx + ay * by < 0) return [Number.NaN, Number.NaN];
  if (isStraight)
    return [
      ring[i] + Math.round((by * steps) / Math.hypot(bx, by)),
      ring[i + 1] - Math.round((bx * steps) / Math.hypot(bx, by)),
    ];
  const [dx, dy] = [Math.round((ax * b - bx * a) / turn), Math.round((ay * b - by * a) / turn)];
  return Math.abs(dx) + Math.abs(dy) > sharpest * steps
    ? [Number.NaN, Number.NaN]
    : [ring[i] + dx, ring[i + 1] + dy];
}

/** Grown by at least `steps`: corners are mitred or cut square outside the round, never inside it. */
export const grown = (rings: readonly Ring[], steps: number): readonly Ring[] =>
  Clipper.inflatePaths(rings.map(pathOf), steps, JoinType.Miter, EndType.Polygon, 2)
    .map((path) => tidied(ringOf(path)))
    .filter((ring) => ring.length >= 6);

export const regionFrom = (outer: Ring, holes: readonly Ring[]): Region => ({
  outer: anticlockwise(outer),
  holes: holes.map((hole) => (doubleArea(hole) > 0 ? reversed(hole) : hole)),
});
