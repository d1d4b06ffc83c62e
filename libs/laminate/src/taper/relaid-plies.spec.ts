import { describe, expect, test } from '@jest/globals';
import type { Reinforcement } from '#lib/catalogue';
import { areaMm2, regionOf, type Region } from '#lib/geometry';
import { closingPlies, pliesToFill } from './closing-plies.js';
import { stagesOf } from './laying.js';
import { relaidPlies, type PlyToLay, type RelaidRequest } from './relaid-plies.js';

const datum = (value: number) => ({ value, cite: { source: 'COMMON-PRACTICE' } });
const cloth = (widths: readonly number[]): Reinforcement => ({
  kind: 'reinforcement',
  code: 'cloth-600',
  name: 'Cloth 600 g/m2',
  fabric: 'cloth',
  fibre: 'e-glass',
  arealMassGPerM2: datum(600),
  layers: [{ layup: 'woven', angleDeg: 0, arealMassGPerM2: 600 }],
  fibreMassFraction: datum(0.5),
  rollWidthsMm: widths,
  rollLengthsM: [50],
  suitsAgainstCore: true,
  printThrough: 1,
  suitsResins: ['epoxy'],
});
const ply = (widths: readonly number[] = [1270]): PlyToLay => ({
  material: cloth(widths),
  thicknessMm: 1,
  fibreMassFraction: 0.5,
});
const square: Region = regionOf([
  [0, 0],
  [600, 0],
  [600, 400],
  [0, 400],
]);
const request: RelaidRequest = { opening: square, oldThicknessMm: 3, plies: [ply(), ply(), ply()] };

function laid(given: RelaidRequest) {
  const outcome = relaidPlies(given);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
  return outcome.value;
}

describe('a relaid skin', () => {
  test('a 3 mm skin at 12:1 takes a taper of 36 mm, and three plies step 12, 24 and 36 mm', () => {
    const { taperWidthMm, plies } = laid(request);
    expect(taperWidthMm.value).toBe(36);
    expect(plies.map(({ beyondOpeningMm }) => beyondOpeningMm)).toEqual([12, 24, 36]);
  });

  test('the area of a ply is that of the opening grown with round corners', () => {
    // By hand: 600 x 400 + 2 x (600 + 400) x 12 + π x 12² = 240000 + 24000 + 452.39.
    const [first] = laid(request).plies;
    expect(first.areaM2.value).toBeCloseTo(0.264452, 4);
    expect(areaMm2(first.outline)).toBeCloseTo(264_452, -1.5);
  });

  test('largest first lays the same outlines the other way round', () => {
    const { plies } = laid({ ...request, order: 'largest-first' });
    expect(plies.map(({ beyondOpeningMm }) => beyondOpeningMm)).toEqual([36, 24, 12]);
  });

  test('a roll wide enough is cut in one length and a little for trimming', () => {
    const [first] = laid(request).plies;
    expect(first.pieces).toHaveLength(1);
    expect(first.rollLengthM).toBeCloseTo(0.674, 3);
  });

  test('a narrow roll is laid in strips that overlap, and the overlap is weighed twice', () => {
    const [first] = laid({ ...request, plies: [ply([200])] }).plies;
    // 424 mm across: (424 - 50) / (200 - 50) = 2.5, so three strips, each 624 mm long.
    expect(first.pieces).toHaveLength(3);
    expect(first.overlapAreaM2).toBeCloseTo(2 * 0.05 * 0.624, 3);
    expect(first.glassKg.value).toBeCloseTo((first.areaM2.value + first.overlapAreaM2) * 0.6, 9);
    expect(first.resinKg.value).toBeCloseTo(first.glassKg.value, 12);
  });

  test('seams of the next ply keep away from those below', () => {
    const { plies } = laid({ ...request, plies: [ply([300]), ply([300])] });
    const middle = (i: number) =>
      Math.min(...plies[i].pieces.map(({ outline }) => Math.max(...outline[0].outer.map(([, y]) => y))));
    expect(Math.abs(middle(0) - middle(1))).toBeGreaterThan(20);
  });

  test('a roll laid athwart the panel is cut to the other length', () => {
    const [first] = laid({ ...request, plies: [{ ...ply(), turnDeg: 90 }] }).plies;
    expect(first.rollLengthM).toBeCloseTo(0.474, 3);
  });

  test('six millimetres of laminate is laid in two goes where four is the limit', () => {
    expect(stagesOf([1.5, 1.5, 1.5, 1.5], 4).map(({ plies }) => plies)).toEqual([
      [1, 2],
      [3, 4],
    ]);
    expect(stagesOf([5], 4)[0].isOverLimit).toBe(true);
  });

  test('a taper that runs off the sound skin is found out', () => {
    const soundSkin = regionOf([
      [-36, -36],
      [636, -36],
      [636, 420],
      [-36, 420],
    ]);
    expect(laid({ ...request, soundSkin }).room.verdict).toBe('fails');
    expect(
      laid({
        ...request,
        soundSkin: regionOf([
          [-40, -40],
          [640, -40],
          [640, 440],
          [-40, 440],
        ]),
      }).room.verdict,
    ).toBe('passes');
    expect(laid(request).room.verdict).toBe('not-established');
  });

  test('everything wrong with a request is said at once', () => {
    const outcome = relaidPlies({
      opening: [],
      oldThicknessMm: -1,
      plies: [{ ...ply(), thicknessMm: 0 }],
      taperRatio: 0.5,
    });
    expect(outcome.ok ? [] : outcome.problems.map(({ at }) => at).sort()).toEqual([
      '/oldThicknessMm',
      '/opening',
      '/plies/0/thicknessMm',
      '/taperRatio',
    ]);
  });
});

describe('closing plies over the cut of a re-bedded skin', () => {
  const closing = { skinThicknessMm: 2, cutLengthMm: 3000, plies: [ply([100, 150]), ply([100, 150])] };
  const closed = (extra: object = {}) => {
    const outcome = closingPlies({ ...closing, ...extra });
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
    return outcome.value;
  };

  test('a 2 mm skin at 12:1 opens a groove of two tapers and the kerf', () => {
    expect(closed().grooveWidthMm).toBe(52);
    expect(closed().plies.map(({ widthMm }) => widthMm)).toEqual([28, 52]);
  });

  test('a 100 mm tape is cut into as many lanes as fit', () => {
    const { plies } = closed();
    // 3 m in two strips of 1.5 m + 50 mm: 28 mm goes three abreast in one length of tape, 52 mm takes two lengths.
    expect(plies.map(({ rollLengthM }) => rollLengthM)).toEqual([1.55, 3.1]);
  });

  test('round an opening each closing ply is a ring over the cut', () => {
    const ring = closed({ cutLengthMm: undefined, opening: square, kerfMm: 0 }).plies[1];
    // By hand: outside 2000 x 24 + π 24², inside 2000 x 24 - 4 x 24², together 96000 + 1809.56 - 2304 = 95505.6 mm2.
    expect(ring.areaM2.value).toBeCloseTo(0.0955056, 4);
  });

  test('the bond of a 12:1 taper carries 12/145 of the skin stress', () => {
    const { checks, leastTaperRatio } = closed({ joint: { stressMPa: 100, allowableShearMPa: 10 } });
    const shear = checks.find(({ check }) => check === 'bond-shear');
    expect(shear?.demand).toBeCloseTo(1200 / 145, 12);
    expect(shear?.verdict).toBe('passes');
    expect(leastTaperRatio).toBeCloseTo((10 + Math.sqrt(96)) / 2, 12);
  });

  test('no room beside the cut is a failed check, and an unknown one is not passed over', () => {
    expect(closed({ roomMm: 20 }).checks[0].verdict).toBe('fails');
    expect(closed({ roomMm: 0 }).checks[0].verdict).toBe('fails');
    expect(closed().checks[0].verdict).toBe('not-established');
  });

  test('the number of plies that fills a groove is the nearest whole one', () => {
    expect([pliesToFill(3, 0.9), pliesToFill(0.2, 0.9)]).toEqual([3, 1]);
  });

  test('a cut without length is refused', () => {
    const outcome = closingPlies({ skinThicknessMm: 2, plies: [ply()] });
    expect(outcome.ok ? [] : outcome.problems.map(({ at }) => at)).toEqual(['/cutLengthMm']);
  });
});
