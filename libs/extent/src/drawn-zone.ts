import { intersection, offset, regionOf, ringsOf, simplifyRing, type Region } from '#lib/geometry';
import { finding, type Finding } from './finding.js';

export interface ZoneOnPanel {
  readonly id: string;
  readonly region: Region;
}

/** Corners of all zones together that are planned as they were drawn: more than a hand draws, and quick to plan. */
const MOST_CORNERS_AS_DRAWN = 400;

/** Gaps of a drawn outline that are taken in, one after another; the first because no piece of core below 40 mm is bedded. */
const GAPS_MM = [40, 80, 160, 320, 640] as const;

/** As wide as a pencil's line: what is planned may reach so far past what was drawn. */
const PENCIL_MM = 1;

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
  if (drawn <= MOST_CORNERS_AS_DRAWN) return { zones, findings: [] };
  const { planned, gapMm } = smoothed(zones, panel);
  return {
    zones: planned,
    findings: [finding('zones-smoothed', { corners: drawn, planned: cornersOf(planned), gapMm })],
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
    if (cornersOf(planned) <= MOST_CORNERS_AS_DRAWN) return { planned, gapMm };
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

function withGapsClosed(region: Region, gapMm: number, panel: Region): Region {
  const grown = offset(region, gapMm / 2, 'round', PENCIL_MM);
  const closed = offset(grown, PENCIL_MM - gapMm / 2, 'round', PENCIL_MM);
  const thinned = closed.flatMap(({ outer, holes }) =>
    regionOf(
      simplifyRing(outer, PENCIL_MM),
      holes.map((hole) => simplifyRing(hole, PENCIL_MM)),
    ),
  );
  return intersection(thinned, panel);
}
