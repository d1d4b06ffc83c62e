import { expect, test } from '@jest/globals';
import type { Response } from 'express';
import { HttpProblem } from './problems.js';
import { RateLimit } from './rate-limit.js';

const fields = new Map<string, string>();
const response = {
  setHeader: (name: string, value: string) => fields.set(name, value),
} as unknown as Response;
const passes = (limit: RateLimit, perMinute: number, caller = 'key'): boolean => {
  try {
    limit.take([{ caller, perMinute }], response);
    return true;
  } catch (failure) {
    expect(failure).toBeInstanceOf(HttpProblem);
    return false;
  }
};
/** Two copies tell each other what they counted, as the table between them does. */
const tell = (copies: readonly RateLimit[]): void => {
  const sums = new Map<string, { caller: string; minute: number; used: number }>();
  for (const copy of copies)
    for (const count of copy.taken()) {
      const known = sums.get(count.caller);
      sums.set(count.caller, { ...count, used: count.used + (known?.used ?? 0) });
    }
  for (const copy of copies) copy.told([...sums.values()]);
};

test('a limit holds within a minute of the clock, and is told in the RateLimit fields', () => {
  let now = 60_000 * 100 + 45_000;
  const limit = new RateLimit(() => now);
  expect([1, 2, 3, 4].map(() => passes(limit, 3))).toEqual([true, true, true, false]);
  expect(fields.get('RateLimit')).toBe('"per-minute";r=0;t=15');
  now += 15_000;
  expect(passes(limit, 3)).toBe(true);
});

test('copies that tell each other count as one', () => {
  const copies = [new RateLimit(() => 1000), new RateLimit(() => 1000)];
  for (const copy of copies) for (let n = 0; n < 5; n += 1) expect(passes(copy, 10)).toBe(true);
  tell(copies);
  expect(copies.map((copy) => passes(copy, 10))).toEqual([false, false]);
});

test('of two allowances the tighter one decides and is told', () => {
  const limit = new RateLimit(() => 1000);
  const both = [
    { caller: 'key', perMinute: 100 },
    { caller: 'organisation', perMinute: 1 },
  ];
  limit.take(both, response);
  expect(fields.get('RateLimit-Policy')).toBe('"per-minute";q=1;w=60');
  expect(() => {
    limit.take(both, response);
  }).toThrow(/At most 1 requests/);
});
