import type { OpeningPlan } from '#lib/extent';

/** Deck beyond the taper that a flange keeps. Source: [METHODS-EDGES]: 12 times the skin and 10 mm. */
const BEYOND_TAPER_MM = 10;

/** The narrowest flange that the taper has room on, in whole millimetres. */
export const leastFlangeMm = ({ taperWidthMm }: Pick<OpeningPlan, 'taperWidthMm'>): number =>
  Math.ceil(taperWidthMm + BEYOND_TAPER_MM);

/** How far the cut can be moved out until its flange is that narrow; not at all where it is narrower already. */
export const spareFlangeMm = (plan: Pick<OpeningPlan, 'insetMm' | 'taperWidthMm'>): number =>
  Math.max(0, plan.insetMm - leastFlangeMm(plan));
