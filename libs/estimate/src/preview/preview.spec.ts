import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { aRecord } from '../../../../test/samples/a-record.js';
import { estimate } from '../estimate.js';
import type { DefectRecord } from '../job/defect-record.js';
import { previewOf } from './preview.js';

const both = (record: DefectRecord) => {
  const [preview, full] = [previewOf(record, shippedCatalogue), estimate(record, shippedCatalogue, 'test')];
  if (!preview.ok || !full.ok) throw new Error('refused');
  return { preview: preview.value, full: full.value.estimate };
};

/** Core by area moves the price by a sheet; the closed form misses quantiles of the simulation by about a hundredth. */
const PRICE_WITHIN = 0.05;

describe('a preview beside the estimate of the same record', () => {
  test.each<[string, Partial<DefectRecord>]>([
    ['a plain deck', {}],
    ['a skin relaid', { method: { skin: 'relay' } }],
    ['a skin bedded again', { method: { skin: 're-bed' } }],
  ])('%s: the same cut, hours and verdict, the price and its range within a twentieth', (_, changes) => {
    const { preview, full } = both(aRecord(changes));
    expect(preview.openings.map(({ sawLine }) => sawLine)).toEqual(
      full.scope.openings.map(({ sawLine }) => sawLine),
    );
    expect(Math.abs(preview.summary.labourLikelyH / full.summary.labourLikelyH - 1)).toBeLessThan(
      PRICE_WITHIN,
    );
    expect({ code: preview.panel.verdict, sentence: preview.panel.sentence }).toEqual({
      code: full.summary.verdict,
      sentence: full.conclusion.verdict.sentence,
    });
    const pairs = [
      [preview.price.withoutContingency, full.totals.total],
      ...(['p10', 'p50', 'p80', 'p90'] as const).map(
        (point) => [preview.price.range[point], full.totals.range[point]] as const,
      ),
    ] as const;
    for (const [rough, exact] of pairs)
      expect(Math.abs(Number(rough.amount) / Number(exact.amount) - 1)).toBeLessThan(PRICE_WITHIN);
  });

  test('a record without zones is refused as by the estimate', () => {
    const outcome = previewOf(aRecord({ zones: [] }), shippedCatalogue);
    expect(outcome.ok ? [] : outcome.problems.map(({ at }) => at)).toEqual(['/zones']);
  });
});
