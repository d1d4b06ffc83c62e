import { describe, expect, test } from '@jest/globals';
import { priceOf, rules, tried } from './price-invariants.js';
import { randomJobs } from './random-jobs.js';

const SEED = 20_261_129;
/** Four estimates each; the bench tries as many as one cares to wait for, and its results page says what it found. */
const JOBS = 10;

describe('the price of a random job', () => {
  const jobs = randomJobs(JOBS, SEED);
  const results = jobs.map(tried);

  test('is worked out for most of them: the rules are not kept by refusing', () =>
    expect(results.filter(({ isPriced }) => isPriced).length).toBeGreaterThan(0.7 * JOBS));

  test.each(rules)('%s', (rule) => {
    const found = results.flatMap(({ breaches }, index) =>
      breaches
        .filter((breach) => breach.rule === rule)
        .map(({ said }) => `job ${index + 1} of seed ${SEED}: ${said}`),
    );
    expect(found).toEqual([]);
  });

  test('is the same to the last digit whatever the seed', () => {
    const { record } = jobs[0];
    const [one, other] = [1, 77].map((seed) => priceOf({ ...record, pricing: { seed } }));
    expect(one?.totals).toEqual(other?.totals);
    expect(one?.summary.calendarDays).toEqual(other?.summary.calendarDays);
    expect(one).toBeDefined();
  });
});
