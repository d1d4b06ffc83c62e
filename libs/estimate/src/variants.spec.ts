import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { aRecord } from '../../../test/samples/a-record.js';
import type { DefectRecord } from './defect-record.js';
import { estimateVariants, type VariantAsked } from './variants.js';

const compared = (record: DefectRecord, variants: readonly VariantAsked[]) => {
  const outcome = estimateVariants({ record, variants }, shippedCatalogue);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};
const quick = aRecord({ pricing: { samples: 1000 } });

describe('variants of one job', () => {
  test('are weighed on the same criteria, and a dominated one is marked', () => {
    const { rows, compared: criteria } = compared(quick, [
      { code: 'relay', method: { skin: 'relay' } },
      { code: 're-bed', method: { skin: 're-bed' } },
      { code: 'outdoors', title: 'The same without a tent', method: { skin: 'relay' }, conditions: { shelter: 'open' } },
    ]);
    expect(rows.map(({ code }) => code)).toEqual(['relay', 're-bed', 'outdoors']);
    expect(criteria).toEqual(expect.arrayContaining(['cost', 'labourH', 'days', 'massKg', 'utilisation']));
    for (const { values } of rows) expect(Object.values(values).every((value) => Number.isFinite(value))).toBe(true);
  });

  test('injection is refused on rot, under fittings, above 0.2 m2 and without a plug, each by its rule', () => {
    const plug = { readings: [{ kind: 'plug' as const, at: [900, 450] as const, condition: 'debonded-dry' as const }] };
    const zone = (sideMm: number) => [{ id: 'Z', condition: 'dry-debonded' as const, outline: [[700, 350], [700 + sideMm, 350], [700 + sideMm, 350 + sideMm], [700, 350 + sideMm]] as const }];
    const ruleFor = (changes: Partial<DefectRecord>): string | undefined =>
      compared({ ...quick, ...changes }, [{ code: 'relay' }, { code: 'inject', inject: true }]).refused[0]?.rule;
    expect(ruleFor({})).toBe('injection-needs-plug');
    expect(ruleFor({ survey: plug })).toBe('injection-on-rot');
    expect(ruleFor({ survey: plug, zones: zone(500) })).toBe('injection-too-large');
    expect(ruleFor({ survey: plug, zones: zone(300), fittings: [{ id: 'c', kind: 'cleat', at: [800, 450] }] })).toBe('injection-under-fitting');
    expect(ruleFor({ survey: plug, zones: zone(300) })).toBe('injection-not-priced');
  });

  test('an unknown core is named where it stands', () => {
    const outcome = estimateVariants({ record: quick, variants: [{ code: 'a' }, { code: 'b', method: { core: 'core-of-cheese' } }] }, shippedCatalogue);
    expect(outcome.ok ? [] : outcome.problems.map(({ at }) => at)).toEqual(['/variants/1/method/core']);
  });

  test.each([[[], 'too-few'], [Array.from({ length: 13 }, (_, index) => ({ code: `v${index}` })), 'too-many']])('%# number of variants', (variants, code) => {
    const outcome = estimateVariants({ record: quick, variants }, shippedCatalogue);
    expect(outcome.ok ? [] : outcome.problems.map((found) => found.code)).toEqual([code]);
  });
});
