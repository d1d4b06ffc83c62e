import { HttpProblem, unavailable } from '../edge/problems.js';

const unreachable = /^(57P0[1-5]|08\d{3}|ECONNREFUSED|ECONNRESET|EPIPE|ENOENT|ETIMEDOUT)$/;

/** Database errors that say "not now": worth trying again, and none of the caller's doing. */
const passing: readonly (readonly [RegExp, string])[] = [
  [/^57014$/, 'The database took too long.'],
  [/^(53\d{3}|54\d{3})$/, 'The database has no room left.'],
  [unreachable, 'The database cannot be reached.'],
  [/^(40001|40P01|55P03)$/, 'The database was busy with a conflicting change.'],
  [/^(ENOSPC|58030)$/, 'The disk is full.'],
];

const passingWords =
  /connection terminated|timeout exceeded when trying to connect|connection ended unexpectedly|driver not connected|not queryable|pool after calling end|query read timeout/i;

/** TypeORM takes a query runner away when its connection breaks, and then complains about the next query on it. */
const released: readonly string[] = [
  'QueryRunnerAlreadyReleasedError',
  'QueryRunnerProviderAlreadyReleasedError',
];

/** A failed database call as the filter understands it; a fault of ours stays what it is. */
export function databaseFailure(failure: unknown): unknown {
  if (failure instanceof HttpProblem) return failure;
  const code = sqlState(failure);
  if (/^22/.test(code)) return unfitValue(failure);
  const words = passing.find(([pattern]) => pattern.test(code))?.[1];
  if (words !== undefined) return unavailable(words, failure);
  if (isBrokenConnection(failure)) return unavailable('The database cannot be reached.', failure);
  return failure;
}

const isBrokenConnection = (failure: unknown): boolean =>
  failure instanceof Error && (passingWords.test(failure.message) || released.includes(failure.name));

/** Whether the database was away, as it said itself or as that was told on. */
export function isOutage(failure: unknown): boolean {
  const told = failure instanceof HttpProblem ? failure.cause : failure;
  return unreachable.test(sqlState(told)) || isBrokenConnection(told);
}

/** Data exceptions: what was asked holds a value that no column and no comparison takes. */
const unfitValue = (cause: unknown): HttpProblem =>
  new HttpProblem('bad-request', { detail: 'A value of the request cannot be stored or looked up.', cause });

export const isUniqueViolation = (failure: unknown, constraint?: string): boolean =>
  sqlState(failure) === '23505' && (constraint === undefined || constraintOf(failure) === constraint);

/** Another transaction stood in the way; the same work may succeed at once. */
export const isWorthRepeating = (failure: unknown): boolean => /^(40001|40P01)$/.test(sqlState(failure));

const sqlState = (failure: unknown): string =>
  textMember(failure, 'code') ?? textMember(memberOf(failure, 'driverError'), 'code') ?? '';

const constraintOf = (failure: unknown): string | undefined =>
  textMember(failure, 'constraint') ?? textMember(memberOf(failure, 'driverError'), 'constraint');

const memberOf = (value: unknown, name: string): unknown =>
  typeof value === 'object' && value !== null && Object.hasOwn(value, name)
    ? Object.getOwnPropertyDescriptor(value, name)?.value
    : undefined;

function textMember(value: unknown, name: string): string | undefined {
  const member = memberOf(value, name);
  return typeof member === 'string' ? member : undefined;
}
