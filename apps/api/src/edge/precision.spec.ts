import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import { decimalsByUnit, LEAST_DIGITS, precise } from './precision.js';

describe('the precision of what was worked out', () => {
  test.each([
    [{ labourH: 42.688287750544404 }, { labourH: 42.69 }],
    [{ labourH: { p10: 51.354342, p90: 82.1096136 } }, { labourH: { p10: 51.35, p90: 82.11 } }],
    [{ hours: { low: 0.660007, mean: 1.10001 } }, { hours: { low: 0.66, mean: 1.1 } }],
    [{ thicknessMm: 12.7 }, { thicknessMm: 12.7 }],
    [{ areaM2: 0.450515442 }, { areaM2: 0.4505 }],
    [{ wasteM2: 0.000042345 }, { wasteM2: 0.0000423 }],
    [
      { unit: 'kg', netQuantity: 1.242729634 },
      { unit: 'kg', netQuantity: 1.2427 },
    ],
    [
      { unit: 'kPa', demand: 3.4567891 },
      { unit: 'kPa', demand: 3.45679 },
    ],
    [{ utilisation: 0.897576604 }, { utilisation: 0.897577 }],
    [{ outline: [[12345.67891, 0.1 + 0.2]] }, { outline: [[12345.68, 0.3]] }],
    [{ workingDays: { p50: 14.6492314 } }, { workingDays: { p50: 14.65 } }],
    [{ amount: '8070.620000000001' }, { amount: '8070.620000000001' }],
    [
      { count: 3, at: null, is: true },
      { count: 3, at: null, is: true },
    ],
  ])('%j is shown as %j', (worked, shown) => {
    expect(precise(worked)).toEqual(shown);
  });

  test('twice is as once, order is kept, and the error is at most half of the last place', () => {
    const number = fc.double({ min: -1e9, max: 1e9, noNaN: true });
    fc.assert(
      fc.property(number, number, fc.constantFrom(...Object.keys(decimalsByUnit)), (a, b, unit) => {
        const shown = (value: number): number =>
          (precise({ unit, value }) as { readonly value: number }).value;
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        expect(shown(low)).toBeLessThanOrEqual(shown(high));
        expect(shown(shown(a))).toBe(shown(a));
        const half = 0.5 * 10 ** -decimalsByUnit[unit];
        expect(Math.abs(shown(a) - a)).toBeLessThanOrEqual(half * (1 + 1e-6));
        if (a !== 0)
          expect(Math.abs(shown(a) - a) / Math.abs(a)).toBeLessThanOrEqual(
            0.5 * 10 ** (1 - LEAST_DIGITS) * (1 + 1e-9),
          );
      }),
    );
  });

  test('bytes and dates are no objects of numbers', () => {
    const bytes = Buffer.from('a');
    const day = new Date(0);
    expect(precise({ bytes, day })).toEqual({ bytes, day });
  });
});
