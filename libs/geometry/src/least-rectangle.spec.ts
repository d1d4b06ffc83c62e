import { describe, expect, test } from '@jest/globals';
import { leastRectangle } from './index.js';

const turned = (ring: readonly (readonly [number, number])[], degrees: number) => {
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return ring.map(([x, y]) => [x * cos - y * sin, x * sin + y * cos] as const);
};

describe('the least rectangle round a ring', () => {
  const board = [
    [0, 0],
    [600, 0],
    [600, 200],
    [0, 200],
  ] as const;

  test('a board has its length and width however it lies', () => {
    for (const degrees of [0, 17, 45, 90, 133]) {
      const found = leastRectangle(turned(board, degrees));
      expect(found.lengthMm).toBeCloseTo(600, 6);
      expect(found.widthMm).toBeCloseTo(200, 6);
    }
  });

  test('a right triangle comes out of the rectangle over its legs: area by elementary geometry is twice its own', () => {
    const found = leastRectangle([
      [0, 0],
      [400, 0],
      [0, 300],
    ]);
    expect(found.lengthMm * found.widthMm).toBeCloseTo(2 * 60000, 6);
  });

  test('no turn of the ring finds a smaller one', () => {
    const kite = [
      [0, 0],
      [310, 40],
      [420, 260],
      [90, 330],
    ] as const;
    const { lengthMm, widthMm } = leastRectangle(kite);
    for (let degrees = 0; degrees < 180; degrees += 0.25) {
      const ring = turned(kite, degrees);
      const span = (axis: 0 | 1) =>
        Math.max(...ring.map((point) => point[axis])) - Math.min(...ring.map((point) => point[axis]));
      expect(span(0) * span(1)).toBeGreaterThanOrEqual(lengthMm * widthMm - 1e-6);
    }
  });
});
