import {
  areaMm2,
  difference,
  intersection,
  offset,
  regionOf,
  simplifyRing,
  union,
  type Polygon,
  type Region,
} from '#lib/geometry';
import type { DesignWork } from './design-work.js';
import { groundOf, type CutRules, type DeckUnderCut, type Ground } from './ground.js';
import { groupFor, joined, neededBridgeMm, type OpeningGroup } from './merge.js';
import {
  asDrawn,
  drawnInto,
  ownFrameOf,
  regionBack,
  regionInto,
  supportsInto,
  type OwnFrame,
} from './own-frame.js';
import { reachUnder } from './reach.js';
import type { PanelShape, SupportShape } from './request.js';
import type { Rules } from './rules.js';

/** Rounded margins are marked with a pencil: chords this near to the arc are the arc. */
export const ARC_MM = 0.2;

/** The shapes to saw, before anything is said about them. */
export interface Layout {
  readonly deck: DeckUnderCut;
  readonly groups: readonly OpeningGroup[];
  readonly unopened: readonly Region[];
  /** Where they were designed. */
  readonly frame: OwnFrame;
  /** What joining and putting right short edges took; where it is spent, not everything that might save labour was tried. */
  readonly work: DesignWork;
}

/** The same in the frame of the deck itself. */
interface Design {
  readonly ground: Ground;
  readonly groups: readonly OpeningGroup[];
  readonly unopened: readonly Region[];
}

interface Sizes {
  readonly rules: Rules;
  readonly taperWidthMm: number;
}

/** Bad core on the panel, and the numbers it was drawn by where somebody drew it. */
export interface BadCore {
  readonly region: Region;
  readonly drawn?: Polygon;
}

/** Designed in the deck's own frame and put back, so that a deck that is mirrored, turned or moved gets the same cuts. */
export function layoutOf(zones: readonly BadCore[], panel: Region, shape: PanelShape, sizes: Sizes): Layout {
  const site = siteOnce(zones, panel, shape);
  const { frame } = site;
  const { ground, groups, unopened } = designed(site, sizes);
  return {
    frame,
    work: ground.work,
    deck: { ...sizes, panel, supports: shape.supports ?? [], insetMm: ground.insetMm },
    groups: groups.map((group) => groupBack(group, frame)),
    unopened: unopened.map((region) => regionBack(region, frame)),
  };
}

/** A deck and the bad core on it in its own frame, with what has been designed for it. */
interface Site {
  readonly zones: readonly BadCore[];
  readonly shape: PanelShape;
  readonly frame: OwnFrame;
  readonly panel: Region;
  readonly bad: Region;
  readonly supports: readonly SupportShape[];
  /** By what decides a design. */
  readonly designs: Map<string, Design>;
}

const sitesOn = new WeakMap<Region, readonly Site[]>();

/** Rungs of a ladder open different zones of one deck. */
const MOST_SITES = 4;

/** The rungs of a ladder ask about the same zones on the same panel, and most of them for the same cuts. */
function siteOnce(zones: readonly BadCore[], panel: Region, shape: PanelShape): Site {
  const sites = sitesOn.get(panel) ?? [];
  const known = sites.find((site) => site.shape === shape && isSameCore(site.zones, zones));
  if (known !== undefined) return known;
  const site = siteOf(zones, panel, shape);
  sitesOn.set(panel, [site, ...sites.slice(0, MOST_SITES - 1)]);
  return site;
}

const isSameCore = (some: readonly BadCore[], others: readonly BadCore[]): boolean =>
  some.length === others.length &&
  some.every(({ region, drawn }, index) => region === others[index].region && drawn === others[index].drawn);

function siteOf(zones: readonly BadCore[], panel: Region, shape: PanelShape): Site {
  const supports = shape.supports ?? [];
  const frame = ownFrameOf({ panel: asDrawn(panel, shape), bad: allBad(zones), supports });
  const panelThere = drawnInto({ outer: shape.outline, holes: shape.holes ?? [] }, frame);
  return {
    zones,
    shape,
    frame,
    panel: panelThere,
    bad: union(...zones.map((zone) => zoneInto(zone, panelThere, frame))),
    supports: supportsInto(supports, frame),
    designs: new Map(),
  };
}

/** What was drawn is clipped there again, because clipping before would have rounded it as the deck lies. */
const zoneInto = ({ region, drawn }: BadCore, panelThere: Region, frame: OwnFrame): Region =>
  drawn === undefined ? regionInto(region, frame) : intersection(drawnInto(drawn, frame), panelThere);

const groupBack = (group: OpeningGroup, frame: OwnFrame): OpeningGroup => ({
  ...group,
  seeds: regionBack(group.seeds, frame),
  target: regionBack(group.target, frame),
  shape: {
    ...group.shape,
    sharp: regionBack(group.shape.sharp, frame),
    region: regionBack(group.shape.region, frame),
  },
});

/**
 * Corners that are looked at in one design while pairs are joined and short edges put right. The samples take up to 200 of
 * them, fifty combs beside twenty portholes 26,000 and fifty stars 51,000, of which each thousand costs about 10 ms.
 */
const MOST_CORNERS_LOOKED_AT = 24_000;

/** Far from the edges where the taper wants it, unless the damage then lies out of reach; the flange is kept in any case. */
function designed(site: Site, { rules, taperWidthMm }: Sizes): Design {
  const cutRules = cutRulesOf(rules);
  const bridgeMm = neededBridgeMm({ taperWidthMm });
  const at = (insetMm: number): Design => {
    const key = JSON.stringify([insetMm, bridgeMm, cutRules]);
    const design =
      site.designs.get(key) ?? laidOut(site, { insetMm, neededBridgeMm: bridgeMm, rules: cutRules });
    site.designs.set(key, design);
    return design;
  };
  const wide = at(Math.max(rules.flangeMm, taperWidthMm));
  if (taperWidthMm <= rules.flangeMm || isWithinReach(wide)) return wide;
  return at(rules.flangeMm);
}

const cutRulesOf = ({
  cutMarginMm,
  flangeMm,
  cornerRadiusMm,
  supportClearanceMm,
  undercutReachMm,
  cutHPerM,
  openedHPerM2,
  openingH,
  cornerH,
}: Rules): CutRules => ({
  cutMarginMm,
  flangeMm,
  cornerRadiusMm,
  supportClearanceMm,
  undercutReachMm,
  cutHPerM,
  openedHPerM2,
  openingH,
  cornerH,
});

const isWithinReach = ({ groups, unopened, ground }: Design): boolean =>
  unopened.length === 0 &&
  groups.every(
    ({ seeds, shape }) =>
      reachUnder(difference(seeds, shape.region), shape.region) <= ground.rules.undercutReachMm,
  );

function laidOut(
  { panel, supports, bad }: Site,
  sizes: Pick<Ground, 'insetMm' | 'neededBridgeMm' | 'rules'>,
): Design {
  const work = { used: 0, most: MOST_CORNERS_LOOKED_AT };
  const ground = groundOf({ ...sizes, panel, supports, work });
  const grown = ground.rules.cutMarginMm > 0 ? offset(bad, ground.rules.cutMarginMm, 'round', ARC_MM) : bad;
  const targets = withFewCorners(intersection(grown, ground.panel));
  const alone = targets.map((target) => ({
    target,
    group: groupFor([target], intersection(bad, [target]), ground),
  }));
  const groups = joined(
    alone.flatMap(({ group }) => (group === undefined ? [] : [group])),
    ground,
  );
  const unopened = alone.flatMap(({ target, group }) =>
    group === undefined ? [intersection(bad, [target])] : [],
  );
  return { ground, groups, unopened };
}

/** A zone drawn with thousands of corners is planned with those that matter to a saw. */
const withFewCorners = (region: Region): Region =>
  region
    .flatMap(({ outer, holes }) =>
      regionOf(
        simplifyRing(outer, ARC_MM),
        holes.map((hole) => simplifyRing(hole, ARC_MM)),
      ),
    )
    .filter((polygon) => areaMm2([polygon]) > 0);

const allBad = (zones: readonly BadCore[]): Region => union(...zones.map(({ region }) => region));
