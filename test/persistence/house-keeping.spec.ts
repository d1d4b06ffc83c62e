import 'reflect-metadata';
import { randomUUID } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, jest, test } from '@jest/globals';
import pg from 'pg';
import { AccessRepository } from '../../apps/api/src/access/access.repository.js';
import { RequestCountRepository } from '../../apps/api/src/access/request-count.repository.js';
import { Log } from '../../apps/api/src/edge/log.js';
import { Readiness } from '../../apps/api/src/edge/readiness.js';
import { entities } from '../../apps/api/src/features.js';
import { forgetKeysOlderThan } from '../../apps/api/src/idempotency/old-keys.js';
import { OperationsRepository } from '../../apps/api/src/operations/operations.repository.js';
import { Database } from '../../apps/api/src/persistence/database.js';
import { newId } from '../../apps/api/src/persistence/ids.js';
import { readConfiguration } from '../../apps/api/src/settings/configuration.js';
import { databaseOfTest, type TestDatabase } from '../e2e/database-of-test.js';

jest.setTimeout(180_000);

let place: TestDatabase;
let database: Database;
let ours: string;
let theirs: string;
const opened = async (environment: Readonly<Record<string, string>>): Promise<Database> => {
  const made = new Database(readConfiguration(environment), new Log('silent'), new Readiness(), entities);
  await made.open();
  return made;
};
beforeAll(async () => {
  place = await databaseOfTest();
  database = await opened(place.environment);
  [ours, theirs] = await Promise.all(
    ['Ours', 'Theirs'].map(async (name) => {
      const id = newId();
      await database.asOperator((tx) => AccessRepository.in(tx).addOrganisation({ id, name }));
      return id;
    }),
  );
});
afterAll(async () => {
  await database.close();
  await place.remove();
});

test('copies that add what they counted are told the sum, and old minutes go', async () => {
  const add = (used: number, minute = 100) =>
    database.asWorker((tx) => RequestCountRepository.in(tx).add([{ caller: 'key', minute, used }]));
  expect(await add(3)).toEqual([{ caller: 'key', minute: 100, used: 3 }]);
  expect(await add(4)).toEqual([{ caller: 'key', minute: 100, used: 7 }]);
  await database.asWorker((tx) => RequestCountRepository.in(tx).forgetBefore(103));
  expect(await add(1)).toEqual([{ caller: 'key', minute: 100, used: 1 }]);
  const seen = await database.inOrganisation(ours, (tx) => tx.query('SELECT * FROM request_count'));
  expect(seen).toEqual([]);
});

test('an Idempotency-Key goes after its days, a younger one stays', async () => {
  const source = database.dataSource;
  // Only the shape of the table matters here: estimates and keys of access are made elsewhere.
  await source.query('ALTER TABLE idempotency_key DROP CONSTRAINT idempotency_key_estimate_fkey');
  await database.inOrganisation(ours, (tx) =>
    tx.query(
      `INSERT INTO idempotency_key (organisation_id, operation, key, request_hash, estimate_id, created_at)
       SELECT $1, 'estimates', 'days ' || days, 'hash', gen_random_uuid(), now() - make_interval(days => days)
       FROM unnest(ARRAY[0, 6, 8, 400]) AS days`,
      [ours],
    ),
  );
  await database.asWorker((tx) => forgetKeysOlderThan(7, tx));
  const left = await database.inOrganisation(ours, (tx) =>
    tx.query<readonly { readonly key: string }[]>('SELECT key FROM idempotency_key ORDER BY key'),
  );
  expect(left.map(({ key }) => key)).toEqual(['days 0', 'days 6']);
});

test('organisations take turns: one that asks once is served before the rest of fifty', async () => {
  const place_ = (organisationId: string, taskHash: string) =>
    database.inOrganisation(organisationId, (tx) =>
      OperationsRepository.in(tx).place({ id: newId(), organisationId, kind: 'test', task: {}, taskHash }),
    );
  for (let n = 0; n < 50; n += 1) await place_(ours, `ours ${n}`);
  await place_(theirs, 'theirs');
  const taken: string[] = [];
  for (let n = 0; n < 3; n += 1) {
    const claim = await database.asWorker((tx) => OperationsRepository.in(tx).claim(3, 60));
    taken.push(claim?.organisationId === ours ? 'ours' : 'theirs');
  }
  expect(taken).toEqual(['ours', 'theirs', 'ours']);
});

test('estimates are found by the caller’s reference through an index, not by reading all of them', async () => {
  const plan = await database.dataSource.transaction(async (tx) => {
    await tx.query('SET LOCAL enable_seqscan = off');
    return tx.query<readonly { readonly 'QUERY PLAN': string }[]>(
      `EXPLAIN SELECT id FROM estimate WHERE organisation_id = '${ours}' AND reference = 'Job 1' ORDER BY id DESC LIMIT 50`,
    );
  });
  const text = plan.map((line) => line['QUERY PLAN']).join('\n');
  expect(text).toContain('estimate_reference_idx');
  expect(text).not.toContain('Sort');
});

const server = process.env.TEST_DATABASE_URL;
(server === undefined || server === '' ? describe.skip : describe)('a login with least rights', () => {
  const name = `kp_serve_${randomUUID().slice(0, 8)}`;
  const administered = async (statement: string): Promise<void> => {
    const client = new pg.Client({ connectionString: place.environment.DATABASE_URL });
    await client.connect();
    await client.query(statement);
    await client.end();
  };
  const urls = (login: string) => {
    const url = new URL(place.environment.DATABASE_URL);
    url.username = login;
    url.password = 'only-for-this-test';
    return { DATABASE_URL: url.href, MIGRATION_DATABASE_URL: place.environment.DATABASE_URL };
  };
  beforeAll(() =>
    administered(
      `CREATE ROLE ${name} LOGIN PASSWORD 'only-for-this-test' NOSUPERUSER NOCREATEROLE NOCREATEDB NOBYPASSRLS IN ROLE kingplank_service`,
    ),
  );
  afterAll(() => administered(`DROP ROLE ${name}`));

  test('serves, and nothing it says makes it more than it is', async () => {
    const bound = await opened({ ...place.environment, ...urls(name) });
    const attempt = (statement: string) =>
      bound.inOrganisation(ours, async (tx) => {
        await tx.query(statement);
        return tx.query<readonly { readonly count: string }[]>('SELECT count(*) FROM organisation');
      });
    expect((await attempt('RESET ROLE'))[0].count).toBe('1');
    await expect(attempt('ALTER TABLE organisation NO FORCE ROW LEVEL SECURITY')).rejects.toThrow(/owner/);
    await expect(attempt('SET ROLE postgres')).rejects.toThrow(/permission denied|does not exist/);
    await expect(attempt('UPDATE estimate SET title = title')).rejects.toThrow(/permission denied/);
    await bound.close();
  });

  test('a login that owns the tables is refused as the one that serves', async () => {
    const { MIGRATION_DATABASE_URL: owner } = urls(name);
    await expect(
      opened({ ...place.environment, DATABASE_URL: owner, MIGRATION_DATABASE_URL: owner }),
    ).rejects.toThrow(/could lay aside row security/);
  });
});
