import {
  areaMm2,
  boundsOfPoints,
  convexHull,
  distanceToRing,
  intersection,
  perimeterMm,
  regionOf,
  ringsOf,
  union,
  type Bounds,
  type Point,
  type Region,
  type Ring,
} from '#lib/geometry';
import { cheapestShape, hoursOf, type CutShape } from './cut-shape.js';
import { cornersOf, isSpent, spend } from './design-work.js';
import type { DeckUnderCut, Ground } from './ground.js';
import { clearOfSupports } from './supports.js';

/** Zones that are opened together. */
export interface OpeningGroup {
  /** Bad core. */
  readonly seeds: Region;
  /** Bad core and margin. */
  readonly target: Region;
  readonly shape: CutShape;
  readonly joins: readonly Join[];
}

/** Why two openings became one, with the numbers that decided. */
export interface Join {
  /** Why two openings became one. */
  readonly why: 'cheaper-together' | 'bridge-too-narrow' | 'overlap';
  /** Work of one opening. */
  readonly hoursTogether: number;
  /** Work of two. */
  readonly hoursApart: number;
  /** Width of skin that would stay between them. */
  readonly bridgeMm: number;
  /** Width that such a bridge needs. */
  readonly neededBridgeMm: number;
}

/** A strip of skin narrower than this between two cuts is not worth keeping, whatever the taper. */
const LEAST_BRIDGE_MM = 100;

export const neededBridgeMm = ({ taperWidthMm }: Pick<DeckUnderCut, 'taperWidthMm'>): number =>
  Math.max(LEAST_BRIDGE_MM, 2 * taperWidthMm);

/** One group for the target and the bad core in it; nothing where the ground has no room for an opening. */
export function groupFor(target: Region, seeds: Region, ground: Ground): OpeningGroup | undefined {
  const shape = cheapestShape(target, seeds, ground);
  return shape === undefined
    ? undefined
    : { seeds, target, shape: clearOfSupports(shape, seeds, ground), joins: [] };
}

/**
 * Joins neighbours, the most saving first, while one opening costs less than two or the skin between is too narrow. Where the
 * work is spent before all pairs were tried, what must be one is made one at once, and nothing else is joined any more.
 */
export function joined(groups: readonly OpeningGroup[], ground: Ground): readonly OpeningGroup[] {
  const tried = new Map<OpeningGroup, Map<OpeningGroup, Joining | undefined>>();
  let current = groups;
  for (let left = groups.length; left > 1; left -= 1) {
    const best = bestJoining(current, ground, tried);
    if (isSpent(ground.work)) return joinedAtOnce(current, ground);
    if (best === undefined) return current;
    current = [...current.filter((group) => group !== best.one && group !== best.other), best.together];
  }
  return current;
}

/** One opening for all that overlap or leave a bridge too narrow between them, designed once for each such cluster. */
const joinedAtOnce = (groups: readonly OpeningGroup[], ground: Ground): readonly OpeningGroup[] =>
  clustersOf(groups, ground.neededBridgeMm).flatMap((cluster) => {
    if (cluster.length === 1) return cluster;
    const target = union(...cluster.map((group) => group.target));
    const seeds = union(...cluster.map((group) => group.seeds));
    const together = groupFor(target, seeds, ground);
    return together === undefined ? cluster : [{ ...together, joins: joinsOf(cluster, together, ground) }];
  });

/** The joins so far, and the last one of all. */
function joinsOf(
  cluster: readonly OpeningGroup[],
  { shape }: OpeningGroup,
  { neededBridgeMm: needed }: Ground,
): readonly Join[] {
  const [first, ...rest] = cluster;
  const bridgeMm = Math.min(...rest.map((group) => gapBetween(first.shape.region, group.shape.region)));
  const last: Join = {
    why: bridgeMm === 0 ? 'overlap' : 'bridge-too-narrow',
    hoursTogether: shape.hours,
    hoursApart: cluster.reduce((sum, group) => sum + group.shape.hours, 0),
    bridgeMm,
    neededBridgeMm: needed,
  };
  return [...cluster.flatMap(({ joins }) => joins), last];
}

function clustersOf(groups: readonly OpeningGroup[], neededMm: number): readonly (readonly OpeningGroup[])[] {
  let clusters: readonly (readonly OpeningGroup[])[] = [];
  for (const group of groups) {
    const isNear = (cluster: readonly OpeningGroup[]): boolean =>
      cluster.some(
        ({ shape: { region } }) =>
          gapOfBoxes(region, group.shape.region) < neededMm &&
          gapBetween(region, group.shape.region) < neededMm,
      );
    const near = clusters.filter(isNear);
    clusters = [...clusters.filter((cluster) => !near.includes(cluster)), [...near.flat(), group]];
  }
  return clusters;
}

interface Joining {
  readonly one: OpeningGroup;
  readonly other: OpeningGroup;
  readonly together: OpeningGroup;
  readonly savingH: number;
  readonly isForced: boolean;
}

function bestJoining(
  groups: readonly OpeningGroup[],
  ground: Ground,
  tried: Map<OpeningGroup, Map<OpeningGroup, Joining | undefined>>,
): Joining | undefined {
  const joinings = groups.flatMap((one, index) =>
    groups.slice(index + 1).flatMap((other) => {
      const known = tried.get(one) ?? new Map<OpeningGroup, Joining | undefined>();
      tried.set(one, known);
      if (!known.has(other)) known.set(other, joining(one, other, ground));
      const found = known.get(other);
      return found === undefined ? [] : [found];
    }),
  );
  return joinings.reduce<Joining | undefined>(
    (best, next) => (best === undefined || isBetter(next, best) ? next : best),
    undefined,
  );
}

const isBetter = (next: Joining, best: Joining): boolean =>
  next.isForced === best.isForced ? next.savingH > best.savingH : next.isForced;

function joining(one: OpeningGroup, other: OpeningGroup, ground: Ground): Joining | undefined {
  const needed = ground.neededBridgeMm;
  const hoursApart = one.shape.hours + other.shape.hours;
  const isNear = gapOfBoxes(one.shape.region, other.shape.region) < needed;
  if (!isNear && !canPay(one, other, hoursApart, ground)) return undefined;
  const bridgeMm = gapBetween(one.shape.region, other.shape.region);
  const isForced = bridgeMm < needed;
  if (isNear && !isForced && !canPay(one, other, hoursApart, ground)) return undefined;
  if (isSpent(ground.work)) return undefined;
  const [target, seeds] = [together(one.target, other.target), together(one.seeds, other.seeds)];
  spend(ground.work, cornersOf(target) + cornersOf(seeds) + cornersOf(ground.permitted));
  const group = groupFor(target, seeds, ground);
  if (group === undefined || group.shape.sharp.length > 1) return undefined;
  const savingH = hoursApart - group.shape.hours;
  if (!isForced && savingH <= 0) return undefined;
  const why = bridgeMm === 0 ? 'overlap' : isForced ? 'bridge-too-narrow' : 'cheaper-together';
  const join: Join = { why, hoursTogether: group.shape.hours, hoursApart, bridgeMm, neededBridgeMm: needed };
  return {
    one,
    other,
    savingH,
    isForced,
    together: { ...group, joins: [...one.joins, ...other.joins, join] },
  };
}

/** The guesses below may lie this much too high. */
const GUESS_SLACK = 1.1;

/**
 * Guesses that spare designing openings that cannot pay. One cut round two openings is at least as long as their hull is
 * round, whatever stands between them; only a pair that passes this is worth clipping its hull.
 */
function canPay(
  one: OpeningGroup,
  other: OpeningGroup,
  hoursApart: number,
  { rules, permitted }: Ground,
): boolean {
  const hull = regionOf(convexHull([...one.shape.sharp, ...other.shape.sharp].flatMap(({ outer }) => outer)));
  const leastHours = hoursOf(
    {
      lengthMm: perimeterMm(hull),
      areaMm2: one.shape.areaMm2 + other.shape.areaMm2,
      corners: 4,
      openings: 1,
    },
    rules,
  );
  if (leastHours > hoursApart * GUESS_SLACK) return false;
  const clipped = intersection(hull, permitted);
  return (
    hoursOf({ lengthMm: perimeterMm(clipped), areaMm2: areaMm2(clipped), corners: 4, openings: 1 }, rules) <=
    hoursApart * GUESS_SLACK
  );
}

/** Regions whose boxes stand apart need no clipping. */
const together = (one: Region, other: Region): Region =>
  gapOfBoxes(one, other) > 0 ? [...one, ...other] : union(one, other);

/** Nearer than their boxes two regions cannot be. */
function gapOfBoxes(one: Region, other: Region): number {
  const [box, beside] = [one, other].map((region) => boundsOfPoints(region.flatMap(({ outer }) => outer)));
  if (box === undefined || beside === undefined) return Number.MAX_VALUE;
  return Math.hypot(
    Math.max(0, beside.minX - box.maxX, box.minX - beside.maxX),
    Math.max(0, beside.minY - box.maxY, box.minY - beside.maxY),
  );
}

/** Shortest distance between two regions; 0 when they touch or overlap. */
export function gapBetween(one: Region, other: Region): number {
  if (gapOfBoxes(one, other) === 0 && areaMm2(intersection(one, other)) > 0) return 0;
  let nearest = Number.MAX_VALUE;
  for (const ring of ringsOf(one))
    for (const otherRing of ringsOf(other))
      nearest = Math.min(
        nearest,
        nearestCorner(ring, otherRing, nearest),
        nearestCorner(otherRing, ring, nearest),
      );
  return nearest;
}

/** Least distance from a corner of one ring to another ring, where it is less than what is known already. */
function nearestCorner(ring: Ring, other: Ring, known: number): number {
  const box = boundsOfPoints(other);
  let nearest = known;
  for (const corner of ring)
    if (box !== undefined && distanceToBox(corner, box) < nearest)
      nearest = Math.min(nearest, distanceToRing(corner, other));
  return nearest;
}

const distanceToBox = ([x, y]: Point, { minX, minY, maxX, maxY }: Bounds): number =>
  Math.hypot(Math.max(0, minX - x, x - maxX), Math.max(0, minY - y, y - maxY));
