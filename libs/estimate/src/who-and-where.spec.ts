import { describe, expect, test } from '@jest/globals';
import { shippedCatalogue, type Catalogue, type LabourRates } from '#lib/catalogue';
import { detailOf, type Outcome } from '#lib/kernel';
import { aRecord } from '../../../test/samples/a-record.js';
import type { EstimateWithWhy } from './document/estimate-document.js';
import type { DefectRecord } from './job/defect-record.js';
import { estimate } from './estimate.js';

const withRates = (change: Partial<LabourRates>): Catalogue => ({
  ...shippedCatalogue,
  labourRates: shippedCatalogue.labourRates.map((rates) => ({ ...rates, ...change })),
});
const priced = (changes: Partial<DefectRecord>, catalogue = shippedCatalogue): Outcome<EstimateWithWhy> =>
  estimate(aRecord(changes), catalogue, 'test');
function bodyOf(outcome: Outcome<EstimateWithWhy>) {
  if (!outcome.ok) throw new Error(outcome.problems.map(detailOf).join(' '));
  return outcome.value.estimate;
}
const amountOf = ({ amount }: { readonly amount: string }): number => Number(amount);

describe('rates that hold overhead and profit already', () => {
  test.each(['overheadPercent', 'profitPercent'])(
    'are refused with %s on top, with the reason',
    (loading) => {
      const outcome = priced({}, withRates({ rateBasis: 'posted', [loading]: '8' }));
      expect(outcome.ok ? [] : outcome.problems.map(({ code, at }) => [code, at])).toEqual([
        ['contradiction', '/pricing/labourRates'],
      ]);
      expect(outcome.ok ? '' : detailOf(outcome.problems[0])).toContain('posted charge-out rates');
    },
  );

  // By hand: 10 % on the lines, then 8 % on both: 1.1 x 1.08 = 1.188 of the lines, without tax.
  test('are not those of wages, on which the loadings are added and shown', () => {
    const wage = bodyOf(
      priced({}, withRates({ rateBasis: 'wage', overheadPercent: '10', profitPercent: '8' })),
    );
    const { net, overhead, profit, base } = wage.totals;
    expect(amountOf(overhead) / amountOf(net)).toBeCloseTo(0.1, 4);
    expect(amountOf(profit) / amountOf(net)).toBeCloseTo(0.088, 4);
    expect(amountOf(base) / amountOf(net)).toBeCloseTo(1.188, 4);
  });
});

describe('the headline', () => {
  const yard = bodyOf(priced({}));
  const owner = bodyOf(priced({ crew: { labour: 'owner' } }));
  const mixed = bodyOf(priced({ crew: { labour: 'mixed' } }));
  const labourIn = ({ lines }: typeof yard): number =>
    lines
      .filter(({ section }) => section === 'labour')
      .reduce((sum, { amount }) => sum + amountOf(amount), 0);

  const hoursIn = ({ lines }: typeof yard): number =>
    lines.reduce((sum, { hours }) => sum + (hours?.mean ?? 0), 0);

  test('of an owner is goods, hire and charges: every hour is shown and none is billed', () => {
    expect(labourIn(owner)).toBe(0);
    expect(owner.summary.labourH.p50).toBeGreaterThan(5);
    const billed = owner.lines.reduce((sum, { amount }) => sum + amountOf(amount), 0);
    expect(amountOf(owner.totals.net)).toBeCloseTo(billed, 2);
    expect(owner.totals.goods.billing).toBe('as-bought');
    expect(owner.totals.contingencyByKind.map(({ kind }) => kind)).not.toContain('productivity');
  });

  test('of work that is shared lies between, with the same hours', () => {
    expect(labourIn(mixed)).toBeGreaterThan(0);
    expect(labourIn(mixed)).toBeLessThan(labourIn(yard));
    expect(hoursIn(mixed)).toBeCloseTo(hoursIn(yard), 9);
  });

  test('rests on where the boat lies, aloud where nobody said it', () => {
    const said = ({ assumptions }: typeof yard) => assumptions.find(({ at }) => at === '/conditions/place');
    expect(said(yard)?.because).toContain('haul-out');
    expect(said(bodyOf(priced({ conditions: { place: 'ashore-for-this' } })))).toBeUndefined();
  });

  test('rests on how often the crew comes, aloud where nobody said it', () => {
    const said = ({ assumptions }: typeof yard) =>
      assumptions.find(({ at }) => at === '/crew/attendanceFraction');
    expect(said(yard)?.value).toBe('0.8');
    const always = bodyOf(priced({ crew: { attendanceFraction: 1 } }));
    expect(said(always)).toBeUndefined();
    expect(always.summary.calendarDays.p50).toBeLessThan(yard.summary.calendarDays.p50);
    expect(always.totals.total).toEqual(yard.totals.total);
  });
});
