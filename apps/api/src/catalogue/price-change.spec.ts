import { expect, test } from '@jest/globals';
import type { Pack, PriceList } from '#lib/catalogue';
import { changedPacks, pricesChanged, type PriceChangeAsked } from './price-change.js';

const pack = (sku: string, prices: readonly string[], supplier = 'north'): Pack => ({
  sku,
  name: `Invented pack ${sku}`,
  supplier,
  content: { material: `material-${sku}`, quantity: 1, unit: 'each' },
  prices: prices.map((price, index) => ({ fromPacks: 1 + 9 * index, price })),
  massKg: 1,
  hazardous: false,
  oversize: false,
});

const list = (currency: string, ...packs: readonly Pack[]): PriceList => ({
  code: 'invented',
  name: 'Invented',
  currency,
  validFrom: '2027-01-01',
  validTo: '2027-12-31',
  invented: true,
  pricesIncludeTax: false,
  suppliers: [],
  packs,
});

const after = (from: PriceList, asked: PriceChangeAsked): readonly (readonly string[])[] => {
  const outcome = pricesChanged(from, asked);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value.map(({ prices }) => prices.map(({ price }) => price));
};

// By hand: 10.10 x 1.045 = 10.5545, to the cent 10.55, to the next 0.05 10.55, to whole units 11;
// 0.50 x 1.05 = 0.525, an exact tie, away from zero 0.53; 19.99 x 0.9 = 17.991.
test.each([
  ['EUR', '10.10', { percent: '4.5' }, '10.55'],
  ['EUR', '10.10', { percent: '4.5', roundTo: '0.05' }, '10.55'],
  ['EUR', '10.10', { percent: '4.5', roundTo: '1' }, '11'],
  ['EUR', '0.50', { percent: '5' }, '0.53'],
  ['EUR', '19.99', { percent: '-10' }, '17.99'],
  ['JPY', '1250', { percent: '3.3' }, '1291'],
  ['EUR', '10.10', { percent: '0' }, '10.10'],
] as const)('%s %s by %j is %s', (currency, price, asked, expected) => {
  expect(after(list(currency, pack('A', [price])), asked)).toEqual([[expected]]);
});

test('prices that fall from break to break go on falling', () => {
  const [prices] = after(list('EUR', pack('A', ['1.00', '0.99', '0.98', '0.97'])), {
    percent: '-3',
    roundTo: '0.05',
  });
  expect(prices).toEqual([...prices].sort((a, b) => Number(b) - Number(a)));
});

test('only what was chosen changes, and what differs is told', () => {
  const before = list('EUR', pack('A', ['1.00']), pack('B', ['2.00'], 'south'), pack('C', ['3.00']));
  const outcome = pricesChanged(before, { percent: '10', suppliers: ['north'], skus: ['A', 'B'] });
  expect(outcome.ok && changedPacks(before.packs, outcome.value)).toEqual([
    { sku: 'A', name: 'Invented pack A', before: ['1.00'], after: ['1.10'] },
  ]);
});

test.each([
  [{ percent: '10', skus: ['A', 'AA'] }, '/skus/1', 'unknown-code'],
  [{ percent: '10', suppliers: ['nort'] }, '/suppliers/0', 'unknown-code'],
  [{ percent: '10', materials: ['nothing'] }, '/materials/0', 'unknown-code'],
  [{ percent: '10', roundTo: '0.001' }, '/roundTo', 'out-of-range'],
  [{ percent: '10', roundTo: '0' }, '/roundTo', 'out-of-range'],
  [{ percent: '-90', roundTo: '1' }, '/percent', 'not-supported'],
])('%j is refused at %s', (asked, at, code) => {
  const outcome = pricesChanged(list('EUR', pack('A', ['1.00'])), asked);
  expect(outcome.ok ? [] : outcome.problems.map((found) => [found.at, found.code])).toEqual([[at, code]]);
});
