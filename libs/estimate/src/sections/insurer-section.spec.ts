import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { aRecord } from '../../../../test/samples/a-record.js';
import { estimate } from '../estimate.js';
import type { DefectRecord } from '../job/defect-record.js';

const totalsOf = (changes: Partial<DefectRecord>) => {
  const outcome = estimate(aRecord(changes), shippedCatalogue, 'test');
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value.estimate.totals;
};
const cents = ({ amount }: { readonly amount: string }): number => Math.round(Number(amount) * 100);

describe('what an insurer is shown', () => {
  test('upkeep that was owed stands with what was there before, and no improvement is made of it', () => {
    const { insurer, total } = totalsOf({ cause: { cause: 'leaking-fitting', causeClass: 'maintenance' } });
    expect(insurer.prior).toEqual(total);
    expect([insurer.attributable, insurer.improvement, insurer.payable].map(cents)).toEqual([0, 0, 0]);
  });

  test('wear comes off the parts of what happened at once, and the deductible last', () => {
    const { insurer, total } = totalsOf({
      cause: { cause: 'leaking-fitting', causeClass: 'sudden' },
      pricing: { deductible: '500', depreciation: { ageYears: 9, lifeYears: 45 } },
    });
    expect(insurer.attributable).toEqual(total);
    expect(cents(insurer.wear)).toBeGreaterThan(0);
    expect(cents(insurer.payable)).toBe(cents(insurer.attributable) - cents(insurer.wear) - 50_000);
  });

  test('what four in five jobs stay within is the price and its contingency, to the cent', () => {
    const { range, totalWithContingency } = totalsOf({});
    expect(totalWithContingency).toEqual(range.p80);
  });
});
