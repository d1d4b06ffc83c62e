import { describe, expect, test } from '@jest/globals';
import type { Reading } from '#lib/extent';
import { coreFoundBy } from './core-readings.js';

const taken = [
  {
    outer: [
      [0, 0],
      [100, 0],
      [100, 100],
      [0, 100],
    ],
    holes: [],
  },
] as const;
const foundBy = (...readings: readonly Reading[]) =>
  coreFoundBy({ readings, meter: { dryReference: 10, wetReference: 40 } }, taken);
const inside = [50, 50] as const;
const outside = [200, 50] as const;

describe('what the readings say of the core', () => {
  test('nothing, where there are none', () => {
    expect(coreFoundBy(undefined, taken)).toEqual({
      wettestPlugPercent: 'unknown',
      readings: { dryStays: 0, wetStays: 0, dryOut: 0 },
    });
  });

  test('a figure of a plug counts before what the eye saw', () => {
    expect(
      foundBy(
        { kind: 'plug', at: outside, condition: 'damp-sound', moisturePercent: 8 },
        { kind: 'plug', at: outside, condition: 'dry-sound', moisturePercent: 16 },
        { kind: 'plug', at: inside, condition: 'rotten', moisturePercent: 60 },
      ),
    ).toEqual({ wettestPlugPercent: 16, readings: { dryStays: 1, wetStays: 1, dryOut: 0 } });
  });

  test('two damp-sound plugs at 8 and 9 % in core that comes out are dry readings', () => {
    expect(
      foundBy(
        { kind: 'plug', at: inside, condition: 'damp-sound', moisturePercent: 8 },
        { kind: 'plug', at: inside, condition: 'damp-sound', moisturePercent: 9 },
      ),
    ).toEqual({ wettestPlugPercent: 'unknown', readings: { dryStays: 0, wetStays: 0, dryOut: 2 } });
  });

  test('a meter reads dry within two points of its dry reference, and a doubtful reading says nothing', () => {
    expect(
      foundBy(
        { kind: 'moisture', at: outside, value: 12 },
        { kind: 'moisture', at: outside, value: 12.1 },
        { kind: 'moisture', at: outside, value: 40, isUnreliable: true },
        { kind: 'sounding', at: outside, sound: 'void' },
      ).readings,
    ).toEqual({ dryStays: 1, wetStays: 1, dryOut: 0 });
  });
});
