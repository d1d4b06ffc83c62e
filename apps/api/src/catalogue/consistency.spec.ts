import { expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { inconsistencies } from './consistency.js';

test('the shipped catalogue holds together', () => {
  expect(inconsistencies(shippedCatalogue)).toEqual([]);
});

test('a cite without its source, a pack of nothing and a list that ends before it begins are found', () => {
  const [list] = shippedCatalogue.priceLists;
  const [pack] = list.packs;
  const broken = {
    ...shippedCatalogue,
    sources: shippedCatalogue.sources.filter(({ key }) => key !== 'COMMON-PRACTICE'),
    priceLists: [
      {
        ...list,
        validTo: '2000-01-01',
        packs: [
          pack,
          pack,
          {
            ...pack,
            sku: 'other',
            content: { ...pack.content, material: 'cheese' },
            prices: [{ fromPacks: 2, price: '1.005' }],
          },
        ],
      },
    ],
  };
  const found = new Set(
    inconsistencies(broken).map(({ at, code }) => `${at.replace(/^\/materials.*/, '/materials')} ${code}`),
  );
  expect([...found].sort()).toEqual([
    '/materials unknown-code',
    '/priceLists/0/packs/1/sku duplicate',
    '/priceLists/0/packs/2/content/material unknown-code',
    '/priceLists/0/packs/2/prices breaks-out-of-order',
    '/priceLists/0/packs/2/prices/0/price not-a-decimal',
    '/priceLists/0/validTo contradiction',
  ]);
});
