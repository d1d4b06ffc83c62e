import { describe, expect, test } from '@jest/globals';
import type { LineRequest } from './cost-line.js';
import { rollUp, type CostRollUp, type RollUpRequest } from './roll-up.js';

const aLine = (changes: Partial<LineRequest> = {}): LineRequest => ({
  code: 'core',
  section: 'materials',
  title: 'Balsa core',
  partOrLabour: 'part',
  causeClass: 'pre-existing',
  netQuantity: 2,
  unit: 'm2',
  unitRate: '38.50',
  taxGroup: 'full',
  ...changes,
});

const labour = aLine({
  code: 'labour',
  section: 'labour',
  title: 'Laminator',
  partOrLabour: 'labour',
  netQuantity: 40,
  unit: 'h',
  unitRate: '75',
});

const aRequest = (changes: Partial<RollUpRequest> = {}): RollUpRequest => ({
  currency: 'EUR',
  lines: [aLine(), labour],
  taxGroups: [{ code: 'full', name: 'Full rate', percent: '19' }],
  ...changes,
});

function totals(request: RollUpRequest): CostRollUp {
  const outcome = rollUp(request);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

const faults = (request: RollUpRequest): readonly string[] => {
  const outcome = rollUp(request);
  return outcome.ok ? [] : outcome.problems.map(({ code, at }) => `${code} ${at}`);
};

describe('a roll-up', () => {
  test('2 m2 at 38.50 and 40 h at 75.00 come to 3077.00, 3661.63 with 19 % tax', () => {
    const rolled = totals(aRequest());
    expect(rolled.direct.amount).toBe('3077.00');
    expect(rolled.tax.amount).toBe('584.63');
    expect(rolled.gross.amount).toBe('3661.63');
  });

  test('overhead, then profit on both, then contingency on all three', () => {
    const rolled = totals(
      aRequest({ overheadPercent: '10', profitPercent: '5', contingency: { percent: '20' } }),
    );
    expect([
      rolled.overhead.amount,
      rolled.profit.amount,
      rolled.contingency.amount,
      rolled.net.amount,
    ]).toEqual(['307.70', '169.24', '710.79', '4264.73']);
  });

  test('a unit rate is never rounded: a thousand discs at 0.1234 cost 123.40, not 120.00', () => {
    const discs = aLine({ netQuantity: 1000, unit: 'each', unitRate: '0.1234' });
    expect(totals(aRequest({ lines: [discs] })).direct.amount).toBe('123.40');
  });

  test('the tie at half a cent goes away from zero, where floating point would lose it', () => {
    const tie = aLine({ netQuantity: 1, unit: 'each', unitRate: '1.005' });
    expect(totals(aRequest({ lines: [tie] })).direct.amount).toBe('1.01');
    expect((1.005).toFixed(2)).toBe('1.00');
    expect(totals(aRequest({ lines: [tie], rounding: 'half-to-even' })).direct.amount).toBe('1.00');
  });

  test('whole packs are charged where they are known, else what is required with waste', () => {
    const required = totals(aRequest({ lines: [aLine({ wasteFraction: 0.15 })] })).lines[0];
    expect(required.quantity).toMatchObject({ net: 2, required: 2.3, charged: '2.300' });
    const bought = totals(aRequest({ lines: [aLine({ wasteFraction: 0.15, purchaseQuantity: 2.88 })] }))
      .lines[0];
    expect(bought.quantity).toMatchObject({ net: 2, required: 2.3, purchase: 2.88, charged: '2.880' });
    expect(bought.amount.amount).toBe('110.88');
  });

  test('a price with tax inside is taken apart once: 119.00 with 19 % is 100.00 and 19.00', () => {
    const rolled = totals(
      aRequest({ lines: [aLine({ netQuantity: 1, unitRate: '119', rateIncludesTax: true })] }),
    );
    expect([rolled.direct.amount, rolled.tax.amount, rolled.gross.amount]).toEqual([
      '100.00',
      '19.00',
      '119.00',
    ]);
  });

  test('lines that are out are listed and not summed', () => {
    const rolled = totals(aRequest({ lines: [aLine(), aLine({ code: 'mast', scope: 'out' })] }));
    expect(rolled.direct.amount).toBe('77.00');
    expect(rolled.outOfScope.map(({ code }) => code)).toEqual(['mast']);
  });

  test('only parts depreciate, by a percentage or by age over life', () => {
    const rolled = totals(
      aRequest({ lines: [aLine({ depreciation: { ageYears: 5, lifeYears: 20 } }), labour] }),
    );
    expect(rolled.lines[0].depreciation).toEqual({
      ageYears: 5,
      percent: '25.00',
      amount: { amount: '19.25', currency: 'EUR' },
      remaining: { amount: '57.75', currency: 'EUR' },
    });
    expect(rolled.depreciation.remaining.amount).toBe('57.75');
  });

  test('every amount says why, down to the quantity and the rate', () => {
    const { why } = totals(aRequest()).lines[0];
    expect(why.value).toBe(77);
    expect(why.origin.kind === 'computed' && Object.keys(why.origin.inputs)).toEqual([
      'quantity',
      'unitRate',
    ]);
  });

  test('yen have no hundredths and dinars have thousandths', () => {
    const line = aLine({ netQuantity: 1, unitRate: '1234.5678' });
    expect(totals(aRequest({ currency: 'JPY', lines: [line] })).direct.amount).toBe('1235');
    expect(totals(aRequest({ currency: 'KWD', lines: [line] })).direct.amount).toBe('1234.568');
    expect(totals(aRequest({ currency: 'CLF', lines: [line] })).direct.amount).toBe('1234.5678');
  });
});

describe('faults', () => {
  test('all at once, each where it stands', () => {
    expect(
      faults(
        aRequest({
          overheadPercent: '-1',
          contingency: { amount: '1.234' },
          lines: [
            aLine({ netQuantity: Number.NaN, unitRate: '-3' }),
            aLine({ unitRate: '1,50', taxGroup: 'none', spread: { low: 1.2, high: 2 } }),
            { ...labour, depreciation: { ageYears: 2, percent: '120' } },
          ],
        }),
      ),
    ).toEqual([
      'out-of-range /overheadPercent',
      'not-a-decimal /contingency/amount',
      'duplicate /lines/1/code',
      'out-of-range /lines/0/netQuantity',
      'out-of-range /lines/0/unitRate',
      'not-a-decimal /lines/1/unitRate',
      'not-one-of /lines/1/taxGroup',
      'out-of-range /lines/1/spread',
      'contradiction /lines/2/depreciation',
      'out-of-range /lines/2/depreciation/percent',
    ]);
  });

  test('a currency that nobody listed, and a roll-up of nothing', () => {
    expect(faults(aRequest({ currency: 'XYZ' }))).toEqual(['not-one-of /currency']);
    expect(faults(aRequest({ lines: [] }))).toEqual(['too-few /lines']);
    expect(faults(aRequest({ lines: [aLine({ scope: 'out' })] }))).toEqual(['too-few /lines']);
  });
});
