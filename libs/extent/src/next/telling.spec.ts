import { expect, test } from '@jest/globals';
import { normalCdf, randomStream } from '#lib/kernel';
import { fillNormal } from '../map/normal-draws.js';
import { usualOdds } from '../map/reading-odds.js';
import { foreseen } from './kinds.js';
import { quickCdf } from './normal-table.js';
import type { Standing } from './standing.js';
import { toldBy } from './telling.js';

const team = {
  hammer: {
    overBad: { sharp: 0.2, dull: 0.4, void: 0.4 },
    overSound: { sharp: 0.9, dull: 0.07, void: 0.03 },
  },
};

/** Two places, the second tied to the first. */
const twoPlaces = (mean: readonly [number, number], tie: number): Standing => ({
  weight: 1,
  mean: Float64Array.from(mean),
  variance: Float64Array.of(1, 1),
  score: Float64Array.from(mean),
  chance: Float64Array.from(mean, quickCdf),
  team,
  hearingSd: 0,
  covarianceWith: (node) => Float64Array.from(node === 0 ? [1, tie] : [tie, 1]),
});
const told = (kind: 'sounding' | 'plug', mean: readonly [number, number], tie: number) =>
  toldBy(kind, 0, [twoPlaces(mean, tie)], {
    odds: usualOdds,
    chance: Float64Array.from(mean, (value) => normalCdf(value)),
    isAtStake: () => true,
  });

/** The same share by drawing both places and counting answers. */
function counted(kind: 'sounding' | 'plug', [m, n]: readonly [number, number], tie: number): number {
  const { bad } = foreseen(kind, team, usualOdds, 0);
  const random = randomStream(20_261_129);
  const [pair, tally] = [new Float64Array(2), { bad: [0, 0], sound: [0, 0] }];
  for (let draw = 0; draw < 200_000; draw += 1) {
    fillNormal(pair, random);
    const first = m + pair[0];
    const second = n + tie * pair[0] + Math.sqrt(1 - tie * tie) * pair[1];
    const isHeard = random() < bad.ifSound + (bad.ifBad - bad.ifSound) * normalCdf(first / bad.edge);
    const of = isHeard ? tally.bad : tally.sound;
    of[0] += 1;
    of[1] += second > 0 ? 1 : 0;
  }
  const all = tally.bad[0] + tally.sound[0];
  const before = (tally.bad[1] + tally.sound[1]) / all;
  const variance = [tally.bad, tally.sound].reduce(
    (sum, [count, hits]) => sum + (count / all) * (hits / count - before) ** 2,
    0,
  );
  return variance / (before * (1 - before));
}

test('a plug removes all doubt at its own place, and none where nothing ties', () => {
  const shares = told('plug', [-0.3, 0.4], 0);
  expect(shares[0]).toBeGreaterThan(0.98);
  expect(shares[1]).toBeLessThan(1e-9);
});

test('what a reading tells of another place agrees with counting draws of both', () => {
  for (const kind of ['sounding', 'plug'] as const) {
    for (const [mean, tie] of [
      [[-0.3, 0.4], 0.8],
      [[-1.2, -0.8], 0.6],
      [[0.7, -0.2], 0.9],
    ] as const) {
      expect(Math.abs(told(kind, mean, tie)[1] - counted(kind, mean, tie))).toBeLessThan(0.01);
    }
  }
});

test('the looked-up normal distribution is right to 1e-6', () => {
  for (let score = -7; score < 7; score += 0.0137)
    expect(Math.abs(quickCdf(score) - normalCdf(score))).toBeLessThan(1e-6);
});
