import { describe, expect, test } from '@jest/globals';
import { takeOff, type Need, type NeedRequest } from '#lib/takeoff';
import { billedOf } from './goods-billing.js';

function need(changes: Partial<NeedRequest>): Need {
  const outcome = takeOff({
    items: [
      {
        id: 'one',
        title: 'one',
        material: 'one',
        unit: 'kg',
        purpose: 'bond',
        netQuantity: 1,
        wasteFraction: 0,
        ...changes,
      },
    ],
  });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value.needs[0];
}

const kept = { kind: 'kept' } as const;
const judged = { source: 'COMMON-PRACTICE' } as const;

describe('what a job is charged of the packs it opens', () => {
  // By hand: 1.2 kg of 4 kg used; of the 2.8 kg left, two months of twenty-four are lost: 1.2 + 2.8 / 12 = 1.43333.
  test('is what it used, and of an opened pack the part that will be past its date', () => {
    const { by, quantity } = billedOf(
      need({ netQuantity: 1, wasteFraction: 0.2 }),
      { quantity: 4, shelfLifeMonths: 24 },
      kept,
    );
    expect(by).toBe('use');
    expect(quantity.value).toBeCloseTo(1.433_333, 6);
  });

  test('is no more than what it used where nothing spoils', () =>
    expect(billedOf(need({}), { quantity: 4 }, kept).quantity.value).toBe(1));

  test('is the whole pack where it is used up', () =>
    expect(billedOf(need({ netQuantity: 4 }), { quantity: 4 }, kept).by).toBe('whole-packs'));

  test('counts pieces whole', () =>
    expect(billedOf(need({ unit: 'each', netQuantity: 2.1 }), { quantity: 12 }, kept).quantity.value).toBe(
      3,
    ));

  test('counts a roll of tape by what is torn off, and owes no more than that however small the job', () => {
    const { by, quantity } = billedOf(need({ unit: 'roll', netQuantity: 0.012 }), { quantity: 1 }, kept);
    expect([by, quantity.value]).toEqual(['use', 0.012]);
  });

  // By hand: a sheet of 1 x 2 m has quarters of 0.5 m2; 0.6 m2 of core takes two of them.
  test('goes by quarters of a sheet', () =>
    expect(
      billedOf(
        need({ unit: 'm2', netQuantity: 0.6, sheet: { lengthMm: 2000, widthMm: 1000 } }),
        { quantity: 2 },
        kept,
      ).quantity.value,
    ).toBeCloseTo(1, 12));

  test('is one job of the wear of gear, and all of paint in the colour of the boat', () => {
    const gear = { kind: 'outlasts', servesJobs: { value: 20, cite: judged } } as const;
    const worn = billedOf(need({ unit: 'each', netQuantity: 1.5 }), { quantity: 2 }, gear);
    expect([worn.by, worn.quantity.value]).toEqual(['wear', 0.1]);
    const paint = billedOf(need({ netQuantity: 0.1 }), { quantity: 0.946 }, { kind: 'of-no-use' });
    expect([paint.by, paint.quantity.value]).toEqual(['whole-packs', 0.946]);
  });

  test.each([0.01, 0.2, 1, 3.99, 4])('is never more than was bought: %f of 4 kg', (netQuantity) => {
    const { quantity } = billedOf(need({ netQuantity }), { quantity: 4, shelfLifeMonths: 1 }, kept);
    expect(quantity.value).toBeLessThanOrEqual(4);
  });
});
