export const layingOrders = ['smallest-first', 'largest-first'] as const;
export type LayingOrder = (typeof layingOrders)[number];

/** What choosing an order means, for whoever has to defend it. */
export const layingConsequences: Readonly<Record<LayingOrder, readonly string[]>> = {
  'smallest-first': [
    'each ply lands on the taper at its own depth, so it carries on the old ply that it replaces',
    'the last ply covers all the others and the whole taper: sanding it flush thins the longest one',
    'small plies at the bottom are easy to wet, but their edges leave small resin-filled steps under the next ply',
  ],
  'largest-first': [
    'the first ply is bonded over the whole taper, so the joint does not depend on the small plies',
    'sanding flush cuts the edges of the short outer plies and leaves the longest ply whole',
    'later plies no longer meet the old plies at their own depth, and each edge stands up as a step to be faired',
  ],
};

/** A group of plies that may be laid wet on wet. */
export interface Stage {
  /** Number of the stage, from 1. */
  readonly stage: number;
  /** Places in the order of laying, from 1. */
  readonly plies: readonly number[];
  /** Thickness laid in the stage. */
  readonly thicknessMm: number;
  /** A single ply thicker than the limit cannot be divided. */
  readonly isOverLimit: boolean;
}

/** Plies in laying order, cut into groups no thicker than the limit. */
export function stagesOf(thicknessesMm: readonly number[], limitMm: number): readonly Stage[] {
  const groups: number[][] = [];
  let height = 0;
  for (const [i, thickness] of thicknessesMm.entries()) {
    const fits = groups.length > 0 && height + thickness <= limitMm * (1 + 1e-9);
    if (fits) groups[groups.length - 1].push(i);
    else groups.push([i]);
    height = fits ? height + thickness : thickness;
  }
  return groups.map((plies, stage) => {
    const thicknessMm = plies.reduce((sum, i) => sum + thicknessesMm[i], 0);
    return {
      stage: stage + 1,
      plies: plies.map((i) => i + 1),
      thicknessMm,
      isOverLimit: thicknessMm > limitMm * (1 + 1e-9),
    };
  });
}
