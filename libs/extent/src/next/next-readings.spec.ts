import { describe, expect, test } from '@jest/globals';
import { distance, rectangle, type Point } from '#lib/geometry';
import {
  estimateExtent,
  nextReadings,
  type ExtentRequest,
  type NextAsked,
  type NextReadings,
  type Reading,
} from '../index.js';

const panel = { outline: rectangle(0, 0, 2000, 1000) };
const tap = (at: Point): Reading => ({
  kind: 'sounding',
  at,
  sound: distance(at, [700, 500]) < 300 ? 'dull' : 'sharp',
});
const grid = (step: number): readonly Reading[] =>
  Array.from({ length: Math.floor(1900 / step) }, (_, column) =>
    Array.from({ length: Math.floor(950 / step) }, (__, row) => tap([step * (column + 1), step * (row + 1)])),
  ).flat();

const found = (next: NextAsked, more: Partial<ExtentRequest> = {}): NextReadings => {
  const outcome = nextReadings({ panel, survey: { readings: grid(200) }, next, ...more });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};

describe('where to read next', () => {
  test('at the rim of what was heard, where the deck is undecided, and not in its middle or far from it', () => {
    const { readings } = found({ kinds: ['sounding'], count: 8 }, { survey: { readings: grid(120) } });
    expect(readings).toHaveLength(8);
    const rims = readings.map(({ at }) => Math.abs(distance(at, [700, 500]) - 300));
    expect(rims.filter((away) => away < 150).length).toBeGreaterThanOrEqual(5);
  });

  test('readings of a batch spread out, and stand where nothing was read before', () => {
    const { readings } = found({ count: 20 });
    for (const [index, { at }] of readings.entries()) {
      for (const other of readings.slice(index + 1)) expect(distance(at, other.at)).toBeGreaterThan(69);
      for (const tapped of grid(200)) expect(distance(at, tapped.at)).toBeGreaterThan(59);
    }
  });

  test('where nobody can get at, beside supports and under fittings no reading is asked for', () => {
    const [left, right] = [rectangle(0, 0, 750, 1000), rectangle(900, 0, 2000, 1000)];
    const { readings } = found(
      { count: 20, kinds: ['sounding', 'plug'], unreachable: [left] },
      {
        panel: { ...panel, supports: [{ kind: 'bulkhead', from: [1000, 0], to: [1000, 1000] }] },
        fittings: [{ id: 'c', kind: 'cleat', at: [1000, 300], baseMm: 200 }],
      },
    );
    expect(readings.length).toBeGreaterThan(0);
    for (const { at } of readings) {
      expect(at[0]).toBeGreaterThanOrEqual(750);
      expect(Math.abs(at[0] - 1000)).toBeGreaterThanOrEqual(39);
      expect(distance(at, [1000, 300])).toBeGreaterThanOrEqual(129);
    }
    expect(found({ unreachable: [left, right, rectangle(740, 0, 910, 1000)] }).readings).toEqual([]);
  });

  test('the batch keeps to the minutes there are, and does not take what saves less than its time', () => {
    const short = found({ minutes: 4, count: 30 });
    expect(short.minutes).toBeLessThanOrEqual(4);
    expect(short.readings.length).toBeGreaterThan(3);
    const slow = found({ tapMinutes: 30, kinds: ['sounding'] });
    const quick = found({ tapMinutes: 0.5, kinds: ['sounding'] });
    expect(slow.readings.length).toBeLessThan(quick.readings.length);
  });

  test('a closely tapped deck with a plain answer needs nothing more, and says so', () => {
    const many = found({ plugMinutes: 240, tapMinutes: 30 }, { survey: { readings: grid(70) } });
    expect(many.isWorthIt).toBe(false);
    expect(many.advice.code).toBe('readings-enough');
  });

  test('with readings the extent names them too, and nothing to open says what would settle it', () => {
    const sharp = grid(200).map((reading): Reading => ({ kind: 'sounding', at: reading.at, sound: 'sharp' }));
    const outcome = estimateExtent({ panel, survey: { readings: [...sharp, tap([700, 520])] } });
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
    const { zones, findings, nextReadings: next } = outcome.value;
    expect(zones).toEqual([]);
    const [first] = next?.readings ?? [];
    expect(findings.find(({ code }) => code === 'nothing-to-open')?.text).toContain(first.at.join(', '));
  });

  test('beside drawn zones the readings are asked about only when that is asked for', () => {
    const request = {
      panel,
      survey: { readings: grid(200) },
      zones: [{ id: 'Z1', outline: rectangle(450, 250, 950, 750) }],
    };
    const outcome = estimateExtent(request);
    expect(outcome.ok && outcome.value.nextReadings).toBeUndefined();
    expect(found({}, request).readings.length).toBeGreaterThan(0);
  });
});
