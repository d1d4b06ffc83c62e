import { describe, expect, test } from '@jest/globals';
import { planBondPressure, type BondPressurePlan, type BondPressureRequest } from './index.js';

const foredeck: BondPressureRequest = {
  areaM2: 0.8,
  lengthMm: 1000,
  widthMm: 800,
  innerSkin: { thicknessMm: 3, spanMm: 700, isAirtight: true },
  battens: { deckAround: 'wood', woodSpecificGravity: 0.5 },
};
const planOf = (request: BondPressureRequest): BondPressurePlan => {
  const outcome = planBondPressure(request);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};
const optionOf = (request: BondPressureRequest, method: string) =>
  planOf(request).options.find((option) => option.method === method)!;

describe('bond pressure', () => {
  test('one kilopascal on 0.8 m2 is 82 kg: five bags of 20 kg, on props', () => {
    const plan = planOf(foredeck);
    expect([plan.method, plan.turns]).toEqual(['weights', 1]);
    expect(plan.quantities.find(({ code }) => code === 'bags')?.value).toBe(
      Math.ceil((1000 * 0.8) / 9.80665 / 20),
    );
    expect(plan.innerSkin.props.needed).toBe(true);
    expect(plan.quantities.find(({ code }) => code === 'props')?.value).toBeGreaterThan(0);
  });

  test('12 m2 are bedded in turns that a crew can weigh down: three of 408 kg', () => {
    const plan = planOf({ ...foredeck, areaM2: 12, lengthMm: 4000, widthMm: 3000 });
    const kg = (12 * 1000) / 9.80665;
    expect(plan.turns).toBe(Math.ceil(kg / 500));
    expect(plan.quantities.find(({ code }) => code === 'bags')?.value).toBe(Math.ceil(kg / 3 / 20));
  });

  test('boards stand under every bay of an opening, and under the part of one that is left', () => {
    const boards = (widthMm: number): number | undefined =>
      planOf({ ...foredeck, lengthMm: 2000, widthMm, areaM2: widthMm / 500 }).innerSkin.props.lines;
    const one = boards(700) ?? 0;
    expect([one > 0, boards(1400), boards(750)]).toEqual([true, 2 * one, one]);
    expect(boards(1350)).toBeGreaterThan(one);
  });

  test('a thick skin over a short span needs no props', () => {
    expect(planOf({ ...foredeck, innerSkin: { thicknessMm: 8, spanMm: 250 } }).innerSkin.props.needed).toBe(
      false,
    );
  });

  test('with nobody able to prop from below, weights are refused and an airtight skin is bagged', () => {
    const plan = planOf({
      ...foredeck,
      innerSkin: { ...foredeck.innerSkin, thicknessMm: 5, spanMm: 350 },
      canPropFromBelow: false,
      requiredKPa: 2,
    });
    expect(plan.method).toBe('vacuum');
    expect(plan.refusals.join()).toContain('needs props');
  });

  test('without props half a kilopascal is asked, and the reason is said', () => {
    const plan = planOf({ ...foredeck, canPropFromBelow: false });
    expect(plan.requiredKPa).toBe(0.5);
    expect(plan.assumptions.find(({ at }) => at === '/requiredKPa')?.because).toContain('no prop');
  });

  test('a bag on a leaky inner skin is refused, on one nobody has tested too', () => {
    for (const isAirtight of [false, undefined]) {
      const option = optionOf(
        {
          ...foredeck,
          innerSkin: { thicknessMm: 3, spanMm: 700, ...(isAirtight === undefined ? {} : { isAirtight }) },
        },
        'vacuum',
      );
      expect([option.verdict, option.refusals.length]).toEqual(['fails', 1]);
    }
  });

  test('screws through the piece into 2 mm of inner skin hold by thread shear, and a pull test proves it', () => {
    const through = {
      ...foredeck,
      innerSkin: { thicknessMm: 2, spanMm: 700 },
      canPropFromBelow: false,
      battens: { deckAround: 'laminate-only', isIntoInnerSkin: true, threadMm: 2 },
    } as const;
    const option = optionOf(through, 'battens');
    // 0.5 kPa x 90 x 150 mm against π x 4.2 x 2 x 13.8/3
    expect(option.utilisation).toBeCloseTo((0.5e-3 * 90 * 150) / ((Math.PI * 4.2 * 2 * 13.8) / 3), 6);
    expect(option.reasons.join()).toMatch(/pull one screw on the spot to 14 N/);
    expect(planOf(through).method).toBe('battens');
    expect(planOf(through).innerSkin.props.needed).toBe(false);
  });

  test('where nothing is said of what screws hold in, battens are not established', () => {
    const option = optionOf({ ...foredeck, battens: undefined }, 'battens');
    expect([option.verdict, option.availableKPa]).toEqual(['not-established', undefined]);
  });

  test('a screw that would pull more than it may is refused with both numbers', () => {
    const option = optionOf({ ...foredeck, requiredKPa: 30 }, 'battens');
    expect(option.verdict).toBe('fails');
    expect(option.refusals[0]).toMatch(/would pull 405 N and may pull 206 N/);
  });

  test('halving the screw spacing cuts the sag of a batten sixteen times', () => {
    const sagOf = (screwSpacingMm: number) =>
      Number(
        /screws ([\d.]+) mm/.exec(
          optionOf(
            {
              ...foredeck,
              requiredKPa: 60,
              battens: { deckAround: 'wood', woodSpecificGravity: 0.5, screwSpacingMm },
            },
            'battens',
          ).evenness,
        )?.[1],
      );
    expect(sagOf(800) / sagOf(400)).toBeCloseTo(16, 0);
  });

  test('vacuum presses less in the mountains', () => {
    const [sea, lake] = [0, 3800].map(
      (altitudeM) => optionOf({ ...foredeck, altitudeM }, 'vacuum').availableKPa!,
    );
    expect(sea).toBeCloseTo(76, 0);
    expect(lake / sea).toBeCloseTo(0.63, 1);
  });

  test('a bag that loses its vacuum is refused; a tight one holds', () => {
    expect(optionOf({ ...foredeck, vacuum: { dropKPa: 20, dropMinutes: 5 } }, 'vacuum').verdict).toBe(
      'fails',
    );
    expect(optionOf({ ...foredeck, vacuum: { dropKPa: 1, dropMinutes: 5 } }, 'vacuum').verdict).toBe(
      'passes',
    );
  });

  test('weights that are not at hand or would slide are refused', () => {
    expect(optionOf({ ...foredeck, weights: { availableKg: 60 } }, 'weights').refusals[0]).toContain(
      '60 kg are at hand',
    );
    expect(optionOf({ ...foredeck, slopeDeg: 20 }, 'weights').refusals[0]).toContain('slide');
  });

  test('the wish of the caller is followed where it can be', () => {
    expect(planOf({ ...foredeck, prefer: 'vacuum' }).method).toBe('vacuum');
    expect(
      planOf({ ...foredeck, prefer: 'battens', battens: { deckAround: 'none' } }).recommendation,
    ).toContain('not battens');
  });

  test('an altitude of 9,000 m and other impossible numbers are named, all at once', () => {
    const outcome = planBondPressure({
      ...foredeck,
      altitudeM: 9000,
      areaM2: 0,
      innerSkin: { thicknessMm: 0, spanMm: Number.NaN },
    });
    expect(outcome.ok ? [] : outcome.problems.map(({ at }) => at)).toEqual([
      '/areaM2',
      '/innerSkin/thicknessMm',
      '/innerSkin/spanMm',
      '/altitudeM',
    ]);
  });
});
