import { describe, expect, test } from '@jest/globals';
import { clippedRing, clippedShape } from './clip.js';
import { hatched, lined } from './hatch.js';
import { centredText, textBox } from './marks.js';
import { labelRoom, spread } from './placing.js';
import { roundLength, scaleToFit } from './scale.js';
import { boxOf, signedArea, type Point } from './shapes.js';
import { digits, escaped } from './svg.js';
import { ASCENT_SHARE, CAP_SHARE } from './text-size.js';

const square: readonly Point[] = [
  [0, 0],
  [10, 0],
  [10, 10],
  [0, 10],
];
const lengthOf = (parts: readonly (readonly Point[])[]): number =>
  parts.reduce(
    (sum, part) =>
      sum +
      part
        .slice(1)
        .reduce((long, [x, y], index) => long + Math.hypot(x - part[index][0], y - part[index][1]), 0),
    0,
  );

describe('scales', () => {
  test('a deck 2.25 m by 2.1 m goes on a 277 by 145 mm sheet at 1:20', () => {
    expect(scaleToFit(2250, 2100, 277, 145).text).toBe('1:20');
  });
  test('a joint 150 mm wide is drawn at full size on a sheet', () => {
    expect(scaleToFit(150, 20, 180, 100).text).toBe('1:1');
  });
  test('a scale bar has a length of the 1-2-5 series', () => {
    expect([7, 1999, 2000, 0.6].map(roundLength)).toEqual([5, 1000, 2000, 0.5]);
  });
});

describe('hatching', () => {
  test('covers a square with lines as long as its area over their spacing', () => {
    const [{ rings }] = lined([square], 30, 0.05);
    expect(lengthOf(rings) * 0.05).toBeCloseTo(100, 0);
  });
  test('leaves a hole free', () => {
    const hole: readonly Point[] = [
      [2, 2],
      [8, 2],
      [8, 8],
      [2, 8],
    ];
    const [{ rings }] = lined([square, hole], 0, 0.05);
    expect(lengthOf(rings) * 0.05).toBeCloseTo(64, 0);
  });
  test('of a shape without area draws nothing', () => {
    expect(
      hatched(
        [
          [
            [0, 0],
            [10, 0],
          ],
        ],
        'crossed',
      ),
    ).toEqual([]);
  });
});

describe('clipping to a sheet', () => {
  const window = { x: 5, y: -5, width: 20, height: 20 };
  test('keeps the outline that lies inside', () => {
    expect(lengthOf(clippedRing(square, window))).toBeCloseTo(5 + 10 + 5, 9);
  });
  test('keeps the area that lies inside', () => {
    expect(Math.abs(signedArea(clippedShape(square, window)))).toBeCloseTo(50, 9);
    expect(clippedShape(square, { x: 20, y: 20, width: 5, height: 5 })).toEqual([]);
  });
});

describe('values along a line', () => {
  test('that stand apart are left where they are', () => {
    expect(spread([0, 10, 20], 4, -5, 30)).toEqual([0, 10, 20]);
  });
  test('that crowd are moved evenly about their middle', () => {
    expect(spread([10, 10, 10], 4, 0, 30)).toEqual([6, 10, 14]);
  });
  test('stay between the ends', () => {
    expect(spread([0, 0, 0], 4, 0, 30)).toEqual([0, 4, 8]);
    expect(spread([30, 30], 4, 0, 30)).toEqual([26, 30]);
  });
});

describe('labels', () => {
  test('asked for at one place stand side by side, or are not placed at all', () => {
    const room = labelRoom({ x: 0, y: 0, width: 60, height: 40 });
    const wishes = Array.from({ length: 60 }, (_, index) =>
      room.place({ at: [30, 20], content: `label ${index}`, style: {}, clearMm: 1, leader: true }),
    );
    const boxes = wishes.flat().flatMap((mark) => (mark.kind === 'text' ? [textBox(mark)] : []));
    expect(boxes.length).toBeGreaterThan(8);
    expect(boxes.length).toBeLessThan(60);
    for (const [index, a] of boxes.entries()) {
      for (const b of boxes.slice(index + 1)) {
        const isApart =
          a.x + a.width <= b.x || b.x + b.width <= a.x || a.y + a.height <= b.y || b.y + b.height <= a.y;
        expect(isApart).toBe(true);
      }
    }
  });
  test('centre their capitals on the point', () => {
    const box = textBox({ ...centredText([50, 50], 'H', { sizeMm: 10 }) });
    expect(box.x + box.width / 2).toBeCloseTo(50, 6);
    expect(box.y + 10 * (ASCENT_SHARE - CAP_SHARE / 2)).toBeCloseTo(50, 6);
  });
});

describe('writing SVG', () => {
  test('markup in text stays text, and what cannot be shown is named or replaced', () => {
    expect(escaped('<script>&"\'</script>\u0001\u202E\uD800')).toBe(
      '&lt;script&gt;&amp;&quot;&#39;&lt;/script&gt;[U+0001][U+202E]\uFFFD',
    );
  });
  test('numbers are hundredths of a millimetre', () => {
    expect([1 / 3, -0.0001, 12, 0.1 + 0.2].map(digits)).toEqual(['0.33', '0', '12', '0.3']);
  });
  test('a box round no points is empty', () => {
    expect(boxOf([])).toEqual({ x: 0, y: 0, width: 0, height: 0 });
  });
});
