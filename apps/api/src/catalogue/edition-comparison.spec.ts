import { expect, test } from '@jest/globals';
import { changesBetween } from './edition-comparison.js';

const pack = (sku: string, price: string) => ({ sku, prices: [{ from: 1, price }] });
const content = (packs: readonly object[], more: readonly object[] = []) => ({
  material: more,
  price_list: [{ code: 'list', currency: 'EUR', packs }],
  labour_rates: [],
  source: [{ key: 'S', title: 'Invented' }],
});

test('the price of a pack is named by its SKU, wherever it stands in the list', () => {
  const before = content([pack('A', '1.00'), pack('B', '2.00')]);
  const after = content([pack('B', '20.00'), pack('A', '1.00')]);
  expect(changesBetween(before, after)).toEqual([
    {
      subject: 'price_list',
      code: 'list',
      change: 'changed',
      fields: [
        { at: '/packs/B/prices', before: [{ from: 1, price: '2.00' }], after: [{ from: 1, price: '20.00' }] },
      ],
      fieldCount: 1,
    },
  ]);
});

test('what is new and what is gone is said; what is equal is not', () => {
  const before = content([pack('A', '1.00'), pack('B', '2.00')], [{ code: 'old', kind: 'core' }]);
  const after = content([pack('A', '1.00')], [{ code: 'new', kind: 'core' }]);
  expect(changesBetween(before, before)).toEqual([]);
  expect(
    changesBetween(before, after).map(({ code, change, fields }) => [code, change, fields.length]),
  ).toEqual([
    ['old', 'removed', 0],
    ['new', 'added', 0],
    ['list', 'changed', 1],
  ]);
});
