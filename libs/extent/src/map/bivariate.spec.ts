import { expect, test } from '@jest/globals';
import { normalCdf, normalDensity } from '#lib/kernel';
import { tiedBelow } from './bivariate.js';

const bothBelow = (h: number, k: number, r: number): number =>
  normalCdf(h) * normalCdf(k) + tiedBelow(h, k, r);

test('at the middle of both it is a quarter and the angle of the correlation', () => {
  // Sheppard 1899: P = 1/4 + asin(r) / (2 pi).
  for (const r of [-0.9, -0.5, 0, 0.3, 0.7, 0.9])
    expect(bothBelow(0, 0, r)).toBeCloseTo(0.25 + Math.asin(r) / (2 * Math.PI), 7);
});

/** The same by adding up strips: P(y < k | x) over the density of x. */
function byStrips(h: number, k: number, r: number): number {
  const step = 1e-3;
  let sum = 0;
  for (let x = -8 + step / 2; x < h - 1e-12; x += step)
    sum += normalDensity(x) * normalCdf((k - r * x) / Math.sqrt(1 - r * r)) * step;
  return sum;
}

test('it agrees with adding up strips', () => {
  for (const [h, k, r] of [
    [0.5, -1, 0.4],
    [-1.5, -0.7, 0.85],
    [2, 0.3, -0.6],
    [1, 1, 0.9],
    [0.5, 0.5, 0.999],
    [-1, 0.5, 0.99],
  ])
    expect(bothBelow(h, k, r)).toBeCloseTo(byStrips(h, k, r), 6);
  expect(bothBelow(0.5, 0.7, 1)).toBeCloseTo(normalCdf(0.5), 9);
  expect(bothBelow(0.5, 0.7, -1)).toBeCloseTo(normalCdf(0.5) + normalCdf(0.7) - 1, 9);
});
