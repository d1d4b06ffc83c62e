import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue, type Pack, type PriceList, type Supplier } from '#lib/catalogue';
import type { Basket } from './basket.js';
import { faultsOfPriceList } from './basket-faults.js';
import type { BasketRequest } from './basket-request.js';
import type { BasketNeed, BasketOptions } from './questions.js';
import { solveByHighs } from './highs-solver.js';
import type { LinearModel, SolverLimits } from './linear-model.js';
import { solveBasket } from './solve-basket.js';
import { loadHighs } from '../../../../test/support/load-highs.js';

const highs = await loadHighs();
const solve = async (model: LinearModel, limits: SolverLimits) => solveByHighs(highs, model, limits);

const aSupplier = (changes: Partial<Supplier> = {}): Supplier => ({
  code: 'a',
  name: 'Invented chandlery A',
  delivery: '5.00',
  hazardSurcharge: '10.00',
  oversizeFreight: '40.00',
  minimumOrder: '0.00',
  ...changes,
});

const aPack = (changes: Partial<Pack> = {}): Pack => ({
  sku: 'p1',
  name: 'Pack',
  supplier: 'a',
  content: { material: 'core', quantity: 1, unit: 'm2' },
  prices: [{ fromPacks: 1, price: '20.00' }],
  massKg: 1,
  hazardous: false,
  oversize: false,
  ...changes,
});

const aList = (packs: readonly Pack[], suppliers: readonly Supplier[] = [aSupplier()]): PriceList => ({
  code: 'list',
  name: 'list',
  currency: 'EUR',
  validFrom: '2026-01-01',
  validTo: '2026-12-31',
  invented: true,
  pricesIncludeTax: false,
  suppliers,
  packs,
});

const aNeed = (changes: Partial<BasketNeed> = {}): BasketNeed => ({
  id: 'core',
  material: 'core',
  requiredQuantity: 2.5,
  unit: 'm2',
  ...changes,
});

async function basket(
  packs: readonly Pack[],
  changes: Partial<Omit<BasketRequest, 'priceList'>> & { suppliers?: readonly Supplier[] } = {},
): Promise<Basket> {
  const { suppliers, ...rest } = changes;
  const outcome = await solveBasket(
    {
      currency: 'EUR',
      needs: [aNeed()],
      priceList: aList(packs, suppliers),
      options: { secondBest: false },
      ...rest,
    },
    solve,
  );
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const bought = ({ lines }: Basket): Readonly<Record<string, number>> =>
  Object.fromEntries(lines.map(({ sku, packCount }) => [sku, packCount]));
const only = (options: BasketOptions): { options: BasketOptions } => ({
  options: { secondBest: false, ...options },
});

describe('an order', () => {
  test('of 2.5 m2 from packs of one is three packs with half a square metre over', async () => {
    const found = await basket([aPack()]);
    expect(bought(found)).toEqual({ p1: 3 });
    expect(found.total.amount).toBe('65.00');
    expect(found.leftovers).toEqual([
      { material: 'core', quantity: 0.5, unit: 'm2', worth: { amount: '10.00', currency: 'EUR' } },
    ]);
  });

  test('takes four for the price of a break rather than three without', async () => {
    const found = await basket([
      aPack({
        prices: [
          { fromPacks: 1, price: '20.00' },
          { fromPacks: 4, price: '14.00' },
        ],
      }),
    ]);
    expect(bought(found)).toEqual({ p1: 4 });
    expect(found.lines[0].unitPrice.amount).toBe('14.00');
  });

  test('leaves less over when orders cost the same, whichever is listed first', async () => {
    const sizes = [4, 2.5, 3, 5].map((quantity) =>
      aPack({
        sku: `s${quantity}`,
        content: { material: 'core', quantity, unit: 'm2' },
        prices: [{ fromPacks: 1, price: '60.00' }],
      }),
    );
    for (const packs of [
      sizes,
      [...sizes].reverse(),
      [sizes[1], sizes[0], sizes[3], sizes[2]],
      [sizes[2], sizes[3], sizes[1], sizes[0]],
    ]) {
      expect(bought(await basket(packs))).toEqual({ 's2.5': 1 });
    }
  });

  test('counts what is left from another job first', async () => {
    const found = await basket([aPack()], { onHand: [{ material: 'core', quantity: 1.6, unit: 'm2' }] });
    expect(bought(found)).toEqual({ p1: 1 });
    expect(found.coverage[0].fromOnHand).toBe(1.6);
  });

  test('of a sheet of one thickness takes that thickness', async () => {
    const sheet = (sku: string, thicknessMm: number, price: string): Pack =>
      aPack({
        sku,
        content: { material: 'core', thicknessMm, quantity: 3, unit: 'm2' },
        prices: [{ fromPacks: 1, price }],
      });
    const found = await basket([sheet('thin', 9.5, '10.00'), sheet('thick', 12.7, '90.00')], {
      needs: [aNeed({ thicknessMm: 12.7 })],
    });
    expect(bought(found)).toEqual({ thick: 1 });
  });

  test('counts whole sheets and metres off a roll in the unit of the need', async () => {
    const found = await basket(
      [
        aPack({
          sku: 'sheet',
          content: {
            material: 'core',
            sheet: { lengthMm: 1220, widthMm: 610 },
            quantity: 0.7442,
            unit: 'm2',
          },
        }),
        aPack({
          sku: 'metre',
          content: { material: 'cloth', rollWidthMm: 1250, quantity: 1.25, unit: 'm2' },
        }),
      ],
      {
        needs: [
          aNeed({ requiredQuantity: 4, unit: 'sheet' }),
          aNeed({ id: 'cloth', material: 'cloth', requiredQuantity: 2.2, unit: 'm' }),
        ],
      },
    );
    expect(bought(found)).toEqual({ sheet: 4, metre: 3 });
  });

  test('for two estimates is one order, and each pays its share to the cent', async () => {
    const found = await basket([aPack()], {
      needs: [
        aNeed({ id: 'a', estimate: 'first', requiredQuantity: 1 }),
        aNeed({ id: 'a', estimate: 'second', requiredQuantity: 2 }),
      ],
    });
    expect(bought(found)).toEqual({ p1: 3 });
    expect(found.byEstimate).toEqual([
      { estimate: 'first', amount: { amount: '21.67', currency: 'EUR' } },
      { estimate: 'second', amount: { amount: '43.33', currency: 'EUR' } },
    ]);
  });
});

describe('suppliers', () => {
  const b = aSupplier({
    code: 'b',
    name: 'Invented chandlery B',
    delivery: '2.00',
    minimumOrder: '50.00',
    freeDeliveryFrom: '58.00',
  });

  test('a second delivery is paid only where it saves more than it costs', async () => {
    const needs = [aNeed(), aNeed({ id: 'tape', material: 'tape', requiredQuantity: 1, unit: 'roll' })];
    const tape = (sku: string, supplier: string, price: string): Pack =>
      aPack({
        sku,
        supplier,
        content: { material: 'tape', quantity: 1, unit: 'roll' },
        prices: [{ fromPacks: 1, price }],
      });
    const near = await basket([aPack(), tape('ta', 'a', '9.00'), tape('tc', 'c', '6.00')], {
      needs,
      suppliers: [aSupplier(), aSupplier({ code: 'c', delivery: '4.00' })],
    });
    expect(bought(near)).toEqual({ p1: 3, ta: 1 });
    const far = await basket([aPack(), tape('ta', 'a', '9.00'), tape('tc', 'c', '4.00')], {
      needs,
      suppliers: [aSupplier(), aSupplier({ code: 'c', delivery: '4.00' })],
    });
    expect(bought(far)).toEqual({ p1: 3, tc: 1 });
  });

  const cheapAtB = aPack({ sku: 'pb', supplier: 'b', prices: [{ fromPacks: 1, price: '16.00' }] });

  test('one pack more reaches a minimum order and free delivery, and is bought where that costs less', async () => {
    // Three packs at A are 65.00; four at B are 64.00 with delivery free, although three would do.
    const found = await basket([aPack(), cheapAtB], { suppliers: [aSupplier(), b] });
    expect(bought(found)).toEqual({ pb: 4 });
    expect(found.orders[0]).toMatchObject({
      isDeliveryFree: true,
      delivery: { amount: '0.00' },
      goods: { amount: '64.00' },
      toppedUpFor: 'minimum-order',
    });
    expect(found.leftovers).toMatchObject([{ quantity: 1.5 }]);
  });

  test('a minimum order that the stock cannot reach closes the supplier', async () => {
    const found = await basket([aPack(), { ...cheapAtB, stock: 3 }], { suppliers: [aSupplier(), b] });
    expect(bought(found)).toEqual({ p1: 3 });
    expect(found.orders[0].toppedUpFor).toBeUndefined();
  });

  test('delivery that becomes free for less than it costs is named as the reason for the packs beyond', async () => {
    const found = await basket([aPack()], {
      suppliers: [aSupplier({ delivery: '25.00', freeDeliveryFrom: '80.00' })],
    });
    expect(bought(found)).toEqual({ p1: 4 });
    expect(found.orders[0]).toMatchObject({ toppedUpFor: 'free-delivery', total: { amount: '80.00' } });
  });

  test('a lonely supplier is filled up to his minimum, because nothing else is possible', async () => {
    const small = aPack({ supplier: 'b', prices: [{ fromPacks: 1, price: '5.00' }] });
    const found = await basket([small], { suppliers: [b] });
    expect([found.isComplete, found.proof]).toEqual([true, { kind: 'proven' }]);
    expect(bought(found)).toEqual({ p1: 10 });
    expect(found.orders[0]).toMatchObject({ toppedUpFor: 'minimum-order', total: { amount: '52.00' } });
  });

  test('where the stock does not reach the only minimum, that is the reason given', async () => {
    const small = aPack({ supplier: 'b', stock: 9, prices: [{ fromPacks: 1, price: '5.00' }] });
    const found = await basket([small], { suppliers: [b] });
    expect(found.isComplete).toBe(false);
    expect(found.missing).toEqual([
      { material: 'core', quantity: 2.5, unit: 'm2', needs: ['core'], reason: 'below-minimum-order' },
    ]);
    expect(found.total.amount).toBe('0.00');
  });

  test('the second best comes from elsewhere and says what it costs more', async () => {
    const packs = [aPack(), aPack({ sku: 'pc', supplier: 'c', prices: [{ fromPacks: 1, price: '21.00' }] })];
    const { secondBest } = await basket(packs, {
      suppliers: [aSupplier(), aSupplier({ code: 'c' })],
      options: {},
    });
    expect(secondBest).toMatchObject({
      kind: 'other-suppliers',
      difference: { amount: '3.00', currency: 'EUR' },
    });
  });

  test('with one supplier the second best is made of other packs', async () => {
    const packs = [
      aPack(),
      aPack({
        sku: 'three',
        content: { material: 'core', quantity: 3, unit: 'm2' },
        prices: [{ fromPacks: 1, price: '66.00' }],
      }),
    ];
    const { secondBest } = await basket(packs, { options: {} });
    expect(secondBest).toMatchObject({
      kind: 'other-packs',
      difference: { amount: '6.00', currency: 'EUR' },
    });
    expect(secondBest?.lines.map(({ sku }) => sku)).toEqual(['three']);
  });
});

describe('freight and hazard', () => {
  const sheet = aPack({
    sku: 'full',
    oversize: true,
    cutFee: '9.00',
    content: { material: 'core', quantity: 3, unit: 'm2' },
    prices: [{ fromPacks: 1, price: '50.00' }],
  });

  test('a whole sheet pays oversize freight, unless the shop may cut it', async () => {
    expect((await basket([sheet])).total.amount).toBe('95.00');
    const cut = await basket([sheet], only({ mayCutSheets: true }));
    expect(cut.total.amount).toBe('64.00');
    expect(cut.lines[0]).toMatchObject({ cutCount: 1, cutFee: { amount: '9.00' } });
  });

  test('cut goods pay their fee once to a line', async () => {
    const found = await basket([aPack({ cutFee: '2.50' })]);
    expect(found.orders[0].cutFees.amount).toBe('2.50');
  });

  test('who collects pays neither delivery nor surcharge', async () => {
    const found = await basket([{ ...sheet, hazardous: true }], only({ transport: 'collect' }));
    expect(found.total.amount).toBe('50.00');
  });

  test('hazardous goods pay by the box: 70 kg in boxes of 30 kg are three', async () => {
    const found = await basket([aPack({ hazardous: true, massKg: 70 / 3 })], only({ hazardBoxKg: 30 }));
    expect(found.orders[0]).toMatchObject({ hazardBoxes: 3, hazardSurcharge: { amount: '30.00' } });
  });

  test('nothing hazardous goes by air, and the order says what is missing and why', async () => {
    const found = await basket([aPack({ hazardous: true })], only({ transport: 'air' }));
    expect(found.excluded).toEqual([{ sku: 'p1', reason: 'hazardous-by-air' }]);
    expect(found.missing[0]).toMatchObject({ reason: 'all-excluded', quantity: 2.5 });
  });

  test('a pack that would be past its date when it is used is left out', async () => {
    const found = await basket(
      [
        aPack({ shelfLifeMonths: 6 }),
        aPack({ sku: 'fresh', shelfLifeMonths: 24, prices: [{ fromPacks: 1, price: '30.00' }] }),
      ],
      only({ monthsUntilUse: 9 }),
    );
    expect(bought(found)).toEqual({ fresh: 3 });
    expect(found.leftovers[0].keepsMonths).toBe(24);
  });
});

describe('resin and hardener', () => {
  const resin = aPack({
    sku: 'resin5',
    content: { material: 'epoxy', quantity: 5, unit: 'kg' },
    prices: [{ fromPacks: 1, price: '70.00' }],
  });
  const small = aPack({
    sku: 'hard02',
    content: { material: 'epoxy', part: 'slow', quantity: 0.2, unit: 'kg' },
    prices: [{ fromPacks: 1, price: '6.00' }],
  });
  const large = aPack({
    sku: 'hard1',
    content: { material: 'epoxy', part: 'slow', quantity: 1, unit: 'kg' },
    prices: [{ fromPacks: 1, price: '22.00' }],
  });
  const needs = [
    aNeed({ id: 'r', material: 'epoxy', requiredQuantity: 3, unit: 'kg' }),
    aNeed({ id: 'h', material: 'epoxy', part: 'slow', requiredQuantity: 0.6, unit: 'kg' }),
  ];
  const matches = [{ resin: 'epoxy', hardener: 'slow', massRatio: 0.2 }];

  test('all the resin bought can be cured, not only what is needed', async () => {
    const found = await basket([resin, small, large], { needs, matches });
    expect(bought(found)).toEqual({ resin5: 1, hard1: 1 });
    expect(found.matched).toEqual([
      { resin: 'epoxy', resinKg: 5, hardeners: [{ hardener: 'slow', boughtKg: 1, curesKg: 5 }] },
    ]);
  });

  test('resin alone on the list of needs brings its hardener along', async () => {
    expect(bought(await basket([resin, large], { needs: [needs[0]], matches }))).toEqual({
      resin5: 1,
      hard1: 1,
    });
  });

  test.each([
    [1, 0.5],
    [0.2, 0.2],
    [0.2, 0.25],
    [0.2, 0.5],
    [0.5, 0.5],
    [1.4, 0.22],
  ])(
    'a large can for a small need: hardener packs of %d kg at %d to one cure all of it',
    async (kg, ratio) => {
      const pack = { ...large, sku: 'h', content: { ...large.content, quantity: kg } };
      const found = await basket([resin, pack], {
        needs: [aNeed({ id: 'r', material: 'epoxy', requiredQuantity: 0.9, unit: 'kg' })],
        matches: [{ resin: 'epoxy', hardener: 'slow', massRatio: ratio }],
      });
      expect(found.isComplete).toBe(true);
      expect(bought(found)).toEqual({ resin5: 1, h: Math.ceil((5 * ratio) / kg) });
    },
  );

  test('resin without enough hardener in stock is not bought beyond it, and the hardener is the reason', async () => {
    const found = await basket([resin, { ...small, stock: 2 }], { needs, matches });
    expect(found.isComplete).toBe(false);
    expect(found.missing).toContainEqual(
      expect.objectContaining({ needs: ['r'], reason: 'no-hardener', quantity: 3 }),
    );
    expect(found.missing).toContainEqual(expect.objectContaining({ needs: ['h'], reason: 'not-enough' }));
  });
});

describe('substitutes', () => {
  const plywood = aPack({
    sku: 'ply',
    content: { material: 'plywood', quantity: 3, unit: 'm2' },
    prices: [{ fromPacks: 1, price: '30.00' }],
  });
  const instead = (penaltyPerUnit: string) => ({
    substitutes: [
      {
        insteadOf: { material: 'core' },
        use: { material: 'plywood' },
        ratio: 1,
        penaltyPerUnit,
        reason: 'heavier, but at hand',
      },
    ],
  });

  test('one is taken when it saves more than its penalty, with the reason said', async () => {
    const found = await basket([aPack(), plywood], instead('10.00'));
    expect(bought(found)).toEqual({ ply: 1 });
    expect(found.substitutions).toMatchObject([
      { quantity: 2.5, reason: 'heavier, but at hand', penalty: { amount: '25.00' } },
    ]);
    expect(found.total.amount).toBe('35.00');
  });

  test('one is left when its penalty is larger than the saving', async () => {
    expect(bought(await basket([aPack(), plywood], instead('13.00')))).toEqual({ p1: 3 });
  });

  test('one fills in what is out of stock', async () => {
    const found = await basket([aPack({ stock: 1 }), plywood], instead('100.00'));
    expect(bought(found)).toEqual({ p1: 1, ply: 1 });
    expect(found.substitutions[0].quantity).toBeCloseTo(1.5, 6);
  });
});

describe('faults and limits', () => {
  const faults = async (request: Partial<BasketRequest>): Promise<readonly string[]> => {
    const outcome = await solveBasket(
      { currency: 'EUR', needs: [aNeed()], priceList: aList([aPack()]), ...request },
      solve,
    );
    return outcome.ok ? [] : outcome.problems.map(({ code, at }) => `${code} ${at}`);
  };

  test('are named all at once', async () => {
    expect(
      await faults({
        priceList: {
          ...aList([
            aPack({
              prices: [
                { fromPacks: 1, price: '-2.00' },
                { fromPacks: 1, price: '1.999' },
              ],
              supplier: 'nobody',
            }),
            aPack({ content: { material: 'core', quantity: 0, unit: 'm2' } }),
          ]),
          currency: 'USD',
        },
        needs: [aNeed({ requiredQuantity: Number.NaN }), aNeed({ id: 'h', material: 'epoxy', part: 'slow' })],
        matches: [{ resin: 'epoxy', hardener: 'fast', massRatio: 0.2 }],
        options: { timeLimitS: 0, suppliers: ['z'] },
      }),
    ).toEqual([
      'other-currency /priceList/currency',
      'unknown-code /priceList/packs/0/supplier',
      'out-of-range /priceList/packs/0/prices/0/price',
      'not-a-decimal /priceList/packs/0/prices/1/price',
      'breaks-out-of-order /priceList/packs/0/prices',
      'out-of-range /priceList/packs/1/content/quantity',
      'duplicate /priceList/packs/1/sku',
      'out-of-range /needs/0/requiredQuantity',
      'hardener-without-resin /needs/1/part',
      'out-of-range /options/timeLimitS',
      'unknown-code /options/suppliers/0',
    ]);
  });

  test('a need with no pack is missing, and the rest is bought', async () => {
    const found = await basket([aPack()], {
      needs: [aNeed(), aNeed({ id: 'unobtainable', material: 'unobtainable' })],
    });
    expect(bought(found)).toEqual({ p1: 3 });
    expect(found.missing).toEqual([
      { material: 'unobtainable', quantity: 2.5, unit: 'm2', needs: ['unobtainable'], reason: 'no-pack' },
    ]);
  });

  test('more than two thousand needs are refused', async () => {
    expect(await faults({ needs: Array.from({ length: 2001 }, (_, i) => aNeed({ id: `n${i}` })) })).toEqual([
      'too-many /needs',
    ]);
  });

  test('when the solver runs out of time an order is picked, and how far it may be from the best is stated', async () => {
    const outOfTime = async (
      suppliers: readonly Supplier[],
      answer: { readonly values: readonly number[]; readonly bound?: number },
    ) => {
      const outcome = await solveBasket(
        {
          currency: 'EUR',
          needs: [aNeed()],
          priceList: aList([aPack()], suppliers),
          // Surcharges by the box are left to the solver.
          options: { secondBest: false, hazardBoxKg: 30 },
        },
        async () => ({ status: 'time-limit', ...answer }),
      );
      if (!outcome.ok) throw new Error('refused');
      return outcome.value;
    };
    const free = await outOfTime([aSupplier({ delivery: '0.00' })], { values: [] });
    expect(bought(free)).toEqual({ p1: 3 });
    // Three packs at 20.00 are the least that 2.5 m2 can cost, so that nothing is left to prove.
    expect([free.total.amount, free.proof]).toEqual(['60.00', { kind: 'proven' }]);
    const carried = await outOfTime([aSupplier({ delivery: '15.00' })], { values: [], bound: 4000 });
    // The goods alone cost 60.00 of 75.00, which is a better bound than the solver's 40.00.
    expect(carried.proof).toEqual({
      kind: 'gap',
      bound: { amount: '59.99', currency: 'EUR' },
      gapFraction: (7500 - 6000) / 7500,
    });
    expect(
      (await outOfTime([aSupplier({ delivery: '15.00' })], { values: [], bound: 7000 })).proof,
    ).toMatchObject({ bound: { amount: '69.99' } });
  });

  test('a solver that fails, or answers what does not cover the needs, is our fault and not passed on', async () => {
    const request = {
      currency: 'EUR',
      needs: [aNeed()],
      priceList: aList([aPack()]),
      options: { hazardBoxKg: 30 },
    };
    await expect(
      solveBasket(request, async () => ({ status: 'failed', values: [], said: 'Empty' })),
    ).rejects.toThrow('Empty');
    await expect(
      solveBasket(request, async ({ columns }) => ({ status: 'optimal', values: columns.map(() => 0) })),
    ).rejects.toThrow('uncovered');
  });

  test('a model that the solver cannot take comes back as failed', () => {
    expect(solveByHighs(highs, { columns: [], rows: [] }, { timeLimitS: 1, relativeGap: 0 }).status).toBe(
      'failed',
    );
  });
});

describe('the shipped price lists', () => {
  const { materials, priceLists } = shippedCatalogue;

  test.each(priceLists.map((list) => [list.code, list] as const))(
    '%s is sound and sells every material, every hardener and every core thickness',
    (_, list) => {
      expect(faultsOfPriceList(list)).toEqual([]);
      expect(list.invented).toBe(true);
      const sold = new Set(
        list.packs.flatMap(({ content: { material, part, thicknessMm } }) => [
          material,
          `${material}/${part ?? ''}`,
          `${material}/${thicknessMm ?? ''}`,
        ]),
      );
      for (const material of materials) {
        expect(sold).toContain(material.code);
        if (material.kind === 'resin')
          for (const { code: part } of material.hardeners) expect(sold).toContain(`${material.code}/${part}`);
        if (material.kind === 'core')
          for (const thicknessMm of material.thicknessesMm)
            expect(sold).toContain(`${material.code}/${thicknessMm}`);
      }
    },
  );

  test.each(priceLists.map((list) => [list.code, list] as const))(
    '%s names no material that the catalogue does not have',
    (_, { packs }) => {
      const known = new Set(materials.map((material) => material.code));
      expect(packs.filter(({ content }) => !known.has(content.material))).toEqual([]);
    },
  );
});
