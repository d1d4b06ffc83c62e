import { describe, expect, test } from '@jest/globals';
import { fittingHours } from './hours.js';
import { fittingCard, type FittingStated } from './schedule.js';

const stack = { outerSkinMm: 3, coreMm: 12.7, innerSkinMm: 2 };
const cards = (...given: readonly (Partial<FittingStated> & Pick<FittingStated, 'kind'>)[]) =>
  given.map((one, index) => fittingCard({ id: `F${index}`, isHighlyLoaded: false, ...one }, stack));

describe('hours of fittings', () => {
  test.each([
    ['windlass', 2, 7, 7],
    ['winch', 1, 2.5, 2.5],
    ['hatch', 1.5, 3, 0],
    ['chainplate', 1, 2.5, 2.5],
    ['stanchion', 0.5, 1, 1],
  ])(
    '%s alone: by its own card, whoever holds the nuts counted where one is needed',
    (kind, offH, onH, helpedH) => {
      expect(fittingHours(cards({ kind }))).toEqual({ offH, onH, helpedH });
    },
  );

  test('a track is charged by its length', () => {
    const long = fittingCard({ id: 'T', kind: 'track', baseMm: 2500, isHighlyLoaded: false }, stack);
    expect(fittingHours([long])).toEqual({ offH: 1.25, onH: 3, helpedH: 3 });
    expect([long.fasteners, long.sealant.ml]).toEqual([25, 375]);
  });

  test('a row of four stanchions comes off one by one and is set in a whole and three halves', () => {
    const row = Array.from({ length: 4 }, () => ({ kind: 'stanchion' }));
    expect(fittingHours(cards(...row))).toEqual({ offH: 2, onH: 2.5, helpedH: 2.5 });
  });

  test('the order in which they stand in the record changes nothing', () => {
    const [a, b, c] = cards({ kind: 'winch' }, { kind: 'cleat' }, { kind: 'winch' });
    expect(fittingHours([a, b, c])).toEqual(fittingHours([c, b, a]));
  });

  test('hours that the record states count whole, beside others of their kind too', () => {
    const made = cards({ kind: 'winch' }, { kind: 'winch', offH: 3, onH: 6 });
    expect(fittingHours(made)).toEqual({ offH: 4, onH: 8.5, helpedH: 8.5 });
    expect(made[1].assumed).not.toContain('hours to set it again');
  });
});
