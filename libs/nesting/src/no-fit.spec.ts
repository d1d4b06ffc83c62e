import { describe, expect, test } from '@jest/globals';
import { randomStream } from '#lib/kernel';
import { interiorsMeet } from './exact.js';
import { depthAt } from './field.js';
import { convexSum, marginSteps, noFitRings, regionFrom } from './no-fit.js';
import type { NoFitTable } from './no-fit-table.js';
import { boxOf, doubleArea, regionShifted, type Region } from './ring.js';
import { shapeSetOf } from './shapes.js';

const ring = (...points: readonly (readonly [number, number])[]) => Float64Array.from(points.flat());
const square = (size: number): Region => regionFrom(ring([0, 0], [size, 0], [size, size], [0, size]), []);

describe('no-fit regions', () => {
  test('two squares of 40 and 30 keep apart in a square of 70 about the corner of the first', () => {
    const [only, ...rest] = noFitRings(square(40), square(30));
    expect(rest).toEqual([]);
    expect(boxOf(only)).toEqual({ minX: -30, minY: -30, maxX: 40, maxY: 40 });
  });

  test('the sum of a triangle and its mirror image is a hexagon of six times its area', () => {
    const triangle = ring([0, 0], [600, 0], [0, 400]);
    const sum = convexSum(triangle, ring([0, 0], [-600, 0], [0, -400]));
    expect(sum.length / 2).toBe(6);
    expect(doubleArea(sum)).toBe(6 * doubleArea(triangle));
  });

  test('sloping edges keep a margin, edges along the axes none', () => {
    const wedge = regionFrom(ring([0, 0], [100_000, 0], [0, 60_000]), []);
    const [only] = noFitRings(square(50_000), wedge);
    const { minX, minY, maxX, maxY } = boxOf(only);
    expect([maxX, maxY]).toEqual([50_000, 50_000]);
    expect(minX).toBeGreaterThanOrEqual(-100_000 - 10 * marginSteps);
    expect(minY).toBeGreaterThanOrEqual(-60_000 - 10 * marginSteps);
  });

  test('a place that it calls free is free by exact arithmetic, for shapes with notches and holes in four turns', () => {
    const shapes = [
      regionFrom(ring([0, 0], [90_000, 10_000], [70_000, 80_000], [40_000, 30_000], [5_000, 70_000]), []),
      regionFrom(ring([0, 0], [120_000, 0], [120_000, 120_000], [0, 120_000]), [
        ring([20_000, 20_000], [20_000, 100_000], [90_000, 90_000], [100_000, 30_000]),
      ]),
      square(25_000),
    ];
    const set = shapeSetOf(
      shapes.map((region) => ({ region, turnsDeg: [0, 90, 180, 270] })),
      [],
      700,
    );
    expect(faultsIn(set.table)).toEqual([]);
  });
});

function faultsIn(table: NoFitTable): readonly string[] {
  const random = randomStream(7);
  const count = table.shapes.length;
  return Array.from({ length: 4000 }, () => {
    const [fixed, moving] = [Math.floor(random() * count), Math.floor(random() * count)];
    const { low, high } = table.between(fixed, moving);
    const [dx, dy] = [0, 1].map((axis) => Math.round(low[axis] + random() * (high[axis] - low[axis])));
    const meets = interiorsMeet(
      table.shapes[fixed].padded,
      regionShifted(table.shapes[moving].padded, dx, dy),
    );
    return meets && depthAt(table.between(fixed, moving), dx, dy) === 0
      ? `${fixed} ${moving} ${dx} ${dy}`
      : '';
  }).filter((fault) => fault !== '');
}
