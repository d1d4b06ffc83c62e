import { describe, expect, test } from '@jest/globals';
import { growthLaw, type GrowthLaw } from '#lib/extent';
import { normalQuantile, randomStream } from '#lib/kernel';
import { jobRisk, paceSigma, priceSigma, type JobAtExtent, type JobRiskRequest } from './job-risk.js';
import { LATTICE_POINTS, latticeLevels, latticeScores } from './lattice.js';
import { deviation, quantileOfSorted, steadyQuantile } from './sample-statistics.js';

const VARIABLES = 7;
const columns = Array.from({ length: VARIABLES }, (_, coordinate) => latticeLevels(coordinate));

describe('the points', () => {
  // By hand, modulo 2039: 392; 392 x 392 = 153 664 = 75 x 2039 + 739; 739 x 392 = 289 688 = 142 x 2039 + 150.
  test('are multiples of one generating vector', () => {
    expect(columns.slice(0, 4).map((levels) => levels[1])).toEqual([1, 392, 739, 150]);
    expect(columns.slice(0, 4).map((levels) => levels[2])).toEqual([2, 784, 1478, 300]);
  });

  test('take each level once in every coordinate, and never the same one in two', () => {
    for (const levels of columns) expect(new Set(levels).size).toBe(LATTICE_POINTS);
    expect(new Set(columns.map((levels) => levels.join())).size).toBe(VARIABLES);
  });

  // The integral of exp(x1 + ... + x7) over the cube is (e - 1)^7 = 44.2. Its standard error by as many points of plain chance
  // is 0.858/sqrt(2039) = 1.9 %: ((e2 - 1)/2/(e - 1)2)^7 - 1 = 0.736, the square of 0.858. Measured here: 0.2 %.
  test('find a known integral over seven coordinates five times closer than chance', () => {
    let sum = 0;
    for (let point = 0; point < LATTICE_POINTS; point += 1)
      sum += Math.exp(columns.reduce((all, levels) => all + (levels[point] + 0.5) / LATTICE_POINTS, 0));
    expect(Math.abs(sum / LATTICE_POINTS / (Math.E - 1) ** VARIABLES - 1)).toBeLessThan(0.019 / 5);
  });

  test('have normal scores of mean zero and deviation one', () => {
    const square = latticeScores.reduce((sum, score) => sum + score ** 2, 0) / LATTICE_POINTS;
    expect(latticeScores.reduce((sum, score) => sum + score, 0)).toBeCloseTo(0, 6);
    expect(square).toBeCloseTo(1, 2);
  });
});

describe('a steady quantile', () => {
  // The weights of 0.5 are alike on both sides; a straight line through the order statistics gives its own value back.
  test('of a straight line is its value there', () => {
    const line = Float64Array.from({ length: 2039 }, (_, place) => (place + 0.5) / 2039);
    for (const p of [0.1, 0.5, 0.8, 0.9]) expect(steadyQuantile(line, p)).toBeCloseTo(p, 3);
  });

  test('of the normal law is that of its tables', () => {
    for (const [p, z] of [
      [0.1, -1.2816],
      [0.5, 0],
      [0.8, 0.8416],
      [0.9, 1.2816],
    ])
      expect(Math.abs(steadyQuantile(latticeScores, p) - z)).toBeLessThan(0.002);
  });

  // Of 500 samples of 400 draws: the scatter of the plain one is sqrt(0.16/400)/0.28 = 0.0714.
  test('strays less than the value that stands there', () => {
    const random = randomStream(5);
    const found = Array.from({ length: 500 }, () => {
      const drawn = Float64Array.from({ length: 400 }, () => normalQuantile(random())).sort();
      return [steadyQuantile(drawn, 0.8), quantileOfSorted(drawn, 0.8)] as const;
    });
    const scatter = (pick: 0 | 1): number => deviation(Float64Array.from(found, (pair) => pair[pick]));
    expect(scatter(0)).toBeLessThan(scatter(1));
    expect(scatter(1)).toBeGreaterThan(0.06);
    expect(scatter(1)).toBeLessThan(0.08);
  });
});

const certain: GrowthLaw = {
  falseAlarmShare: 0,
  falseAlarmFrom: 0,
  falseAlarmUpTo: 0,
  median: 1,
  sigma: 0,
  most: 1,
  pairs: [],
};
const at = (extentFactor: number, changes: Partial<JobAtExtent> = {}): JobAtExtent => ({
  extentFactor,
  openedM2: extentFactor,
  labourH: 40,
  labour: 3000,
  goods: 0,
  charges: 0,
  labourVariance: 0,
  goodsVariance: 0,
  ...changes,
});
const request = (changes: Partial<JobRiskRequest> = {}): JobRiskRequest => ({
  extents: [at(1)],
  law: certain,
  newAreas: { expected: 0, eachM2: 0.15, cost: 0, labourH: 0, days: { calendarDays: 0, workingDays: 0 } },
  base: 3000,
  wantsKinds: true,
  hands: 'yard',
  perCalendarDay: 0,
  days: () => ({ calendarDays: 10, workingDays: 5 }),
  absentPerDayWorked: () => 0,
  paysForAbsence: false,
  ...changes,
});
/** Of a lognormal of mean one. */
const lognormal = (sigma: number, share: number): number =>
  Math.exp(sigma * normalQuantile(share) - sigma ** 2 / 2);

describe('a job whose extent is certain', () => {
  const alone = jobRisk(request());

  test('has the closed quantiles of its pace, in money and in hours alike', () => {
    for (const [name, share] of [
      ['p10', 0.1],
      ['p50', 0.5],
      ['p80', 0.8],
      ['p90', 0.9],
    ] as const) {
      expect(alone.cost[name] / (3000 * lognormal(paceSigma.yard, share))).toBeCloseTo(1, 3);
      expect(alone.labourH[name] / (40 * lognormal(paceSigma.yard, share))).toBeCloseTo(1, 3);
    }
  });

  test('is expected at its base, has a contingency up to P80, and owes all of it to the pace', () => {
    expect(alone.growth).toBeCloseTo(0, 6);
    expect(alone.expected).toBeCloseTo(3000, 6);
    expect(alone.contingency).toBeCloseTo(alone.cost.p80 - 3000, 9);
    expect(alone.kinds).toEqual([{ kind: 'productivity', share: 1 }]);
  });

  test('has the closed quantiles of the price level where it is goods alone', () => {
    const goods = jobRisk(request({ extents: [at(1, { labour: 0, labourH: 0, goods: 3000 })] }));
    expect(goods.cost.p90 / (3000 * lognormal(priceSigma, 0.9))).toBeCloseTo(1, 3);
    expect(goods.kinds.map(({ kind }) => kind)).toEqual(['price']);
  });

  test('has days from the table it was given, whatever the money', () =>
    expect([alone.calendarDays.p10, alone.calendarDays.p90, alone.workingDays.p50]).toEqual([10, 10, 5]));
});

describe('a job whose extent is known by soundings', () => {
  const law = growthLaw({ grade: 'sounded-and-metered', recordedM2: 0.4, mostM2: 4 });
  const planned = [at(0.5, { labour: 2500 }), at(1), at(2, { labour: 4000 }), at(4, { labour: 6000 })];
  const found = jobRisk(
    request({
      extents: planned,
      law,
      newAreas: {
        expected: 0.3,
        eachM2: 0.15,
        cost: 500,
        labourH: 8,
        days: { calendarDays: 2, workingDays: 1 },
      },
    }),
  );

  test('is exceeded about as often as not', () => {
    expect(found.shareWithin).toBeGreaterThan(0.4);
    expect(found.shareWithin).toBeLessThan(0.6);
  });

  test('charges the areas elsewhere by their mean count', () => expect(found.newAreas).toBeCloseTo(150, 9));

  test('parts the contingency among its causes, all of it', () => {
    expect(found.kinds.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
    expect(found.kinds.map(({ kind }) => kind).sort()).toEqual(['extent', 'new-areas', 'productivity']);
  });

  test('is the same from a plain simulation of 200 000 jobs by other code', () => {
    const random = randomStream(20261129);
    const totals = Float64Array.from({ length: 200_000 }, () => {
      const chance = random();
      const grown = normalQuantile(Math.min(1 - 1e-12, Math.max(1e-12, random())));
      const extent = chance < 0.05 ? 0.1 + 0.5 * random() : Math.min(10, 1.2 * Math.exp(0.38 * grown));
      const pace = Math.exp(
        paceSigma.yard * normalQuantile(random() * (1 - 1e-9) + 5e-10) - paceSigma.yard ** 2 / 2,
      );
      let [count, product] = [0, random()];
      while (product > Math.exp(-0.3)) [count, product] = [count + 1, product * random()];
      const labour =
        extent <= 1
          ? 2500 + 1000 * Math.max(0, extent - 0.5)
          : extent <= 2
            ? 3000 + 1000 * (extent - 1)
            : Math.min(6000, 4000 + 1000 * (extent - 2));
      return (labour + 500 * count) * pace;
    }).sort();
    // Standard error of a quantile of 200 000: about 0.1 % at P50 and 0.2 % at P90; three of them.
    for (const [name, share] of [
      ['p10', 0.1],
      ['p50', 0.5],
      ['p80', 0.8],
      ['p90', 0.9],
    ] as const)
      expect(Math.abs(found.cost[name] / totals[Math.round(share * 199_999)] - 1)).toBeLessThan(0.006);
  });
});
