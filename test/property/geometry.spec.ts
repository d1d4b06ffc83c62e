import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import {
  areaMm2,
  centroid,
  containsPoint,
  convexHull,
  cutByLine,
  difference,
  distanceToRing,
  fromLeast,
  interiorPoint,
  intersection,
  isInsideRing,
  offset,
  perimeterMm,
  readOutline,
  regionOf,
  ringsOf,
  rotate,
  roundCorners,
  segmentWithin,
  selfCrossing,
  signedAreaMm2,
  simplifyRing,
  translate,
  union,
  type Point,
  type Region,
  type Ring,
} from '#lib/geometry';

const seed = 20261125;
const runs = (numRuns: number) => ({ seed, numRuns });

/** A simple polygon: corners at rising angles round a middle, at any distance from it. */
const star = fc
  .record({
    corners: fc.array(fc.double({ min: 0.05, max: 1, noNaN: true }), { minLength: 3, maxLength: 40 }),
    size: fc.double({ min: 20, max: 3000, noNaN: true }),
    at: fc.tuple(
      fc.double({ min: -5000, max: 5000, noNaN: true }),
      fc.double({ min: -5000, max: 5000, noNaN: true }),
    ),
  })
  .map(({ corners, size, at }): Ring =>
    corners.map((share, index): Point => {
      const angle = (2 * Math.PI * index) / corners.length;
      return [at[0] + size * share * Math.cos(angle), at[1] + size * share * Math.sin(angle)];
    }),
  );

/** Two polygons near enough to overlap, touch or miss each other. */
const pair = fc
  .tuple(star, star, fc.double({ min: 0, max: 1, noNaN: true }))
  .map(([one, other, apart]): readonly [Ring, Ring] => {
    const [a, b] = [centroid(regionOf(one)) ?? one[0], centroid(regionOf(other)) ?? other[0]];
    return [one, other.map(([x, y]): Point => [x + (a[0] - b[0]) * apart, y + (a[1] - b[1]) * apart])];
  });

/** Corners are held to whole micrometres: an edge moves by at most half of one, so an area by that along its length. */
const roundingMm2 = (...regions: readonly Region[]): number =>
  1 + regions.reduce((sum, region) => sum + perimeterMm(region), 0) * 0.002;

describe('regions', () => {
  test('union and intersection together are as large as both parts', () => {
    fc.assert(
      fc.property(pair, ([one, other]) => {
        const [a, b] = [regionOf(one), regionOf(other)];
        const sum = areaMm2(union(a, b)) + areaMm2(intersection(a, b));
        expect(Math.abs(sum - areaMm2(a) - areaMm2(b))).toBeLessThanOrEqual(roundingMm2(a, b));
      }),
      runs(300),
    );
  });

  test('what is taken and what is left are the whole', () => {
    fc.assert(
      fc.property(pair, ([one, other]) => {
        const [a, b] = [regionOf(one), regionOf(other)];
        expect(
          Math.abs(areaMm2(difference(a, b)) + areaMm2(intersection(a, b)) - areaMm2(a)),
        ).toBeLessThanOrEqual(roundingMm2(a, b));
      }),
      runs(300),
    );
  });

  test('start, direction and order of the parts do not matter', () => {
    fc.assert(
      fc.property(pair, fc.nat(), ([one, other], turn) => {
        const shifted = [...one.slice(turn % one.length), ...one.slice(0, turn % one.length)];
        const straight = union(regionOf(one), regionOf(other));
        const turned = union(regionOf([...other].reverse()), regionOf([...shifted].reverse()));
        expect(Math.abs(areaMm2(turned) - areaMm2(straight))).toBeLessThanOrEqual(
          roundingMm2(straight) / 100,
        );
        expect(
          areaMm2(difference(straight, turned)) + areaMm2(difference(turned, straight)),
        ).toBeLessThanOrEqual(roundingMm2(straight));
      }),
      runs(200),
    );
  });

  test('moving and turning keeps area and edge length, and moves the centre along', () => {
    fc.assert(
      fc.property(
        star,
        fc.double({ min: -4, max: 4, noNaN: true }),
        fc.tuple(fc.integer({ min: -9000, max: 9000 }), fc.integer({ min: -9000, max: 9000 })),
        (ring, angle, by) => {
          const region = regionOf(ring);
          if (areaMm2(region) < 100) return;
          const moved = translate(rotate(region, angle), by);
          expect(areaMm2(moved) / areaMm2(region)).toBeCloseTo(1, 6);
          expect(perimeterMm(moved) / perimeterMm(region)).toBeCloseTo(1, 9);
          const [there] = translate(
            rotate([{ outer: [centroid(region) ?? [0, 0]], holes: [] }], angle),
            by,
          )[0].outer;
          const [x, y] = centroid(moved) ?? [0, 0];
          expect(Math.hypot(x - there[0], y - there[1])).toBeLessThan(1e-3);
        },
      ),
      runs(300),
    );
  });

  test('a cut along any line loses nothing and leaves nothing on the wrong side', () => {
    fc.assert(
      fc.property(star, fc.double({ min: 0, max: 3.2, noNaN: true }), (ring, angle) => {
        const region = regionOf(ring);
        const [x, y] = centroid(region) ?? ring[0];
        const along: Point = [Math.cos(angle), Math.sin(angle)];
        const { left, right } = cutByLine(region, [x, y], [x + along[0], y + along[1]]);
        expect(Math.abs(areaMm2(left) + areaMm2(right) - areaMm2(region))).toBeLessThanOrEqual(
          roundingMm2(region),
        );
        const sideOf = ([px, py]: Point): number => along[0] * (py - y) - along[1] * (px - x);
        expect(Math.min(0, ...ringsOf(left).flat().map(sideOf))).toBeGreaterThan(-0.01);
        expect(Math.max(0, ...ringsOf(right).flat().map(sideOf))).toBeLessThan(0.01);
      }),
      runs(200),
    );
  });
});

describe('parallel curves', () => {
  const distance = fc.double({ min: 0.5, max: 300, noNaN: true });

  test('a convex shape grows by its edge length times the distance and the circle of the distance (Steiner)', () => {
    fc.assert(
      fc.property(star, distance, (ring, by) => {
        const hull = regionOf(convexHull(ring));
        const expected = areaMm2(hull) + perimeterMm(hull) * by + Math.PI * by * by;
        // Chords leave the arcs by at most 0.01 mm, along one whole turn of arcs.
        expect(Math.abs(areaMm2(offset(hull, by)) - expected)).toBeLessThanOrEqual(
          2 * Math.PI * by * 0.012 + roundingMm2(hull),
        );
      }),
      runs(150),
    );
  });

  test('growing takes in the shape, shrinking stays in it, and each corner keeps its distance', () => {
    fc.assert(
      fc.property(star, distance, (ring, by) => {
        const region = regionOf(ring);
        const [grown, shrunk] = [offset(region, by), offset(region, -by)];
        expect(areaMm2(difference(region, grown))).toBeLessThanOrEqual(roundingMm2(region));
        expect(areaMm2(difference(shrunk, region))).toBeLessThanOrEqual(roundingMm2(region));
        const edges = ringsOf(region);
        for (const corner of ringsOf(shrunk).flat()) {
          expect(Math.min(...edges.map((edge) => distanceToRing(corner, edge)))).toBeGreaterThan(by - 0.05);
        }
      }),
      runs(100),
    );
  });
});

describe('outlines', () => {
  const grid = fc.array(fc.tuple(fc.integer({ min: 0, max: 12 }), fc.integer({ min: 0, max: 12 })), {
    minLength: 4,
    maxLength: 9,
  });

  test('an outline crosses itself when the whole-number test of every pair of edges says so', () => {
    let crossings = 0;
    fc.assert(
      fc.property(grid, (points) => {
        const ring = points.filter(([x, y], index) => {
          const [px, py] = points[(index + points.length - 1) % points.length];
          return x !== px || y !== py;
        });
        if (ring.length < 4) return;
        const found = selfCrossing(ring) !== undefined;
        if (found) crossings += 1;
        expect(found).toBe(crossesByPairs(ring));
      }),
      runs(3000),
    );
    expect(crossings).toBeGreaterThan(300);
  });

  test('is read alike whichever corner comes first and whichever way it runs', () => {
    fc.assert(
      fc.property(star, fc.nat(), (ring, turn) => {
        const shifted = [...ring.slice(turn % ring.length), ...ring.slice(0, turn % ring.length)].reverse();
        const [one, other] = [readOutline(ring), readOutline(shifted)];
        expect(one.ok).toBe(other.ok);
        if (one.ok && other.ok) {
          expect(fromLeast(one.value)).toEqual(fromLeast(other.value));
          expect(signedAreaMm2(one.value)).toBeGreaterThan(0);
        }
      }),
      runs(300),
    );
  });

  test('anything at all is read or refused with a place, never thrown', () => {
    fc.assert(
      fc.property(
        fc.array(fc.oneof(fc.tuple(fc.double(), fc.double()), fc.anything()), { maxLength: 8 }),
        (points) => {
          const read = readOutline(points, '/panel/outline');
          if (!read.ok) expect(read.problems.every(({ at }) => at.startsWith('/panel/outline'))).toBe(true);
        },
      ),
      runs(2000),
    );
  });
});

describe('places and lines', () => {
  test('a place is inside when the turning number says so', () => {
    fc.assert(
      fc.property(
        star,
        fc.double({ min: -1, max: 1, noNaN: true }),
        fc.double({ min: -1, max: 1, noNaN: true }),
        (ring, u, v) => {
          const [x, y] = centroid(regionOf(ring)) ?? ring[0];
          const at: Point = [x + u * 2000, y + v * 2000];
          if (distanceToRing(at, ring) < 1e-6) return;
          expect(isInsideRing(ring, at)).toBe(Math.abs(turningNumber(ring, at)) > 0.5);
        },
      ),
      runs(1000),
    );
  });

  test('the inside point of a shape is inside it', () => {
    fc.assert(
      fc.property(star, (ring) => {
        const region = regionOf(ring);
        const inside = interiorPoint(region);
        if (areaMm2(region) < 100 || inside === undefined) return;
        expect(containsPoint(region, inside.at)).toBe(true);
      }),
      runs(200),
    );
  });

  test('a hull holds every place, and is its own hull', () => {
    fc.assert(
      fc.property(star, (ring) => {
        const hull = convexHull(ring);
        expect(
          ring.every((corner) => isInsideRing(hull, corner) || distanceToRing(corner, hull) < 1e-9),
        ).toBe(true);
        expect(new Set(convexHull(hull).map(String))).toEqual(new Set(hull.map(String)));
      }),
      runs(300),
    );
  });

  test('a straightened edge stays within its tolerance of every corner left out', () => {
    fc.assert(
      fc.property(star, fc.double({ min: 0.5, max: 200, noNaN: true }), (ring, tolerance) => {
        const straight = simplifyRing(ring, tolerance);
        expect(straight.every((corner) => ring.includes(corner))).toBe(true);
        if (straight.length > 3)
          for (const corner of ring)
            expect(distanceToRing(corner, straight)).toBeLessThanOrEqual(tolerance + 1e-6);
      }),
      runs(300),
    );
  });

  test('rounding the corners of a convex shape only takes away', () => {
    fc.assert(
      fc.property(star, fc.double({ min: 1, max: 300, noNaN: true }), (ring, radius) => {
        const hull = convexHull(ring);
        const rounded = roundCorners(hull, radius);
        expect(areaMm2(difference(regionOf(rounded), regionOf(hull)))).toBeLessThanOrEqual(
          roundingMm2(regionOf(hull)),
        );
      }),
      runs(200),
    );
  });

  test('the parts of a line inside a shape and outside it are the whole line', () => {
    fc.assert(
      fc.property(star, fc.double({ min: 0, max: 3.2, noNaN: true }), (ring, angle) => {
        const region = regionOf(ring);
        const box = regionOf([
          [-20_000, -20_000],
          [20_000, -20_000],
          [20_000, 20_000],
          [-20_000, 20_000],
        ]);
        const [x, y] = centroid(region) ?? ring[0];
        const [a, b]: readonly [Point, Point] = [
          [x - 9000 * Math.cos(angle), y - 9000 * Math.sin(angle)],
          [x + 9000 * Math.cos(angle), y + 9000 * Math.sin(angle)],
        ];
        const length = (parts: readonly (readonly [Point, Point])[]): number =>
          parts.reduce((sum, [p, q]) => sum + Math.hypot(q[0] - p[0], q[1] - p[1]), 0);
        expect(
          length(segmentWithin(region, a, b)) + length(segmentWithin(difference(box, region), a, b)),
        ).toBeCloseTo(length(segmentWithin(box, a, b)), 1);
      }),
      runs(150),
    );
  });
});

/** Whole-number oracle: every pair of edges that share no corner must not meet; neighbours must not fold back. */
function crossesByPairs(ring: readonly (readonly [number, number])[]): boolean {
  const n = ring.length;
  return ring.some((_, i) =>
    ring.some((__, j) => {
      if (j <= i) return false;
      const [a, b, c, d] = [ring[i], ring[(i + 1) % n], ring[j], ring[(j + 1) % n]];
      if (j === i + 1) return foldsBack(a, b, d);
      if (i === 0 && j === n - 1) return foldsBack(c, d, b);
      return meetsExactly(a, b, c, d);
    }),
  );
}

type Whole = readonly [number, number];
const cross = (a: Whole, b: Whole, c: Whole): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
const foldsBack = (a: Whole, b: Whole, c: Whole): boolean =>
  cross(a, b, c) === 0 && (a[0] - b[0]) * (c[0] - b[0]) + (a[1] - b[1]) * (c[1] - b[1]) > 0;
const spans = (a: Whole, b: Whole, p: Whole): boolean =>
  Math.min(a[0], b[0]) <= p[0] &&
  p[0] <= Math.max(a[0], b[0]) &&
  Math.min(a[1], b[1]) <= p[1] &&
  p[1] <= Math.max(a[1], b[1]);

function meetsExactly(a: Whole, b: Whole, c: Whole, d: Whole): boolean {
  const [p, q, r, s] = [cross(a, b, c), cross(a, b, d), cross(c, d, a), cross(c, d, b)];
  if (p * q < 0 && r * s < 0) return true;
  return (
    (p === 0 && spans(a, b, c)) ||
    (q === 0 && spans(a, b, d)) ||
    (r === 0 && spans(c, d, a)) ||
    (s === 0 && spans(c, d, b))
  );
}

/** Sum of the angles under which the edges are seen, in turns. */
function turningNumber(ring: Ring, [x, y]: Point): number {
  return (
    ring.reduce((sum, [ax, ay], index) => {
      const [bx, by] = ring[(index + 1) % ring.length];
      return (
        sum + Math.atan2((ax - x) * (by - y) - (ay - y) * (bx - x), (ax - x) * (bx - x) + (ay - y) * (by - y))
      );
    }, 0) /
    (2 * Math.PI)
  );
}
