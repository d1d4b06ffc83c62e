import { expect, test } from '@jest/globals';
import { rectangle, regionOf, rotatePoint, type Point } from '#lib/geometry';
import { randomStream } from '#lib/kernel';
import type { Reading } from '../reading.js';
import { settingsOf } from './settings.js';
import { mapOf, type SurveyMap } from './survey-map.js';

const [LONG_MM, WIDE_MM] = [2000, 1200];

/** Taps at 120 places drawn by lot, one in twelve of them wrong. */
function tapsWhere(isBad: (at: Point) => boolean, seed: number): readonly Reading[] {
  const random = randomStream(seed);
  return Array.from({ length: 120 }, (): Reading => {
    const at: Point = [LONG_MM * random(), WIDE_MM * random()];
    const isHeard = random() < 1 / 12 ? !isBad(at) : isBad(at);
    return { kind: 'sounding', at, sound: isHeard ? 'dull' : 'sharp' };
  });
}

const turned = (readings: readonly Reading[], angle: number): readonly Reading[] =>
  readings.map((reading) => ({ ...reading, at: rotatePoint(reading.at, angle) }));

function mapped(readings: readonly Reading[], angle = 0): SurveyMap {
  const outline = rectangle(0, 0, LONG_MM, WIDE_MM).map((corner) => rotatePoint(corner, angle));
  return mapOf(regionOf(outline), { readings }, settingsOf());
}

const shareOf = ({ parts }: SurveyMap, is: (stretch: number) => boolean): number =>
  parts.reduce((sum, { weight, given }) => sum + (is(given.field.stretch) ? weight : 0), 0);

const along = (map: SurveyMap): number => shareOf(map, (stretch) => stretch > 1);
const across = (map: SurveyMap): number => shareOf(map, (stretch) => stretch < 1);

const isInBandAlong = ([, y]: Point): boolean => Math.abs(y - 500) < 110;
const isInBandAcross = ([x]: Point): boolean => Math.abs(x - 900) < 110;
const isInDisc = ([x, y]: Point): boolean => Math.hypot(x - 900, y - 600) < 330;

/** Three to one for it, as it was one to three beforehand. */
const LIKELY = 0.75;

test('damage in a band along the deck stretches the map along it, and in a band across it across', () => {
  const [lengthwise, crosswise] = [isInBandAlong, isInBandAcross].map((isBad) => mapped(tapsWhere(isBad, 7)));
  expect(along(lengthwise)).toBeGreaterThan(LIKELY);
  expect(across(lengthwise)).toBeLessThan(0.05);
  expect(across(crosswise)).toBeGreaterThan(LIKELY);
  expect(along(crosswise)).toBeLessThan(0.05);
});

test('a round patch leaves it open whether and which way damage is stretched', () => {
  const map = mapped(tapsWhere(isInDisc, 7));
  expect(along(map)).toBeLessThan(0.6);
  expect(across(map)).toBeLessThan(0.6);
});

test('along the deck is along it however the deck lies', () => {
  const taps = tapsWhere(isInBandAlong, 11);
  const [one, other] = [mapped(taps), mapped(turned(taps, 0.7), 0.7)];
  expect(along(other)).toBeCloseTo(along(one), 6);
});
