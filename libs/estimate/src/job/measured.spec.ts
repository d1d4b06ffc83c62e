import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { detailOf } from '#lib/kernel';
import { aRecord } from '../../../../test/samples/a-record.js';
import { estimate } from '../estimate.js';
import type { DefectRecord } from './defect-record.js';
import { measuredRecord } from './measured.js';

const withPlugs = (
  ...plugs: readonly { readonly outerSkinMm?: number; readonly coreMm?: number }[]
): DefectRecord =>
  aRecord({
    survey: {
      readings: plugs.map((plug, index) => ({
        kind: 'plug' as const,
        at: [750 + 100 * index, 450] as const,
        condition: 'rotten' as const,
        ...plug,
      })),
    },
    pricing: { samples: 1000 },
  });

describe('a thickness that a plug measured', () => {
  test('is the middle of several, and leaves a record without plugs alone', () => {
    const { record, overruled } = measuredRecord(
      withPlugs({ outerSkinMm: 5 }, { outerSkinMm: 4 }, { outerSkinMm: 5.5 }),
    );
    expect(record.outerSkin.thicknessMm).toBe(5);
    expect(overruled.map(({ at, statedMm }) => [at, statedMm])).toEqual([['/outerSkin/thicknessMm', 3]]);
    expect(measuredRecord(aRecord())).toEqual({ record: aRecord(), overruled: [] });
  });

  test('of 5 mm of skin drives saw, laminate, stack and panel of a record that states 3 mm', () => {
    const made = estimate(withPlugs({ outerSkinMm: 5 }), shippedCatalogue, 'test');
    if (!made.ok) throw new Error(made.problems.map(detailOf).join(' '));
    const { scope, laminate, assumptions } = made.value.estimate;
    expect(scope.openings[0].cutDepthMm).toBeGreaterThan(5);
    expect(laminate?.oldThicknessMm).toBe(5);
    expect(laminate?.totalThicknessMm).toBeGreaterThanOrEqual(5);
    expect(laminate?.taperWidthMm).toBe(60);
    expect(scope.findings.map(({ code }) => code)).toContain('measured-overrules');
    expect(
      assumptions.find(({ at, of }) => of === 'record' && at === '/outerSkin/thicknessMm')?.because,
    ).toBe('measured at a plug; the 3 mm of the record are overruled');
  });

  test('that contradicts another plug is a finding', () => {
    const made = estimate(withPlugs({ coreMm: 12.7 }, { coreMm: 19 }), shippedCatalogue, 'test');
    if (!made.ok) throw new Error(made.problems.map(detailOf).join(' '));
    expect(made.value.estimate.scope.findings.map(({ code }) => code)).toContain('plugs-disagree');
  });
});
