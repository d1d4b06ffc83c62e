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
import { groundOf, type DeckUnderCut, type Ground } from './ground.js';
import { groupFor, joined, type OpeningGroup } from './merge.js';
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
  const supports = shape.supports ?? [];
  const frame = ownFrameOf({ panel: asDrawn(panel, shape), bad: allBad(zones), supports });
  const panelThere = drawnInto({ outer: shape.outline, holes: shape.holes ?? [] }, frame);
  const { ground, groups, unopened } = designed(
    union(...zones.map((zone) => zoneInto(zone, panelThere, frame))),
    panelThere,
    supportsInto(supports, frame),
    sizes,
  );
  return {
    frame,
    deck: { ...sizes, panel, supports, insetMm: ground.insetMm },
    groups: groups.map((group) => groupBack(group, frame)),
    unopened: unopened.map((region) => regionBack(region, frame)),
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

/** Far from the edges where the taper wants it, unless the damage then lies out of reach; the flange is kept in any case. */
function designed(
  bad: Region,
  panel: Region,
  supports: readonly SupportShape[],
  { rules, taperWidthMm }: Sizes,
): Design {
  const at = (insetMm: number): Design =>
    laidOut(bad, groundOf(panel, supports, rules, { insetMm, taperWidthMm }));
  const wide = at(Math.max(rules.flangeMm, taperWidthMm));
  if (taperWidthMm <= rules.flangeMm || isWithinReach(wide)) return wide;
  return at(rules.flangeMm);
}

const isWithinReach = ({ groups, unopened, ground }: Design): boolean =>
  unopened.length === 0 &&
  groups.every(
    ({ seeds, shape }) =>
      reachUnder(difference(seeds, shape.region), shape.region) <= ground.rules.undercutReachMm,
  );

function laidOut(bad: Region, ground: Ground): Design {
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
