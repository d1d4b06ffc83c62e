import { describe, expect, test } from '@jest/globals';
import { setCorner, settingOut } from './setting-out.js';

const tapered = [
  [0, -700],
  [2000, -200],
  [2000, 200],
  [0, 700],
] as const;
const box = [
  [100, 50],
  [3000, 50],
  [3000, 490],
  [100, 490],
] as const;

describe('a deck is set out from places that a tape can be hooked to', () => {
  test('a square panel from its aft port corner', () => {
    expect(settingOut(box)).toEqual({
      way: 'edges',
      zero: [100, 50],
      checks: [
        [100, 50],
        [100, 490],
      ],
    });
  });

  /**
   * A foredeck 1.4 m wide aft and 0.4 m forward over 2 m runs in by 0.25 m for each metre: a line square through its aft
   * corner lies outside the deck everywhere else, so that no tape can be laid along it.
   */
  test('a tapered panel from the middle of its aft edge, forward along the centreline', () => {
    const { way, zero } = settingOut(tapered);
    expect([way, zero]).toEqual(['centreline', [0, 0]]);
  });

  test('a panel that tapers to one side only from a line square to its aft edge', () => {
    const oneSided = [
      [0, -700],
      [2000, -200],
      [2000, 650],
      [0, 700],
    ] as const;
    expect(settingOut(oneSided)).toMatchObject({ way: 'square', zero: [0, 0] });
  });

  test('each corner has two checks that give it back, and tell port from starboard', () => {
    const out = settingOut(tapered);
    for (const [x, y] of [
      [730, -310],
      [730, 310],
      [1500, 40],
    ] as const) {
      const { alongMm, offsetMm, checksMm } = setCorner([x, y], out);
      expect([alongMm, offsetMm]).toEqual([x, y]);
      const [port, starboard] = checksMm;
      const backY = (port ** 2 - starboard ** 2) / (4 * 700);
      const backX = Math.sqrt(port ** 2 - (backY + 700) ** 2);
      expect(backX).toBeCloseTo(x, 6);
      expect(backY).toBeCloseTo(y, 6);
    }
  });

  /** Bay of 0.5 m by 1.2 m out of square by 1 degree: diagonals differ by 16.1 mm (geometry: law of cosines). */
  test('a bay out of square by one degree shows in its diagonals', () => {
    const skew = (degrees: number) => {
      const turn = (degrees * Math.PI) / 180;
      const along = [1200 * Math.sin(turn), 1200 * Math.cos(turn)] as const;
      return [Math.hypot(500 + along[0], along[1]), Math.hypot(along[0] - 500, along[1])] as const;
    };
    const [long, short] = skew(1);
    expect(long - short).toBeCloseTo(16.1, 1);
  });
});
