import { describe, expect, test } from '@jest/globals';
import { triangularMean, triangularQuantile, triangularVariance } from './three-point.js';

describe('a triangle on 0, 3, 6 and one on 0.9, 1.4, 2.5', () => {
  const even = { low: 0, likely: 3, high: 6 };
  const skew = { low: 0.9, likely: 1.4, high: 2.5 };

  // By hand: 9/3; 4.8/3.
  test('have their means at the centre of gravity', () =>
    expect([even, skew].map(triangularMean)).toEqual([3, expect.closeTo(1.6, 12)]));

  // By hand: (9 + 36 - 18)/18; (0.81 + 1.96 + 6.25 - 1.26 - 2.25 - 3.5)/18 = 2.01/18.
  test('have the variances of the textbook', () =>
    expect([even, skew].map(triangularVariance)).toEqual([1.5, expect.closeTo(2.01 / 18, 12)]));

  test('agree with mean and variance of their quantiles', () => {
    const steps = 20_000;
    const values = Array.from({ length: steps }, (_, step) => triangularQuantile(skew, (step + 0.5) / steps));
    const mean = values.reduce((sum, value) => sum + value / steps, 0);
    const variance = values.reduce((sum, value) => sum + (value - mean) ** 2 / steps, 0);
    expect(mean).toBeCloseTo(triangularMean(skew), 6);
    expect(variance).toBeCloseTo(triangularVariance(skew), 5);
  });
});
