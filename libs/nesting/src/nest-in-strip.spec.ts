import { describe, expect, test } from '@jest/globals';
import { nestInStrip, type StripRequest } from './index.js';

const rectangle = (length: number, width: number) =>
  [
    [0, 0],
    [length, 0],
    [length, width],
    [0, width],
  ] as const;
const request = (change: Partial<StripRequest> = {}): StripRequest => ({
  pieces: [{ id: 'ply', outline: rectangle(900, 600), count: 4, turnsDeg: [0, 180] }],
  widthMm: 1250,
  kerfMm: 0,
  edgeTrimMm: 0,
  seed: 1,
  workUnits: 200,
  ...change,
});
const layoutOf = (change: Partial<StripRequest> = {}) => {
  const outcome = nestInStrip(request(change));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
};

describe('plies off a roll', () => {
  test('four plies of 900 x 600 mm lie two abreast on a roll of 1250 mm', () => {
    expect(layoutOf().lengthMm).toBe(1800);
  });

  test('the direction of the fibres decides: turned by a quarter the same plies would need another length', () => {
    const turned = layoutOf({
      pieces: [{ id: 'ply', outline: rectangle(900, 600), count: 4, turnsDeg: [90] }],
    });
    expect(turned.lengthMm).toBe(2400);
    expect(turned.placements.every(({ turnDeg }) => turnDeg === 90)).toBe(true);
  });

  test('more work never takes more roll, and no layout is shorter than the bound', () => {
    const pieces = [
      {
        id: 'wedge',
        outline: [
          [0, 0],
          [700, 80],
          [650, 500],
          [90, 420],
        ] as const,
        count: 9,
        turnsDeg: [0, 180],
      },
    ];
    const [little, more] = [0, 1500].map((workUnits) => layoutOf({ pieces, workUnits }));
    expect(more.lengthMm).toBeLessThanOrEqual(little.lengthMm);
    expect(more.lengthMm).toBeGreaterThanOrEqual(more.leastLengthMm);
    expect(layoutOf({ pieces, workUnits: 1500 })).toEqual(more);
  });

  test('a ply wider than the roll is named with its size and the room', () => {
    const outcome = nestInStrip(request({ widthMm: 500 }));
    expect(outcome.ok ? [] : outcome.problems).toMatchObject([
      {
        code: 'too-large-for-stock',
        at: '/pieces/0',
        facts: {
          size: '600 mm across',
          room: '500 mm across',
          offer: 'cut it into 2 parts of at most 900 x 300 mm, or add larger stock',
        },
      },
    ]);
  });

  test('a roll that is too short is refused with the length that would do', () => {
    const outcome = nestInStrip(request({ longestMm: 1500 }));
    expect(outcome.ok ? [] : outcome.problems).toMatchObject([{ code: 'out-of-range', at: '/longestMm' }]);
  });

  test('a hole outside its piece is refused', () => {
    const pieces = [{ id: 'ring', outline: rectangle(100, 100), holes: [rectangle(200, 50)], turnsDeg: [0] }];
    const outcome = nestInStrip(request({ pieces }));
    expect(outcome.ok ? [] : outcome.problems).toMatchObject([
      { code: 'contradiction', at: '/pieces/0/holes/0' },
    ]);
  });
});
