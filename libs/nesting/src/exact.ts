import { boxOf, regionShifted, ringsOf, type Region, type Ring } from './ring.js';

/**
 * Whether two regions have an inner point in common. Touching along edges or at corners does not count.
 *
 * Every decision is the sign of a whole-number cross product below 2^53, so the answer is exact: either two edges cross,
 * or a stretch of one boundary between touching points runs inside the other region, or both run along it on the same side.
 *
 * Valid:  simple rings with whole coordinates whose span over both regions stays below 2^25; rings keep their inside on the left.
 * Source: [ARITHMETIC] sidedness by cross products
 * Worked: libs/nesting/src/exact.spec.ts
 */
export function interiorsMeet(one: Region, other: Region): boolean {
  if (areBoxesApart(one.outer, other.outer)) return false;
  const [originX, originY] = one.outer;
  const a = edgesOf(regionShifted(one, -originX, -originY));
  const b = edgesOf(regionShifted(other, -originX, -originY));
  return a.some((p) => b.some((q) => cross(p, q))) || runsInside(a, b) || runsInside(b, a);
}

type Edge = readonly [x1: number, y1: number, x2: number, y2: number];

function areBoxesApart(one: Ring, other: Ring): boolean {
  const a = boxOf(one);
  const b = boxOf(other);
  return a.maxX <= b.minX || b.maxX <= a.minX || a.maxY <= b.minY || b.maxY <= a.minY;
}

const edgesOf = (region: Region): readonly Edge[] =>
  ringsOf(region).flatMap((ring) =>
    Array.from({ length: ring.length / 2 }, (_, i): Edge => {
      const j = (i + 1) % (ring.length / 2);
      return [ring[2 * i], ring[2 * i + 1], ring[2 * j], ring[2 * j + 1]];
    }),
  );

const sideOf = ([x1, y1, x2, y2]: Edge, x: number, y: number): number =>
  Math.sign((x2 - x1) * (y - y1) - (y2 - y1) * (x - x1));

/** Each edge has its ends strictly on both sides of the other. */
const cross = (p: Edge, q: Edge): boolean =>
  sideOf(p, q[0], q[1]) * sideOf(p, q[2], q[3]) < 0 && sideOf(q, p[0], p[1]) * sideOf(q, p[2], p[3]) < 0;

function runsInside(edges: readonly Edge[], region: readonly Edge[]): boolean {
  return edges.some((edge) => stretchesOf(edge, region).some((stretch) => isStretchInside(stretch, region)));
}

/** The edge cut where corners of the other region touch it. */
function stretchesOf(edge: Edge, region: readonly Edge[]): readonly Edge[] {
  const [x1, y1, x2, y2] = edge;
  const along = (x: number, y: number): number =>
    (x - x1) * Math.sign(x2 - x1) + (y - y1) * Math.sign(y2 - y1);
  const end = along(x2, y2);
  const touching = region.filter(
    ([x, y]) => sideOf(edge, x, y) === 0 && along(x, y) > 0 && along(x, y) < end,
  );
  const points = [
    [x1, y1],
    ...touching.map(([x, y]) => [x, y]).sort((p, q) => along(p[0], p[1]) - along(q[0], q[1])),
    [x2, y2],
  ];
  return points
    .slice(1)
    .map((point, k): Edge => [points[k][0], points[k][1], point[0], point[1]])
    .filter(([ax, ay, bx, by]) => ax !== bx || ay !== by);
}

/** Judged at the middle, on doubled coordinates so that it is a whole number. */
function isStretchInside([ax, ay, bx, by]: Edge, region: readonly Edge[]): boolean {
  const [x, y] = [ax + bx, ay + by];
  let windings = 0;
  for (const [x1, y1, x2, y2] of region) {
    const doubled: Edge = [2 * x1, 2 * y1, 2 * x2, 2 * y2];
    const side = sideOf(doubled, x, y);
    if (side === 0 && isBetween(doubled, x, y)) return (bx - ax) * (x2 - x1) + (by - ay) * (y2 - y1) > 0;
    if (doubled[1] <= y && doubled[3] > y && side > 0) windings++;
    if (doubled[1] > y && doubled[3] <= y && side < 0) windings--;
  }
  return windings > 0;
}

const isBetween = ([x1, y1, x2, y2]: Edge, x: number, y: number): boolean =>
  Math.min(x1, x2) <= x && x <= Math.max(x1, x2) && Math.min(y1, y2) <= y && y <= Math.max(y1, y2);
