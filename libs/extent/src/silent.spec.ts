import { expect, test } from '@jest/globals';
import { randomStream } from '#lib/kernel';
import { weighedQuantilesOf } from './quantiles.js';
import { plugCount, withSilent } from './silent.js';
import { usualOdds } from './map/reading-odds.js';
import type { Reading } from './reading.js';

const growth = { low: 1, likely: 1.2, high: 2 };
const median = (sound: number, silent: number): number =>
  weighedQuantilesOf(
    withSilent(new Float64Array(4000).fill(4e5), growth, {
      sound,
      silent,
      panelMm2: 2e6,
      random: randomStream(3),
    }).map(({ areaMm2, weight }) => ({ value: areaMm2, weight })),
  ).p50;

/** By hand on a fine grid of the triangular density times (1 - q)^n, q = (g - 1) / 5 for 0.4 of 2 m2, which adds 1.6 q. */
function medianByGrid(sound: number): number {
  const density = (g: number) => (g < 1.2 ? (g - 1) / 0.2 : (2 - g) / 0.8);
  const grid = Array.from({ length: 20_000 }, (_, index) => 1 + (index + 0.5) / 20_000);
  const weights = grid.map((g) => density(g) * (1 - (g - 1) / 5) ** sound);
  const half = weights.reduce((sum, weight) => sum + weight, 0) / 2;
  let passed = 0;
  const found = grid.find((_, index) => (passed += weights[index]) >= half);
  return 4e5 + (1.6e6 * ((found ?? 0) - 1)) / 5;
}

test('plugs that agree with the symptoms shrink what these may miss, as counting says', () => {
  for (const sound of [0, 3, 12, 40])
    expect(Math.abs(median(sound, 0) / medianByGrid(sound) - 1)).toBeLessThan(0.01);
  expect(median(40, 0)).toBeLessThan(median(3, 0));
});

test('bad core where nothing had said so makes a silent part likelier', () => {
  expect(median(3, 2)).toBeGreaterThan(median(3, 0) * 1.02);
});

test('only plugs where symptoms within 100 mm call the core sound are counted', () => {
  const readings: readonly Reading[] = [
    { kind: 'sounding', at: [100, 100], sound: 'dull' },
    { kind: 'sounding', at: [500, 100], sound: 'sharp' },
    { kind: 'plug', at: [150, 100], condition: 'rotten' },
    { kind: 'plug', at: [500, 120], condition: 'wet-bonded' },
    { kind: 'sounding', at: [850, 100], sound: 'sharp' },
    { kind: 'plug', at: [900, 100], condition: 'dry-sound' },
    { kind: 'plug', at: [900, 700], condition: 'rotten' },
    { kind: 'plug', at: [100, 700], condition: 'dry-sound' },
    { kind: 'plug', at: [900, 300], condition: 'rotten', isUnreliable: true },
  ];
  expect(plugCount({ readings }, usualOdds)).toEqual({ sound: 1, silent: 1 });
});
