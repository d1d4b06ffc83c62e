import { segmentIntersection } from './segment.js';
import { edgesOf, type Point, type Ring } from './point.js';

interface Edge {
  readonly index: number;
  readonly a: Point;
  readonly b: Point;
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
}

/**
 * Where a ring first crosses or touches itself, or nothing.
 *
 * A sweep over edges sorted by their left end; only edges whose boxes overlap are compared, by exact predicates.
 * At worst (a comb across the sweep) every pair of boxes is looked at, which for 2,000 edges is 2 million cheap tests.
 */
export function selfCrossing(ring: Ring): Point | undefined {
  const edges = edgesOf(ring)
    .map(([a, b], index) => boxed(index, a, b))
    .sort((one, other) => one.minX - other.minX);
  let active: Edge[] = [];
  for (const edge of edges) {
    active = active.filter(({ maxX }) => maxX >= edge.minX);
    for (const other of active) {
      if (other.maxY < edge.minY || other.minY > edge.maxY) continue;
      const where = meeting(edge, other, ring.length);
      if (where !== undefined) return where;
    }
    active.push(edge);
  }
  return undefined;
}

const boxed = (index: number, a: Point, b: Point): Edge => ({
  index,
  a,
  b,
  minX: Math.min(a[0], b[0]),
  maxX: Math.max(a[0], b[0]),
  minY: Math.min(a[1], b[1]),
  maxY: Math.max(a[1], b[1]),
});

/** Neighbouring edges share a corner; only folding back over each other counts there. */
function meeting(one: Edge, other: Edge, count: number): Point | undefined {
  if ((one.index + 1) % count === other.index) return foldBack(one, other);
  if ((other.index + 1) % count === one.index) return foldBack(other, one);
  return segmentIntersection(one.a, one.b, other.a, other.b);
}

function foldBack(before: Edge, after: Edge): Point | undefined {
  const [inX, inY, outX, outY] = [
    before.b[0] - before.a[0],
    before.b[1] - before.a[1],
    after.b[0] - after.a[0],
    after.b[1] - after.a[1],
  ];
  const isReversed = inX * outY - inY * outX === 0 && inX * outX + inY * outY < 0;
  return isReversed ? before.b : undefined;
}
