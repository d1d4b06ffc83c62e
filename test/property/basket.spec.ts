import { expect, test } from '@jest/globals';
import { solveBasket, solveByHighs, type Basket, type BasketRequest } from '#lib/costing';
import { loadHighs } from '../support/load-highs.js';
import { cheapestByCounting } from './orders-by-counting.js';
import { cheapestBySums } from './orders-by-sums.js';
import { requestOf, smallOrder, type SmallOrder } from './small-orders.js';

/*
 * Orders of the room against two other ways to find the cheapest: trying every number of every pack, and a dynamic
 * programme over sums. Both have their own arithmetic in whole cents; the invented orders come from a seed.
 */
const seed = 20261125;
const highs = await loadHighs();
const solve = async (...[model, limits]: Parameters<Parameters<typeof solveBasket>[1]>) =>
  solveByHighs(highs, model, limits);

const found = async (request: BasketRequest, by = solve): Promise<Basket> => {
  const outcome = await solveBasket(request, by);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};

const cents = (amount: string): number => Math.round(Number(amount) * 100);

/** The service's order is complete exactly when one exists, and then costs no more than the cheapest. */
async function isAsCheap(order: SmallOrder, expected: number | undefined, name: string): Promise<boolean> {
  const basket = await found(requestOf(order));
  if (basket.isComplete !== (expected !== undefined))
    throw new Error(`${name}: complete ${basket.isComplete}, by the other way ${expected}`);
  if (expected === undefined) return false;
  if (cents(basket.total.amount) !== expected)
    throw new Error(`${name}: ${basket.total.amount}, by the other way ${expected}`);
  expect(basket.proof).toEqual({ kind: 'proven' });
  return true;
}

const smallSizes = { mostSuppliers: 3, mostMaterials: 3, packsOfEach: 2, centsStep: 1 };

test('2,400 small orders cost what trying every number of every pack says they must', async () => {
  let complete = 0;
  for (let i = 0; i < 2400; i += 1) {
    const order = smallOrder(seed + i, smallSizes);
    if (await isAsCheap(order, cheapestByCounting(order), `order ${i}`)) complete += 1;
  }
  expect(complete).toBeGreaterThan(1700);
  expect(complete).toBeLessThan(2350);
}, 240_000);

test('150 larger orders cost what a dynamic programme over sums says they must', async () => {
  const sizes = { mostSuppliers: 3, mostMaterials: 4, packsOfEach: 3, centsStep: 500 };
  for (let i = 0; i < 150; i += 1) {
    const drawn = smallOrder(seed + 100_000 + i, sizes);
    const packs = drawn.packs.map((pack) => ({ ...pack, stock: Number.POSITIVE_INFINITY }));
    const order = { ...drawn, packs, hazardBoxKg: 0 };
    expect(await isAsCheap(order, cheapestBySums(order), `order ${i}`)).toBe(true);
  }
}, 240_000);

test('the two other ways agree with each other on 300 orders', () => {
  let compared = 0;
  for (let i = 0; compared < 300; i += 1) {
    const drawn = smallOrder(seed + 200_000 + i, smallSizes);
    if (drawn.hazardBoxKg > 0 || drawn.packs.some(({ stock }) => Number.isFinite(stock))) continue;
    compared += 1;
    expect([i, cheapestBySums(drawn)]).toEqual([i, cheapestByCounting(drawn)]);
  }
}, 120_000);

test('without any answer of the solver the order costs no less than trying everything, and the bound stated for it no more', async () => {
  const counted = { proven: 0, bounded: 0 };
  for (let i = 0; i < 250; i += 1) {
    const order = { ...smallOrder(seed + i, smallSizes), hazardBoxKg: 3 };
    const expected = cheapestByCounting(order);
    const { proof, isComplete, total } = await found(requestOf(order), async () => ({
      status: 'time-limit',
      values: [],
    }));
    if (expected === undefined || !isComplete) continue;
    expect(cents(total.amount)).toBeGreaterThanOrEqual(expected);
    if (proof.kind === 'proven') {
      counted.proven += 1;
      expect(cents(total.amount)).toBe(expected);
    } else if (proof.bound !== undefined) {
      counted.bounded += 1;
      expect(cents(proof.bound.amount)).toBeLessThanOrEqual(expected);
    }
  }
  expect([counted.proven > 5, counted.bounded > 50]).toEqual([true, true]);
}, 120_000);
