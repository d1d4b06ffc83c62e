import { expect, test } from '@jest/globals';
import { randomStream } from '#lib/kernel';
import { REPEATED_BY_HAND } from './restoration.js';

/** Each ply within 15 % of its thickness, anything between alike likely. */
const skinMm = (random: () => number, plies: number): number =>
  Array.from({ length: plies }, () => 0.8 * (1 + 0.15 * (2 * random() - 1))).reduce(
    (sum, one) => sum + one,
    0,
  );

/** Bending stiffness of a sandwich per modulus and width: both skins in series, about the core between them. */
const stiffness = (outerMm: number, innerMm: number, coreMm: number): number =>
  ((outerMm * innerMm) / (outerMm + innerMm)) * (coreMm + (outerMm + innerMm) / 2) ** 2;

test('two outer skins laid alike in four plies differ in stiffness by more than the tolerance in most cases', () => {
  const random = randomStream(20261129);
  const pairs = Array.from({ length: 20_000 }, () => {
    const [one, other] = [skinMm(random, 4), skinMm(random, 4)];
    return Math.abs(stiffness(one, 2, 12.7) / stiffness(other, 2, 12.7) - 1);
  });
  const further = pairs.filter((away) => away > REPEATED_BY_HAND).length / pairs.length;
  expect(further).toBeGreaterThan(0.7);
  // By hand: a ply uniform within 15 % has a standard deviation of 8.7 %, a skin of four 4.3 %, a pair 6.1 %.
  const thickness = Array.from({ length: 20_000 }, () => skinMm(random, 4) / skinMm(random, 4) - 1);
  const sd = Math.sqrt(thickness.reduce((sum, one) => sum + one * one, 0) / thickness.length);
  expect(sd).toBeCloseTo(0.061, 2);
});
