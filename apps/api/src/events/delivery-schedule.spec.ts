import { describe, expect, test } from '@jest/globals';
import { outcomeOf, waitsS } from './delivery-schedule.js';

describe('what comes of an attempt to deliver', () => {
  test('ten attempts reach over three days, and no further', () => {
    const hours = waitsS.reduce((sum, wait) => sum + wait, 0) / 3600;
    expect(waitsS).toHaveLength(9);
    expect(hours).toBeGreaterThan(72);
    expect(hours).toBeLessThan(96);
    expect([...waitsS].sort((a, b) => a - b)).toEqual(waitsS);
  });

  test.each([200, 201, 204, 299])('%i is success', (status) => {
    expect(outcomeOf(1, { status }, 0)).toMatchObject({ status: 'delivered', lastStatus: status });
  });

  test.each([100, 301, 302, 307, 400, 404, 500, 503])('%i is tried again', (status) => {
    expect(outcomeOf(1, { status }, 0)).toMatchObject({ status: 'waiting', againInS: 5, lastStatus: status });
  });

  test('nothing answered is tried again, later each time, and given up after the tenth', () => {
    const failure = 'no route';
    expect(outcomeOf(9, { failure }, 0)).toMatchObject({ status: 'waiting', againInS: 86_400 });
    expect(outcomeOf(10, { failure }, 0)).toMatchObject({ status: 'failed', lastFailure: failure });
  });

  test('who is gone is not asked again, and who asks for time gets it, a day at most', () => {
    expect(outcomeOf(1, { status: 410 }, 0).status).toBe('failed');
    expect(outcomeOf(1, { status: 429, retryAfterS: 120 }, 0).againInS).toBe(120);
    expect(outcomeOf(1, { status: 503, retryAfterS: 999_999 }, 0).againInS).toBe(86_400);
    expect(outcomeOf(3, { status: 503, retryAfterS: 1 }, 0).againInS).toBe(1800);
  });

  test('chance adds a tenth at most', () => {
    expect(outcomeOf(2, { status: 500 }, 1).againInS).toBeCloseTo(330, 9);
  });
});
