import { expect, test } from '@jest/globals';
import { readLengthMm, thicknessFor, writeLength } from './lengths.js';
import { mirrored } from './panel-templates.js';
import { struck, walked } from './tape.js';

/** Plane geometry: Euclid I.47 and its 3-4-5 triangle. */
test('a right triangle of 300, 400 and 500 walked by its sides closes', () => {
  const smallDeg = (Math.atan2(3, 4) * 180) / Math.PI;
  const { ring, closingErrorMm } = walked([
    { lengthMm: 300, angleDeg: 90 },
    { lengthMm: 400, angleDeg: smallDeg },
    { lengthMm: 500, angleDeg: 90 - smallDeg },
  ]);
  expect(closingErrorMm).toBeLessThan(1e-9);
  expect(ring).toEqual([
    [0, 0],
    [300, 0],
    [300, 400],
  ]);
});

test('a side that is 10 too long shows as a closing error of 10', () => {
  const square = [900, 900, 910, 900].map((lengthMm) => ({ lengthMm, angleDeg: 90 }));
  expect(walked(square).closingErrorMm).toBeCloseTo(10, 9);
});

test('two tapes of 300 and 400 from a base line of 500 meet where the right angle is', () => {
  expect(struck(500, [{ fromAMm: 300, fromBMm: 400 }])).toEqual({
    ring: [
      [0, 0],
      [500, 0],
      [180, 240],
    ],
  });
  expect(struck(500, [{ fromAMm: 100, fromBMm: 100 }])).toEqual({ cannotMeet: 0 });
});

test('a half outline is completed over the centreline, and one that is no half is refused', () => {
  const half = [
    [0, 0],
    [0, -700],
    [1650, -450],
    [1650, 0],
  ] as const;
  expect(mirrored(half)).toEqual({ ring: [...half, [1650, 450], [0, 700]] });
  expect(mirrored([...half, [800, 300]])).toEqual({ refused: 'crosses-centreline' });
});

test.each([
  ['1652', 'si', 1652],
  ['1.2 m', 'si', 1200],
  ['5 ft 3 1/2 in', 'si', 1612.9],
  [`5' 3"`, 'si', 1600.2],
  ['3/4', 'us', 19.05],
  ['١٦٥٠', 'si', 1650],
  ['1,652', 'si', undefined],
  ['about 3', 'si', undefined],
] as const)('%s on a sheet in %s is %s mm', (text, units, mm) => {
  const read = readLengthMm(text, units);
  if (mm === undefined) expect(read).toBeUndefined();
  else expect(read).toBeCloseTo(mm, 9);
});

test('a length is written to a sixteenth, and a thickness goes to the service as it was typed', () => {
  expect([writeLength(12.7, 'us'), writeLength(1650, 'us'), writeLength(1650.04, 'si')]).toEqual([
    '1/2',
    '64 15/16',
    '1650',
  ]);
  expect([thicknessFor('1/2', 'us'), thicknessFor('1/2 in', 'si'), thicknessFor('12.7', 'si')]).toEqual([
    '1/2 in',
    '1/2 in',
    12.7,
  ]);
});
