import { describe, expect, test } from '@jest/globals';
import { readFileSync } from 'node:fs';
import { moneyOfTheYear } from './money-of-the-year.js';
import { outsideJobs, type OutsideJob } from './outside-jobs.js';
import { outsidePage, outsidePlot } from './page.js';
import { comparisonsOf, estimateOf, leaveOneOut, type Comparison } from './report.js';

const found = (which: (job: OutsideJob) => boolean, what: Comparison['what']): readonly Comparison[] =>
  outsideJobs
    .filter(which)
    .flatMap((job) => comparisonsOf(job, estimateOf(job)).filter((one) => one.what === what));
const insideOf = (comparisons: readonly Comparison[]): number =>
  comparisons.filter(({ isInside }) => isInside).length;
const isStated = ({ area }: OutsideJob): boolean => area.origin === 'stated';

describe('a job that somebody else did', () => {
  test.each(outsideJobs.map((job) => [job.id, job] as const))(
    '%s is estimated and compared, and explained where it lies outside',
    (_, job) => {
      const comparisons = comparisonsOf(job, estimateOf(job));
      expect(comparisons.length).toBeGreaterThan(0);
      expect(comparisons.filter(({ ours: { p10, p90 } }) => !(p10 > 0) || !(p90 >= p10))).toEqual([]);
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

  test('the growth of the foredeck lies inside the range of its evidence grade', () =>
    expect(found(({ id }) => id === 'foredeck-growth', 'growth').map(({ isInside }) => isInside)).toEqual([
      true,
    ]));
});

describe('of all of them', () => {
  test('ours lies above told as often as a yard may fear and not always: two thirds of all hours are inside', () => {
    const hours = found(() => true, 'hours');
    expect(insideOf(hours) / hours.length).toBeGreaterThanOrEqual(2 / 3);
  });

  // Five of six: the verbal quote for a hardtop lies five times below ours and every other job in print.
  test('of the jobs with a stated area eight in ten are inside in hours', () => {
    const hours = found(isStated, 'hours');
    expect(insideOf(hours) / hours.length).toBeGreaterThanOrEqual(0.8);
  });
});

describe('one factor refitted on all others', () => {
  const hours = (low: number, high: number, p50: number): Comparison => ({
    what: 'hours',
    unit: 'h',
    told: { low, high },
    ours: { p10: 0.8 * p50, p50, p90: 1.25 * p50 },
    covers: 'by hand',
    isInside: true,
  });

  // By hand: told over ours 2, 0.5 and 1; without the first the factor is the root of 0.5 x 1, and so on.
  test('is the middle of the others, and judges the job left out', () => {
    const left = leaveOneOut([
      { id: 'twice', hours: hours(20, 20, 10) },
      { id: 'half', hours: hours(5, 5, 10) },
      { id: 'as told', hours: hours(10, 10, 10) },
      { id: 'at most', hours: hours(0, 8, 10) },
    ]);
    expect(left.map(({ id, isInside }) => [id, isInside])).toEqual([
      ['twice', false],
      ['half', false],
      ['as told', true],
    ]);
    expect(left.map(({ factor }) => factor)).toEqual([
      expect.closeTo(Math.sqrt(0.5), 12),
      expect.closeTo(Math.SQRT2, 12),
      expect.closeTo(1, 12),
    ]);
  });
});

// By hand: 201.6 / 322.5 = 0.62512; 188.9 / 322.5 x 1.3013 = 0.76222.
test('a dollar of the lists is worth what it was in the year of the source', () => {
  expect(moneyOfTheYear({ currency: 'USD', year: 2006 })).toBeCloseTo(0.62512, 5);
  expect(moneyOfTheYear({ currency: 'CAD', year: 2004 })).toBeCloseTo(0.76222, 5);
});

test('the page of outside jobs and its plot are fresh', () => {
  expect(readFileSync('test/reference/outside/outside-jobs.md', 'utf8')).toBe(outsidePage(outsideJobs));
  expect(readFileSync('test/reference/outside/outside-jobs.svg', 'utf8')).toBe(outsidePlot(outsideJobs));
});
