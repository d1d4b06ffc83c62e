import { describe, expect, test } from '@jest/globals';
import type { Pack } from '#lib/catalogue';
import { randomStream } from '#lib/kernel';
import { breakFor, cheapestPacks } from './cheapest-packs.js';

const pack = (sku: string, quantity: number, prices: readonly (readonly [number, string])[]): Pack => ({
  sku, name: sku, supplier: 's', content: { material: 'm', quantity, unit: 'kg' },
  prices: prices.map(([fromPacks, price]) => ({ fromPacks, price })), massKg: quantity, hazardous: false, oversize: false,
});

const mostOf = ({ content, prices }: Pack, required: number): number =>
  Math.max(Math.ceil(required / content.quantity), ...prices.map(({ fromPacks }) => fromPacks));

/** Every combination up to the most that could be needed, the plain way. */
function bruteForce(required: number, packs: readonly Pack[]): { cost: number; content: number } {
  let best = { cost: Number.POSITIVE_INFINITY, content: 0 };
  const visit = (index: number, cost: number, content: number): void => {
    if (index === packs.length) {
      const isBetter = cost < best.cost - 1e-9 || (Math.abs(cost - best.cost) < 1e-9 && content < best.content);
      if (content >= required - 1e-9 && isBetter) best = { cost, content };
      return;
    }
    for (let count = 0; count <= mostOf(packs[index], required); count += 1) {
      visit(index + 1, cost + count * Number(breakFor(packs[index], count)), content + count * packs[index].content.quantity);
    }
  };
  visit(0, 0, 0);
  return best;
}

describe('the cheapest packs', () => {
  test('one large pack beats four small ones', () => {
    const chosen = cheapestPacks(4, [pack('small', 1, [[1, '20.00']]), pack('large', 5, [[1, '70.00']])]);
    expect(chosen.map(({ pack: { sku }, count }) => [sku, count])).toEqual([['large', 1]]);
  });

  test('a price break is taken when it pays to buy more', () => {
    const chosen = cheapestPacks(5, [pack('small', 1, [[1, '20.00'], [6, '15.00']])]);
    expect(chosen).toMatchObject([{ count: 6, price: '15.00' }]);
    expect(cheapestPacks(4, [pack('small', 1, [[1, '20.00'], [6, '15.00']])])).toMatchObject([{ count: 4, price: '20.00' }]);
  });

  test('of equally cheap sets the one with the least left over', () => {
    const chosen = cheapestPacks(2, [pack('three', 3, [[1, '10.00']]), pack('two', 2, [[1, '10.00']])]);
    expect(chosen.map(({ pack: { sku } }) => sku)).toEqual(['two']);
  });

  test('a pack full to the last binary digit is enough', () => {
    expect(cheapestPacks(0.1 + 0.2, [pack('tenths', 0.3, [[1, '1.00']])])).toMatchObject([{ count: 1 }]);
  });

  test('nothing is bought for nothing', () => expect(cheapestPacks(0, [pack('a', 1, [[1, '1.00']])])).toEqual([]));
  test('nothing is offered without packs', () => expect(cheapestPacks(1, [])).toEqual([]));

  test('300 random cases cost what trying every combination finds', () => {
    const next = randomStream(20260101);
    const whole = (upTo: number): number => 1 + Math.floor(next() * upTo);
    for (let trial = 0; trial < 300; trial += 1) {
      const packs = Array.from({ length: whole(3) }, (_, index) => {
        const single = whole(500);
        const isBroken = next() < 0.5;
        return pack(`p${index}`, whole(12) / 4, [[1, (single / 10).toFixed(2)], ...(isBroken ? [[whole(4) + 1, (single / 12).toFixed(2)] as const] : [])]);
      });
      const required = whole(40) / 4;
      const chosen = cheapestPacks(required, packs);
      const cost = chosen.reduce((sum, { count, price }) => sum + count * Number(price), 0);
      const content = chosen.reduce((sum, { count, pack: { content: { quantity } } }) => sum + count * quantity, 0);
      const best = bruteForce(required, packs);
      expect(content).toBeGreaterThanOrEqual(required - 1e-9);
      expect(cost).toBeCloseTo(best.cost, 6);
    }
  });
});
