import { expect, test } from '@jest/globals';
import { QueryRunnerAlreadyReleasedError, QueryRunnerProviderAlreadyReleasedError } from 'typeorm';
import { HttpProblem } from '../edge/problems.js';
import { databaseFailure, isOutage } from './failures.js';

test.each([
  ['a query runner taken away in mid-transaction', new QueryRunnerAlreadyReleasedError()],
  ['its provider taken away between two queries', new QueryRunnerProviderAlreadyReleasedError()],
  ['a connection ended by the server', Object.assign(new Error('terminating connection'), { code: '57P01' })],
  ['a full disk', Object.assign(new Error('no space'), { code: 'ENOSPC' })],
])('%s is the world failing: come back later', (_, failure) => {
  const answer = databaseFailure(failure);
  expect(answer).toBeInstanceOf(HttpProblem);
  expect(answer).toMatchObject({ kind: 'unavailable' });
});

test('a fault of ours stays one', () => {
  const ours = new TypeError('undefined is not a function');
  expect(databaseFailure(ours)).toBe(ours);
});

test.each([['22021'], ['22P02'], ['22003'], ['22P05']])(
  'a value that the database cannot take (%s) is the request at fault, not the service',
  (code) => {
    expect(databaseFailure(Object.assign(new Error('invalid'), { code }))).toMatchObject({
      kind: 'bad-request',
    });
  },
);

test('an outage is known from the failure itself and from what it was told as; a slow piece of work is none', () => {
  const gone = Object.assign(new Error('terminating connection'), { code: '57P01' });
  expect([gone, databaseFailure(gone), new QueryRunnerAlreadyReleasedError()].map(isOutage)).toEqual([
    true,
    true,
    true,
  ]);
  const slow = new HttpProblem('unavailable', { detail: 'One piece of work may take 30 s.' });
  expect([slow, databaseFailure(Object.assign(new Error('full'), { code: 'ENOSPC' }))].map(isOutage)).toEqual(
    [false, false],
  );
});
