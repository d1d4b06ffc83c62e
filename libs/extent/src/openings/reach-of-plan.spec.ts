import { expect, test } from '@jest/globals';
import { rectangle, regionOf } from '#lib/geometry';
import { reachOfPlan } from '../index.js';

const panel = regionOf(rectangle(0, 0, 2000, 450));
/** Rot along a toe rail at 380 to 450 mm, and a slot that ends at 350. */
const rot = regionOf(rectangle(200, 380, 1800, 450));
const slot = { area: regionOf(rectangle(200, 305, 1800, 350))[0] };

test('a slot beside a toe rail that reams 50 mm leaves the outer 50 mm of the rot', () => {
  const reach = reachOfPlan([slot], { panel, undercutReachMm: 50, marginMm: 0 })(rot);
  expect(reach.isReached).toBe(false);
  expect(reach.unreachedM2).toBeCloseTo(1.6 * 0.05, 3);
  expect(reach.unreachedShare).toBeCloseTo(50 / 70, 2);
});

test('with 100 mm of reach it gets at all of it, and without openings at nothing', () => {
  expect(reachOfPlan([slot], { panel, undercutReachMm: 100, marginMm: 0 })(rot).isReached).toBe(true);
  expect(reachOfPlan([], { panel, undercutReachMm: 100, marginMm: 0 })(rot).unreachedShare).toBeCloseTo(1, 9);
});

test('a margin wanted round the rot counts, as far as there is deck', () => {
  const exact = { area: rot[0] };
  const reach = reachOfPlan([exact], { panel, undercutReachMm: 0, marginMm: 75 })(rot);
  expect(reach.unreachedM2).toBeGreaterThan(1.6 * 0.075);
  expect(reach.unreachedM2).toBeLessThan(1.6 * 0.075 + 2 * 0.075 * 0.145 + 0.001);
});
