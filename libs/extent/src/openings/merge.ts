import { areaMm2, convexHull, distanceToRing, intersection, perimeterMm, regionOf, ringsOf, union, type Region } from '#lib/geometry';
import { cheapestShape, hoursOf, type CutShape } from './cut-shape.js';
import type { Ground } from './ground.js';
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
  readonly why: 'cheaper-together' | 'bridge-too-narrow' | 'overlap';
  readonly hoursTogether: number;
  readonly hoursApart: number;
  readonly bridgeMm: number;
  readonly neededBridgeMm: number;
}

/** A strip of skin narrower than this between two cuts is not worth keeping, whatever the taper. */
const LEAST_BRIDGE_MM = 100;

export const neededBridgeMm = ({ taperWidthMm }: Ground): number => Math.max(LEAST_BRIDGE_MM, 2 * taperWidthMm);

/** One group for the target and the seeds in it; nothing where the ground has no room for an opening. */
export function groupFor(target: Region, bad: Region, ground: Ground): OpeningGroup | undefined {
  const seeds = intersection(bad, target);
  const shape = cheapestShape(target, seeds, ground);
  return shape === undefined ? undefined : { seeds, target, shape: clearOfSupports(shape, seeds, ground), joins: [] };
}

/** Joins neighbours, the most saving first, while one opening costs less than two or the skin between is too narrow. */
export function joined(groups: readonly OpeningGroup[], ground: Ground): readonly OpeningGroup[] {
  const tried = new Map<OpeningGroup, Map<OpeningGroup, Joining | undefined>>();
  let current = groups;
  for (let left = groups.length; left > 1; left -= 1) {
    const best = bestJoining(current, ground, tried);
    if (best === undefined) return current;
    current = [...current.filter((group) => group !== best.one && group !== best.other), best.together];
  }
  return current;
}

interface Joining {
  readonly one: OpeningGroup;
  readonly other: OpeningGroup;
  readonly together: OpeningGroup;
  readonly savingH: number;
  readonly isForced: boolean;
}

function bestJoining(groups: readonly OpeningGroup[], ground: Ground, tried: Map<OpeningGroup, Map<OpeningGroup, Joining | undefined>>): Joining | undefined {
  const joinings = groups.flatMap((one, index) => groups.slice(index + 1).flatMap((other) => {
    const known = tried.get(one) ?? new Map<OpeningGroup, Joining | undefined>();
    tried.set(one, known);
    if (!known.has(other)) known.set(other, joining(one, other, ground));
    const found = known.get(other);
    return found === undefined ? [] : [found];
  }));
  return joinings.reduce<Joining | undefined>((best, next) => best === undefined || isBetter(next, best) ? next : best, undefined);
}

const isBetter = (next: Joining, best: Joining): boolean =>
  next.isForced === best.isForced ? next.savingH > best.savingH : next.isForced;

function joining(one: OpeningGroup, other: OpeningGroup, ground: Ground): Joining | undefined {
  const bridgeMm = gapBetween(one.shape.region, other.shape.region);
  const needed = neededBridgeMm(ground);
  const isForced = bridgeMm < needed;
  const hoursApart = one.shape.hours + other.shape.hours;
  if (!isForced && hullHours(one, other, ground) > hoursApart * 1.1) return undefined;
  const target = union(one.target, other.target);
  const group = groupFor(target, union(one.seeds, other.seeds), ground);
  if (group === undefined || group.shape.sharp.length > 1) return undefined;
  const savingH = hoursApart - group.shape.hours;
  if (!isForced && savingH <= 0) return undefined;
  const why = bridgeMm === 0 ? 'overlap' : isForced ? 'bridge-too-narrow' : 'cheaper-together';
  const join: Join = { why, hoursTogether: group.shape.hours, hoursApart, bridgeMm, neededBridgeMm: needed };
  return { one, other, savingH, isForced, together: { ...group, joins: [...one.joins, ...other.joins, join] } };
}

/** A quick guess that spares designing openings that cannot pay. */
function hullHours(one: OpeningGroup, other: OpeningGroup, { rules, permitted }: Ground): number {
  const hull = intersection(regionOf(convexHull([...one.shape.sharp, ...other.shape.sharp].flatMap(({ outer }) => outer))), permitted);
  return hoursOf({ lengthMm: perimeterMm(hull), areaMm2: areaMm2(hull), corners: 4, openings: 1 }, rules);
}

/** Shortest distance between two regions; 0 when they touch or overlap. */
export function gapBetween(one: Region, other: Region): number {
  if (areaMm2(intersection(one, other)) > 0) return 0;
  const [rings, others] = [ringsOf(one), ringsOf(other)];
  return Math.min(...rings.flatMap((ring) => others.flatMap((otherRing) => [
    ...ring.map((corner) => distanceToRing(corner, otherRing)), ...otherRing.map((corner) => distanceToRing(corner, ring)),
  ])), Number.MAX_VALUE);
}
