import { describe, expect, test } from '@jest/globals';
import { MOST_CORNERS, readOutline, signedAreaMm2, type Point } from './index.js';

const problemsOf = (points: readonly unknown[]) => {
  const read = readOutline(points, '/panel/outline');
  return read.ok ? [] : read.problems;
};

describe('reading an outline', () => {
  const square: readonly Point[] = [
    [0, 0],
    [100, 0],
    [100, 100],
    [0, 100],
  ];

  test('a square drawn either way round runs from x towards y', () => {
    for (const points of [square, [...square].reverse()]) {
      const read = readOutline(points);
      expect(read.ok && signedAreaMm2(read.value)).toBe(10_000);
    }
  });

  test('a last corner that repeats the first only closes the outline', () => {
    const read = readOutline([...square, square[0]]);
    expect(read.ok && read.value).toEqual(square);
  });

  test('a bow-tie is refused with the place where it crosses', () => {
    expect(
      problemsOf([
        [0, 0],
        [100, 100],
        [100, 0],
        [0, 100],
      ]),
    ).toEqual([{ code: 'outline-crosses-itself', at: '/panel/outline', facts: { xMm: 50, yMm: 50 } }]);
  });

  test('a corner that touches another edge is refused', () => {
    expect(
      problemsOf([
        [0, 0],
        [100, 0],
        [100, 100],
        [50, 0],
        [0, 100],
      ])[0],
    ).toMatchObject({ code: 'outline-crosses-itself', facts: { xMm: 50, yMm: 0 } });
  });

  test('a spike that folds back on itself is refused', () => {
    expect(
      problemsOf([
        [0, 0],
        [100, 0],
        [200, 0],
        [100, 0.001],
        [150, 0],
        [0, 100],
      ])[0]?.code,
    ).toBe('outline-crosses-itself');
    expect(
      problemsOf([
        [0, 0],
        [200, 0],
        [100, 0],
        [100, 100],
      ])[0]?.code,
    ).toBe('outline-crosses-itself');
  });

  test('corners in one line enclose no area', () => {
    expect(
      problemsOf([
        [0, 0],
        [50, 50],
        [100, 100],
        [20, 20],
      ]),
    ).toEqual([{ code: 'outline-without-area', at: '/panel/outline', facts: { hint: '' } }]);
  });

  test('an outline in metres is told that coordinates are in millimetres', () => {
    const [found] = problemsOf([
      [0.7, 0.3],
      [1.25, 0.3],
      [1.25, 0.62],
      [0.7, 0.62],
    ]);
    expect(String(found.facts.hint)).toContain(
      '0.636 mm long; coordinates are in mm, and these may be metres',
    );
  });

  test('every bad coordinate is named at once', () => {
    const problems = problemsOf([[0, 0], [Number.NaN, 0], [100, Infinity], [0, 1e9], 'here']);
    expect(problems.map(({ code, at }) => `${code} ${at}`)).toEqual([
      'not-a-number /panel/outline/1/0',
      'not-a-number /panel/outline/2/1',
      'out-of-range /panel/outline/3/1',
      'not-a-number /panel/outline/4',
    ]);
  });

  test('a corner given twice in a row is named', () => {
    expect(
      problemsOf([
        [0, 0],
        [100, 0],
        [100, 0],
        [0, 100],
      ]).map(({ code, at }) => `${code} ${at}`),
    ).toEqual(['duplicate /panel/outline/2']);
  });

  test('two corners and too many corners are counted, not computed', () => {
    expect(
      problemsOf([
        [0, 0],
        [1, 1],
      ])[0]?.code,
    ).toBe('too-few');
    expect(problemsOf(new Array(MOST_CORNERS + 1).fill([0, 0]))).toEqual([
      { code: 'too-many', at: '/panel/outline', facts: { count: 2001, most: 2000 } },
    ]);
  });

  test('a comb of 2,000 corners is read', () => {
    const comb = Array.from({ length: 1998 }, (_, index): Point => [index * 10, index % 2 === 0 ? 0 : 4000]);
    const read = readOutline([...comb, [20_000, 5000], [-10, 5000]]);
    expect(read.ok).toBe(true);
  });
});
