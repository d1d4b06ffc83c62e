import { type Point } from '#lib/geometry';
import { edgesMoved, firstInside, freeTravel, isUsedUp, type Edges, type Ray, type Work } from './motion.js';

/** How a piece gets to its place: straight down, or lowered through the opening and then slid level under the lip. */
export interface Entry {
  /** Whether the piece drops in from above or is slid under the lip. */
  readonly way: 'drops' | 'slides';
  /** Where the piece is lowered, as a move from its place; each next move brings it nearer, the last is [0, 0]. */
  readonly path: readonly Point[];
}

export interface Surroundings {
  readonly opening: Edges;
  /** A place in the middle of the opening. */
  readonly middle: Point;
  readonly headings: readonly Heading[];
  /** What the piece must not touch on its way: the wall of the cavity and the pieces that lie there. */
  readonly standing: readonly Edges[];
}

const COMPASS = 16;
/** Shares of a first leg after which the second is tried. */
const STOPS = [1, 0.75, 0.5, 0.25];
/** Headings tried for a second leg: it need only lead to the opening. */
const SECOND_LEGS = 8;
const SHORTEST_LEG_MM = 3;

export type Legs = 'straight' | 'round-a-corner';

/**
 * A way out of the place and up through the opening, read backwards: straight, or round one corner. Only moves level with the
 * deck are tried, each free of contact over its whole length.
 */
export function entryOf(piece: Edges, around: Surroundings, legs: Legs, work: Work): Entry | undefined {
  const rays = raysFor(piece, around);
  if (legs === 'straight') {
    const start = straightOut(piece, rays, around, work);
    return start && { way: 'slides', path: [start, [0, 0]] };
  }
  for (const ray of rays) {
    const free = freeTravel(piece, around.standing, ray, work);
    if (free < SHORTEST_LEG_MM) continue;
    for (const share of STOPS) {
      if (isUsedUp(work)) return undefined;
      const corner: Point = [ray.dx * free * share, ray.dy * free * share];
      const there = edgesMoved(piece, corner);
      const next = straightOut(there, raysFor(there, around).slice(0, SECOND_LEGS), around, work);
      if (next !== undefined)
        return { way: 'slides', path: [[corner[0] + next[0], corner[1] + next[1]], corner, [0, 0]] };
    }
  }
  return undefined;
}

function straightOut(
  piece: Edges,
  rays: readonly Ray[],
  { opening, standing }: Surroundings,
  work: Work,
): Point | undefined {
  for (const ray of rays) {
    if (isUsedUp(work)) return undefined;
    const upTo = freeTravel(piece, standing, ray, work);
    const along = firstInside(piece, opening, { ...ray, upTo }, work);
    if (along !== undefined) return [ray.dx * along, ray.dy * along];
  }
  return undefined;
}

/** A unit step. */
export type Heading = readonly [number, number];

const headingOf = (angle: number): Heading => [Math.cos(angle), Math.sin(angle)];
const SAME = 0.01;
const MOST_EDGES = 6;

/** Square to the longest edges of the opening, both ways, and round the compass. */
export function headingsFor({ corners }: Edges): readonly Heading[] {
  const edges = Array.from({ length: corners.length / 4 }, (_, k) => {
    const [dx, dy] = [corners[4 * k + 2] - corners[4 * k], corners[4 * k + 3] - corners[4 * k + 1]];
    return { angle: Math.atan2(dy, dx), length: Math.hypot(dx, dy) };
  });
  const square = edges
    .sort((a, b) => b.length - a.length)
    .slice(0, MOST_EDGES)
    .flatMap(({ angle }) => [angle + Math.PI / 2, angle - Math.PI / 2]);
  const compass = Array.from({ length: COMPASS }, (_, k) => (2 * Math.PI * k) / COMPASS);
  const all = [...square, ...compass].map(headingOf);
  return all.filter(
    ([x, y], k) => !all.slice(0, k).some(([otherX, otherY]) => Math.hypot(x - otherX, y - otherY) < SAME),
  );
}

/** Towards the middle of the opening first, then the headings nearest to that. */
function raysFor({ box }: Edges, { opening, middle, headings }: Surroundings): readonly Ray[] {
  const [dx, dy] = [middle[0] - (box.minX + box.maxX) / 2, middle[1] - (box.minY + box.maxY) / 2];
  const away = Math.hypot(dx, dy);
  const upTo =
    Math.hypot(opening.box.maxX - opening.box.minX, opening.box.maxY - opening.box.minY) +
    Math.hypot(box.maxX - box.minX, box.maxY - box.minY);
  const towards: readonly Heading[] = away < 1 ? [] : [[dx / away, dy / away]];
  const turned = headings
    .map((heading) => ({ heading, along: heading[0] * dx + heading[1] * dy }))
    .sort((a, b) => b.along - a.along);
  return [...towards, ...turned.map(({ heading }) => heading)].map(([x, y]) => ({ dx: x, dy: y, upTo }));
}
