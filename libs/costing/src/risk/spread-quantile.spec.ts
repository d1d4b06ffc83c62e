import { describe, expect, test } from '@jest/globals';
import { normalQuantile, normalCdf, triangularQuantile } from '#lib/kernel';
import { betaQuantiles } from './spread-quantile.js';

describe('the normal distribution', () => {
  test('score and share undo each other from one in a billion to all but one in a billion', () => {
    for (const p of [1e-9, 1e-6, 0.001, 0.0749, 0.0751, 0.3, 0.5, 0.8, 0.9249, 0.9251, 0.999, 1 - 1e-6]) {
      expect(Math.abs(normalCdf(normalQuantile(p)) / p - 1)).toBeLessThan(2e-13);
    }
  });

  test('the share agrees with Simpson integration of the density', () => {
    const steps = 4000;
    const density = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
    for (const z of [0.3, 1, 2.5, 2.999, 3.001, 4]) {
      const h = z / steps;
      let sum = density(0) + density(z);
      for (let i = 1; i < steps; i += 1) sum += density(i * h) * (i % 2 === 0 ? 2 : 4);
      expect(Math.abs(normalCdf(z) - 0.5 - (sum * h) / 3)).toBeLessThan(1e-13);
    }
  });
});

describe('three points as a distribution', () => {
  const points = { low: 0.9, likely: 1.4, high: 2.5 };

  test('a triangle begins and ends at its ends and splits at its most likely point', () => {
    expect(triangularQuantile(points, 0)).toBeCloseTo(0.9, 12);
    expect(triangularQuantile(points, 0.3125)).toBeCloseTo(1.4, 12);
    expect(triangularQuantile(points, 1)).toBeCloseTo(2.5, 12);
  });

  test('what is certain has one value', () => {
    expect(triangularQuantile({ low: 2, likely: 2, high: 2 }, 0.7)).toBe(2);
    expect([...betaQuantiles({ low: 2, likely: 2, high: 2 }, Float64Array.of(0.1, 0.9))]).toEqual([2, 2]);
  });

  test('a beta spread with its likely point in the middle is x2(1-x)2: half at a half, F(x) = 10x3 - 15x4 + 6x5', () => {
    const at = [0.1, 0.25, 0.5, 0.75, 0.9];
    const share = (x: number): number => 10 * x ** 3 - 15 * x ** 4 + 6 * x ** 5;
    const found = betaQuantiles({ low: 0, likely: 0.5, high: 1 }, Float64Array.from(at.map(share)));
    at.forEach((x, index) => expect(Math.abs(found[index] - x)).toBeLessThan(1e-5));
  });

  test('the mean of the beta spread is (a + 4m + b)/6', () => {
    const probabilities = Float64Array.from({ length: 20000 }, (_, i) => (i + 0.5) / 20000);
    const quantiles = betaQuantiles(points, probabilities);
    expect(quantiles.reduce((sum, x) => sum + x, 0) / 20000).toBeCloseTo((0.9 + 4 * 1.4 + 2.5) / 6, 5);
  });
});
