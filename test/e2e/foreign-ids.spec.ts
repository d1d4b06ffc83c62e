import { execFile } from 'node:child_process';
import path from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, expect, jest, test } from '@jest/globals';
import { databaseOfTest, type TestDatabase } from './database-of-test.js';
import type { Refused } from './foreign-ids.js';

jest.setTimeout(300_000);

interface Row {
  readonly foreign: Refused;
  readonly unknown: Refused;
  readonly ownersStatus?: number;
}

/** In a process of its own: the statements are seen by whoever shares the process with service and driver. */
const program = path.join(process.cwd(), 'dist/test/e2e/foreign-ids.work.js');

let database: TestDatabase;
let rows: readonly Row[] = [];
beforeAll(async () => {
  database = await databaseOfTest();
  const { stdout } = await promisify(execFile)(process.execPath, [program], {
    env: { ...process.env, ...database.environment },
    maxBuffer: 64 * 1024 * 1024,
  });
  rows = JSON.parse(stdout);
});
afterAll(async () => {
  await database.remove();
});

const told = (rowsOf: readonly Row[], of: (refused: Refused) => unknown): readonly unknown[] =>
  rowsOf
    .filter(({ foreign, unknown }) => JSON.stringify(of(foreign)) !== JSON.stringify(of(unknown)))
    .map(({ foreign, unknown }) => ({
      operation: foreign.operation,
      foreign: of(foreign),
      unknown: of(unknown),
    }));

test('an id of somebody else is answered like one of nobody, in status and body, at every operation', () => {
  expect(rows.length).toBeGreaterThan(60);
  expect(told(rows, ({ status, said }) => [status, said])).toEqual([]);
});

test('the database is asked the same, statement by statement, so that the time tells nothing either', () => {
  expect(told(rows, ({ statements }) => statements)).toEqual([]);
});

test('the requests are right but for whose the ids are: they are looked for, and their owner is answered', () => {
  const refusals = rows.map(({ foreign }) => [foreign.operation, foreign.status] as const);
  expect(refusals.filter(([, status]) => status < 400)).toEqual([]);
  const notFound = refusals.filter(([, status]) => status === 404);
  const looked = rows.filter(({ foreign }) =>
    foreign.statements.some((text) => /select|update|delete/i.test(text)),
  );
  expect([notFound.length / rows.length > 0.8, looked.length / rows.length > 0.8]).toEqual([true, true]);
  const owned = rows.filter(({ ownersStatus }) => ownersStatus !== undefined);
  expect(owned.filter(({ ownersStatus }) => Number(ownersStatus) < 300).length).toBeGreaterThan(
    owned.length / 2,
  );
});
