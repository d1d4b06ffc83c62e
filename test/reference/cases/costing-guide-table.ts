import { costRisk, type CostRisk } from '#lib/costing';
import type { PublishedCase } from '../published-case.js';

/**
 * Ranges of cost by element in table 12 of the guide, thousand dollars for each of 32 vehicles: minimum, most likely,
 * maximum. Read on the chapter's page: https://gaoinnovations.gov/cost-guide/cost-risk-analysis-data-and-methods.html
 */
const table12 = [
  [17_955, 19_645, 21_785],
  [8500, 10_553, 13_000],
  [4000, 4306, 5100],
  [4100, 4305, 4650],
  [550, 600, 650],
  [32_300, 35_547, 52_500],
  [1950, 2136, 2600],
] as const;
const VEHICLES = 32;

/** The seven triangles by our risk room, each by itself or all as one. */
function guide(commonShare: 0 | 1): CostRisk {
  const outcome = costRisk({
    currency: 'USD',
    extent: { low: 1, likely: 1, high: 1 },
    extentToRate: 0,
    commonShare: { labour: commonShare, part: commonShare },
    samples: 100_000,
    seed: 20201,
    lines: table12.map(([low, likely, high], index) => ({
      code: `element-${index + 1}`,
      title: `element 1.${index + 1}`,
      amount: likely,
      spread: { low: low / likely, high: high / likely },
      partOrLabour: 'part',
    })),
  });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const sumOfModes = table12.reduce((sum, [, likely]) => sum + likely, 0);
const source = 'GAO-20-195G';
const sampledShare = {
  absolute: 0.004,
  because:
    'four standard errors of a share of an eighth to a quarter from 100 000 samples, each 0.0012 apart',
} as const;

export const guideTable: readonly PublishedCase[] = [
  {
    id: 'costing-guide-sum-of-modes',
    room: 'costing',
    title: 'Sum of the most likely costs of one vehicle, million dollars',
    source,
    locus: 'step 9, table 12 and the text under it',
    unit: '1',
    printed: '77',
    ours: () => Number(guide(0).point.amount) / 1000,
  },
  {
    id: 'costing-guide-all-vehicles',
    room: 'costing',
    title: 'The same for all vehicles, thousand million dollars',
    source,
    locus: 'step 9, table 12 and the text under it',
    unit: '1',
    printed: '2.47',
    ours: () => (Number(guide(0).point.amount) * VEHICLES) / 1e6,
  },
  {
    id: 'costing-guide-mean-over-modes',
    room: 'costing',
    title: 'Mean of the seven triangles over the sum of their modes',
    source,
    // By hand: (69 355 + 77 092 + 100 285) / 3 = 82 244; over 77 092.
    locus: 'table 12; 82 244 / 77 092 by the means of the triangles',
    unit: '1',
    printed: '1.0668',
    kind: 'independent-method',
    ours: () => Number(guide(0).mean.amount) / sumOfModes,
  },
  {
    id: 'costing-guide-share-at-modes-apart',
    room: 'costing',
    title: 'Chance that the sum of the modes suffices, elements apart',
    source,
    locus: 'table 12; the seven densities folded into one on a grid of 5 thousand dollars',
    unit: '1',
    printed: '0.1260',
    kind: 'independent-method',
    tolerance: sampledShare,
    ours: () => guide(0).shareAtPoint,
  },
  {
    id: 'costing-guide-share-at-modes-together',
    room: 'costing',
    title: 'Chance that the sum of the modes suffices, elements all as one',
    source,
    locus: 'table 12; the level at which the seven quantiles add up to the sum of the modes, by halving',
    unit: '1',
    printed: '0.2559',
    kind: 'independent-method',
    tolerance: sampledShare,
    ours: () => guide(1).shareAtPoint,
  },
  {
    id: 'costing-guide-p80-apart',
    room: 'costing',
    title: 'P80 over the sum of the modes, elements apart',
    source,
    locus: 'table 12; the seven densities folded into one on a grid of 5 thousand dollars',
    unit: '1',
    printed: '1.1213',
    kind: 'independent-method',
    tolerance: {
      relative: 0.002,
      because: 'four standard errors of the quantile from 100 000 samples',
    },
    ours: () => Number(guide(0).p80.amount) / sumOfModes,
  },
];
