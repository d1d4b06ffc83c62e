import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue } from '#lib/catalogue';
import { takeOff, type NeedRequest } from '#lib/takeoff';
import { loadHighs } from '../../../test/support/load-highs.js';
import { solveByHighs } from './basket/highs-solver.js';
import { solveBasket } from './basket/solve-basket.js';
import { labourLines, yardLines } from './labour.js';
import { packLines, type PackLines, type PackLinesRequest } from './pack-lines.js';
import { rollUp } from './roll-up.js';

const [priceList] = shippedCatalogue.priceLists.filter(({ code }) => code === 'invented-euro');
const [rates] = shippedCatalogue.labourRates.filter(({ code }) => code === 'invented-euro');
const highs = await loadHighs();

const item = (
  id: string,
  material: string,
  netQuantity: number,
  changes: Partial<NeedRequest> = {},
): NeedRequest => ({
  id,
  title: id,
  material,
  unit: 'kg',
  purpose: 'bond',
  netQuantity,
  wasteFraction: 0.18,
  ...changes,
});

const items = [
  item('resin', 'resin-epoxy-5to1', 6.6),
  item('hardener', 'resin-epoxy-5to1', 1.17, { part: 'medium' }),
  item('core', 'core-balsa-150', 2.2, {
    unit: 'm2',
    thicknessMm: 12.7,
    form: 'plain',
    wasteFraction: 0.15,
    netRange: { low: 2, high: 2.6 },
  }),
  item('glass', 'reinforcement-biaxial-mat-835', 5, { unit: 'm2' }),
  item('gloves', 'safety-gloves', 26, { unit: 'pair', purpose: 'safety' }),
];
const matches = [{ resin: 'resin-epoxy-5to1', hardener: 'medium', massRatio: 0.17739 }];

function needs() {
  const outcome = takeOff({ items });
  if (!outcome.ok) throw new Error('refused');
  return outcome.value.needs;
}

function lines(changes: Partial<PackLinesRequest> = {}): PackLines {
  const outcome = packLines({
    needs: needs(),
    priceList,
    matches,
    taxGroup: 'parts',
    causeClass: 'pre-existing',
    billing: 'as-bought',
    leftOver: () => ({ kind: 'kept' }),
    ...changes,
  });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

describe('lines for needs', () => {
  test('hold net, required and whole packs apart, and cost what the packs cost', () => {
    const found = lines();
    const rolled = rollUp({ currency: 'EUR', lines: found.lines, taxGroups: rates.taxGroups });
    if (!rolled.ok) throw new Error(JSON.stringify(rolled.problems));
    const core = rolled.value.lines.find(({ code }) => code === 'material-core')!;
    expect(core.quantity.net).toBe(2.2);
    expect(core.quantity.required).toBeCloseTo(2.53, 10);
    expect(core.quantity.purchase).toBeCloseTo(4 * 0.7442, 10);
    expect(core.isAverageRate).toBe(true);
    const paid = core.packs.reduce(
      (sum, { count, price }) => sum + count * Math.round(Number(price) * 100),
      0,
    );
    expect(Math.round(Number(core.amount.amount) * 100)).toBe(paid);
    expect(core.spread.high).toBeCloseTo(2.6 / 2.2, 10);
    expect(rolled.value.sections.map(({ section }) => section)).toEqual(['materials', 'safety', 'freight']);
  });

  test('charged as used, cost less than their packs, and freight goes with them', () => {
    const charged = lines({ billing: 'as-used' });
    const rolledUp = (found: PackLines) => {
      const rolled = rollUp({ currency: 'EUR', lines: found.lines, taxGroups: rates.taxGroups });
      if (!rolled.ok) throw new Error(JSON.stringify(rolled.problems));
      return rolled.value.lines;
    };
    const [used, whole] = [rolledUp(charged), rolledUp(lines())];
    const cents = (amount = '0'): number => Math.round(Number(amount) * 100);
    const sum = (amounts: readonly (string | undefined)[]): number =>
      amounts.reduce((total, amount) => total + cents(amount), 0);
    const goodsOf = (found: typeof used): typeof used => found.filter(({ goods }) => goods !== undefined);
    expect(sum(goodsOf(used).map(({ goods }) => goods?.bought.amount))).toBe(
      sum(goodsOf(whole).map(({ amount }) => amount.amount)),
    );
    for (const line of goodsOf(used))
      expect(cents(line.amount.amount)).toBeLessThanOrEqual(cents(line.goods?.bought.amount));
    const share =
      sum(goodsOf(used).map(({ amount }) => amount.amount)) /
      sum(goodsOf(whole).map(({ amount }) => amount.amount));
    const freight = (found: typeof used): number =>
      sum(found.filter(({ section }) => section === 'freight').map(({ amount }) => amount.amount));
    expect(share).toBeLessThan(1);
    expect(freight(used) / freight(whole)).toBeCloseTo(share, 2);
  });

  test('buy hardener for all the resin bought', () => {
    const { needs: bought } = lines();
    const quantity = (id: string): number => bought.find((need) => need.id === id)?.purchase?.value ?? 0;
    expect(quantity('hardener')).toBeGreaterThanOrEqual(quantity('resin') * 0.17739);
  });

  test('cost no less than the proven order, and little more', async () => {
    const total = lines().orders.reduce((sum, order) => sum + Number(order.total.amount), 0);
    const proven = await solveBasket(
      {
        currency: 'EUR',
        priceList,
        matches,
        options: { secondBest: false },
        needs: needs().map((need) => ({ ...need, requiredQuantity: need.required.value })),
      },
      async (model, limits) => solveByHighs(highs, model, limits),
    );
    if (!proven.ok) throw new Error('refused');
    const best = Number(proven.value.total.amount);
    expect(proven.value.proof.kind).toBe('proven');
    expect(total).toBeGreaterThanOrEqual(best);
    expect(total / best).toBeLessThan(1.02);
  });

  test('say which needs nothing on the list covers', () => {
    const outcome = takeOff({ items: [...items, item('unobtainable', 'unobtainable', 1)] });
    if (!outcome.ok) throw new Error('refused');
    expect(lines({ needs: outcome.value.needs }).missing).toEqual(['unobtainable']);
  });
});

describe('labour and yard lines', () => {
  const operation = {
    code: 'bed-core',
    title: 'Bed core',
    phase: 'bond',
    skill: 'laminator' as const,
    driver: 'opened-m2',
    driverAmount: 2,
    hoursPerDriver: { low: 0.8, likely: 1.5, high: 3 },
    cite: { source: 'FROM-MEMORY' },
    modifiers: [
      {
        code: 'overhead',
        title: 'Overhead',
        factor: { low: 1.7, likely: 2, high: 2.5 },
        cite: { source: 'FROM-MEMORY' },
      },
    ],
  };

  test('2 m2 overhead at a mean of 1.767 h/m2 are 7.30 h of a laminator, from 2.72 h to 15 h', () => {
    const outcome = labourLines([operation], { rates, taxGroup: 'labour', causeClass: 'sudden' });
    if (!outcome.ok) throw new Error('refused');
    const rolled = rollUp({ currency: 'EUR', lines: outcome.value, taxGroups: rates.taxGroups });
    if (!rolled.ok) throw new Error(JSON.stringify(rolled.problems));
    const [line] = rolled.value.lines;
    // By hand: 2 x (0.8 + 1.5 + 3)/3 x (1.7 + 2 + 2.5)/3 = 2 x 1.76667 x 2.06667 = 7.3022 h, at 74.00.
    expect(line.quantity.charged).toBe('7.30');
    expect(line.amount.amount).toBe('540.20');
    expect(line.spread.low).toBeCloseTo(2.72 / 7.302222, 6);
    expect(line.spread.high).toBeCloseTo(15 / 7.302222, 6);
  });

  test('a shed is charged by the day, a tent by the job, never both', () => {
    const charged = (shelter: 'shed' | 'tent' | 'open') =>
      yardLines(
        {
          shelter,
          isHeated: false,
          isShaded: false,
          place: 'ashore-for-this',
          days: 12,
          workedDays: 8,
          labourH: 60,
          openedM2: 2,
        },
        { rates, taxGroup: 'labour', causeClass: 'sudden' },
      ).map(({ code }) => code);
    expect(charged('shed')).toContain('yard-lay-day-shed');
    expect(charged('shed')).not.toContain('yard-tent');
    expect(charged('tent')).toContain('yard-tent');
    expect(charged('open')).toContain('yard-lay-day-open');
  });

  // By hand: twelve days on the calendar at 24.00 are 288.00.
  test('a heater is hired with its power for every day on the calendar, and only where one is said', () => {
    const amounts = {
      shelter: 'tent',
      place: 'ashore-anyway',
      days: 12,
      workedDays: 8,
      labourH: 60,
      openedM2: 2,
    } as const;
    const terms = { rates, taxGroup: 'labour', causeClass: 'sudden' } as const;
    const heater = (isHeated: boolean) =>
      yardLines({ ...amounts, isHeated, isShaded: false }, terms).filter(
        ({ code }) => code === 'yard-heater',
      );
    expect(heater(false)).toEqual([]);
    const rolled = rollUp({ currency: 'EUR', lines: heater(true), taxGroups: rates.taxGroups });
    expect(rolled.ok && rolled.value.direct.amount).toBe('288.00');
  });

  test('nobody who lies ashore anyway pays for haul-out and days, and on own ground no yard charges at all', () => {
    const charged = (place: 'ashore-anyway' | 'own-ground') =>
      yardLines(
        {
          shelter: 'open',
          isHeated: false,
          isShaded: false,
          place,
          days: 12,
          workedDays: 8,
          labourH: 60,
          openedM2: 2,
        },
        { rates, taxGroup: 'labour', causeClass: 'sudden' },
      ).map(({ code }) => code);
    expect(charged('ashore-anyway')).not.toEqual(expect.arrayContaining(['yard-haul']));
    expect(charged('ashore-anyway')).not.toEqual(expect.arrayContaining(['yard-lay-day-open']));
    expect(charged('ashore-anyway')).toEqual(expect.arrayContaining(['yard-power']));
    expect(charged('own-ground')).toEqual(['yard-waste', 'yard-small-tools']);
  });

  test('hours out of order are named where they stand', () => {
    const outcome = labourLines(
      [{ ...operation, hoursPerDriver: { low: 2, likely: 1, high: 3 }, driverAmount: -1 }],
      { rates, taxGroup: 'labour', causeClass: 'sudden' },
    );
    expect(outcome.ok ? [] : outcome.problems.map(({ at }) => at)).toEqual([
      '/operations/0/driverAmount',
      '/operations/0/hoursPerDriver',
    ]);
  });
});
