import { describe, expect, test } from '@jest/globals';
import type { Consumable } from '#lib/catalogue';
import { assumed } from '#lib/provenance';
import { l } from '#lib/units';
import { usedAt } from './consumables.js';
import { wholePackCount } from './quantities.js';
import { takeOff, type TakeOffRequest } from './take-off.js';

const resin = {
  id: 'resin',
  title: 'Epoxy',
  material: 'resin-epoxy',
  unit: 'kg',
  purpose: 'bedding',
  netQuantity: 4.5,
  wasteFraction: 0.18,
};

const gloves: Consumable = {
  kind: 'safety',
  code: 'gloves',
  name: 'Gloves',
  unit: 'pair',
  usages: [
    { driver: 'opened-m2', perDriver: { value: 12, low: 6, high: 25, cite: { source: 'FROM-MEMORY' } } },
    { driver: 'job', perDriver: { value: 2, cite: { source: 'FROM-MEMORY' } } },
  ],
};

const film: Consumable = {
  kind: 'consumable',
  code: 'film',
  name: 'Vacuum film',
  unit: 'm2',
  when: 'vacuum',
  usages: [{ driver: 'laminate-m2', perDriver: { value: 1.4, cite: { source: 'FROM-MEMORY' } } }],
};

function needsOf(request: TakeOffRequest) {
  const outcome = takeOff(request);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

describe('net, waste and purchase', () => {
  test('4.5 kg of resin with 18 % waste is 5.31 kg, and five packs of 1.2 kg', () => {
    const [need] = needsOf({ items: [{ ...resin, packQuantity: 1.2 }] }).needs;
    expect(need.net.value).toBe(4.5);
    expect(need.required.value).toBeCloseTo(5.31, 12);
    expect(need.purchase?.value).toBeCloseTo(6, 12);
  });

  test('a quantity that fills its packs to the last binary digit needs no further pack', () => {
    expect(wholePackCount(0.1 + 0.2, 0.1)).toBe(3);
    expect(wholePackCount(0.30001, 0.1)).toBe(4);
  });

  test('waste nobody stated is none, and the answer says that it was assumed', () => {
    const { needs, assumptions } = needsOf({ items: [{ ...resin, wasteFraction: undefined }] });
    expect(needs[0].required.value).toBe(4.5);
    expect(assumptions.map(({ origin }) => origin.kind === 'assumed' && origin.at)).toEqual([
      '/items/0/wasteFraction',
    ]);
  });

  test('a net quantity that is a figure brings its own assumptions along', () => {
    const net = assumed<string>('kg', l(2), 'resin for bedding', {
      at: '/core/bedThicknessMm',
      because: 'a default bed',
      cite: { source: 'FROM-MEMORY' },
    });
    expect(needsOf({ items: [{ ...resin, netQuantity: net }] }).assumptions).toContain(net);
  });

  test('least and most carry waste with them', () => {
    const [need] = needsOf({
      items: [{ ...resin, netRange: { low: 4, high: 6 }, wasteRange: { low: 0.1, high: 0.3 } }],
    }).needs;
    expect(need.range.low).toBeCloseTo(4.4, 12);
    expect(need.range.likely).toBeCloseTo(5.31, 12);
    expect(need.range.high).toBeCloseTo(7.8, 12);
  });
});

describe('consumables', () => {
  test('two square metres use 26 pairs of gloves: 12 to the square metre and two for the job', () => {
    const [need] = needsOf({ items: [], consumables: [gloves], drivers: { 'opened-m2': 2, 'job': 1 } }).needs;
    expect(need.net.value).toBe(26);
    expect(need.range).toEqual({ low: 14, likely: 26, high: 52 });
    expect(usedAt(gloves, { 'opened-m2': 4, 'job': 1 })).toBe(50);
  });

  test('pairs are bought whole', () => {
    const [need] = needsOf({
      items: [],
      consumables: [gloves],
      drivers: { 'opened-m2': 0.56, 'job': 1 },
    }).needs;
    expect(need.required.value).toBeCloseTo(8.72, 12);
    expect(need.purchase?.value).toBe(9);
  });

  test('vacuum film is needed under a bag and not under weights', () => {
    const drivers = { 'laminate-m2': 3 };
    expect(needsOf({ items: [], consumables: [film], drivers, flags: ['vacuum'] }).needs).toHaveLength(1);
    expect(needsOf({ items: [], consumables: [film], drivers, flags: ['weights'] }).needs).toHaveLength(0);
  });
});

describe('faults', () => {
  test('all of them are named at once, where they stand', () => {
    const outcome = takeOff({
      items: [
        { ...resin, netQuantity: -1, packQuantity: 0 },
        { ...resin, netQuantity: Number.NaN, netRange: { low: 2, high: 1 } },
      ],
      drivers: { 'cut-m': Number.POSITIVE_INFINITY },
    });
    expect(outcome.ok ? [] : outcome.problems.map(({ code, at }) => `${code} ${at}`)).toEqual([
      'out-of-range /items/0/netQuantity',
      'out-of-range /items/0/packQuantity',
      'out-of-range /items/1/netQuantity',
      'out-of-range /items/1/netRange',
      'duplicate /items/1/id',
      'out-of-range /drivers/cut-m',
    ]);
  });
});
