import {
  intersection,
  offset,
  regionOf,
  ringsOf,
  simplifyRing,
  type Polygon,
  type Region,
} from '#lib/geometry';
import { finding, type Finding } from './finding.js';

export interface ZoneOnPanel {
  readonly id: string;
  readonly region: Region;
  /** The numbers given, where the zone is planned as it was drawn: clipping rounds them as the deck happens to lie. */
  readonly drawn?: Polygon;
}

/**
 * Corners of all zones together that are planned as they were drawn: more than a hand draws, and quick to plan. A round zone
 * keeps about fourteen when the widest gaps are taken in, so that what was smoothed once is not smoothed again.
 */
const mostCornersFor = ({ length }: readonly ZoneOnPanel[]): number => Math.max(400, 16 * length);

/** Gaps of a drawn outline that are taken in, one after another; the first because no piece of core below 40 mm is bedded. */
const GAPS_MM = [40, 80, 160, 320, 640] as const;

/** As wide as a pencil's line: what nobody can tell from what was drawn. */
const PENCIL_MM = 1;

/** What is planned may reach past what was drawn by this share of the gaps taken in: a pencil's line at first, 16 mm at last. */
const REACH_SHARE = 1 / 40;

/**
 * Zones as a saw could follow them. Outlines with more corners than can be planned in good time lose their narrow gaps: grown
 * and shrunk again by half a gap, so that a zone only gets larger. What goes is decided by counting corners, never by time,
 * and a finding says it.
 */
export function drawnByHand(
  zones: readonly ZoneOnPanel[],
  panel: Region,
): { readonly zones: readonly ZoneOnPanel[]; readonly findings: readonly Finding[] } {
  const drawn = cornersOf(zones);
  if (drawn <= mostCornersFor(zones)) return { zones, findings: [] };
  const { planned, gapMm } = smoothed(zones, panel);
  return {
    zones: planned,
    findings: [
      finding('zones-smoothed', {
        corners: drawn,
        planned: cornersOf(planned),
        gapMm,
        reachMm: REACH_SHARE * gapMm,
      }),
    ],
  };
}

/** The widest gaps are tried only where the narrow ones leave too many corners. */
function smoothed(
  zones: readonly ZoneOnPanel[],
  panel: Region,
): { readonly planned: readonly ZoneOnPanel[]; readonly gapMm: number } {
  let planned = zones;
  for (const gapMm of GAPS_MM) {
    planned = planned.map(({ id, region }) => ({ id, region: closedOnce(region, gapMm, panel) }));
    if (cornersOf(planned) <= mostCornersFor(zones)) return { planned, gapMm };
  }
  return { planned, gapMm: GAPS_MM[GAPS_MM.length - 1] };
}

const cornersOf = (zones: readonly ZoneOnPanel[]): number =>
  zones.reduce(
    (sum, { region }) => sum + ringsOf(region).reduce((corners, ring) => corners + ring.length, 0),
    0,
  );

interface Closed {
  readonly panel: Region;
  readonly gapMm: number;
  readonly region: Region;
}

const closedBefore = new WeakMap<Region, Closed>();

/** Every rung of a ladder asks for the same zones on the same panel. */
function closedOnce(region: Region, gapMm: number, panel: Region): Region {
  const known = closedBefore.get(region);
  if (known?.gapMm === gapMm && known.panel === panel) return known.region;
  const closed = withGapsClosed(region, gapMm, panel);
  closedBefore.set(region, { panel, gapMm, region: closed });
  return closed;
}

/**
 * Thinned before it is grown, by less than it grows, because curves are drawn with many times the corners that a saw can tell;
 * and after it, by as much as what is planned may reach past what was drawn.
 */
function withGapsClosed(region: Region, gapMm: number, panel: Region): Region {
  const reachMm = REACH_SHARE * gapMm;
  const grown = offset(thinned(region, PENCIL_MM / 2), (gapMm + PENCIL_MM) / 2, 'round', reachMm);
  const closed = offset(grown, reachMm - gapMm / 2, 'round', reachMm);
  return intersection(thinned(closed, reachMm), panel);
}

const thinned = (region: Region, withinMm: number): Region =>
  region.flatMap(({ outer, holes }) =>
    regionOf(
      simplifyRing(outer, withinMm),
      holes.map((hole) => simplifyRing(hole, withinMm)),
    ),
  );
