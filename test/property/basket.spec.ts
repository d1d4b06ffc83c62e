import { expect, test } from '@jest/globals';
import { solveBasket, solveByHighs, type Basket, type BasketRequest } from '#lib/costing';
import { randomStream } from '#lib/kernel';
import { loadHighs } from '../support/load-highs.js';

/**
 * An order priced by counting everything: its own arithmetic in whole cents, no code shared with the room.
 * Packs are tried in every number from none to what covers everything the pack is good for, or a cheaper break.
 */
const seed = 20261125;
const highs = await loadHighs();
const solve = async (...[model, limits]: Parameters<Parameters<typeof solveBasket>[1]>) =>
  solveByHighs(highs, model, limits);

interface SmallPack {
  readonly material: number;
  readonly supplier: number;
  /** Quarters of a unit. */
  readonly quarters: number;
  readonly cents: number;
  readonly breakAt: number;
  readonly breakCents: number;
  readonly hazardous: boolean;
  readonly oversize: boolean;
  readonly cutFee: number;
  readonly stock: number;
}

interface SmallOrder {
  readonly requiredQuarters: readonly number[];
  readonly packs: readonly SmallPack[];
  readonly suppliers: readonly {
    readonly delivery: number;
    readonly hazard: number;
    readonly oversize: number;
    readonly minimum: number;
    readonly freeFrom: number;
  }[];
  /** Hardener quarters to one quarter of resin (material 0 cured by material 1), or 0. */
  readonly ratio: number;
}

function smallOrder(orderSeed: number): SmallOrder {
  const random = randomStream(orderSeed);
  const upTo = (most: number): number => Math.floor(random() * (most + 1));
  const materials = 1 + upTo(2);
  const ratio = materials >= 2 && random() < 0.4 ? 0.5 : 0;
  const requiredQuarters = Array.from({ length: materials }, () => 1 + upTo(10));
  const packs = requiredQuarters.flatMap((_, material) =>
    Array.from({ length: 1 + upTo(1) }, (): SmallPack => {
      const quarters = [1, 2, 3, 4, 6, 10][upTo(5)];
      const cents = 100 + upTo(900) * quarters;
      const hasBreak = random() < 0.5;
      return {
        material,
        supplier: upTo(1),
        quarters,
        cents,
        breakAt: hasBreak ? 2 + upTo(2) : 0,
        breakCents: Math.round(cents * (0.4 + 0.55 * random())),
        hazardous: random() < 0.3,
        oversize: random() < 0.2,
        cutFee: random() < 0.2 ? 50 + upTo(300) : 0,
        stock: random() < 0.15 ? upTo(3) : 99,
      };
    }),
  );
  const suppliers = [0, 1].map(() => ({
    delivery: upTo(1500),
    hazard: upTo(1500),
    oversize: upTo(3000),
    minimum: random() < 0.5 ? upTo(4000) : 0,
    freeFrom: random() < 0.5 ? 1 + upTo(8000) : 0,
  }));
  return { requiredQuarters, packs, suppliers, ratio };
}

const text = (cents: number): string => `${Math.floor(cents / 100)}.${String(cents % 100).padStart(2, '0')}`;

function requestOf({ requiredQuarters, packs, suppliers, ratio }: SmallOrder): BasketRequest {
  const variant = (material: number) =>
    ratio > 0 && material === 1 ? { material: 'm0', part: 'hardener' } : { material: `m${material}` };
  return {
    currency: 'EUR',
    options: { secondBest: false },
    ...(ratio > 0 ? { matches: [{ resin: 'm0', hardener: 'hardener', massRatio: ratio }] } : {}),
    needs: requiredQuarters.map((quarters, material) => ({
      id: `need${material}`,
      ...variant(material),
      requiredQuantity: quarters / 4,
      unit: 'kg',
    })),
    priceList: {
      code: 'small',
      name: 'small',
      currency: 'EUR',
      validFrom: '2026-01-01',
      validTo: '2026-12-31',
      invented: true,
      pricesIncludeTax: false,
      suppliers: suppliers.map((s, index) => ({
        code: `s${index}`,
        name: `s${index}`,
        delivery: text(s.delivery),
        hazardSurcharge: text(s.hazard),
        oversizeFreight: text(s.oversize),
        minimumOrder: text(s.minimum),
        ...(s.freeFrom === 0 ? {} : { freeDeliveryFrom: text(s.freeFrom) }),
      })),
      packs: packs.map((pack, index) => ({
        sku: `p${index}`,
        name: `p${index}`,
        supplier: `s${pack.supplier}`,
        content: { ...variant(pack.material), quantity: pack.quarters / 4, unit: 'kg' },
        prices: [
          { fromPacks: 1, price: text(pack.cents) },
          ...(pack.breakAt > 0 ? [{ fromPacks: pack.breakAt, price: text(pack.breakCents) }] : []),
        ],
        massKg: 1,
        hazardous: pack.hazardous,
        oversize: pack.oversize,
        ...(pack.cutFee > 0 ? { cutFee: text(pack.cutFee) } : {}),
        ...(pack.stock < 99 ? { stock: pack.stock } : {}),
      })),
    },
  };
}

const priceAt = ({ cents, breakAt, breakCents }: SmallPack, count: number): number =>
  breakAt > 0 && count >= breakAt ? breakCents : cents;

/** How many of a pack can be of use. */
function mostOf(order: SmallOrder, pack: SmallPack): number {
  const { requiredQuarters, packs, ratio } = order;
  let cover = Math.ceil(requiredQuarters[pack.material] / pack.quarters);
  if (ratio > 0 && pack.material === 1 && packs.some((one) => one.material === 0 && one.stock > 0)) {
    cover = Math.max(cover, Math.ceil((2 * requiredQuarters[0] * ratio) / pack.quarters) + 1);
  }
  const reaches = pack.breakAt > cover && pack.breakAt * pack.breakCents < cover * priceAt(pack, cover);
  return Math.min(pack.stock, reaches ? pack.breakAt : cover);
}

/** Cheapest way by trying all; undefined when there is none. */
function cheapest(order: SmallOrder): number | undefined {
  const most = order.packs.map((pack) => mostOf(order, pack));
  const counts = order.packs.map(() => 0);
  let best: number | undefined;
  for (;;) {
    const cost = costOf(order, counts);
    if (cost !== undefined && (best === undefined || cost < best)) best = cost;
    let place = 0;
    while (place < counts.length && counts[place] === most[place]) counts[place++] = 0;
    if (place === counts.length) return best;
    counts[place] += 1;
  }
}

function costOf(
  { requiredQuarters, packs, suppliers, ratio }: SmallOrder,
  counts: readonly number[],
): number | undefined {
  const bought = requiredQuarters.map((_, material) =>
    packs.reduce((sum, pack, i) => (pack.material === material ? sum + counts[i] * pack.quarters : sum), 0),
  );
  if (bought.some((quarters, material) => quarters < requiredQuarters[material])) return undefined;
  if (ratio > 0 && bought[1] < ratio * bought[0]) return undefined;
  let total = 0;
  for (const [s, terms] of suppliers.entries()) {
    const own = packs
      .map((pack, i) => ({ pack, count: counts[i] }))
      .filter(({ pack, count }) => pack.supplier === s && count > 0);
    if (own.length === 0) continue;
    const goods = own.reduce((sum, { pack, count }) => sum + count * priceAt(pack, count), 0);
    if (goods < terms.minimum) return undefined;
    total += goods + (terms.freeFrom > 0 && goods >= terms.freeFrom ? 0 : terms.delivery);
    if (own.some(({ pack }) => pack.hazardous)) total += terms.hazard;
    if (own.some(({ pack }) => pack.oversize)) total += terms.oversize;
    total += own.reduce((sum, { pack }) => sum + (pack.oversize ? 0 : pack.cutFee), 0);
  }
  return total;
}

const found = async (request: BasketRequest): Promise<Basket> => {
  const outcome = await solveBasket(request, solve);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};

const cents = (amount: string): number => Math.round(Number(amount) * 100);

test('500 small orders cost what trying every combination of packs says they must', async () => {
  let complete = 0;
  for (let i = 0; i < 500; i += 1) {
    const order = smallOrder(seed + i);
    const expected = cheapest(order);
    const basket = await found(requestOf(order));
    if (basket.isComplete !== (expected !== undefined))
      throw new Error(`order ${i}: complete ${basket.isComplete}, by trying all ${expected}`);
    if (expected === undefined) continue;
    complete += 1;
    if (cents(basket.total.amount) !== expected)
      throw new Error(`order ${i}: ${basket.total.amount}, by trying all ${expected}`);
    expect(basket.proof).toEqual({ kind: 'proven' });
  }
  expect(complete).toBeGreaterThan(300);
  expect(complete).toBeLessThan(500);
}, 120_000);

test('without any answer of the solver the order costs no less than trying everything, and the bound stated for it no more', async () => {
  let proven = 0;
  let bounded = 0;
  for (let i = 0; i < 500; i += 1) {
    const order = smallOrder(seed + i);
    const expected = cheapest(order);
    const outcome = await solveBasket(requestOf(order), async () => ({ status: 'time-limit', values: [] }));
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
    const { proof, isComplete, total } = outcome.value;
    if (expected === undefined || !isComplete) continue;
    expect(cents(total.amount)).toBeGreaterThanOrEqual(expected);
    if (proof.kind === 'proven') {
      proven += 1;
      expect(cents(total.amount)).toBe(expected);
    } else if (proof.bound !== undefined) {
      bounded += 1;
      expect(cents(proof.bound.amount)).toBeLessThanOrEqual(expected);
    }
  }
  expect([proven > 10, bounded > 100]).toEqual([true, true]);
}, 120_000);
