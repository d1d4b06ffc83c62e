import { cornerAt, isConvex, type Ring } from './ring.js';

/**
 * A simple anticlockwise ring as convex parts that use only its own vertices, so the parts stay exactly on the grid:
 * ear clipping, then every diagonal that can go without making a part concave goes.
 *
 * Returned  rings, whole grid steps  their union is the ring, their interiors are disjoint
 *
 * Valid:  simple rings without holes, coordinates below 2^25 so that every cross product is exact.
 * Source: [HERTEL-MEHLHORN-1983], merging of triangles over inessential diagonals
 * Worked: libs/nesting/src/convex-parts.spec.ts
 */
export function convexParts(ring: Ring): readonly Ring[] {
  if (isConvex(ring)) return [ring];
  const triangles = earsOf(ring);
  return merged(ring, triangles);
}

type Part = readonly number[];

/** Triangles as triples of vertex numbers. */
function earsOf(ring: Ring): readonly Part[] {
  const left = Array.from({ length: ring.length / 2 }, (_, i) => i);
  const triangles: Part[] = [];
  while (left.length > 3) {
    const ear = left.findIndex((_, i) => isEar(ring, left, i));
    const tip = ear < 0 ? 0 : ear;
    const size = left.length;
    triangles.push([left[(tip + size - 1) % size], left[tip], left[(tip + 1) % size]]);
    left.splice(tip, 1);
  }
  return [...triangles, left].filter((part) => cornerOf(ring, part[0], part[1], part[2]) > 0);
}

function isEar(ring: Ring, left: readonly number[], at: number): boolean {
  const size = left.length;
  const a = left[(at + size - 1) % size];
  const b = left[at];
  const c = left[(at + 1) % size];
  const corner = cornerOf(ring, a, b, c);
  if (corner === 0) return true;
  return corner > 0 && left.every((p) => p === a || p === b || p === c || !isWithin(ring, [a, b, c], p));
}

const isWithin = (ring: Ring, [a, b, c]: Part, p: number): boolean =>
  !samePoint(ring, p, a) &&
  !samePoint(ring, p, c) &&
  cornerOf(ring, a, b, p) >= 0 &&
  cornerOf(ring, b, c, p) >= 0 &&
  cornerOf(ring, c, a, p) >= 0;

const samePoint = (ring: Ring, p: number, q: number): boolean =>
  ring[2 * p] === ring[2 * q] && ring[2 * p + 1] === ring[2 * q + 1];

const cornerOf = (ring: Ring, a: number, b: number, c: number): number =>
  (ring[2 * b] - ring[2 * a]) * (ring[2 * c + 1] - ring[2 * a + 1]) -
  (ring[2 * b + 1] - ring[2 * a + 1]) * (ring[2 * c] - ring[2 * a]);

function merged(ring: Ring, triangles: readonly Part[]): readonly Ring[] {
  let parts = [...triangles];
  for (let i = 0; i < parts.length; i++) {
    for (let j = i + 1; j < parts.length; j++) {
      const joined = joinedOver(ring, parts[i], parts[j]);
      if (joined === undefined) continue;
      parts = [...parts.slice(0, i), joined, ...parts.slice(i + 1, j), ...parts.slice(j + 1)];
      j = i;
    }
  }
  return parts.map((part) => ringFrom(ring, part));
}

const ringFrom = (ring: Ring, part: Part): Ring =>
  Float64Array.from(part.flatMap((v) => [ring[2 * v], ring[2 * v + 1]]));

/** Two parts joined over an edge they share, when the result is convex. */
function joinedOver(ring: Ring, one: Part, other: Part): Part | undefined {
  for (let i = 0; i < one.length; i++) {
    const from = one[i];
    const to = one[(i + 1) % one.length];
    const j = other.findIndex((v, k) => v === to && other[(k + 1) % other.length] === from);
    if (j < 0) continue;
    const rest = Array.from({ length: other.length - 2 }, (_, k) => other[(j + 2 + k) % other.length]);
    const joined = [...one.slice(0, i + 1), ...rest, ...one.slice(i + 1)];
    return isConvexPart(ring, joined) ? joined : undefined;
  }
  return undefined;
}

function isConvexPart(ring: Ring, part: Part): boolean {
  const candidate = ringFrom(ring, part);
  return candidate.every((_, i) => i % 2 === 1 || cornerAt(candidate, i) >= 0);
}
