import {
  areaMm2,
  centroid,
  circle,
  intersection,
  offset,
  perimeterMm,
  principalAxisRad,
  rectangle,
  regionOf,
  ringAreaMm2,
  rotate,
  roundCorners,
  strip,
  union,
  type Point,
  type Ring,
} from '#lib/geometry';
import type { PublishedCase } from '../published-case.js';

const regular = (sides: number, sideMm: number): Ring =>
  Array.from({ length: sides }, (_, index): Point => {
    const radius = sideMm / (2 * Math.sin(Math.PI / sides));
    const angle = (2 * Math.PI * index) / sides;
    return [radius * Math.cos(angle), radius * Math.sin(angle)];
  });

/** Area of a regular polygon of unit side, as handbooks print it. */
const handbook: readonly (readonly [number, string, string])[] = [
  [3, 'triangle', '0.4330127'],
  [4, 'square', '1.0000000'],
  [5, 'pentagon', '1.7204774'],
  [6, 'hexagon', '2.5980762'],
  [7, 'heptagon', '3.6339124'],
  [8, 'octagon', '4.8284271'],
  [9, 'nonagon', '6.1818242'],
  [10, 'decagon', '7.6942088'],
  [12, 'dodecagon', '11.1961524'],
];

export const regularPolygons: readonly PublishedCase[] = handbook.map(([sides, name, printed]) => ({
  id: `geometry-regular-${sides}`,
  room: 'geometry',
  title: `Area of a regular ${name} of unit side`,
  source: 'REGULAR-POLYGONS',
  locus: 'table of regular polygons',
  unit: '1',
  printed,
  ours: () => ringAreaMm2(regular(sides, 1)),
}));

type Closed = readonly [
  id: string,
  title: string,
  value: number,
  ours: () => number,
  tolerance: { readonly absolute: number; readonly because: string },
];

const closedForm = (...[id, title, value, ours, tolerance]: Closed): PublishedCase => ({
  id: `geometry-${id}`,
  room: 'geometry',
  title,
  source: 'EUCLID',
  locus: title,
  unit: 'mm or mm2',
  printed: String(value),
  ours,
  tolerance,
  kind: 'by-hand',
});

/** Chords within 0.01 mm of an arc cut off at most two thirds of that along it. */
const chords = (arcMm: number, roundingMm2 = 2) => ({
  absolute: (2 / 3) * 0.0105 * arcMm + roundingMm2,
  because: 'chords lie within 0.01 mm inside the arc; corners within half a micrometre',
});
const exact = { absolute: 1e-6, because: 'whole millimetres are exact' };

const square = regionOf(rectangle(0, 0, 400, 400));

export const curves: readonly PublishedCase[] = [
  closedForm(
    'circle',
    'pi r2, r = 300',
    Math.PI * 300 ** 2,
    () => areaMm2(regionOf(circle([0, 0], 300))),
    chords(2 * Math.PI * 300),
  ),
  closedForm(
    'stadium-area',
    'stadium: 2 r l + pi r2, r = 50, l = 700',
    2 * 50 * 700 + Math.PI * 50 ** 2,
    () =>
      areaMm2(
        strip(
          [
            [0, 0],
            [700, 0],
          ],
          50,
        ),
      ),
    chords(2 * Math.PI * 50),
  ),
  closedForm(
    'stadium-edge',
    'stadium: 2 l + 2 pi r, r = 50, l = 700',
    1400 + 2 * Math.PI * 50,
    () =>
      perimeterMm(
        strip(
          [
            [0, 0],
            [700, 0],
          ],
          50,
        ),
      ),
    {
      absolute: 0.1,
      because: 'a chord within 0.01 mm of an arc of radius 50 is shorter by 1 part in 15,000',
    },
  ),
  closedForm(
    'offset-square-round',
    'square grown round: a2 + 4 a d + pi d2, a = 400, d = 75',
    400 ** 2 + 4 * 400 * 75 + Math.PI * 75 ** 2,
    () => areaMm2(offset(square, 75)),
    chords(2 * Math.PI * 75),
  ),
  closedForm(
    'offset-square-miter',
    'square grown with sharp corners: (a + 2 d)2, a = 400, d = 75',
    550 ** 2,
    () => areaMm2(offset(square, 75, 'miter')),
    exact,
  ),
  closedForm(
    'offset-square-in',
    'square shrunk: (a - 2 d)2, a = 400, d = 75',
    250 ** 2,
    () => areaMm2(offset(square, -75)),
    exact,
  ),
  closedForm(
    'offset-hexagon-in',
    'hexagon of apothem 300 shrunk by 100 is a hexagon of apothem 200: 2 sqrt(3) 200 2',
    2 * Math.sqrt(3) * 200 ** 2,
    () => areaMm2(offset(regionOf(regular(6, 600 / Math.sqrt(3))), -100)),
    { absolute: 2, because: 'corners within a micrometre, edge 1.4 m' },
  ),
  closedForm(
    'steiner',
    'rectangle grown round (Steiner): A + L d + pi d2, 800 x 300, d = 120',
    800 * 300 + 2200 * 120 + Math.PI * 120 ** 2,
    () => areaMm2(offset(regionOf(rectangle(0, 0, 800, 300)), 120)),
    chords(2 * Math.PI * 120),
  ),
  closedForm(
    'ring-shrunk',
    'frame shrunk: (a - 2 d)2 less the hole grown round, a = 400, hole 100, d = 50',
    300 ** 2 - (100 ** 2 + 4 * 100 * 50 + Math.PI * 50 ** 2),
    () => areaMm2(offset(regionOf(rectangle(0, 0, 400, 400), [rectangle(150, 150, 250, 250)]), -50)),
    chords(2 * Math.PI * 50),
  ),
  closedForm(
    'lens',
    'two circles of r = 100 whose middles are 100 apart share 2 r2 acos(1/2) - (sqrt(3)/2) r2',
    2 * 100 ** 2 * Math.acos(0.5) - (Math.sqrt(3) / 2) * 100 ** 2,
    () => areaMm2(intersection(regionOf(circle([0, 0], 100)), regionOf(circle([100, 0], 100)))),
    chords(2 * Math.PI * 100),
  ),
  closedForm(
    'rounded-rectangle',
    'rounded rectangle: a b - (4 - pi) r2, 450 x 350, r = 40',
    450 * 350 - (4 - Math.PI) * 40 ** 2,
    () => areaMm2(regionOf(roundCorners(rectangle(0, 0, 450, 350), 40))),
    { absolute: (2 / 3) * 0.05 * 2 * Math.PI * 40 + 1, because: 'chords lie within 0.05 mm inside the arc' },
  ),
  closedForm(
    'half-disc-centroid',
    'centre of a half disc lies 4 r / (3 pi) from its straight edge, r = 300',
    (4 * 300) / (3 * Math.PI),
    () =>
      (centroid(intersection(regionOf(circle([0, 0], 300)), regionOf(rectangle(0, -400, 400, 400)))) ?? [
        Number.NaN,
        0,
      ])[0],
    { absolute: 0.02, because: 'chords lie within 0.01 mm inside the arc' },
  ),
  closedForm(
    'angle-centroid',
    'centre of an L of 100 x 20 and 20 x 80: (2000 x 50 + 1600 x 10) / 3600',
    (2000 * 50 + 1600 * 10) / 3600,
    () =>
      (centroid(union(regionOf(rectangle(0, 0, 100, 20)), regionOf(rectangle(0, 20, 20, 100)))) ?? [
        Number.NaN,
        0,
      ])[0],
    exact,
  ),
  closedForm(
    'long-axis',
    'long axis of a 300 x 100 rectangle turned by 0.35 rad',
    0.35,
    () => principalAxisRad(rotate(regionOf(rectangle(0, 0, 300, 100)), 0.35)),
    { absolute: 1e-6, because: 'corners are not moved to whole micrometres by turning' },
  ),
];
