import { describe, expect, test } from '@jest/globals';
import fc from 'fast-check';
import {
  battenLines,
  boardLines,
  bowLines,
  PROP_ABOVE_MM,
  type PressLine,
  type Support,
} from './press-lines.js';

interface Opening {
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly isTurned: boolean;
  readonly spacingMm: number;
  /** Places of beams that cross it. */
  readonly beams: readonly number[];
  /** Place of one that runs along it. */
  readonly stringer: number | undefined;
}

const openings: fc.Arbitrary<Opening> = fc.record({
  lengthMm: fc.integer({ min: 450, max: 4000 }),
  widthMm: fc.integer({ min: 150, max: 440 }),
  isTurned: fc.boolean(),
  spacingMm: fc.integer({ min: 100, max: 400 }),
  beams: fc.array(fc.integer({ min: -500, max: 4500 }), { maxLength: 4 }),
  stringer: fc.option(fc.integer({ min: 1, max: 439 }), { nil: undefined }),
});

/** The opening with its long side forward; beams cross it, a stringer runs along it. */
function laid({ lengthMm, widthMm, isTurned, spacingMm, beams, stringer }: Opening) {
  const turned = (point: readonly [number, number]): readonly [number, number] =>
    isTurned ? [point[1], point[0]] : point;
  const supports: readonly Support[] = [
    ...beams.map((at) => ({ from: turned([at, -100]), to: turned([at, 2000]) })),
    ...(stringer === undefined ? [] : [{ from: turned([-200, stringer]), to: turned([5000, stringer]) }]),
  ];
  const [maxX, maxY] = turned([lengthMm, widthMm]);
  const lines = boardLines({
    bounds: { minX: 0, minY: 0, maxX, maxY },
    supports,
    spanMm: widthMm,
    spacingMm,
  });
  return lines.map(({ from, to, points }) => ({
    from: turned(from),
    to: turned(to),
    points: points.map(turned),
  }));
}

describe('boards under an opening', () => {
  test('leave no strip of skin wider than they may stand apart, wherever it is measured', () => {
    fc.assert(
      fc.property(openings, fc.double({ min: 0, max: 1, noNaN: true }), (opening, share) => {
        const boards = laid(opening);
        const at = share * opening.lengthMm;
        const carriers = [
          0,
          opening.widthMm,
          ...(opening.stringer === undefined || opening.stringer > opening.widthMm ? [] : [opening.stringer]),
          ...boards.filter(({ from, to }) => from[0] <= at && at <= to[0]).map(({ from }) => from[1]),
        ].sort((a, b) => a - b);
        for (let index = 1; index < carriers.length; index += 1)
          expect(carriers[index] - carriers[index - 1]).toBeLessThanOrEqual(opening.spacingMm + 1e-6);
      }),
    );
  });

  test('go through no beam, and rest on props within reach of each other and of their ends', () => {
    fc.assert(
      fc.property(openings, (opening) => {
        for (const { from, to, points } of laid(opening)) {
          for (const beam of opening.beams) expect(beam > from[0] + 1e-6 && beam < to[0] - 1e-6).toBe(false);
          const stops = [...points.map(([x]) => x)].sort((a, b) => a - b);
          expect(stops[0] - from[0]).toBeLessThanOrEqual(PROP_ABOVE_MM / 2 + 1e-6);
          expect(to[0] - stops[stops.length - 1]).toBeLessThanOrEqual(PROP_ABOVE_MM / 2 + 1e-6);
          for (let index = 1; index < stops.length; index += 1)
            expect(stops[index] - stops[index - 1]).toBeLessThanOrEqual(PROP_ABOVE_MM + 1e-6);
        }
      }),
    );
  });
});

const across = (lines: readonly PressLine[], axis: 0 | 1): readonly number[] =>
  lines.map(({ from }) => Math.round(from[axis]));

test('a batten lies in the middle of the strip that it presses, with a screw at both ends of the core', () => {
  const lines = battenLines({ lengthMm: 600, widthMm: 360, spacingMm: 90, screwSpacingMm: 150 });
  expect(across(lines, 1)).toEqual([45, 135, 225, 315]);
  expect(lines[0].points.map(([x]) => x)).toEqual([0, 150, 300, 450, 600]);
  expect([lines[0].from[0], lines[0].to[0]]).toEqual([-100, 700]);
});

test('bows lie across the longer side, from end to end of it', () => {
  expect(across(bowLines({ lengthMm: 900, widthMm: 400, count: 4 }), 0)).toEqual([0, 300, 600, 900]);
  expect(across(bowLines({ lengthMm: 400, widthMm: 900, count: 4 }), 1)).toEqual([0, 300, 600, 900]);
});
