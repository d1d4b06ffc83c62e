import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { detailOf } from '#lib/kernel';
import { aRecord } from '../../../test/samples/a-record.js';
import type { DefectRecord } from './defect-record.js';
import type { Estimate } from './estimate.js';
import { estimate } from './run.js';

const estimated = (changes: Partial<DefectRecord> = {}): Estimate => {
  const outcome = estimate(aRecord(changes), shippedCatalogue, 'test');
  if (!outcome.ok) throw new Error(outcome.problems.map(detailOf).join(' '));
  return outcome.value.estimate;
};

const refused = (changes: Partial<DefectRecord>) => {
  const outcome = estimate(aRecord(changes), shippedCatalogue, 'test');
  return outcome.ok ? [] : outcome.problems.map((found) => ({ at: found.at, said: detailOf(found) }));
};

describe('what a later stage cannot do is refused at a field of the record', () => {
  const everywhereSharp = Array.from({ length: 60 }, (_, index) => ({ kind: 'sounding' as const, at: [100 + 200 * (index % 10), 100 + 160 * Math.floor(index / 10)] as const, sound: 'sharp' as const }));

  test.each<[string, Partial<DefectRecord>, string, RegExp]>([
    ['a deck too cold for the resin', { conditions: { temperatureC: 2 } }, '/conditions/temperatureC', /needs at least 10 degC/],
    ['a skin thicker than the rest of the deck', { outerSkin: { thicknessMm: 38.1 } }, '/outerSkin/thicknessMm', /thinner than that/],
    ['a worked skin from below thicker than the rest', { innerSkin: { thicknessMm: 30 }, method: { access: 'from-below' } }, '/innerSkin/thicknessMm', /thinner than that/],
    ['readings that find nothing', { zones: [], survey: { readings: everywhereSharp } }, '/survey/readings', /no place where bad core/],
    ['core too stiff for the camber', { panel: { ...aRecord().panel, camberRadiusMm: 500 }, core: { thicknessMm: 25, coreType: 'marine-plywood' } }, '/panel/camberRadiusMm', /kPa to be bent/],
    ['more pieces than one layout takes', {
      panel: { outline: [[0, 0], [12000, 0], [12000, 4000], [0, 4000]] }, zones: [{ id: 'Z1', outline: [[300, 300], [11500, 300], [11500, 3600], [300, 3600]] }],
    }, '/zones', /divide the deck/],
  ])('%s', (_, changes, at, words) => {
    expect(refused(changes)).toEqual([{ at, said: expect.stringMatching(words) }]);
  });
});

describe('the yard', () => {
  test('charges for every day that the craft stands there, cure and drying counted', () => {
    const { lines, process: { calendar } } = estimated({ conditions: { shelter: 'open' } });
    const layDays = lines.find(({ code }) => code === 'yard-lay-day-open')?.netQuantity ?? 0;
    expect(layDays).toBe(Math.ceil(calendar.calendarDays.p50));
    expect(layDays).toBeGreaterThanOrEqual(calendar.workingDays.p50);
  });
});

describe('what is printed', () => {
  test('tells one check from another of the same state', () => {
    const named = estimated().checks.map(({ title, state }) => `${title} (${state ?? ''})`);
    expect(named.filter((one, index) => named.indexOf(one) !== index)).toEqual([]);
  });

  test('carries no tail of digits from a conversion of units', () => {
    const { process } = estimated({ conditions: { temperatureC: (65 - 32) / 1.8 } });
    expect([process.resin.why, process.bondPressure.props.why, process.bondPressure.recommendation].join(' ')).not.toMatch(/\d\.\d{3}/);
  });

  test('names the way of pressing that each refusal refuses', () => {
    const { process: { bondPressure } } = estimated();
    expect(bondPressure.refusals.length).toBeGreaterThan(0);
    for (const refusal of bondPressure.refusals) expect(refusal).toMatch(/^(weights|battens|vacuum): /);
    expect(bondPressure.refusals.join(' ')).not.toContain('no sound deck');
  });
});
