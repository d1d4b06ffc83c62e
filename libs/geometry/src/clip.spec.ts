import { describe, expect, test } from '@jest/globals';
import {
  areaMm2,
  bounds,
  centroid,
  circle,
  containsPoint,
  convexHull,
  cutByLine,
  difference,
  interiorPoint,
  intersection,
  offset,
  perimeterMm,
  principalAxisRad,
  rectangle,
  regionOf,
  roundCorners,
  roundedCorners,
  segmentWithin,
  simplifyRing,
  strip,
  union,
  type Point,
} from './index.js';

const square = regionOf(rectangle(0, 0, 100, 100));

describe('regions', () => {
  test('two squares that overlap by half count the shared part once', () => {
    expect(areaMm2(union(square, regionOf(rectangle(50, 0, 150, 100))))).toBe(15_000);
  });

  test('squares that touch along an edge become one', () => {
    const joined = union(square, regionOf(rectangle(100, 0, 200, 100)));
    expect(joined).toHaveLength(1);
    expect(joined[0].outer).toHaveLength(4);
  });

  test('a frame with an island inside keeps hole and island', () => {
    const frame = regionOf(rectangle(0, 0, 100, 100), [rectangle(20, 20, 80, 80)]);
    const withIsland = union(frame, regionOf(rectangle(40, 40, 60, 60)));
    expect(withIsland.map(({ holes }) => holes.length).sort()).toEqual([0, 1]);
    expect(areaMm2(withIsland)).toBe(10_000 - 3600 + 400);
    expect(perimeterMm(withIsland)).toBe(400 + 240 + 80);
  });

  test('a hole that swallows the panel leaves nothing', () => {
    expect(regionOf(rectangle(0, 0, 100, 100), [rectangle(-1, -1, 101, 101)])).toEqual([]);
  });

  test('a hole on the edge becomes a notch', () => {
    const notched = regionOf(rectangle(0, 0, 100, 100), [rectangle(40, 80, 60, 120)]);
    expect(notched[0].holes).toEqual([]);
    expect(areaMm2(notched)).toBe(10_000 - 400);
  });

  test('difference and intersection share the whole between them', () => {
    const other = regionOf(circle([100, 50], 30));
    expect(areaMm2(difference(square, other)) + areaMm2(intersection(square, other))).toBeCloseTo(10_000, 1);
  });

  test('shrinking a square by half its side leaves nothing, not an error', () => {
    expect(offset(square, -50)).toEqual([]);
  });

  test('a cut loses nothing and keeps its sides', () => {
    const { left, right } = cutByLine(square, [30, -10], [30, 10]);
    expect([areaMm2(left), areaMm2(right)]).toEqual([3000, 7000]);
  });

  test('the centroid of an L stands where the two rectangles balance', () => {
    const angle = union(regionOf(rectangle(0, 0, 100, 20)), regionOf(rectangle(0, 20, 20, 100)));
    const [x, y] = centroid(angle) ?? [0, 0];
    expect([x, y]).toEqual([
      expect.closeTo((2000 * 50 + 1600 * 10) / 3600, 9),
      expect.closeTo((2000 * 10 + 1600 * 60) / 3600, 9),
    ]);
  });

  test('a place inside an L is inside it, clear of its edges', () => {
    const angle = union(regionOf(rectangle(0, 0, 100, 20)), regionOf(rectangle(0, 20, 20, 100)));
    const inside = interiorPoint(angle);
    expect(inside !== undefined && containsPoint(angle, inside.at)).toBe(true);
    expect(inside?.clearanceMm).toBeGreaterThan(9.5);
  });

  test('the empty region has no bounds, centre or inside', () => {
    expect([bounds([]), centroid([]), interiorPoint([])]).toEqual([undefined, undefined, undefined]);
  });
});

describe('lines and corners', () => {
  test('a support line is cut to the part within the panel and outside the hatch', () => {
    const panel = regionOf(rectangle(0, 0, 100, 100), [rectangle(40, 40, 60, 60)]);
    const ends = segmentWithin(panel, [-50, 50], [150, 50]).flat(2);
    expect(ends).toEqual([0, 50, 40, 50, 60, 50, 100, 50].map((value) => expect.closeTo(value, 9)));
  });

  test('corners inside and on the edge count as inside, a hole does not', () => {
    const panel = regionOf(rectangle(0, 0, 100, 100), [rectangle(40, 40, 60, 60)]);
    const places: readonly Point[] = [
      [0, 0],
      [50, 0],
      [100, 50],
      [50, 50],
      [-1, 0],
    ];
    expect(places.map((place) => containsPoint(panel, place))).toEqual([true, true, true, false, false]);
  });

  test('a 20 mm corner radius takes (4 - pi) r2 from a square', () => {
    const rounded = regionOf(roundCorners(rectangle(0, 0, 100, 100), 20));
    expect(areaMm2(rounded)).toBeCloseTo(10_000 - (4 - Math.PI) * 400, -1);
  });

  test('where the edges are too short the corner says the radius it got', () => {
    expect(roundedCorners(rectangle(0, 0, 100, 30), 50).map(({ radiusMm }) => radiusMm)).toEqual(
      [15, 15, 15, 15].map((radius) => expect.closeTo(radius, 9)),
    );
  });

  test('a hull leaves out places inside it and in line with its edges', () => {
    expect(
      convexHull([
        [0, 0],
        [50, 0],
        [100, 0],
        [100, 100],
        [0, 100],
        [50, 50],
      ]),
    ).toEqual([
      [0, 0],
      [100, 0],
      [100, 100],
      [0, 100],
    ]);
  });

  test('a wavering edge is straightened whichever corner comes first', () => {
    const wavering: readonly Point[] = [
      [0, 0],
      [30, 1],
      [60, -1],
      [100, 0],
      [100, 100],
      [0, 100],
    ];
    const turned = [...wavering.slice(2), ...wavering.slice(0, 2)];
    expect(new Set(simplifyRing(wavering, 2).map(String))).toEqual(
      new Set(simplifyRing(turned, 2).map(String)),
    );
    expect(simplifyRing(wavering, 2)).toHaveLength(4);
  });

  test('a band round a line is a stadium', () => {
    expect(
      areaMm2(
        strip(
          [
            [0, 0],
            [200, 0],
          ],
          50,
        ),
      ),
    ).toBeCloseTo(200 * 100 + Math.PI * 2500, -1.5);
  });

  test('the long axis of a turned rectangle is found', () => {
    const [cos, sin] = [Math.cos(0.3), Math.sin(0.3)];
    const turned = rectangle(0, 0, 300, 100).map(([x, y]): Point => [x * cos - y * sin, x * sin + y * cos]);
    expect(principalAxisRad(regionOf(turned))).toBeCloseTo(0.3, 4);
  });
});
