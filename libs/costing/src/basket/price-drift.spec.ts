import { expect, test } from '@jest/globals';
import type { PriceList } from '#lib/catalogue';
import { priceDrift, type ReckonedLine } from './price-drift.js';

const list = (
  prices: Readonly<Record<string, readonly (readonly [number, string])[]>>,
  currency = 'EUR',
): PriceList => ({
  code: 'list',
  name: 'list',
  currency,
  validFrom: '2026-01-01',
  validTo: '2026-12-31',
  invented: true,
  pricesIncludeTax: false,
  suppliers: [],
  packs: Object.entries(prices).map(([sku, breaks]) => ({
    sku,
    name: sku,
    supplier: 'a',
    content: { material: 'core', quantity: 1, unit: 'm2' },
    prices: breaks.map(([fromPacks, price]) => ({ fromPacks, price })),
    massKg: 1,
    hazardous: false,
    oversize: false,
  })),
});
const eur = (amount: string) => ({ amount, currency: 'EUR' });
const lines: readonly ReckonedLine[] = [
  { line: 'core', title: 'Core', packs: [{ sku: 'p', count: 4, price: eur('20.00') }] },
  {
    line: 'glass',
    title: 'Glass',
    packs: [
      { sku: 'q', count: 1, price: eur('5.05') },
      { sku: 'r', count: 2, price: eur('7.00') },
    ],
  },
];

test('each line at the price its number of packs reaches now, to the cent, and what is gone apart', () => {
  const drift = priceDrift(
    lines,
    list({
      p: [
        [1, '25.00'],
        [4, '19.50'],
      ],
      q: [[1, '5.10']],
    }),
  );
  expect(drift?.lines).toEqual([
    {
      line: 'core',
      title: 'Core',
      sku: 'p',
      packCount: 4,
      then: eur('80.00'),
      now: eur('78.00'),
      difference: eur('-2.00'),
    },
    {
      line: 'glass',
      title: 'Glass',
      sku: 'q',
      packCount: 1,
      then: eur('5.05'),
      now: eur('5.10'),
      difference: eur('0.05'),
    },
    { line: 'glass', title: 'Glass', sku: 'r', packCount: 2, then: eur('14.00') },
  ]);
  expect([drift?.then, drift?.now, drift?.difference, drift?.gone]).toEqual([
    eur('85.05'),
    eur('83.10'),
    eur('-1.95'),
    ['r'],
  ]);
});

test('nothing is said across currencies, and lines without packs add up to nothing', () => {
  expect(priceDrift(lines, list({ p: [[1, '25.00']] }, 'USD'))).toBeUndefined();
  expect(priceDrift([], list({}))).toMatchObject({ lines: [], difference: eur('0.00') });
});
