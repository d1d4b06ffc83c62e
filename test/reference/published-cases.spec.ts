import { describe, expect, test } from '@jest/globals';
import { allCases } from './all-cases.js';
import { allowedDifference } from './published-case.js';

const cases = await allCases();

test('every published case has an id of its own', () => {
  expect(new Set(cases.map(({ id }) => id)).size).toBe(cases.length);
});

describe('published numbers', () => {
  test.each(cases.map((published) => [published.id, published] as const))('%s', (_, published) => {
    const value = published.ours();
    expect(Number.isFinite(value)).toBe(true);
    if (published.disagreement === undefined) {
      expect(Math.abs(value - Number(published.printed))).toBeLessThanOrEqual(allowedDifference(published));
      return;
    }
    const { oursShouldBe, relative } = published.disagreement;
    expect(Math.abs(value - oursShouldBe)).toBeLessThanOrEqual(relative * Math.abs(oursShouldBe));
    expect(Math.abs(value - Number(published.printed))).toBeGreaterThan(allowedDifference(published));
  });
});
