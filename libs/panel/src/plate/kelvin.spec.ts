import { expect, test } from '@jest/globals';
import { kerAndSlope } from './kelvin.js';
import { pointLoad, roundPatch } from './indentation.js';

test('ker and its slope at 1 and 5, as tables give them (from memory)', () => {
  expect(kerAndSlope(1).ker).toBeCloseTo(0.2867062, 6);
  expect(kerAndSlope(1).slope).toBeCloseTo(-0.6946039, 6);
  expect(kerAndSlope(5).ker).toBeCloseTo(-0.0115117, 6);
});

test('the slope is the slope', () => {
  const step = 1e-5;
  expect((kerAndSlope(2 + step).ker - kerAndSlope(2 - step).ker) / (2 * step)).toBeCloseTo(
    kerAndSlope(2).slope,
    8,
  );
});

test('a small foot dents as a point does, and a wide one presses the core with its own pressure', () => {
  const skin = { skinBending: 4327, foundation: 4 };
  expect(roundPatch(skin, 800, 0.1).depthMm).toBeCloseTo(pointLoad(skin, 800).depthMm, 3);
  expect(roundPatch(skin, 1e6, 200).coreStressMPa).toBeCloseTo(1e6 / (Math.PI * 200 ** 2), 6);
});
