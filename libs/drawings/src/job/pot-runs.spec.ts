import { expect, test } from '@jest/globals';
import type { BatchCard } from '#lib/estimate';
import { potRuns } from './pot-runs.js';

const pot = (number: number, resinG: number, step = 'wet-out'): BatchCard => ({
  number,
  step,
  title: step,
  resinG,
  hardenerG: resinG / 5,
  fillerG: 0,
  weigh: [
    { what: 'resin', name: 'resin', addG: resinG, scaleShowsG: resinG, volumeMl: resinG },
    { what: 'hardener', name: 'hardener', addG: resinG / 5, scaleShowsG: resinG * 1.2, volumeMl: resinG / 5 },
  ],
  mixedMl: resinG * 1.2,
  covers: [`P${number}`],
  useWithinMin: 12,
  limitedBy: 'pot-life',
});

const numbersOf = (batches: readonly BatchCard[]) =>
  potRuns(batches).map(({ pots }) => pots.map(({ number }) => number));

test('pots of one step that differ by the last tenth of a gram share a card', () => {
  expect(numbersOf([pot(1, 300), pot(2, 300.1), pot(3, 300.2)])).toEqual([[1, 2, 3]]);
});

test('a pot that is weighed otherwise, or belongs to another step, has its own card', () => {
  expect(numbersOf([pot(1, 300), pot(2, 301), pot(3, 300, 'seal'), pot(4, 300)])).toEqual([[1, 4], [2], [3]]);
});

test('a card holds ten pots, the eleventh begins another; no pot is lost', () => {
  const runs = numbersOf(Array.from({ length: 23 }, (_, index) => pot(index + 1, 300)));
  expect(runs.map(({ length }) => length)).toEqual([10, 10, 3]);
  expect(runs.flat()).toEqual(Array.from({ length: 23 }, (_, index) => index + 1));
});
