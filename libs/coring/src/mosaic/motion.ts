import { boundsOfPoints, ringsOf, type Bounds, type Point, type Region } from '#lib/geometry';

/** The straight edges of a region as numbers, four for each: x and y of its start and of its end. */
export interface Edges {
  readonly corners: Float64Array;
  readonly box: Bounds;
}

/** Pairs of a corner and an edge looked at so far, and how many may be. The same record does the same work everywhere. */
export interface Work {
  used: number;
  readonly most: number;
}

export const isUsedUp = (work: Work): boolean => work.used >= work.most;

export interface Ray {
  readonly dx: number;
  readonly dy: number;
  readonly upTo: number;
}

/** A moved piece stops this short of what it would touch, so that its next move does not begin in contact. */
const STOP_SHORT_MM = 0.2;

export function edgesFrom(region: Region): Edges {
  const rings = ringsOf(region);
  const corners = new Float64Array(4 * rings.reduce((sum, ring) => sum + ring.length, 0));
  let at = 0;
  for (const ring of rings) {
    ring.forEach(([x, y], k) => {
      const [nextX, nextY] = ring[(k + 1) % ring.length];
      corners.set([x, y, nextX, nextY], at);
      at += 4;
    });
  }
  const box = boundsOfPoints(rings.flat()) ?? { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  return { corners, box };
}

export function edgesMoved({ corners, box }: Edges, [dx, dy]: Point): Edges {
  return {
    corners: corners.map((value, k) => value + (k % 2 === 0 ? dx : dy)),
    box: { minX: box.minX + dx, minY: box.minY + dy, maxX: box.maxX + dx, maxY: box.maxY + dy },
  };
}

/** What looking at two outlines takes besides their corners. */
const EACH_LOOK = 10;

/**
 * How far an outline moves straight before it touches one of the others. Two outlines that move apart from each other first
 * touch with a corner of one on an edge of the other, so the shortest way from any corner to any edge is the exact answer.
 */
export function freeTravel(moving: Edges, standing: readonly Edges[], ray: Ray, work: Work): number {
  let free = ray.upTo;
  for (const other of standing) {
    if (!couldMeet(moving.box, other.box, { ...ray, upTo: free })) continue;
    work.used += EACH_LOOK + (moving.corners.length * other.corners.length) / 8;
    free = firstContact(moving.corners, other.corners, { ...ray, upTo: free });
    free = firstContact(other.corners, moving.corners, { dx: -ray.dx, dy: -ray.dy, upTo: free });
  }
  return free >= ray.upTo ? ray.upTo : Math.max(0, free - STOP_SHORT_MM);
}

function couldMeet(box: Bounds, other: Bounds, { dx, dy, upTo }: Ray): boolean {
  const [alongX, alongY] = [dx * upTo, dy * upTo];
  return (
    box.minX + Math.min(0, alongX) <= other.maxX &&
    box.maxX + Math.max(0, alongX) >= other.minX &&
    box.minY + Math.min(0, alongY) <= other.maxY &&
    box.maxY + Math.max(0, alongY) >= other.minY
  );
}

/** Rounding at the ends of an edge. */
const HAIR = 1e-9;

function firstContact(points: Float64Array, edges: Float64Array, { dx, dy, upTo }: Ray): number {
  let first = upTo;
  for (let e = 0; e < edges.length; e += 4) {
    const [ax, ay] = [edges[e], edges[e + 1]];
    const [ex, ey] = [edges[e + 2] - ax, edges[e + 3] - ay];
    const across = dx * ey - dy * ex;
    if (Math.abs(across) < HAIR) continue;
    for (let p = 0; p < points.length; p += 4) {
      const [fromX, fromY] = [ax - points[p], ay - points[p + 1]];
      const along = (fromX * ey - fromY * ex) / across;
      if (along < -HAIR || along >= first) continue;
      const share = (fromX * dy - fromY * dx) / across;
      if (share >= -HAIR && share <= 1 + HAIR) first = Math.max(0, along);
    }
  }
  return first;
}

/** The shortest way along a ray after which the whole piece lies inside the opening. */
export function firstInside(piece: Edges, opening: Edges, ray: Ray, work: Work): number | undefined {
  const [from, to] = boxWindow(piece.box, opening.box, ray);
  if (from > to) return undefined;
  work.used += (piece.corners.length * opening.corners.length) / 8;
  const turns = [
    ...contacts(piece.corners, opening.corners, ray),
    ...contacts(opening.corners, piece.corners, { dx: -ray.dx, dy: -ray.dy, upTo: ray.upTo }),
  ].filter((along) => along > from && along < to);
  const marks = [from, ...turns.sort((a, b) => a - b), to];
  for (let k = 1; k < marks.length; k++) {
    if (isUsedUp(work)) return undefined;
    // Between two contacts nothing changes, so the middle answers for the whole stretch.
    const along = (marks[k - 1] + marks[k]) / 2;
    if (isInside(edgesMoved(piece, [ray.dx * along, ray.dy * along]), opening, work)) return along;
  }
  return undefined;
}

/** Where along the ray the box of the piece lies inside the box of the opening. */
function boxWindow(piece: Bounds, opening: Bounds, { dx, dy, upTo }: Ray): readonly [number, number] {
  const [fromX, toX] = span(opening.minX - piece.minX, opening.maxX - piece.maxX, dx);
  const [fromY, toY] = span(opening.minY - piece.minY, opening.maxY - piece.maxY, dy);
  return [Math.max(0, fromX, fromY), Math.min(upTo, toX, toY)];
}

function span(low: number, high: number, step: number): readonly [number, number] {
  if (low > high) return [1, 0];
  if (Math.abs(step) < HAIR) return low <= 0 && high >= 0 ? [0, Infinity] : [1, 0];
  return step > 0 ? [low / step, high / step] : [high / step, low / step];
}

function contacts(points: Float64Array, edges: Float64Array, { dx, dy, upTo }: Ray): readonly number[] {
  const found: number[] = [];
  for (let e = 0; e < edges.length; e += 4) {
    const [ax, ay] = [edges[e], edges[e + 1]];
    const [ex, ey] = [edges[e + 2] - ax, edges[e + 3] - ay];
    const across = dx * ey - dy * ex;
    if (Math.abs(across) < HAIR) continue;
    for (let p = 0; p < points.length; p += 4) {
      const [fromX, fromY] = [ax - points[p], ay - points[p + 1]];
      const along = (fromX * ey - fromY * ex) / across;
      const share = (fromX * dy - fromY * dx) / across;
      if (along > 0 && along < upTo && share >= -HAIR && share <= 1 + HAIR) found.push(along);
    }
  }
  return found;
}

/** Every corner of the piece in the opening and no edge of one across an edge of the other. */
export function isInside(piece: Edges, opening: Edges, work: Work): boolean {
  const { corners } = piece;
  work.used += (corners.length * opening.corners.length) / 16;
  for (let p = 0; p < corners.length; p += 4)
    if (!holds(opening.corners, corners[p], corners[p + 1])) return false;
  for (let p = 0; p < corners.length; p += 4)
    for (let e = 0; e < opening.corners.length; e += 4)
      if (crosses(corners, p, opening.corners, e)) return false;
  return true;
}

/** Odd number of edges to the right: the place lies inside, holes left out. */
function holds(edges: Float64Array, x: number, y: number): boolean {
  let isIn = false;
  for (let e = 0; e < edges.length; e += 4) {
    const [ay, by] = [edges[e + 1], edges[e + 3]];
    if (ay > y === by > y) continue;
    if (x < edges[e] + ((y - ay) * (edges[e + 2] - edges[e])) / (by - ay)) isIn = !isIn;
  }
  return isIn;
}

function crosses(one: Float64Array, p: number, other: Float64Array, e: number): boolean {
  const side = (edges: Float64Array, at: number, x: number, y: number): number =>
    (edges[at + 2] - edges[at]) * (y - edges[at + 1]) - (edges[at + 3] - edges[at + 1]) * (x - edges[at]);
  return (
    side(one, p, other[e], other[e + 1]) * side(one, p, other[e + 2], other[e + 3]) < 0 &&
    side(other, e, one[p], one[p + 1]) * side(other, e, one[p + 2], one[p + 3]) < 0
  );
}
