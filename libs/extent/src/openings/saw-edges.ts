import {
  areaMm2,
  bounds,
  containsPoint,
  difference,
  distance,
  intersection,
  lineCrossing,
  readOutline,
  regionOf,
  ringsOf,
  signedAreaMm2,
  type Point,
  type Polygon,
  type Region,
  type Ring,
} from '#lib/geometry';
import { cornersOf, isSpent, spend } from './design-work.js';
import type { Ground } from './ground.js';
import { reachUnder } from './reach.js';

/** What a shape has to keep to while its edges are put right. */
export interface SawTerms {
  readonly seeds: Region;
  readonly ground: Pick<Ground, 'permitted' | 'rules' | 'work'>;
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
  if (shortEdgesOf(polygon, terms).length === 0) return [polygon];
  const staying = new Set<string>();
  let current = standingOf(polygon, terms);
  for (let left = cornersOf([polygon]); left > 0; left -= 1) {
    const next = withOneEdgeLess(current, terms, staying);
    if (next === undefined) break;
    current = next;
  }
  return [current.polygon];
}

interface Edge {
  readonly ring: number;
  readonly index: number;
  readonly lengthMm: number;
}

/** The shortest first. */
const shortEdgesOf = ({ outer, holes }: Polygon, { ground }: SawTerms): readonly Edge[] =>
  [outer, ...holes]
    .flatMap((ring, at) =>
      ring.map((_, index): Edge => ({ ring: at, index, lengthMm: edgeLengthMm(ring, index) })),
    )
    .filter(({ lengthMm }) => lengthMm < ground.rules.cornerRadiusMm - PENCIL_MM)
    .sort((one, other) => one.lengthMm - other.lengthMm);

/** Nothing where no short edge can go. An edge that could not go between the same neighbours before is not tried again. */
function withOneEdgeLess(from: Standing, terms: SawTerms, staying: Set<string>): Standing | undefined {
  const { polygon } = from;
  const rings = [polygon.outer, ...polygon.holes];
  for (const edge of shortEdgesOf(polygon, terms)) {
    const ring = rings[edge.ring];
    const key = keyOf(ring, edge.index);
    if (staying.has(key)) continue;
    if (isSpent(terms.ground.work)) return undefined;
    spend(terms.ground.work, cornersOf([polygon]));
    const found = leastChange(from, { at: edge.ring, ways: waysWithout(ring, edge.index) }, terms);
    if (found !== undefined) return found;
    staying.add(key);
  }
  return undefined;
}

/** An edge and its neighbours. */
const keyOf = (ring: Ring, index: number): string =>
  [-1, 0, 1, 2].map((step) => ring[(index + step + ring.length) % ring.length].join()).join(' ');

/** A ring without one of its edges, and the triangle between the old line and the new one: all that changes. */
interface Way {
  readonly ring: Ring;
  readonly between: Ring;
}

function waysWithout(ring: Ring, index: number): readonly Way[] {
  if (ring.length <= 3) return [];
  const next = (index + 1) % ring.length;
  const meeting = meetingOf(ring, index);
  return [
    cornerLeftOut(ring, index),
    cornerLeftOut(ring, next),
    ...(meeting === undefined
      ? []
      : [
          {
            ring: ring.flatMap((corner, at) => (at === index ? [meeting] : at === next ? [] : [corner])),
            between: [ring[index], meeting, ring[next]],
          },
        ]),
  ];
}

const cornerLeftOut = (ring: Ring, index: number): Way => ({
  ring: ring.filter((_, at) => at !== index),
  between: [-1, 0, 1].map((step) => ring[(index + step + ring.length) % ring.length]),
});

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

/** The least area that may stray where nothing should be cut, mm2: the clipping's rounding along an edge. */
const ROUNDING_MM2 = 1;

/** A polygon whose edges are being put right, and what of its neighbourhood each change is judged by. */
interface Standing {
  readonly polygon: Polygon;
  /** Bad core that it leaves under the lip. */
  readonly bare: Region;
  readonly bareMm2: number;
  /** Of it, what strays where nothing should be cut. */
  readonly strayMm2: number;
}

function standingOf(polygon: Polygon, { seeds, ground }: SawTerms): Standing {
  const bare = difference(seeds, [polygon]);
  const strayMm2 = areaMm2(difference([polygon], ground.permitted));
  return { polygon, bare, bareMm2: areaMm2(bare), strayMm2 };
}

interface Ways {
  /** Which ring is changed: 0 the outer one. */
  readonly at: number;
  readonly ways: readonly Way[];
}

/** Of several ways to change a ring the one that changes least, if any may be taken. */
function leastChange(from: Standing, { at, ways }: Ways, terms: SawTerms): Standing | undefined {
  const mostReachMm = Math.max(terms.ground.rules.undercutReachMm, reachUnder(from.bare, [from.polygon]));
  const changes = ways
    .filter(({ ring }) => readOutline(ring).ok)
    .flatMap((way) => changeTo(from, { at, way, mostReachMm }, terms));
  while (changes.length > 0) {
    const best = changes.reduce((least, one) => (isLess(one, least) ? one : least));
    const polygon = cleanly(best.standing.polygon);
    if (polygon !== undefined) return { ...best.standing, polygon };
    changes.splice(changes.indexOf(best), 1);
  }
  return undefined;
}

interface Change {
  readonly standing: Standing;
  /** Bad core that comes to lie under the lip. */
  readonly addedBareMm2: number;
  readonly changeMm2: number;
}

interface Changing {
  readonly at: number;
  readonly way: Way;
  readonly mostReachMm: number;
}

/** Only the triangle between the lines is looked at: what lies outside it is as it was. */
function changeTo(from: Standing, { at, way, mostReachMm }: Changing, terms: SawTerms): readonly Change[] {
  const { seeds, ground } = terms;
  const polygon = withRing(from.polygon, at, way.ring);
  const patch = regionOf(way.between);
  const grownMm2 = signedAreaMm2(way.ring) - signedAreaMm2(ringsOf([from.polygon])[at]);
  const isGrown = grownMm2 > 0;
  const strayMm2 = from.strayMm2 + (isGrown ? areaMm2(outside(patch, ground.permitted)) : 0);
  if (strayMm2 > ROUNDING_MM2) return [];
  const laidBare = isGrown ? [] : inside(patch, seeds);
  const bare = isGrown ? difference(from.bare, patch) : [...from.bare, ...laidBare];
  // Nothing under the lip comes to lie farther from an opening that has grown.
  if (!isGrown && reachUnder(bare, [polygon]) > mostReachMm) return [];
  const bareMm2 = areaMm2(bare);
  return [
    {
      standing: { polygon, bare, bareMm2, strayMm2 },
      addedBareMm2: Math.max(PLUG_MM2, bareMm2 - from.bareMm2),
      changeMm2: Math.abs(grownMm2),
    },
  ];
}

const isLess = (one: Change, best: Change): boolean =>
  one.addedBareMm2 - best.addedBareMm2 < -ROUNDING_MM2 ||
  (one.addedBareMm2 - best.addedBareMm2 <= ROUNDING_MM2 && one.changeMm2 < best.changeMm2 - ROUNDING_MM2);

const withRing = ({ outer, holes }: Polygon, at: number, ring: Ring): Polygon =>
  at === 0 ? { outer: ring, holes } : { outer, holes: holes.with(at - 1, ring) };

/** As the clipping writes it; nothing where a ring came to cross another, so that this is no simple shape. */
function cleanly(polygon: Polygon): Polygon | undefined {
  const region = regionOf(polygon.outer, polygon.holes);
  const isWhole = region.length === 1 && Math.abs(areaMm2(region) - areaMm2([polygon])) < ROUNDING_MM2;
  return isWhole ? region[0] : undefined;
}

/** A small patch is clipped by what comes near it; most patches lie wholly within a region or apart from it. */
function inside(patch: Region, region: Region): Region {
  if (patch.length === 0) return [];
  if (comesNear(patch, region)) return intersection(patch, region);
  return containsPoint(region, patch[0].outer[0]) ? patch : [];
}

function outside(patch: Region, region: Region): Region {
  if (patch.length === 0) return [];
  if (comesNear(patch, region)) return difference(patch, region);
  return containsPoint(region, patch[0].outer[0]) ? [] : patch;
}

/** Whether the box of some edge of the region touches the box of the patch. */
function comesNear(patch: Region, region: Region): boolean {
  const box = bounds(patch);
  if (box === undefined) return false;
  const { minX, minY, maxX, maxY } = box;
  for (const ring of ringsOf(region))
    for (let index = 0, before = ring.length - 1; index < ring.length; before = index, index += 1) {
      const [a, b] = [ring[before], ring[index]];
      const isApart =
        (a[0] < minX && b[0] < minX) ||
        (a[0] > maxX && b[0] > maxX) ||
        (a[1] < minY && b[1] < minY) ||
        (a[1] > maxY && b[1] > maxY);
      if (!isApart) return true;
    }
  return false;
}
