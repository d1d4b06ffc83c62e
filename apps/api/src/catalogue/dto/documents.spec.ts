import 'reflect-metadata';
import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { catalogueTables, rowsOf } from '../catalogue-rows.js';
import { checkedDocument, documentFaults } from './documents.js';

describe('documents of the catalogue', () => {
  test.each(catalogueTables)('every shipped row of %s passes the checks an admin meets', (table) => {
    const faults = rowsOf(shippedCatalogue, table).flatMap(({ code, body }) =>
      documentFaults(table, structuredClone(body)).map((fault) => ({ ...fault, of: code })),
    );
    expect(faults).toEqual([]);
    expect(rowsOf(shippedCatalogue, table).length).toBeGreaterThan(0);
  });

  test('a value out of its spread, a unit too many and a missing source are named', () => {
    const [core] = shippedCatalogue.materials.filter(({ kind }) => kind === 'core');
    const wrong = {
      ...core,
      densityKgPerM3: { value: 150, low: 160, cite: { source: 'COMMON-PRACTICE' } },
      shearModulusMPa: { value: 0, cite: { source: 'x y' } },
      weight: 3,
    };
    expect(
      documentFaults('material', wrong)
        .map(({ at, code }) => `${at} ${code}`)
        .sort(),
    ).toEqual([
      '/densityKgPerM3 contradiction',
      '/shearModulusMPa/cite/source not-in-form',
      '/shearModulusMPa/value out-of-range',
      '/weight unknown-field',
    ]);
  });

  test('a material of no known kind is told the kinds', () => {
    expect(() => checkedDocument('material', { kind: 'cheese' })).toThrow('One thing must be put right');
    expect(documentFaults('material', 7)).toEqual([{ code: 'not-an-object', at: '', facts: { value: '7' } }]);
  });
});
