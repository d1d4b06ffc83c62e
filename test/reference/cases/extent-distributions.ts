import { quantilesOf } from '#lib/extent';
import { normalCdf, normalQuantile, triangularQuantile } from '#lib/kernel';
import type { PublishedCase } from '../published-case.js';

const table = (id: string, title: string, printed: string, ours: () => number): PublishedCase => ({
  id: `extent-${id}`,
  room: 'extent',
  title,
  source: 'ABRAMOWITZ-STEGUN-1964',
  locus: 'table 26.1 and 26.5, digits from memory',
  unit: '1',
  printed,
  ours,
});

/** Digits of the printed tables as every textbook repeats them. */
export const normalTable: readonly PublishedCase[] = [
  table('normal-0.5', 'P(0.5)', '0.6914624613', () => normalCdf(0.5)),
  table('normal-1', 'P(1)', '0.8413447461', () => normalCdf(1)),
  table('normal-2', 'P(2)', '0.9772498681', () => normalCdf(2)),
  table('normal-3', 'P(3)', '0.9986501020', () => normalCdf(3)),
  table('normal-minus-2.5', 'P(-2.5)', '0.0062096653', () => normalCdf(-2.5)),
  table('normal-1.96', 'P(1.96)', '0.9750021049', () => normalCdf(1.96)),
  table('quantile-0.9', 'x at P = 0.9', '1.2815515655', () => normalQuantile(0.9)),
  table('quantile-0.95', 'x at P = 0.95', '1.6448536270', () => normalQuantile(0.95)),
  table('quantile-0.975', 'x at P = 0.975', '1.9599639845', () => normalQuantile(0.975)),
  table('quantile-0.995', 'x at P = 0.995', '2.5758293035', () => normalQuantile(0.995)),
];

type ByHand = readonly [id: string, title: string, source: string, printed: string, ours: () => number];

const byHand = (...[id, title, source, printed, ours]: ByHand): PublishedCase => ({
  id: `extent-${id}`,
  room: 'extent',
  title,
  source,
  locus: 'by hand, steps in the title',
  unit: '1',
  printed,
  ours,
  kind: 'by-hand',
});

const grade = { low: 0.9, likely: 1.4, high: 2.5 };

export const quantilesByHand: readonly PublishedCase[] = [
  byHand('triangular-p10', '0.9 + sqrt(0.1 x 1.6 x 0.5) = 0.9 + 0.28284', 'TRIANGULAR', '1.18284', () =>
    triangularQuantile(grade, 0.1),
  ),
  byHand('triangular-p50', '2.5 - sqrt(0.5 x 1.6 x 1.1) = 2.5 - 0.93808', 'TRIANGULAR', '1.56192', () =>
    triangularQuantile(grade, 0.5),
  ),
  byHand('triangular-p90', '2.5 - sqrt(0.1 x 1.6 x 1.1) = 2.5 - 0.41952', 'TRIANGULAR', '2.08048', () =>
    triangularQuantile(grade, 0.9),
  ),
  byHand(
    'sample-p10',
    'of 1, 2, 4, 8, 16: place 0.4 between 1 and 2',
    'HYNDMAN-FAN-1996',
    '1.4',
    () => quantilesOf([16, 1, 8, 2, 4]).p10,
  ),
  byHand(
    'sample-p90',
    'of 1, 2, 4, 8, 16: place 3.6 between 8 and 16',
    'HYNDMAN-FAN-1996',
    '12.8',
    () => quantilesOf([16, 1, 8, 2, 4]).p90,
  ),
];
