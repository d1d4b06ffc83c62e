import { describe, expect, test } from '@jest/globals';
import { areaMm2, difference, offset, rectangle, regionOf, union, type Region } from '#lib/geometry';
import { isSpent, type DesignWork } from './design-work.js';
import { groundOf, type Ground } from './ground.js';
import { gapBetween, groupFor, joined, type OpeningGroup } from './merge.js';
import { rulesOf } from './rules.js';

const rules = rulesOf({});
const panel = regionOf(rectangle(0, 0, 4000, 2400));

const groundWith = (work: DesignWork): Ground =>
  groundOf({ panel, rules, work, supports: [], insetMm: 50, neededBridgeMm: 100 });

/** Twelve places in rows and columns, so far apart from margin to margin. */
const placesWith = (gapMm: number): readonly Region[] =>
  Array.from({ length: 12 }, (_, place) => {
    const pitchMm = 480 + gapMm;
    const [x, y] = [300 + pitchMm * (place % 4), 300 + pitchMm * Math.floor(place / 4)];
    return regionOf(rectangle(x, y, x + 330, y + 330));
  });

/** Far enough apart to stay alone, near enough that one cut round several may cost less. */
const PAYING_MM = 120;
const FORCED_MM = 60;

function openedWith(
  most: number,
  gapMm = PAYING_MM,
): { readonly groups: readonly OpeningGroup[]; readonly work: DesignWork } {
  const work = { used: 0, most };
  const ground = groundWith(work);
  const alone = placesWith(gapMm).flatMap(
    (place) => groupFor(offset(place, 75, 'round', 0.2), place, ground) ?? [],
  );
  expect(alone).toHaveLength(12);
  return { groups: joined(alone, ground), work };
}

const hoursOfAll = (groups: readonly OpeningGroup[]): number =>
  groups.reduce((sum, { shape }) => sum + shape.hours, 0);

const cutOutBy = (groups: readonly OpeningGroup[]): Region =>
  union(...groups.map(({ shape }) => shape.region));

describe('a budget for joining openings', () => {
  const free = openedWith(Number.MAX_SAFE_INTEGER);

  test('is not spent by a dozen places, which are joined for less labour', () => {
    expect(free.work.used).toBeGreaterThan(1000);
    expect(free.work.used).toBeLessThan(10_000);
    expect(free.groups).toHaveLength(1);
  });

  test.each([1, 300, 900, 3000])('of %d corners ends the search with the pair that spends it', (most) => {
    const { groups, work } = openedWith(most);
    expect(isSpent(work)).toBe(true);
    expect(work.used).toBeLessThan(most + 300);
    expect(groups.length).toBeGreaterThan(1);
    expect(hoursOfAll(groups)).toBeGreaterThan(hoursOfAll(free.groups));
  });

  test.each([PAYING_MM, FORCED_MM])(
    'that is spent at once leaves no bridge too narrow and no bad core closed over at %d mm',
    (gapMm) => {
      const { groups } = openedWith(1, gapMm);
      const bridges = groups.flatMap(({ shape }, index) =>
        groups.slice(index + 1).map((other) => gapBetween(shape.region, other.shape.region)),
      );
      expect(groups).toHaveLength(gapMm === PAYING_MM ? 12 : 1);
      expect(bridges.every((bridgeMm) => bridgeMm >= 100)).toBe(true);
      expect(areaMm2(difference(union(...placesWith(gapMm)), cutOutBy(groups)))).toBeLessThan(1);
    },
  );

  test('says of openings that were made one at once what they would have cost apart', () => {
    const [{ joins, shape }] = openedWith(1, FORCED_MM).groups;
    const last = joins.at(-1);
    expect(last?.why).toBe('bridge-too-narrow');
    expect(last?.bridgeMm).toBeLessThan(100);
    expect(last?.hoursTogether).toBeCloseTo(shape.hours, 9);
    expect(last?.hoursApart).toBeGreaterThan(shape.hours);
  });

  test('gives the same openings each time, because work is counted and not timed', () => {
    expect(openedWith(900)).toEqual(openedWith(900));
  });
});
