import {
  areaMm2,
  difference,
  distance,
  lineCrossing,
  readOutline,
  regionOf,
  type Point,
  type Polygon,
  type Region,
  type Ring,
} from '#lib/geometry';
import type { Ground } from './ground.js';
import { reachUnder } from './reach.js';

/** What a shape has to keep to while its edges are put right. */
export interface SawTerms {
  readonly seeds: Region;
  readonly ground: Pick<Ground, 'permitted' | 'rules'>;
}

/** Shorter by less than a pencil's line is long enough. */
const PENCIL_MM = 0.05;

/** Bad core of less than a plug's hole that comes to lie under the lip is nothing to saw another corner for. */
const PLUG_MM2 = 400;

/**
 * The same shape without edges that are shorter than the radius of its corners: no blade follows them, and no arc fits
 * between. The shortest edge goes first: one of its ends is left out, or its neighbours are carried on until they meet,
 * whichever leaves least bad core under the lip and then changes least. An edge stays only where every way would leave the
 * ground that may be cut or put bad core out of reach.
 */
export const withSawableEdges = (sharp: Region, terms: SawTerms): Region =>
  sharp.flatMap((polygon) => polygonWithSawableEdges(polygon, terms));

/** Whether some edge of the shape is shorter than its corners are round. */
export const hasShortEdge = (sharp: Region, radiusMm: number): boolean =>
  sharp.some(({ outer, holes }) =>
    [outer, ...holes].some((ring) =>
      ring.some((_, index) => edgeLengthMm(ring, index) < radiusMm - PENCIL_MM),
    ),
  );

const edgeLengthMm = (ring: Ring, index: number): number =>
  distance(ring[index], ring[(index + 1) % ring.length]);

function polygonWithSawableEdges(polygon: Polygon, terms: SawTerms): Region {
  const staying = new Set<string>();
  let current = polygon;
  for (let left = cornersOf(polygon); left > 0; left -= 1) {
    const next = withOneEdgeLess(current, terms, staying);
    if (next === undefined) break;
    current = next;
  }
  return [current];
}

const cornersOf = ({ outer, holes }: Polygon): number =>
  holes.reduce((sum, hole) => sum + hole.length, outer.length);

interface Edge {
  readonly ring: number;
  readonly index: number;
  readonly lengthMm: number;
}

/** Nothing where no short edge can go. An edge that could not go between the same neighbours before is not tried again. */
function withOneEdgeLess(polygon: Polygon, terms: SawTerms, staying: Set<string>): Polygon | undefined {
  const rings = [polygon.outer, ...polygon.holes];
  const short = rings
    .flatMap((ring, at) =>
      ring.map((_, index): Edge => ({ ring: at, index, lengthMm: edgeLengthMm(ring, index) })),
    )
    .filter(({ lengthMm }) => lengthMm < terms.ground.rules.cornerRadiusMm - PENCIL_MM)
    .sort((one, other) => one.lengthMm - other.lengthMm);
  if (short.length === 0) return undefined;
  const change = changeFrom(polygon, terms);
  for (const edge of short) {
    const key = keyOf(rings[edge.ring], edge.index);
    if (staying.has(key)) continue;
    const ways = waysWithout(rings[edge.ring], edge.index);
    const found = change(ways.flatMap((ring) => withRing(polygon, edge.ring, ring)));
    if (found !== undefined) return found;
    staying.add(key);
  }
  return undefined;
}

/** An edge and its neighbours. */
const keyOf = (ring: Ring, index: number): string =>
  [-1, 0, 1, 2].map((step) => ring[(index + step + ring.length) % ring.length].join()).join(' ');

function waysWithout(ring: Ring, index: number): readonly Ring[] {
  if (ring.length <= 3) return [];
  const next = (index + 1) % ring.length;
  const meeting = meetingOf(ring, index);
  return [
    ring.filter((_, at) => at !== index),
    ring.filter((_, at) => at !== next),
    ...(meeting === undefined
      ? []
      : [ring.flatMap((corner, at) => (at === index ? [meeting] : at === next ? [] : [corner]))]),
  ];
}

/** Neighbours that meet farther off than this would make a spike. */
const FARTHEST_MEETING_MM = 120;

/** Where the lines before and after an edge meet, if near it. */
function meetingOf(ring: Ring, index: number): Point | undefined {
  const at = (step: number): Point => ring[(index + step + ring.length) % ring.length];
  const meeting = lineCrossing(at(-1), at(0), at(1), at(2));
  return meeting !== undefined &&
    Math.max(distance(meeting, at(0)), distance(meeting, at(1))) < FARTHEST_MEETING_MM
    ? meeting
    : undefined;
}

/** The polygon with one ring put in another's place; nothing where that is no simple shape. */
function withRing({ outer, holes }: Polygon, at: number, ring: Ring): Region {
  if (!readOutline(ring).ok) return [];
  const region = at === 0 ? regionOf(ring, holes) : regionOf(outer, holes.with(at - 1, ring));
  return region.length === 1 ? region : [];
}

/** The least area that may stray where nothing should be cut, mm2: the clipping's rounding along an edge. */
const ROUNDING_MM2 = 1;

/** Of several ways to change a polygon the one that changes least, if any may be taken. */
function changeFrom(polygon: Polygon, { seeds, ground }: SawTerms): (ways: Region) => Polygon | undefined {
  const bareBefore = difference(seeds, [polygon]);
  const bareBeforeMm2 = areaMm2(bareBefore);
  const mostReachMm = Math.max(ground.rules.undercutReachMm, reachUnder(bareBefore, [polygon]));
  const changeTo = (way: Polygon): readonly Change[] => {
    if (areaMm2(difference([way], ground.permitted)) > ROUNDING_MM2) return [];
    const bare = difference(seeds, [way]);
    if (reachUnder(bare, [way]) > mostReachMm) return [];
    const bareMm2 = Math.max(PLUG_MM2, areaMm2(bare) - bareBeforeMm2);
    return [{ way, bareMm2, changeMm2: changeBetween(polygon, way) }];
  };
  return (ways) => {
    const [first, ...rest] = ways.flatMap(changeTo);
    return first === undefined ? undefined : rest.reduce(lesser, first).way;
  };
}

interface Change {
  readonly way: Polygon;
  /** Bad core that comes to lie under the lip. */
  readonly bareMm2: number;
  readonly changeMm2: number;
}

const lesser = (best: Change, one: Change): Change =>
  one.bareMm2 - best.bareMm2 < -ROUNDING_MM2 ||
  (one.bareMm2 - best.bareMm2 <= ROUNDING_MM2 && one.changeMm2 < best.changeMm2 - ROUNDING_MM2)
    ? one
    : best;

const changeBetween = (one: Polygon, other: Polygon): number =>
  areaMm2(difference([one], [other])) + areaMm2(difference([other], [one]));
