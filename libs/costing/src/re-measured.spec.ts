import { describe, expect, test } from '@jest/globals';
import { reMeasured, type AgreedRate } from './re-measured.js';

const euro = (amount: string) => ({ amount, currency: 'EUR' });
const agreed: readonly AgreedRate[] = [
  { code: 'opened-m2', what: 'Deck opened', unit: 'm2', quantity: 0.5, rate: euro('1200.00') },
  { code: 'cut-m', what: 'Cut', unit: 'm', quantity: 3, rate: euro('95.50') },
  { code: 'hole', what: 'Hole potted', unit: 'each', quantity: 8, rate: euro('21.00') },
  { code: 'visit', what: 'Visit more', unit: 'day', quantity: 9, rate: euro('30.00') },
];

describe('what was found, by the rates that were agreed', () => {
  const found = [
    { code: 'opened-m2', quantity: 0.724 },
    { code: 'cut-m', quantity: 3.6 },
    { code: 'hole', quantity: 4 },
    { code: 'visit', quantity: 9 },
  ];
  const order = reMeasured({
    agreed,
    found,
    provisional: euro('150.00'),
    authorisedH: 40,
    expectedH: 43.5,
  });

  // By hand: 0.22 m2 x 1200 = 264.00; 0.60 m x 95.50 = 57.30; four holes fewer x 21 = -84.00; together 237.30.
  test('is charged for what is more and credited for what is less, and names only what changed', () => {
    expect(order.items.map(({ code, amount }) => [code, amount.amount])).toEqual([
      ['opened-m2', '264.00'],
      ['cut-m', '57.30'],
      ['hole', '-84.00'],
    ]);
    expect(order.items[0].quantityFound).toBe('0.72');
    expect(order.measured).toEqual(euro('237.30'));
  });

  // By hand: 237.30 less the 150.00 that the price held for it.
  test('takes off what the price held for what would be found', () => {
    expect(order.provisionalCredited).toEqual(euro('-150.00'));
    expect(order.difference).toEqual(euro('87.30'));
  });

  test('says whether the hours that are expected now stay within those authorised', () => {
    expect(order.isWithinAuthorisation).toBe(false);
    expect(
      reMeasured({ agreed, found, provisional: euro('150.00'), authorisedH: 44, expectedH: 43.5 })
        .isWithinAuthorisation,
    ).toBe(true);
  });

  // By hand: half a square metre, three metres, eight holes and nine visits less: -600 - 286.50 - 168 - 270.
  test('credits all of a thing that was not found at all', () =>
    expect(
      reMeasured({ agreed, found: [], provisional: euro('0.00'), authorisedH: 40, expectedH: 1 }).difference,
    ).toEqual(euro('-1324.50')));
});
