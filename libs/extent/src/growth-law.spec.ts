import { describe, expect, test } from '@jest/globals';
import {
  growthByGrade,
  growthLaw,
  growthLevels,
  growthMean,
  growthQuantile,
  judgedShare,
  mappedLaw,
  newAreas,
  shareBelowRecord,
} from './growth-law.js';
import type { EvidenceGrade } from './reading.js';

const grades: readonly EvidenceGrade[] = [
  'single-symptom',
  'sounded-and-metered',
  'mapped-with-plugs',
  'opened-and-measured',
];
const free = (grade: EvidenceGrade, recordedM2 = 0.3, pairs: readonly number[] = []) =>
  growthLaw({ grade, recordedM2, mostM2: 1000, pairs });

describe('what is found when a deck is opened', () => {
  test('is now and then less than recorded, and the more often the better it was known', () => {
    const shares = grades.map((grade) => shareBelowRecord(free(grade)));
    expect(shares.every((share) => share > 0.2 && share <= 0.5)).toBe(true);
    expect([...shares].sort((a, b) => a - b)).toEqual(shares);
  });

  // By hand: a lognormal of median 1.05 and deviation 0.2 has the mean 1.05 e^0.02 = 1.0712.
  test('has the mean of its lognormal where nothing holds it', () =>
    expect(growthMean(free('mapped-with-plugs'))).toBeCloseTo(1.0712, 3));

  test('runs back and forth between quantile and chance', () => {
    for (const grade of grades)
      for (const p of [0.02, 0.1, 0.3, 0.5, 0.8, 0.97])
        expect(judgedShare(free(grade), growthQuantile(free(grade), p))).toBeCloseTo(p, 6);
  });

  test('is the same read one by one and read at once', () => {
    for (const grade of grades) {
      const law = free(grade);
      const levels = growthLevels(law, 500);
      for (const level of [0, 20, 120, 250, 380, 499])
        expect(levels[level] / growthQuantile(law, (level + 0.5) / 500)).toBeCloseTo(1, 2);
      const mean = levels.reduce((sum, factor) => sum + factor / 500, 0);
      expect(mean / growthMean(law)).toBeCloseTo(1, 3);
    }
  });

  test('never passes the panel', () => {
    const law = growthLaw({ grade: 'single-symptom', recordedM2: 1, mostM2: 1.3 });
    expect(growthQuantile(law, 0.99)).toBe(1.3);
    expect(growthMean(law)).toBeLessThan(1.3);
  });

  // By hand: 8 m2 is 16 times half a square metre, whose fourth root is 2.
  test('spreads half as far over eight square metres as over a half', () =>
    expect(free('sounded-and-metered', 8).sigma).toBeCloseTo(
      growthByGrade['sounded-and-metered'].sigma / 2,
      12,
    ));

  test('leans half-way to fifteen own jobs that all came out as recorded', () => {
    const own = free(
      'sounded-and-metered',
      0.3,
      Array.from({ length: 15 }, () => 1),
    );
    const alone = growthQuantile(free('sounded-and-metered'), 0.9);
    expect(growthQuantile(own, 0.9)).toBeCloseTo((alone + 1) / 2, 9);
  });

  test('follows the map of the readings where there is one', () => {
    const law = mappedLaw({ p10: 0.4, p50: 0.5, p90: 0.9 }, { recordedM2: 0.5, mostM2: 5 });
    expect([0.1, 0.5, 0.9].map((p) => growthQuantile(law, p) * 0.5)).toEqual([
      expect.closeTo(0.4, 9),
      expect.closeTo(0.5, 9),
      expect.closeTo(0.9, 9),
    ]);
  });

  test('leaves new areas elsewhere to a count of their own, fewer where the whole deck was sounded', () => {
    for (const grade of grades)
      expect(newAreas(grade, 'whole').expected).toBeLessThanOrEqual(newAreas(grade, 'part').expected);
  });
});
