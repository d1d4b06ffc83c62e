import { describe, expect, test } from '@jest/globals';
import { amountFactorAt } from './at-extents.js';

describe('what a line comes to where more is found', () => {
  const planned = [
    { extentFactor: 0.5, amountFactor: 0.8 },
    { extentFactor: 2, amountFactor: 1.4 },
    { extentFactor: 3, amountFactor: 1.5 },
  ];

  // By hand: half-way from 1 to 2 lies half-way from 1 to 1.4.
  test('lies straight between the extents at which it was planned', () =>
    expect([0.75, 1, 1.5, 2.5].map((extent) => amountFactorAt(planned, extent))).toEqual([
      expect.closeTo(0.9, 12),
      1,
      expect.closeTo(1.2, 12),
      expect.closeTo(1.45, 12),
    ]));

  test('is level beyond the last of them', () =>
    expect([0.1, 9].map((extent) => amountFactorAt(planned, extent))).toEqual([0.8, 1.5]));

  test('stays as it is where nothing was planned', () => expect(amountFactorAt([], 4)).toBe(1));
});
