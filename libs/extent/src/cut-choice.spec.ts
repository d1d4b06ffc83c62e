import { expect, test } from '@jest/globals';
import { areaMm2, rectangle, regionOf, type Point } from '#lib/geometry';
import { chosenCut } from './cut-choice.js';
import { estimateExtent, planOpenings, type Extent, type MapSettings, type Reading } from './index.js';
import { settingsOf } from './map/settings.js';
import { mapOf } from './map/survey-map.js';

const panel = { outline: rectangle(0, 0, 2000, 1000) };
const taps = Array.from({ length: 19 * 9 }, (_, index): Reading => {
  const at: Point = [100 + 100 * (index % 19), 100 + 100 * Math.floor(index / 19)];
  return { kind: 'sounding', at, sound: Math.hypot(at[0] - 700, at[1] - 500) < 300 ? 'dull' : 'sharp' };
});
const found = (map: MapSettings, readings: readonly Reading[] = taps): Extent => {
  const outcome = estimateExtent({ panel, survey: { readings }, map });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};

const asSurveyed = found({});

test('the dearer bad core left is, the wider the cut; and the chosen chance costs no more than its neighbours', () => {
  const deck = regionOf(panel.outline);
  const map = mapOf(deck, { readings: taps }, settingsOf());
  const cutFor = (settings: MapSettings) =>
    chosenCut({ panel, survey: { readings: taps }, map: settings }, deck, map);
  const areas = [30, 120, 1500].map((leaveCostHPerM2) => areaMm2(cutFor({ leaveCostHPerM2 }).zones));
  expect(areas[0]).toBeLessThanOrEqual(areas[1]);
  expect(areas[1]).toBeLessThan(areas[2]);
  const { choice } = cutFor({});
  const total = ({ openingHours, leavingHours }: typeof choice) => openingHours + leavingHours;
  for (const cutProbability of [0.03, 0.06, 0.1, 0.2, 0.35, 0.6])
    expect(total(choice)).toBeLessThanOrEqual(total(cutFor({ cutProbability }).choice) + 1e-9);
  expect(total(choice)).toBeLessThan(choice.hoursWithoutOpening);
});

test('a survey is cut as the choice on its map says', () => {
  const { zones, choice } = chosenCut(
    { panel, survey: { readings: taps } },
    regionOf(panel.outline),
    mapOf(regionOf(panel.outline), { readings: taps }, settingsOf()),
  );
  expect(asSurveyed.cut).toEqual(choice);
  expect(asSurveyed.mappedAreaM2).toBeCloseTo(areaMm2(zones) / 1e6, 9);
});

test('a mapped boundary is cut as it stands, a drawn one with its margin', () => {
  const { zones } = asSurveyed;
  const build = { outerSkin: { thicknessMm: 3 }, innerSkin: { thicknessMm: 2 }, core: { thicknessMm: 12.7 } };
  const opened = (boundary: 'drawn' | 'mapped') => {
    const plan = planOpenings({ panel, ...build, zones: zones.map((zone) => ({ ...zone, boundary })) });
    if (!plan.ok) throw new Error(JSON.stringify(plan.problems));
    return plan.value;
  };
  expect(opened('mapped').openedAreaM2).toBeLessThan(opened('drawn').openedAreaM2 * 0.9);
  const margin = opened('mapped').assumptions.find(
    ({ origin }) => origin.kind === 'assumed' && origin.at === '/method/cutMarginMm',
  );
  expect(margin?.value).toBe(0);
});

test('proven rot is opened, whatever the taps round it say', () => {
  const sharp = taps.map((tap) => (tap.kind === 'sounding' ? { ...tap, sound: 'sharp' as const } : tap));
  const rotten: Reading = { kind: 'plug', at: [1300, 400], condition: 'rotten' };
  expect(found({}, sharp).zones).toEqual([]);
  expect(found({}, [...sharp, rotten]).zones.length).toBeGreaterThan(0);
});

test('one plug alone is an answer', () => {
  const rotten = found({}, [{ kind: 'plug', at: [1300, 400], condition: 'rotten' }]);
  expect(rotten.zones).toHaveLength(1);
  expect(rotten.damagedAreaM2.p10).toBeLessThan(0.9);
  expect(rotten.damagedAreaM2.p90).toBeGreaterThan(2 * rotten.damagedAreaM2.p10);
  const dry = found({}, [{ kind: 'plug', at: [1300, 400], condition: 'dry-sound' }]);
  expect(dry.damagedAreaM2.p50).toBeLessThan(rotten.damagedAreaM2.p50);
});
