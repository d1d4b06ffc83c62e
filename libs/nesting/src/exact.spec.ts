import { describe, expect, test } from '@jest/globals';
import { interiorsMeet } from './exact.js';
import { regionFrom } from './no-fit.js';
import type { Region } from './ring.js';

const ring = (...points: readonly (readonly [number, number])[]) => Float64Array.from(points.flat());
const box = (x: number, y: number, width: number, height: number): Region =>
  regionFrom(ring([x, y], [x + width, y], [x + width, y + height], [x, y + height]), []);

describe('whether two pieces overlap', () => {
  test.each([
    ['side by side along a whole edge', box(0, 0, 10, 10), box(10, 0, 10, 10), false],
    ['side by side along part of an edge', box(0, 0, 10, 10), box(10, 5, 10, 10), false],
    ['at a corner', box(0, 0, 10, 10), box(10, 10, 10, 10), false],
    ['by one step', box(0, 0, 10, 10), box(9, 5, 10, 10), true],
    ['the same place twice', box(0, 0, 10, 10), box(0, 0, 10, 10), true],
    ['one inside the other', box(0, 0, 10, 10), box(3, 3, 2, 2), true],
    ['one inside the other along an edge', box(0, 0, 10, 10), box(0, 3, 2, 2), true],
    ['a cross without a corner inside', box(0, 4, 12, 2), box(4, 0, 2, 12), true],
    ['in its hole', regionFrom(box(0, 0, 10, 10).outer, [box(2, 2, 6, 6).outer]), box(2, 2, 6, 6), false],
    ['over its hole', regionFrom(box(0, 0, 10, 10).outer, [box(2, 2, 6, 6).outer]), box(1, 2, 6, 6), true],
    [
      'wedges nose to nose',
      regionFrom(ring([0, 0], [10, 5], [0, 10]), []),
      regionFrom(ring([10, 5], [20, 0], [20, 10]), []),
      false,
    ],
    [
      'a tooth in its notch',
      regionFrom(ring([0, 0], [10, 0], [10, 10], [5, 5], [0, 10]), []),
      regionFrom(ring([5, 5], [10, 10], [0, 10]), []),
      false,
    ],
  ] as const)('%s', (_, one, other, answer) => {
    expect(interiorsMeet(one, other)).toBe(answer);
    expect(interiorsMeet(other, one)).toBe(answer);
  });
});
