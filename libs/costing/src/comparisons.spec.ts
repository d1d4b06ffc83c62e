import { describe, expect, test } from '@jest/globals';
import { parse } from 'csv-parse/sync';
import type { LineRequest } from './cost-line.js';
import { costWithRisk } from './cost-with-risk.js';
import { comparisonCsv } from './exports/csv.js';
import { changeOrder, compareRevisions, type RevisionComparison, type RevisionReasons } from './revisions.js';
import { rollUp, type CostRollUp } from './roll-up.js';
import { compareVariants, type VariantResult } from './variants.js';

const line = (code: string, changes: Partial<LineRequest> = {}): LineRequest => ({
  code,
  section: 'labour',
  title: code,
  partOrLabour: 'labour',
  causeClass: 'sudden',
  netQuantity: 10,
  unit: 'h',
  unitRate: '70.00',
  taxGroup: 'all',
  ...changes,
});

function rolled(lines: readonly LineRequest[]): CostRollUp {
  const outcome = rollUp({
    currency: 'EUR',
    lines,
    overheadPercent: '5',
    taxGroups: [{ code: 'all', name: 'All', percent: '20' }],
  });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

describe('cost with risk', () => {
  const terms = {
    currency: 'EUR',
    lines: [line('bed', { spread: { low: 0.6, high: 1.8 } }), line('haul')],
    taxGroups: [{ code: 'all', name: 'All', percent: '20' }],
    profitPercent: '10',
  };

  test('sets aside P80 less the point, unless the caller sets the contingency', () => {
    const outcome = costWithRisk({ ...terms, risk: { extent: { grade: 'single-symptom' } } });
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
    const { rollUp: total, risk } = outcome.value;
    expect(risk.point.amount).toBe('1540.00');
    expect(total.contingency).toEqual(risk.contingency);
    expect(Number(total.net.amount)).toBeCloseTo(Number(risk.p80.amount), 2);
    const set = costWithRisk({
      ...terms,
      contingency: { percent: '20' },
      risk: { extent: { grade: 'single-symptom' } },
    });
    expect(set.ok && set.value.rollUp.contingency.amount).toBe('308.00');
  });

  test('says where in the risk something is wrong', () => {
    const outcome = costWithRisk({ ...terms, risk: { extent: { grade: 'single-symptom' }, samples: 3 } });
    expect(outcome.ok ? [] : outcome.problems.map(({ at }) => at)).toEqual(['/risk/samples']);
  });
});

describe('variants', () => {
  const variant = (code: string, hours: number, changes: Partial<VariantResult> = {}): VariantResult => ({
    code,
    title: code,
    rollUp: rolled([line('work', { netQuantity: hours })]),
    days: hours / 5,
    massKg: 10,
    utilisation: 0.8,
    ...changes,
  });

  function compared(variants: readonly VariantResult[]) {
    const outcome = compareVariants(variants);
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
    return outcome.value;
  }

  test('one that is dearer, slower and no lighter is marked as dominated, one that is lighter is not', () => {
    const { rows } = compared([
      variant('relay', 60),
      variant('re-bed', 40),
      variant('foam', 50, { massKg: 6 }),
    ]);
    expect(rows.map(({ code, dominatedBy }) => [code, dominatedBy])).toEqual([
      ['relay', ['re-bed', 'foam']],
      ['re-bed', []],
      ['foam', []],
    ]);
    expect(rows[1].bestIn).toEqual(['cost', 'labourH', 'days', 'utilisation']);
    expect(rows[2].bestIn).toEqual(['massKg', 'utilisation']);
  });

  test('what some variants have no figure for is not compared, and two alike do not dominate each other', () => {
    const { compared: on, rows } = compared([variant('a', 40, { massKg: undefined }), variant('b', 40)]);
    expect(on).not.toContain('massKg');
    expect(rows.every(({ dominatedBy }) => dominatedBy.length === 0)).toBe(true);
  });

  test('a refused variant stands beside the others with the rule that refuses it', () => {
    const refusal = { rule: 'injection-area', why: 'injection is for at most 0.2 m2' };
    expect(compared([variant('a', 40), { code: 'inject', title: 'Inject', refusal }]).refused).toEqual([
      { code: 'inject', title: 'Inject', ...refusal },
    ]);
  });

  test('a variant that fails a check says so', () => {
    expect(compared([variant('thin', 40, { utilisation: 1.08 })]).rows[0].failsCheck).toBe(true);
  });

  test('variants in two currencies, or with neither figures nor refusal, are faults', () => {
    const outcome = compareVariants([variant('a', 40), { code: 'a', title: 'b' }]);
    expect(outcome.ok ? [] : outcome.problems.map(({ code, at }) => `${code} ${at}`)).toEqual([
      'duplicate /variants/1/code',
      'missing /variants/1',
    ]);
  });
});

describe('revisions', () => {
  const before = rolled([
    line('core', { netQuantity: 10 }),
    line('mask', { netQuantity: 3 }),
    line('haul', { netQuantity: 1, unit: 'job', unitRate: '400' }),
  ]);
  const after = rolled([
    line('core', { netQuantity: 16, unitRate: '72.50' }),
    line('haul', { netQuantity: 1, unit: 'job', unitRate: '400' }),
    line('insert', { netQuantity: 4 }),
  ]);

  function compared(reasons: RevisionReasons = {}): RevisionComparison {
    const outcome = compareRevisions(before, after, reasons);
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
    return outcome.value;
  }

  test('say of every line what changed, by how much and because of what', () => {
    const { lines } = compared({
      overall: 'the opened area was measured again',
      byLine: { insert: 'solid core under the cleat' },
    });
    expect(lines.map(({ code, change, difference }) => [code, change, difference.amount])).toEqual([
      ['core', 'changed', '460.00'],
      ['haul', 'same', '0.00'],
      ['insert', 'added', '280.00'],
      ['mask', 'removed', '-210.00'],
    ]);
    expect([lines[0].becauseOfQuantity.amount, lines[0].becauseOfRate.amount]).toEqual(['420.00', '40.00']);
    expect(lines[0].because).toEqual([
      'quantity 10.00 to 16.00 h',
      'rate 70.00 to 72.50 EUR/h',
      'the opened area was measured again',
    ]);
    expect(lines[2].because).toEqual(['solid core under the cleat', 'not in the revision before']);
  });

  test('add up: the lines make the totals, and overhead and tax follow', () => {
    const { totals, difference, shareOfBefore } = compared();
    const of = (name: string): string => totals.find((one) => one.name === name)?.difference.amount ?? '';
    expect([of('Sum of lines'), of('Overhead'), of('Without tax'), of('Tax'), of('With tax')]).toEqual([
      '530.00',
      '26.50',
      '556.50',
      '111.30',
      '667.80',
    ]);
    expect(difference.amount).toBe('556.50');
    expect(shareOfBefore).toBeCloseTo(530 / 1310, 10);
  });

  test('become a change order that names the sum before, the change and the sum after, and asks to be signed first', () => {
    const order = changeOrder(compared(), {
      number: 1,
      reference: 'estimate E-1',
      reason: 'more rot than found by sounding',
      date: '2026-05-04',
      extraDays: 3,
    });
    expect(order.title).toBe('Change order 1 to estimate E-1, 2026-05-04');
    expect(order.sums.map(({ amount }) => amount.amount)).toEqual([
      '1375.50',
      '0.00',
      '556.50',
      '1932.00',
      '386.40',
      '2318.40',
    ]);
    expect(order.steps.map(({ code, difference }) => [code, difference.amount])).toEqual([
      ['direct', '530.00'],
      ['overhead', '26.50'],
      ['profit', '0.00'],
      ['provisional', '0.00'],
      ['contingency', '0.00'],
      ['net', '556.50'],
      ['tax', '111.30'],
      ['gross', '667.80'],
    ]);
    expect(order.additions.map(({ code }) => code)).toEqual(['core', 'insert']);
    expect(order.deductions.map(({ code }) => code)).toEqual(['mask']);
    expect(order.statements.join(' ')).toContain('3 working days more');
    expect(order.statements.join(' ')).toContain('does not start before this is signed');
  });

  test('a later change order names what was agreed first and what came since; a first issue in another currency is said', () => {
    const request = { number: 2, reference: 'estimate E-1', reason: 'more rot', date: '2026-05-04' };
    const later = changeOrder(compared(), { ...request, firstSum: { amount: '1000.00', currency: 'EUR' } });
    expect(later.sums.slice(0, 2).map(({ amount }) => amount.amount)).toEqual(['1000.00', '375.50']);
    const abroad = changeOrder(compared(), { ...request, firstSum: { amount: '1000.00', currency: 'USD' } });
    expect(abroad.sums.slice(0, 2).map(({ amount }) => amount.amount)).toEqual(['1375.50', '0.00']);
    expect(abroad.statements.join(' ')).toContain('first issue was in USD');
  });

  test('of nothing are all the same', () => {
    const outcome = compareRevisions(before, before);
    expect(outcome.ok && outcome.value.lines.every(({ change }) => change === 'same')).toBe(true);
  });

  test('in two currencies cannot be compared', () => {
    const outcome = compareRevisions({ ...before, currency: 'USD' }, after);
    expect(outcome.ok ? [] : outcome.problems.map(({ code }) => code)).toEqual(['other-currency']);
  });

  test('are written as rows, negative differences as numbers', () => {
    const rows = parse(comparisonCsv(compared()), { columns: true, record_delimiter: '\r\n' }) as Record<
      string,
      string
    >[];
    expect(rows.find(({ code }) => code === 'mask')?.difference).toBe('-210.00');
  });
});
