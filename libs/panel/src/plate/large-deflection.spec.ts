import { expect, test } from '@jest/globals';
import { largeDeflection } from './large-deflection.js';

const skin = {
  thicknessMm: 2,
  modulusXMPa: 12000,
  modulusYMPa: 12000,
  shearModulusMPa: 4600,
  poissonXY: 0.3,
  tensileStrengthMPa: 150,
  compressiveStrengthMPa: 130,
};
const size = { lengthXMm: 600, widthYMm: 600 };

test('a sag of less than half the skin stays as plate bending has it', () => {
  expect(largeDeflection(skin, size, 0.9)).toEqual({
    deflectionMm: 0.9,
    bendingShare: 1,
    membraneStressMPa: 0,
  });
});

/** By hand: 1.5 x 2^3 + 2 = 14, so that a linear sag of 14 skins is 2 skins; 2 skins are 4 mm, 2/14 of the bending. */
test('a linear sag of fourteen skins is a sag of two', () => {
  const sagging = largeDeflection(skin, size, 28);
  expect(sagging.deflectionMm).toBeCloseTo(4, 10);
  expect(sagging.bendingShare).toBeCloseTo(1 / 7, 10);
  // (4 pi)^2/8 x 2/360000 = 1.0966e-4; times 12000/0.91.
  expect(sagging.membraneStressMPa).toBeCloseTo(1.4461, 3);
});

test('a sag upwards is a sag downwards turned over', () => {
  expect(largeDeflection(skin, size, -28).deflectionMm).toBeCloseTo(-4, 10);
});
