import { describe, expect, test } from '@jest/globals';
import { convexParts } from './convex-parts.js';
import { doubleArea, isConvex } from './ring.js';

const ring = (...points: readonly (readonly [number, number])[]) => Float64Array.from(points.flat());

describe('convex parts', () => {
  test('a convex outline is its own only part', () => {
    expect(convexParts(ring([0, 0], [4, 0], [4, 3], [0, 3]))).toHaveLength(1);
  });

  test('an L falls into two parts, a U into three, with the whole area and nothing more', () => {
    const l = ring([0, 0], [6, 0], [6, 2], [2, 2], [2, 6], [0, 6]);
    const u = ring([0, 0], [9, 0], [9, 6], [6, 6], [6, 2], [3, 2], [3, 6], [0, 6]);
    for (const [shape, most] of [
      [l, 2],
      [u, 3],
    ] as const) {
      const parts = convexParts(shape);
      expect(parts.length).toBeLessThanOrEqual(most);
      expect(parts.every(isConvex)).toBe(true);
      expect(parts.reduce((sum, part) => sum + doubleArea(part), 0)).toBe(doubleArea(shape));
    }
  });

  test('a star of sixteen points is taken apart exactly', () => {
    const star = Float64Array.from(
      Array.from({ length: 16 }, (_, k) => {
        const radius = k % 2 === 0 ? 1000 : 430;
        return [
          Math.round(radius * Math.cos((k * Math.PI) / 8)),
          Math.round(radius * Math.sin((k * Math.PI) / 8)),
        ];
      }).flat(),
    );
    const parts = convexParts(star);
    expect(parts.every(isConvex)).toBe(true);
    expect(parts.reduce((sum, part) => sum + doubleArea(part), 0)).toBe(doubleArea(star));
  });
});
