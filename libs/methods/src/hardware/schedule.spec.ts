import { describe, expect, test } from '@jest/globals';
import { detailOf } from '#lib/kernel';
import { cardFaults, fittingCard, torqueFor, type FittingStated } from './schedule.js';

const stack = { outerSkinMm: 3, coreMm: 12.7, innerSkinMm: 2 };
const aFitting = (given: Partial<FittingStated> & Pick<FittingStated, 'kind'>): FittingStated => ({
  id: 'F',
  isHighlyLoaded: false,
  ...given,
});

describe('the card of a fitting', () => {
  test('gives a windlass with a base of 260 mm a plate and a solid insert that it stands on', () => {
    const { plate, insert, fastenerMm } = fittingCard(aFitting({ kind: 'windlass', baseMm: 260 }), stack);
    expect([plate?.lengthMm, plate?.widthMm, plate?.thicknessMm]).toEqual([285, 285, 12]);
    expect([insert?.lengthMm, insert?.widthMm, insert?.thicknessMm]).toEqual([360, 360, 12.7]);
    expect(fastenerMm).toBe(9.525);
  });

  test('takes the length of a bolt from the stack: foot 6, deck 17.7, plate 6, nut and washer 8.9 mm', () => {
    expect(fittingCard(aFitting({ kind: 'stanchion' }), stack).fastenerLengthMm).toBe(40);
    expect(fittingCard(aFitting({ kind: 'stanchion' }), { ...stack, coreMm: 25.4 }).fastenerLengthMm).toBe(
      55,
    );
  });

  test('keeps plate and insert of a narrow base narrow', () => {
    const { plate, insert } = fittingCard(aFitting({ kind: 'cleat', baseMm: 250 }), stack);
    expect([plate?.lengthMm, plate?.widthMm]).toEqual([275, 85]);
    expect([insert?.lengthMm, insert?.widthMm]).toEqual([330, 140]);
  });

  /** Source: [METHODS-TORQUE] greased 1/4, 5/16 and 3/8 in at 65 % of yield: 2, 4 and 8 lbf.ft; the cube is our reading between. */
  test('tightens greased bolts as the table prints, within its whole foot-pounds', () => {
    for (const [boltMm, printedNm] of [
      [6.35, 2.7],
      [7.94, 5.4],
      [9.525, 10.8],
    ])
      expect(Math.abs(torqueFor(boltMm) - printedNm)).toBeLessThan(1.7);
    // 9.1 N.m at 3/8 in where 8 lbf.ft are printed: the cube stays 1.7 N.m under the table, on the side that spares the core.
    expect(torqueFor(9.525)).toBeCloseTo(9.11, 2);
  });
});

describe('a card that contradicts itself is refused with the value that would be right:', () => {
  test('a plate smaller than the base that is stated', () => {
    const [fault] = cardFaults(aFitting({ kind: 'windlass', baseMm: 260, plateMm: 150 }), '/fittings/0');
    expect([fault.at, fault.code]).toEqual(['/fittings/0/plateMm', 'contradiction']);
    expect(detailOf(fault)).toContain('it must be 260 mm or more');
  });

  test('a plate smaller than the usual base, where none is stated', () => {
    const [fault] = cardFaults(aFitting({ kind: 'windlass', plateMm: 150 }), '/fittings/0');
    expect(detailOf(fault)).toMatch(/usual base of a windlass, 260 mm.*or the base must be stated/);
    expect(cardFaults(aFitting({ kind: 'windlass', plateMm: 150, baseMm: 120 }), '/fittings/0')).toEqual([]);
  });

  test('an insert smaller than the base, and a bolt wider than its hole', () => {
    const faults = cardFaults(
      aFitting({ kind: 'cleat', baseMm: 200, insertMm: 100, boltMm: 10, holeDiameterMm: 8 }),
      '',
    );
    expect(faults.map(({ at }) => at)).toEqual(['/insertMm', '/boltMm']);
  });
});
