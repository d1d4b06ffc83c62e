import { describe, expect, test } from '@jest/globals';
import { existsSync, readFileSync } from 'node:fs';
import { outsideJobs } from './outside-jobs.js';
import { comparisonsOf, estimateOf, outsidePage } from './report.js';

describe('a job that somebody else did', () => {
  test.each(outsideJobs.map((job) => [job.id, job] as const))(
    '%s is estimated, compared and explained',
    (_, job) => {
      const comparisons = comparisonsOf(job, estimateOf(job));
      expect(comparisons.length).toBeGreaterThan(0);
      expect(comparisons.filter(({ oursP10, oursP90 }) => !(oursP10 > 0) || !(oursP90 >= oursP10))).toEqual(
        [],
      );
      const needsReason = comparisons.some(({ isInside }) => !isInside);
      expect(needsReason ? job.explained.length : 1).toBeGreaterThan(0);
    },
  );

  // Does not reproduce: two sheets of 1220 x 584 mm (1.43 m2) where the owners cut up one whole sheet. Two pieces of 913 mm lie
  // side by side on 606 mm, 22 mm more than the small sheet is wide, and one of the large format costs more than two of the small.
  test.failing('the strip of 6 ft x 12 in takes one sheet, as its owners bought', () => {
    const strip = outsideJobs.find(({ id }) => id === 'side-deck-strip-2015');
    expect(strip && estimateOf(strip).summary.coreSheets).toBe(1);
  });

  test('the growth of the foredeck lies inside the range of its evidence grade', () => {
    const foredeck = outsideJobs.find(({ id }) => id === 'foredeck-growth');
    expect(foredeck && comparisonsOf(foredeck, estimateOf(foredeck)).map(({ isInside }) => isInside)).toEqual(
      [true],
    );
  });
});

test('the page of outside jobs is fresh', () => {
  const page = 'test/reference/outside/outside-jobs.md';
  expect(existsSync(page)).toBe(true);
  expect(readFileSync(page, 'utf8')).toBe(outsidePage(outsideJobs));
});
