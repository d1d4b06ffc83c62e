import { describe, expect, test } from '@jest/globals';
import { costRisk, type CostRisk, type CostRiskRequest, type RiskLine } from './cost-risk.js';
import { latinHypercube } from './latin-hypercube.js';

/** Planned again, the line came to as many times its amount as was found. */
const asTheArea = [
  { extentFactor: 0, amountFactor: 0 },
  { extentFactor: 50, amountFactor: 50 },
];
const labour: RiskLine = {
  code: 'bed',
  title: 'Bed core',
  amount: 2000,
  spread: { low: 0.6, high: 1.8 },
  atExtents: asTheArea,
  partOrLabour: 'labour',
};
const resin: RiskLine = {
  code: 'resin',
  title: 'Resin',
  amount: 800,
  spread: { low: 0.8, high: 1.4 },
  atExtents: asTheArea,
  partOrLabour: 'part',
};
const haul: RiskLine = { code: 'haul', title: 'Haul out', amount: 400, partOrLabour: 'labour' };

const aRequest = (changes: Partial<CostRiskRequest> = {}): CostRiskRequest => ({
  currency: 'EUR',
  lines: [labour, resin, haul],
  extent: { grade: 'sounded-and-metered' },
  seed: 7,
  ...changes,
});

function risk(changes: Partial<CostRiskRequest> = {}): CostRisk {
  const outcome = costRisk(aRequest(changes));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const amount = ({ amount: text }: { readonly amount: string }): number => Number(text);
const alone = { extentToRate: 0, commonShare: { labour: 0, part: 0 } };
const known = { low: 1, likely: 1, high: 1 };

describe('the sample', () => {
  test('takes every stratum of every variable once in each replicate, and every level once in all', () => {
    const design = latinHypercube({ variables: 3, strata: 50, replicates: 4 }, 11);
    const upTo = (count: number): readonly number[] => Array.from({ length: count }, (_, i) => i);
    for (const levels of design.levels) {
      expect([...levels].sort((a, b) => a - b)).toEqual(upTo(200));
      for (let replicate = 0; replicate < 4; replicate += 1) {
        const strata = [...levels.subarray(replicate * 50, replicate * 50 + 50)].map((level) =>
          Math.floor(level / 4),
        );
        expect(strata.sort((a, b) => a - b)).toEqual(upTo(50));
      }
    }
  });

  test('the same seed gives the same figures, another seed others', () => {
    expect(risk()).toEqual(risk());
    expect(risk({ seed: 8 }).p90).not.toEqual(risk().p90);
  });
});

describe('the distribution', () => {
  test('a job that is wholly known costs its point, with no contingency', () => {
    const found = risk({ extent: known, lines: [haul], ...alone });
    expect([found.point, found.p10, found.p90].map(amount)).toEqual([400, 400, 400]);
    expect(amount(found.contingency)).toBe(0);
    expect(found.shareAtPoint).toBe(1);
  });

  test('with only the extent open, every quantile is the quantile of the extent', () => {
    const { p10, p50, p80 } = risk({ lines: [{ ...labour, amount: 10_000, spread: undefined }], ...alone });
    // One in twenty a false alarm, else a lognormal of median 1.20 and deviation 0.38: tabled elsewhere to two decimals.
    expect(Math.abs(amount(p10) - 6500)).toBeLessThan(100);
    expect(Math.abs(amount(p50) - 11_700)).toBeLessThan(100);
    expect(Math.abs(amount(p80) - 16_300)).toBeLessThan(100);
  });

  test('the point is the recorded extent at likely rates, so a job lies above it more often than not', () => {
    const found = risk();
    expect(amount(found.point)).toBe(3200);
    expect(found.shareAtPoint).toBeLessThan(0.5);
    expect(amount(found.contingency)).toBe(Math.round((amount(found.p80) - 3200) * 100) / 100);
  });

  test('plugs on both sides of the boundary narrow the range against one symptom', () => {
    const width = (grade: 'mapped-with-plugs' | 'single-symptom'): number => {
      const { p10, p90 } = risk({ extent: { grade } });
      return amount(p90) - amount(p10);
    };
    expect(width('mapped-with-plugs') * 2).toBeLessThan(width('single-symptom'));
  });

  test('lines that move together leave a wider range than lines that move alone', () => {
    const lines = Array.from({ length: 12 }, (_, i): RiskLine => ({
      ...labour,
      code: `l${i}`,
      atExtents: [],
    }));
    const wide = risk({ lines, extent: known, extentToRate: 0, commonShare: { labour: 0.5 } });
    const narrow = risk({ lines, extent: known, ...alone });
    expect(amount(wide.deviation)).toBeGreaterThan(2 * amount(narrow.deviation));
    expect(Math.abs(amount(wide.mean) / amount(narrow.mean) - 1)).toBeLessThan(0.002);
  });

  test('the error of P90 is below half a per cent at twenty thousand samples, and other seeds scatter as it says', () => {
    const runs = Array.from({ length: 12 }, (_, seed) => risk({ seed: 100 + seed, samples: 20_000 }));
    for (const { p90RelativeError } of runs) expect(p90RelativeError).toBeLessThan(0.005);
    const p90s = runs.map(({ p90 }) => amount(p90));
    const centre = p90s.reduce((sum, p) => sum + p, 0) / 12;
    const scatter = Math.sqrt(p90s.reduce((sum, p) => sum + (p - centre) ** 2, 0) / 11);
    const said = runs.reduce((sum, { p90StandardError }) => sum + amount(p90StandardError), 0) / 12;
    expect(scatter / said).toBeGreaterThan(0.4);
    expect(scatter / said).toBeLessThan(2);
  });
});

describe('what drives it', () => {
  test('two independent lines share the variance as their own variances do', () => {
    const a: RiskLine = {
      ...labour,
      code: 'a',
      amount: 1000,
      spread: { low: 0.5, high: 2 },
      atExtents: [],
    };
    const b: RiskLine = {
      ...labour,
      code: 'b',
      amount: 1000,
      spread: { low: 0.7, high: 1.5 },
      atExtents: [],
    };
    // The estimate of a share from 10 000 samples in 20 bins has a standard error of about 0.007.
    const { drivers } = risk({ lines: [a, b], extent: known, ...alone });
    const variance = (l: number, h: number): number => (l * l + 1 + h * h - l - h - l * h) / 18;
    const share = variance(0.5, 2) / (variance(0.5, 2) + variance(0.7, 1.5));
    expect(drivers[0].code).toBe('a');
    expect(Math.abs(drivers[0].varianceShare - share)).toBeLessThan(0.02);
    expect(Math.abs(drivers[1].varianceShare - (1 - share))).toBeLessThan(0.02);
  });

  test('hidden extent stands at the top of the tornado of a job that nobody has opened', () => {
    const { drivers } = risk({ extent: { grade: 'single-symptom' } });
    expect(drivers[0].code).toBe('extent');
    expect(amount(drivers[0].atP90)).toBeGreaterThan(amount(drivers[0].atP10));
  });
});

describe('opening first', () => {
  test('frees most of the reserve when the extent is the doubt, and none when it is known', () => {
    const open = risk({ extent: { grade: 'single-symptom' }, stageZeroCost: '450.00' }).information;
    expect(amount(open.reserveFreed)).toBeGreaterThan(0.5 * amount(open.reserveNow));
    expect(amount(open.stageZeroCost!)).toBe(450);
    const shut = risk({ extent: known, ...alone }).information;
    expect(Math.abs(amount(shut.reserveFreed))).toBeLessThan(0.05 * amount(shut.reserveNow));
  });

  test('a repair worth 6000 that costs 10 000 times a triangle 0, 0.5, 1 is worth asking about: 1/3 of it by hand', () => {
    // C = 10 000 E. E[max(0, 6000 - C)] = 10 000 times the integral of F(e) from 0 to 0.6
    // = 10 000 (2 x 0.5^3/3 + (0.1 - 2 (0.5^3 - 0.4^3)/3)) = 10 000 (0.083333 + 0.059333) = 1426.67; less max(0, 6000 - 5000) = 426.67.
    const line: RiskLine = { ...labour, amount: 10_000, spread: undefined };
    const { information } = risk({
      lines: [line],
      extent: { low: 0, likely: 0.5, high: 1 },
      ...alone,
      worthOfRepair: '6000.00',
      stageZeroCost: '100.00',
    });
    expect(Math.abs(amount(information.decisionValue!) - 426.67)).toBeLessThan(2);
    expect(Math.abs(amount(information.decisionValueNet!) - 326.67)).toBeLessThan(2);
    // 1 - F(0.6) = 2 x 0.4^2 = 0.32.
    expect(information.shareAboveWorth).toBeCloseTo(0.32, 2);
  });
});

describe('faults', () => {
  test('all at once', () => {
    const outcome = costRisk(
      aRequest({
        samples: 55,
        seed: 1.5,
        extent: { low: 2, likely: 1, high: 3 },
        extentToRate: 0.9,
        stageZeroCost: '-1',
        lines: [{ ...labour, amount: Number.NaN, spread: { low: 1.1, high: 1.2 } }],
      }),
    );
    expect(outcome.ok ? [] : outcome.problems.map(({ code, at }) => `${code} ${at}`)).toEqual([
      'out-of-range /samples',
      'not-a-number /seed',
      'out-of-range /extent',
      'contradiction /commonShare/labour',
      'contradiction /commonShare/part',
      'out-of-range /lines/0/amount',
      'out-of-range /lines/0/spread',
      'not-a-decimal /stageZeroCost',
    ]);
  });
});
