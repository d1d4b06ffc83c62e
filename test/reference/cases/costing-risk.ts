import { normalCdf, normalQuantile, triangularQuantile } from '#lib/kernel';
import { costRisk, triangularMean, type CostRisk, type CostRiskRequest } from '#lib/costing';
import { fraction } from '#lib/units';
import type { PublishedCase } from '../published-case.js';

const table = (x: string, printed: string): PublishedCase => ({
  id: `costing-normal-share-${x}`,
  room: 'costing',
  title: `Area under the normal curve from 0 to ${x}`,
  source: 'NIST-HANDBOOK',
  locus: `table 1.3.6.7.1, x = ${x}`,
  unit: '1',
  printed,
  ours: () => normalCdf(Number(x)) - 0.5,
});

export const normalTable: readonly PublishedCase[] = [
  table('0.50', '0.19146'),
  table('1.00', '0.34134'),
  table('1.28', '0.39973'),
  table('1.96', '0.47500'),
  table('3.00', '0.49865'),
  table('3.50', '0.49977'),
  {
    id: 'costing-normal-score-0.975',
    room: 'costing',
    title: 'Normal score of 97.5 %',
    source: 'NIST-HANDBOOK',
    locus: 'table 1.3.6.7.2 (0.975)',
    unit: '1',
    printed: '1.960',
    ours: () => normalQuantile(0.975),
  },
];

const risk = (request: Partial<CostRiskRequest>): CostRisk => {
  const outcome = costRisk({
    currency: 'JPY',
    extent: { low: 1, likely: 1, high: 1 },
    extentToRate: 0,
    commonShare: { labour: 0, part: 0 },
    seed: 20261125,
    lines: [{ code: 'a', title: 'a', amount: 1, partOrLabour: 'part' }],
    ...request,
  });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};

/** Two triangles on 0, 1, 2 are four uniform variables: the quantile solves x4 - 4(x-1)4 + 6(x-2)4 = 24 p on 2 to 3. */
function fourUniforms(p: number): number {
  let [low, high] = [2, 3];
  for (let i = 0; i < 60; i += 1) {
    const x = (low + high) / 2;
    if (x ** 4 - 4 * (x - 1) ** 4 + 6 * (x - 2) ** 4 < 24 * p) low = x;
    else high = x;
  }
  return low;
}

const million = 1_000_000;
const twoTriangles = (): CostRisk =>
  risk({
    samples: 100_000,
    lines: ['a', 'b'].map((code) => ({
      code,
      title: code,
      amount: million,
      spread: { low: 0, high: 2 },
      partOrLabour: 'part' as const,
    })),
  });

const sampled = {
  relative: 0.002,
  because:
    'four standard errors of the quantile from 100 000 samples, as the run itself reports them (0.05 %)',
} as const;

export const distributions: readonly PublishedCase[] = [
  {
    id: 'costing-lhs-irwin-hall-p90',
    room: 'costing',
    title: 'P90 of the sum of four uniform variables',
    source: 'IRWIN-HALL',
    locus: 'distribution function, n = 4',
    unit: '1',
    printed: String(fourUniforms(0.9)),
    kind: 'independent-method',
    tolerance: sampled,
    ours: () => Number(twoTriangles().p90.amount) / million,
  },
  {
    id: 'costing-lhs-irwin-hall-p80',
    room: 'costing',
    title: 'P80 of the sum of four uniform variables',
    source: 'IRWIN-HALL',
    locus: 'distribution function, n = 4',
    unit: '1',
    printed: String(fourUniforms(0.8)),
    kind: 'independent-method',
    tolerance: sampled,
    ours: () => Number(twoTriangles().p80.amount) / million,
  },
  {
    id: 'costing-lhs-irwin-hall-deviation',
    room: 'costing',
    title: 'Deviation of the sum of four uniform variables, root of 4/12',
    source: 'IRWIN-HALL',
    locus: 'variance n/12',
    unit: '1',
    printed: String(Math.sqrt(4 / 12)),
    kind: 'independent-method',
    tolerance: sampled,
    ours: () => Number(twoTriangles().deviation.amount) / million,
  },
  {
    // By hand: c = 0.5/1.6 = 0.3125 < 0.8, so x = 2.5 - sqrt(0.2 x 1.6 x 1.1) = 2.5 - sqrt(0.352) = 2.5 - 0.593296 = 1.906704.
    id: 'costing-triangular-p80',
    room: 'costing',
    title: 'P80 of the triangle 0.9, 1.4, 2.5',
    source: 'ARITHMETIC',
    locus: 'worked by hand',
    unit: '1',
    printed: '1.906704',
    kind: 'by-hand',
    ours: () => triangularQuantile({ low: 0.9, likely: 1.4, high: 2.5 }, 0.8),
  },
  {
    id: 'costing-triangular-mean',
    room: 'costing',
    title: 'Mean of the triangle 0.9, 1.4, 2.5',
    source: 'ARITHMETIC',
    locus: 'worked by hand',
    unit: '1',
    printed: '1.600',
    kind: 'by-hand',
    ours: () => triangularMean.evaluate({ low: fraction(0.9), likely: fraction(1.4), high: fraction(2.5) }),
  },
];
