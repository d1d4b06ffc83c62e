import { areaMm2, difference, intersection, offset, union, type Region } from '#lib/geometry';
import { m2FromMm2, mm2 } from '#lib/units';
import type { PlannedOpening } from './plan.js';

/** Whether a plan gets at the bad core that it is made for. */
export interface PlanReach {
  readonly isReached: boolean;
  /** Bad core, and margin where one is wanted, that neither the cut nor reaming under its lip gets at. */
  readonly unreached: Region;
  readonly unreachedM2: number;
  readonly unreachedShare: number;
}

/** Less than a plug's hole is rounding of corners. */
const ROUNDING_MM2 = 400;

/** The deck, how far a tool reams under the lip, and the margin that is wanted round bad core. */
export interface ReachTerms {
  readonly panel: Region;
  readonly undercutReachMm: number;
  readonly marginMm: number;
}

/** The cut and what can be reamed out under its lip, to be held against one bad place after another. */
export function reachOfPlan(
  openings: readonly Pick<PlannedOpening, 'area'>[],
  { panel, undercutReachMm, marginMm }: ReachTerms,
): (bad: Region) => PlanReach {
  const cut = union(...openings.map(({ area }) => [area]));
  const withLip = undercutReachMm > 0 ? offset(cut, undercutReachMm, 'round') : cut;
  return (bad) => {
    const wanted = intersection(marginMm > 0 ? offset(bad, marginMm, 'round') : bad, panel);
    const unreached = difference(wanted, withLip).filter((part) => areaMm2([part]) >= ROUNDING_MM2);
    return {
      isReached: unreached.length === 0,
      unreached,
      unreachedM2: m2FromMm2(mm2(areaMm2(unreached))),
      unreachedShare: areaMm2(wanted) === 0 ? 0 : areaMm2(unreached) / areaMm2(wanted),
    };
  };
}
