import { below, pointer, problem, refusal, success, type Outcome, type Problem } from '#lib/kernel';
import { signedAreaMm2 } from './measure.js';
import { distance, type Point, type Ring } from './point.js';
import { selfCrossing } from './self-crossing.js';

/** More corners than any deck panel has; keeps every check well under a second. */
export const MOST_CORNERS = 2000;

/** A deck longer than this is a slip of the unit; it also keeps micrometres exact in the clipping kernel. */
export const FARTHEST_MM = 200_000;

/** Areas below this are a line drawn as a shape. */
const LEAST_AREA_MM2 = 1;

/**
 * Reads an outline that somebody drew: finite, simple, with area, running from x towards y.
 *
 * A last corner that repeats the first closes the outline and is dropped. Anything else that is not a simple
 * shape is refused with its place; nothing is repaired silently.
 */
export function readOutline(points: readonly unknown[], at = ''): Outcome<Ring> {
  const counted = countProblems(points.length, at);
  if (counted.length > 0) return refusal(...counted);
  const read = points.map((point, index) => readPoint(point, pointer(at, index)));
  const problems = read.flatMap((outcome) => (outcome.ok ? [] : outcome.problems));
  if (problems.length > 0) return refusal(...problems);
  return readRing(
    read.flatMap((outcome) => (outcome.ok ? [outcome.value] : [])),
    at,
  );
}

const countProblems = (count: number, at: string): readonly Problem[] => {
  if (count > MOST_CORNERS) return [problem('too-many', at, { count, most: MOST_CORNERS })];
  if (count < 3) return [problem('too-few', at, { count, least: 3 })];
  return [];
};

/** One place on the deck: two finite numbers within reach. */
export function readPoint(point: unknown, at: string): Outcome<Point> {
  if (!Array.isArray(point) || point.length !== 2) {
    return refusal(problem('not-a-number', at, { hint: ' pair [xMm, yMm]', value: shown(point) }));
  }
  const [x, y]: readonly unknown[] = point;
  if (typeof x === 'number' && typeof y === 'number' && isReachable(x) && isReachable(y))
    return success([x, y]);
  return refusal(...below(at, [...coordinateProblems(x, '/0'), ...coordinateProblems(y, '/1')]));
}

const isReachable = (value: number): boolean => Math.abs(value) <= FARTHEST_MM;

function coordinateProblems(value: unknown, at: string): readonly Problem[] {
  if (typeof value !== 'number' || !Number.isFinite(value))
    return [problem('not-a-number', at, { hint: ' of millimetres', value: shown(value) })];
  return isReachable(value)
    ? []
    : [problem('out-of-range', at, { value, range: `between -${FARTHEST_MM} and ${FARTHEST_MM} mm` })];
}

function shown(value: unknown): string {
  if (typeof value === 'number' || value === undefined) return String(value);
  return (JSON.stringify(value) ?? typeof value).slice(0, 60);
}

function readRing(points: Ring, at: string): Outcome<Ring> {
  const ring = isSamePlace(points[0], points[points.length - 1]) ? points.slice(0, -1) : points;
  if (ring.length < 3) return refusal(withoutArea(ring, at));
  const repeats = ring.flatMap((point, index) =>
    index > 0 && isSamePlace(point, ring[index - 1])
      ? [problem('duplicate', pointer(at, index), { value: `corner ${index} at (${point.join(', ')}) mm` })]
      : [],
  );
  if (repeats.length > 0) return refusal(...repeats);
  if (isThin(ring)) return refusal(withoutArea(ring, at));
  const crossing = selfCrossing(ring);
  if (crossing !== undefined)
    return refusal(
      problem('outline-crosses-itself', at, { xMm: tenth(crossing[0]), yMm: tenth(crossing[1]) }),
    );
  const area = signedAreaMm2(ring);
  if (Math.abs(area) < LEAST_AREA_MM2) return refusal(withoutArea(ring, at));
  return success(area > 0 ? ring : [...ring].reverse());
}

/** So short a side is no part of a deck: whoever gives it thinks in metres. */
const MOST_METRES_MM = 50;

function withoutArea(ring: Ring, at: string): Problem {
  const longest = Math.max(0, ...ring.map((point) => distance(ring[0], point)));
  const isInMetres = longest > 0 && longest < MOST_METRES_MM;
  const hint = isInMetres
    ? ` that could be worked on: it is ${Number(longest.toPrecision(3))} mm long; coordinates are in mm, and these may be metres`
    : '';
  return problem('outline-without-area', at, { hint });
}

/** All corners on one line: named as such before the crossing that a flat outline also is. */
function isThin(ring: Ring): boolean {
  const [first] = ring;
  const far = ring.reduce(
    (best, point) => (distance(first, point) > distance(first, best) ? point : best),
    first,
  );
  const length = distance(first, far);
  const width = ring.reduce(
    (widest, point) =>
      Math.max(
        widest,
        Math.abs((far[0] - first[0]) * (point[1] - first[1]) - (far[1] - first[1]) * (point[0] - first[0])),
      ),
    0,
  );
  return length === 0 || width / length < 1e-3;
}

/** Nearer than the clipping kernel's micrometre. */
const isSamePlace = (a: Point, b: Point): boolean =>
  Math.abs(a[0] - b[0]) < 1e-3 && Math.abs(a[1] - b[1]) < 1e-3;

const tenth = (value: number): number => Math.round(value * 10) / 10;
