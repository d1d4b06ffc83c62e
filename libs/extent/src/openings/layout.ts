import {
  areaMm2,
  difference,
  intersection,
  offset,
  regionOf,
  simplifyRing,
  union,
  type Region,
} from '#lib/geometry';
import { groundOf, type Ground } from './ground.js';
import { groupFor, joined, type OpeningGroup } from './merge.js';
import { reachUnder } from './reach.js';
import type { PanelShape } from './request.js';
import type { Rules } from './rules.js';

/** Rounded margins are marked with a pencil: chords this near to the arc are the arc. */
export const ARC_MM = 0.2;

/** The shapes to saw, before anything is said about them. */
export interface Layout {
  readonly ground: Ground;
  readonly groups: readonly OpeningGroup[];
  readonly unopened: readonly Region[];
}

/** Far from the edges where the taper wants it, unless the damage then lies out of reach; the flange is kept in any case. */
export function layoutOf(
  bad: Region,
  panel: Region,
  shape: PanelShape,
  { rules, taperWidthMm }: { readonly rules: Rules; readonly taperWidthMm: number },
): Layout {
  const at = (insetMm: number): Layout =>
    laidOut(bad, groundOf(panel, shape, rules, { insetMm, taperWidthMm }));
  const wide = at(Math.max(rules.flangeMm, taperWidthMm));
  if (taperWidthMm <= rules.flangeMm || isWithinReach(wide)) return wide;
  return at(rules.flangeMm);
}

const isWithinReach = ({ groups, unopened, ground }: Layout): boolean =>
  unopened.length === 0 &&
  groups.every(
    ({ seeds, shape }) =>
      reachUnder(difference(seeds, shape.region), shape.region) <= ground.rules.undercutReachMm,
  );

function laidOut(bad: Region, ground: Ground): Layout {
  const grown = ground.rules.cutMarginMm > 0 ? offset(bad, ground.rules.cutMarginMm, 'round', ARC_MM) : bad;
  const targets = withFewCorners(intersection(grown, ground.panel));
  const designed = targets.map((target) => ({
    target,
    group: groupFor([target], intersection(bad, [target]), ground),
  }));
  const groups = joined(
    designed.flatMap(({ group }) => (group === undefined ? [] : [group])),
    ground,
  );
  const unopened = designed.flatMap(({ target, group }) =>
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

export const allBad = (zones: readonly { readonly region: Region }[]): Region =>
  union(...zones.map(({ region }) => region));
