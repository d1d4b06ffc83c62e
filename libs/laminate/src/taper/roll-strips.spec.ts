import { expect, test } from '@jest/globals';
import { lengthOffRoll } from './roll-strips.js';

test('four strips of 0.31 m lie abreast on a roll of 1.27 m', () => {
  const strips = Array.from({ length: 4 }, () => ({ lengthMm: 2500, widthMm: 310 }));
  expect(lengthOffRoll(strips, 1270)).toBe(2500);
  expect(lengthOffRoll([...strips, { lengthMm: 900, widthMm: 310 }], 1270)).toBe(3400);
});

test('a short strip lies in what a longer row leaves, and one as wide as the roll takes its own length', () => {
  expect(
    lengthOffRoll(
      [
        { lengthMm: 600, widthMm: 400 },
        { lengthMm: 1000, widthMm: 800 },
        { lengthMm: 500, widthMm: 1270 },
      ],
      1270,
    ),
  ).toBe(1500);
  expect(lengthOffRoll([], 1270)).toBe(0);
});
