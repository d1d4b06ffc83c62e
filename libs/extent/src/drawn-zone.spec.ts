import { describe, expect, test } from '@jest/globals';
import { areaMm2, difference, offset, ringsOf, type Point, type Region } from '#lib/geometry';
import { drawnByHand } from './drawn-zone.js';

const panel: Region = [
  {
    outer: [
      [0, 0],
      [4000, 0],
      [4000, 2000],
      [0, 2000],
    ],
    holes: [],
  },
];

/** A star: every other corner lies at 45 % of the radius. */
const star = (id: string, corners: number, radiusMm: number, [x, y]: Point) => ({
  id,
  region: [
    {
      outer: Array.from({ length: corners }, (_, corner): Point => {
        const turn = (2 * Math.PI * corner) / corners;
        const reach = radiusMm * (corner % 2 === 1 ? 0.45 : 1);
        return [x + reach * Math.cos(turn), y + reach * Math.sin(turn)];
      }),
      holes: [],
    },
  ],
});
const cornersOf = (region: Region): number => ringsOf(region).reduce((sum, ring) => sum + ring.length, 0);

describe('drawn zones', () => {
  const few = Array.from({ length: 6 }, (_, k) => star(`Z${k}`, 40, 250, [400 + 600 * k, 600]));
  const many = Array.from({ length: 6 }, (_, k) => star(`Z${k}`, 400, 250, [400 + 600 * k, 600]));
  const planned = drawnByHand(many, panel);

  test('of a hand are planned as they are', () =>
    expect(drawnByHand(few, panel)).toEqual({ zones: few, findings: [] }));

  test('of thousands of corners lose gaps that no saw could follow, and it is said', () => {
    expect(planned.findings).toMatchObject([
      { code: 'zones-smoothed', severity: 'note', facts: { corners: 2400, gapMm: 40, reachMm: 1 } },
    ]);
    expect(planned.zones.reduce((sum, { region }) => sum + cornersOf(region), 0)).toBeLessThanOrEqual(400);
  });

  test.each(many.map(({ id, region }, k) => [id, region, planned.zones[k]] as const))(
    'never lose bad core by it: %s lies inside what is planned, which lies inside the round of its tips',
    (_, drawn, { region }) => {
      expect(areaMm2(difference(drawn, region))).toBeLessThan(0.001 * areaMm2(drawn));
      const tips = offset(
        [{ outer: drawn[0].outer.filter((_corner, k) => k % 2 === 0), holes: [] }],
        2,
        'miter',
      );
      expect(areaMm2(difference(region, tips))).toBeLessThan(1);
    },
  );
});
