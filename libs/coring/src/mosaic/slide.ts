import {
  areaMm2,
  bounds,
  centroid,
  difference,
  interiorPoint,
  regionOf,
  ringsOf,
  translate,
  union,
  type Point,
  type Region,
  type Ring,
} from '#lib/geometry';

/** How a piece gets to its place: straight down, or lowered through the opening and then slid level under the lip. */
export interface Entry {
  readonly way: 'drops' | 'slides';
  /** Where the piece is lowered, as a move from its place; each next move brings it nearer, the last is [0, 0]. */
  readonly path: readonly Point[];
}

/** Areas below this are the rounding of the clipping kernel. */
const nothingMm2 = 0.5;
const stepMm = 10;
const directions = 24;

const isWithin = (part: Region, whole: Region): boolean => areaMm2(difference(part, whole)) < nothingMm2;

/**
 * Moves the piece, in thought, from the opening to its place. `free` is the cavity less the pieces bedded before; the whole
 * area that the piece sweeps must lie in it, so the path is proven, not sampled.
 */
export function entryFor(piece: Region, opening: Region, free: Region): Entry | undefined {
  if (!isWithin(piece, free)) return undefined;
  if (isWithin(piece, opening)) return { way: 'drops', path: [[0, 0]] };
  for (const direction of likelyDirections(piece, opening)) {
    const start = firstInside(piece, opening, direction);
    if (start !== undefined && isWithin(swept(piece, start), free))
      return { way: 'slides', path: [start, [0, 0]] };
  }
  return viaCorner(piece, opening, free);
}

/** Towards the middle of the opening first, then round the compass by growing angle from it. */
function likelyDirections(piece: Region, opening: Region): readonly Point[] {
  const from = centroid(piece) ?? [0, 0];
  const middle = interiorPoint(opening)?.at ?? centroid(opening) ?? [0, 0];
  const first = Math.atan2(middle[1] - from[1], middle[0] - from[0]);
  const nearest = nearestAxis(first);
  const turns = Array.from(
    { length: directions },
    (_, k) => (k % 2 === 0 ? 1 : -1) * Math.ceil(k / 2) * ((2 * Math.PI) / directions),
  );
  return [first, nearest, ...turns.map((turn) => nearest + turn)].map((angle): Point => [
    Math.cos(angle),
    Math.sin(angle),
  ]);
}

const nearestAxis = (angle: number): number => Math.round(angle / (Math.PI / 2)) * (Math.PI / 2);

/** The shortest move in a direction that brings the whole piece into the opening. */
function firstInside(piece: Region, opening: Region, [dx, dy]: Point): Point | undefined {
  const box = bounds(opening);
  const own = bounds(piece);
  if (box === undefined || own === undefined) return undefined;
  const farthest =
    Math.hypot(box.maxX - box.minX, box.maxY - box.minY) +
    Math.hypot(own.maxX - own.minX, own.maxY - own.minY);
  for (let along = stepMm; along <= farthest; along += stepMm) {
    const move: Point = [dx * along, dy * along];
    const isBoxInside =
      own.minX + move[0] >= box.minX &&
      own.maxX + move[0] <= box.maxX &&
      own.minY + move[1] >= box.minY &&
      own.maxY + move[1] <= box.maxY;
    if (isBoxInside && isWithin(translate(piece, move), opening)) return move;
  }
  return undefined;
}

/** Everything the piece covers on its way: both ends and the band that each edge draws. */
function swept(piece: Region, move: Point): Region {
  const bands = ringsOf(piece).flatMap((ring) =>
    ring.map((corner, k) => bandOf(corner, ring[(k + 1) % ring.length], move)),
  );
  return union(piece, translate(piece, move), ...bands);
}

function bandOf(a: Point, b: Point, [dx, dy]: Point): Region {
  const band: Ring = [a, b, [b[0] + dx, b[1] + dy], [a[0] + dx, a[1] + dy]];
  return regionOf(band);
}

/** Along one axis of the deck and then the other, for places round a corner. */
function viaCorner(piece: Region, opening: Region, free: Region): Entry | undefined {
  for (const first of axisMoves(piece, opening)) {
    if (!isWithin(swept(piece, first), free)) continue;
    const there = translate(piece, first);
    for (const direction of likelyDirections(there, opening)) {
      const second = firstInside(there, opening, direction);
      if (second === undefined || !isWithin(swept(there, second), free)) continue;
      return { way: 'slides', path: [[first[0] + second[0], first[1] + second[1]], first, [0, 0]] };
    }
  }
  return undefined;
}

function axisMoves(piece: Region, opening: Region): readonly Point[] {
  const from = centroid(piece) ?? [0, 0];
  const middle = interiorPoint(opening)?.at ?? [0, 0];
  const [dx, dy] = [middle[0] - from[0], middle[1] - from[1]];
  return [
    [dx, 0],
    [0, dy],
    [dx / 2, 0],
    [0, dy / 2],
  ]
    .map(([x, y]): Point => [x, y])
    .filter(([x, y]) => Math.hypot(x, y) > stepMm);
}
