import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { aRecord } from '../../../../test/samples/a-record.js';
import type { DefectRecord } from './defect-record.js';
import { jobOf } from './job.js';

const problemsOf = (record: DefectRecord): readonly (readonly [string, string])[] => {
  const outcome = jobOf(record, shippedCatalogue);
  return outcome.ok ? [] : outcome.problems.map(({ code, at }) => [code, at] as const);
};

describe('a record', () => {
  test('with an outline, thicknesses and a zone is enough', () => expect(problemsOf(aRecord())).toEqual([]));

  test('that says little gets defaults, each with its reason', () => {
    const outcome = jobOf(aRecord(), shippedCatalogue);
    if (!outcome.ok) throw new Error('refused');
    const { assumptions } = outcome.value;
    expect(assumptions.length).toBeGreaterThanOrEqual(12);
    expect(assumptions.every(({ because }) => because.length > 10)).toBe(true);
  });

  test.each<[string, Partial<DefectRecord>, readonly (readonly [string, string])[]]>([
    [
      'an edge that lies outside its panel',
      {
        panel: {
          ...aRecord().panel,
          supports: [{ kind: 'toe-rail', from: [0, 5000], to: [2400, 5000] }],
        },
      },
      [['contradiction', '/panel/supports/0']],
    ],
    [
      'a skin of no thickness',
      { outerSkin: { thicknessMm: 0 } },
      [['out-of-range', '/outerSkin/thicknessMm']],
    ],
    [
      'a skin of NaN',
      { outerSkin: { thicknessMm: Number.NaN } },
      [['not-a-number', '/outerSkin/thicknessMm']],
    ],
    ['an absurd core', { core: { thicknessMm: 4000 } }, [['out-of-range', '/core/thicknessMm']]],
    ['nothing to repair', { zones: [] }, [['missing', '/zones']]],
    [
      'an outline that crosses itself',
      {
        panel: {
          outline: [
            [0, 0],
            [1000, 1000],
            [1000, 0],
            [0, 1000],
          ],
        },
      },
      [['outline-crosses-itself', '/panel/outline']],
    ],
    [
      'an outline in one line',
      {
        panel: {
          outline: [
            [0, 0],
            [1000, 0],
            [2000, 0],
          ],
        },
      },
      [['outline-without-area', '/panel/outline']],
    ],
    ['an unknown core', { method: { core: 'core-of-cheese' } }, [['unknown-code', '/method/core']]],
    ['an unknown resin', { method: { resin: 'resin-of-pine' } }, [['unknown-code', '/method/resin']]],
    [
      'rates in another currency than the prices',
      { pricing: { priceList: 'invented-euro', labourRates: 'invented-dollar' } },
      [['contradiction', '/pricing/labourRates']],
    ],
    [
      'two zones of one name',
      {
        zones: [
          {
            id: 'Z',
            outline: [
              [100, 100],
              [300, 100],
              [300, 300],
            ],
          },
          {
            id: 'Z',
            outline: [
              [500, 100],
              [700, 100],
              [700, 300],
            ],
          },
        ],
      },
      [['duplicate', '/zones/1/id']],
    ],
    [
      'a fitting on another deck',
      { fittings: [{ id: 'c', kind: 'cleat', at: [9000, 500] }] },
      [['contradiction', '/fittings/0/at']],
    ],
    ['a crew of nobody', { crew: { people: 0 } }, [['out-of-range', '/crew/people']]],
    [
      'a deck above the highest lake',
      { conditions: { altitudeM: 9000 } },
      [['out-of-range', '/conditions/altitudeM']],
    ],
  ])('with %s is refused at the field', (_, changes, expected) =>
    expect(problemsOf(aRecord(changes))).toEqual(expected),
  );

  test('with many faults hears of all of them at once', () => {
    const found = problemsOf(
      aRecord({
        outerSkin: { thicknessMm: -1 },
        innerSkin: { thicknessMm: 99 },
        crew: { people: 0, hoursPerDay: 25 },
        method: { core: 'none', resin: 'none' },
      }),
    );
    expect(found.map(([, at]) => at).sort()).toEqual([
      '/crew/hoursPerDay',
      '/crew/people',
      '/innerSkin/thicknessMm',
      '/method/core',
      '/method/resin',
      '/outerSkin/thicknessMm',
    ]);
  });
});
