import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { aRecord } from '../../../../test/samples/a-record.js';
import { estimate } from '../estimate.js';
import type { DefectRecord } from './defect-record.js';

const problemsOf = (changes: Partial<DefectRecord>): readonly string[] => {
  const outcome = estimate(aRecord(changes), shippedCatalogue, 'test');
  return outcome.ok ? [] : outcome.problems.map(({ code, at }) => `${code} ${at}`);
};

/** The ends of the ranges in which the contract and the engine used to differ. */
describe('what the contract takes the engine takes', () => {
  test.each<[string, Partial<DefectRecord>]>([
    ['a skin of 0.1 mm', { outerSkin: { thicknessMm: 0.1 } }],
    ['a density of 1200', { core: { thicknessMm: 12.7, densityKgPerM3: 1200 } }],
    ['a hull of 120 m', { craft: { lengthHullM: 120, lengthWaterlineM: 120 } }],
    ['a boat of 1900', { craft: { yearBuilt: 1900 } }],
    ['a light boat', { craft: { massLoadedKg: 0.5 } }],
    ['a ship', { craft: { massLoadedKg: 10_000_000 } }],
    ['a deck of 2000 m2', { method: { finish: 'whole-deck', wholeDeckAreaM2: 2000 } }],
    ['no flange', { method: { flangeMm: 0 } }],
    ['dry air', { conditions: { relativeHumidityPercent: 0.5 } }],
    ['a base of 3 m', { fittings: [{ id: 'c', kind: 'cleat', at: [400, 300], baseMm: 3000 }] }],
    ['a place below the sea', { conditions: { altitudeM: -450 } }],
  ])('%s', (_, changes) => expect(problemsOf(changes)).toEqual([]));
});

/** Refused for what it means beside the rest of the deck, never for its range. */
describe('what the contract takes and the deck contradicts', () => {
  test.each<[string, Partial<DefectRecord>, readonly string[]]>([
    [
      'a skin of 60 mm on a core of 12.7 mm',
      { outerSkin: { thicknessMm: 60 } },
      ['contradiction /outerSkin/thicknessMm'],
    ],
    [
      'skins of 60 mm, which no stack of the catalogue restores',
      { outerSkin: { thicknessMm: 60 }, innerSkin: { thicknessMm: 60 } },
      ['not-supported /method/skin'],
    ],
  ])('%s', (_, changes, refused) => expect(problemsOf(changes)).toEqual(refused));

  test.each<[string, Partial<DefectRecord>]>([
    ['a core of 200 mm', { core: { thicknessMm: 200 } }],
    ['a core of 200 mm in a cavity of 210', { core: { thicknessMm: 200, cavityMm: 210 } }],
    ['a core of 1 mm', { core: { thicknessMm: 1 } }],
  ])('%s, which no sheets of the catalogue fill', (_, changes) =>
    expect(new Set(problemsOf(changes))).toEqual(new Set(['no-method-fits '])),
  );
});
