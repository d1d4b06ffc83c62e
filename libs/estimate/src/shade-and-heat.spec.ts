import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { detailOf } from '#lib/kernel';
import { aRecord } from '../../../test/samples/a-record.js';
import type { Estimate } from './document/estimate-document.js';
import type { Conditions } from './job/defect-record.js';
import { estimate } from './estimate.js';

function made(conditions: Conditions): Estimate {
  const outcome = estimate(
    aRecord({ evidence: 'opened-and-measured', conditions }),
    shippedCatalogue,
    'test',
  );
  if (!outcome.ok) throw new Error(outcome.problems.map(detailOf).join(' '));
  return outcome.value.estimate;
}
const lineOf = ({ lines }: Estimate, code: string) => lines.find((line) => line.code === code);
const visitsOf = (one: Estimate): number => lineOf(one, 'yard-power')?.netQuantity ?? 0;

const base = { temperatureC: 20, shelter: 'open' } as const;
const bare = made(base);

describe('a shade over the deck', () => {
  const shaded = made({ ...base, warmth: { isShaded: true } });

  // By hand: the mean of 0.2, 0.35 and 0.7 h is 0.41667 h a visit.
  test('is rigged and struck on each visit, and hired once', () => {
    expect(visitsOf(shaded)).toBeGreaterThan(3);
    expect(lineOf(shaded, 'labour-shade-visit')?.hours?.mean).toBeCloseTo(visitsOf(shaded) * 0.41667, 3);
    expect(lineOf(shaded, 'yard-shade')?.amount.amount).toBe('50.00');
    expect(lineOf(bare, 'labour-shade-visit')).toBeUndefined();
    expect(lineOf(bare, 'yard-shade')).toBeUndefined();
  });

  test('takes its time from the day: the job is no shorter', () => {
    expect(shaded.summary.workingDays.p50).toBeGreaterThanOrEqual(bare.summary.workingDays.p50);
    expect(shaded.summary.labourH.p50).toBeGreaterThan(bare.summary.labourH.p50);
  });

  test('is not rigged in a shed', () => {
    const shed = made({ ...base, shelter: 'shed', warmth: { isShaded: true } });
    expect(lineOf(shed, 'labour-shade-visit')).toBeUndefined();
    expect(lineOf(shed, 'yard-shade')).toBeUndefined();
  });
});

describe('a heater', () => {
  // By hand: the mean of 0.15, 0.3 and 0.6 h is 0.35 h a visit.
  test('is set and tended on each visit beside its hire', () => {
    const heated = made({ ...base, shelter: 'tent', warmth: { heaterK: 8 } });
    expect(lineOf(heated, 'labour-heater-visit')?.hours?.mean).toBeCloseTo(visitsOf(heated) * 0.35, 3);
    expect(lineOf(heated, 'yard-heater')).toBeDefined();
    expect(lineOf(bare, 'labour-heater-visit')).toBeUndefined();
  });
});
