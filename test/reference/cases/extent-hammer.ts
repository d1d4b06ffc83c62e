import { rectangle, regionOf, type Point } from '#lib/geometry';
import { randomStream } from '#lib/kernel';
import type { Reading } from '#lib/extent';
import { learntRates, ratesBehind } from '../../../libs/extent/src/map/hammer-rates.js';
import { carried, tiesTo } from '../../../libs/extent/src/map/interpolation.js';
import { usualOdds } from '../../../libs/extent/src/map/reading-odds.js';
import { settingsOf } from '../../../libs/extent/src/map/settings.js';
import { mapOf } from '../../../libs/extent/src/map/survey-map.js';
import type { PublishedCase } from '../published-case.js';

const before = ratesBehind(usualOdds.sounding);
const two: readonly Reading[] = [
  { kind: 'sounding', at: [0, 0], sound: 'dull' },
  { kind: 'sounding', at: [9, 9], sound: 'sharp' },
];
const after = learntRates(before, two, Float64Array.from([0.5, 0]));

const byHand = (id: string, title: string, printed: string, ours: () => number): PublishedCase => ({
  id: `extent-hammer-${id}`,
  room: 'extent',
  title,
  source: 'DAWID-SKENE-1979',
  locus: 'section 3, one step by hand',
  unit: '1',
  printed,
  kind: 'by-hand',
  ours,
});

/** x = 0.75 / (2 - 0.25 (1/4 + 1/8)) = 0.39344; one dull sounding that is half over bad core and one sharp over sound core, against ten of each beforehand. */
export const hammerSteps: readonly PublishedCase[] = [
  byHand(
    'missed',
    'Bad core heard as sharp, behind odds of 1/4, 4 and 8',
    '0.2131',
    () => before.overBad.sharp,
  ),
  byHand(
    'alarm',
    'Sound core heard as dull or void, behind the same odds',
    '0.1475',
    () => 1 - before.overSound.sharp,
  ),
  byHand(
    'dull-after',
    'Bad core heard as dull after two soundings: (10 x 0.39344 + 0.5) / 10.5',
    '0.4223',
    () => after.overBad.dull,
  ),
  byHand(
    'sharp-after',
    'Sound core heard as sharp after two soundings: (10 x 0.85246 + 1) / 11.5',
    '0.8282',
    () => after.overSound.sharp,
  ),
];

/** Fifty taps anywhere on a panel of 2,000 x 900 mm, with a round patch on it. */
function fiftyTaps(seed: number): {
  readonly taps: readonly Point[];
  readonly isInPatch: readonly boolean[];
} {
  const random = randomStream(seed);
  const radius = 200 + 60 * random();
  const centre: Point = [400 + 1200 * random(), 250 + 400 * random()];
  const taps = Array.from({ length: 50 }, (): Point => [2000 * random(), 900 * random()]);
  return { taps, isInPatch: taps.map(([x, y]) => Math.hypot(x - centre[0], y - centre[1]) < radius) };
}

/** Mean chance of bad core under the taps that sounded dull. */
function chanceUnderDull(seed: number, isDull: (isInPatch: boolean, index: number) => boolean): number {
  const { taps, isInPatch } = fiftyTaps(seed);
  const dull = taps.filter((_, index) => isDull(isInPatch[index], index));
  const readings = taps.map((at, index): Reading => ({
    kind: 'sounding',
    at,
    sound: isDull(isInPatch[index], index) ? 'dull' : 'sharp',
  }));
  const { lattice, chance } = mapOf(regionOf(rectangle(0, 0, 2000, 900)), { readings }, settingsOf());
  return carried(chance, tiesTo(lattice, dull)).reduce((sum, value) => sum + value, 0) / dull.length;
}

const sampled = (id: string, title: string, printed: string, ours: () => number): PublishedCase => ({
  id: `extent-hammer-${id}`,
  room: 'extent',
  title,
  source: 'MURRAY-2010',
  locus:
    'elliptical slice sampling of the same model, with rates, range and errors that hang together drawn with it, 2 x 27,000 draws',
  unit: '1',
  printed,
  kind: 'independent-method',
  ours,
  tolerance: {
    absolute: 0.12,
    because:
      'each range is a single normal distribution here and one best set of rates, which draws low chances lower and high ones higher; draws differ by 0.02',
  },
});

const clustered = (isInPatch: boolean): boolean => isInPatch;
const scattered = (_isInPatch: boolean, index: number): boolean => index % 11 === 3;

/** The printed values are those of the sampler, run once outside the project's tests. */
export const fewDullTaps: readonly PublishedCase[] = [
  sampled(
    'clustered',
    'Five dull taps side by side among fifty: chance of bad core under them',
    '0.785',
    () => chanceUnderDull(5, clustered),
  ),
  sampled('clustered-again', 'Four on another panel', '0.808', () => chanceUnderDull(6, clustered)),
  sampled('scattered', 'Five dull taps far apart among fifty: chance of bad core under them', '0.050', () =>
    chanceUnderDull(5, scattered),
  ),
];
