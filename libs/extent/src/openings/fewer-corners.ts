import { distance, lineCrossing, type Point, type Ring } from '#lib/geometry';
import { m2FromMm2, mFromMm, mm, mm2 } from '#lib/units';
import type { CutRules } from './ground.js';

/** More corners than these are not marked out on a deck, whatever the skin between them costs. */
const MOST_CORNERS = 12;

/** Edges that meet farther off than this would make a spike. */
const FARTHEST_MEETING_MM = 250;

/**
 * The outline with fewer corners, and nothing of it left outside: a corner that points inwards is left out, or the edges
 * beside one are carried on until they meet, the cheapest first, as long as the corner costs more than the sound deck that is
 * opened in its stead, or more corners are left than anybody marks out. The ring runs counter-clockwise.
 */
export function withFewerCorners(ring: Ring, rules: CutRules): Ring {
  let current = ring;
  while (current.length > 4) {
    const best = cheapestLoss(current, rules);
    if (best === undefined || (best.hours >= 0 && current.length <= MOST_CORNERS)) break;
    current = best.ring;
  }
  return current;
}

interface Loss {
  readonly ring: Ring;
  readonly hours: number;
}

function cheapestLoss(ring: Ring, rules: CutRules): Loss | undefined {
  let best: Loss | undefined;
  for (const index of ring.keys())
    for (const loss of [cornerLeftOut(ring, index, rules), edgeLeftOut(ring, index, rules)])
      if (loss !== undefined && (best === undefined || loss.hours < best.hours)) best = loss;
  return best;
}

const cornerAt = (ring: Ring, index: number): Point => ring[(index + ring.length) % ring.length];

/** Twice the area of a triangle in mm2, positive where it runs counter-clockwise. */
const turn = (a: Point, b: Point, c: Point): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

function cornerLeftOut(ring: Ring, index: number, rules: CutRules): Loss | undefined {
  const [before, here, after] = [-1, 0, 1].map((step) => cornerAt(ring, index + step));
  const doubleMm2 = turn(before, after, here);
  const rest = ring.filter((_, at) => at !== index);
  if (doubleMm2 <= 0 || holdsAny([before, after, here], rest)) return undefined;
  const addedMm = distance(before, after) - distance(before, here) - distance(here, after);
  return { ring: rest, hours: hoursFor(doubleMm2 / 2, addedMm, rules) };
}

/** Without the edge from a corner to the next one, both of which point outwards. */
function edgeLeftOut(ring: Ring, index: number, rules: CutRules): Loss | undefined {
  const [before, from, to, after] = [-1, 0, 1, 2].map((step) => cornerAt(ring, index + step));
  const meeting = lineCrossing(before, from, to, after);
  if (meeting === undefined || turn(before, from, to) <= 0 || turn(from, to, after) <= 0) return undefined;
  const doubleMm2 = turn(from, meeting, to);
  const isNear = Math.max(distance(meeting, from), distance(meeting, to)) < FARTHEST_MEETING_MM;
  if (doubleMm2 <= 0 || !isNear || holdsAny([from, meeting, to], ring)) return undefined;
  const next = (index + 1) % ring.length;
  const addedMm = distance(from, meeting) + distance(meeting, to) - distance(from, to);
  return {
    ring: ring.flatMap((corner, at) => (at === index ? [meeting] : at === next ? [] : [corner])),
    hours: hoursFor(doubleMm2 / 2, addedMm, rules),
  };
}

/** Whether a corner of the ring lies in a triangle that runs counter-clockwise, so that the outline would cross itself. */
const holdsAny = ([a, b, c]: readonly Point[], ring: Ring): boolean =>
  ring.some(
    (corner) =>
      corner !== a &&
      corner !== b &&
      corner !== c &&
      turn(a, b, corner) >= 0 &&
      turn(b, c, corner) >= 0 &&
      turn(c, a, corner) >= 0,
  );

const hoursFor = (addedMm2: number, addedMm: number, rules: CutRules): number =>
  rules.openedHPerM2 * m2FromMm2(mm2(addedMm2)) + rules.cutHPerM * mFromMm(mm(addedMm)) - rules.cornerH;
