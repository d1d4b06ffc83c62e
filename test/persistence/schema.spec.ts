import 'reflect-metadata';
import { afterAll, beforeAll, describe, expect, jest, test } from '@jest/globals';
import { readConfiguration } from '../../apps/api/src/settings/configuration.js';
import { Readiness } from '../../apps/api/src/edge/readiness.js';
import { Log } from '../../apps/api/src/edge/log.js';
import { AccessRepository } from '../../apps/api/src/access/access.repository.js';
import { EditionsRepository } from '../../apps/api/src/catalogue/editions.repository.js';
import { entities, seeds } from '../../apps/api/src/features.js';
import { Database } from '../../apps/api/src/persistence/database.js';
import { newId } from '../../apps/api/src/persistence/ids.js';
import { Seeding } from '../../apps/api/src/persistence/seeding.js';
import { databaseOfTest, type TestDatabase } from '../e2e/database-of-test.js';

jest.setTimeout(60_000);

/** Runs on the embedded database, or on the server that TEST_DATABASE_URL names. */
describe('the database', () => {
  let place: TestDatabase;
  let database: Database;
  beforeAll(async () => {
    place = await databaseOfTest();
    const configuration = readConfiguration(place.environment);
    database = new Database(configuration, new Log('silent'), new Readiness(), entities);
    await database.open();
    await new Seeding(database, configuration, seeds).run();
  });
  afterAll(async () => {
    await database.close();
    await place.remove();
  });

  const organisation = async (name: string): Promise<string> => {
    const id = newId();
    await database.asOperator((tx) => AccessRepository.in(tx).addOrganisation({ id, name }));
    return id;
  };

  test('the migrations make the columns that the entities describe', async () => {
    const { upQueries } = await database.dataSource.driver.createSchemaBuilder().log();
    // Constraints and indexes are written in the migrations alone; TypeORM would drop what it does not know.
    const aboutColumns = upQueries
      .map(({ query }) => query)
      .filter(
        (query) =>
          !/^(ALTER TABLE "\w+" DROP CONSTRAINT|DROP INDEX|ALTER TABLE "\w+" ADD CONSTRAINT)/.test(query),
      );
    expect(aboutColumns).toEqual([]);
  });

  test('every table of an organisation has its rows guarded, the owner included', async () => {
    const tables: readonly { table: string; guarded: boolean; forced: boolean; policies: string }[] =
      await database.dataSource.query(`
      SELECT c.relname AS "table", c.relrowsecurity AS guarded, c.relforcerowsecurity AS forced,
             (SELECT count(*) FROM pg_policy p WHERE p.polrelid = c.oid) AS policies
      FROM pg_class c JOIN pg_namespace n ON n.oid = c.relnamespace
      WHERE c.relkind = 'r' AND n.nspname = 'public' AND c.relname <> 'migrations' ORDER BY 1`);
    expect(tables.map(({ table }) => table)).toEqual([
      'api_key',
      'audit_entry',
      'edition',
      'estimate',
      'estimate_secret',
      'estimate_share',
      'event',
      'idempotency_key',
      'labour_rates',
      'letterhead',
      'material',
      'operation',
      'organisation',
      'page_use',
      'photograph',
      'price_list',
      'request_count',
      'source',
      'stock',
      'webhook_delivery',
      'webhook_endpoint',
    ]);
    for (const { table, guarded, forced, policies } of tables)
      expect([table, guarded, forced, Number(policies) > 0]).toEqual([table, true, true, true]);
  });

  test('work is done in a role that cannot look past the guard', async () => {
    const [role] = await database.inOrganisation(newId(), (tx) =>
      tx.query<{ name: string; bypasses: boolean; root: boolean }[]>(
        'SELECT rolname AS name, rolbypassrls AS bypasses, rolsuper AS root FROM pg_roles WHERE rolname = current_user',
      ),
    );
    expect(role).toEqual({ name: 'kingplank_service', bypasses: false, root: false });
  });

  test('an organisation sees its own rows and the shared ones, and can write neither into another nor into what is shared', async () => {
    const [ours, theirs] = [await organisation('Ours'), await organisation('Theirs')];
    const addKey = (id: string) =>
      database.inOrganisation(id, (tx) =>
        AccessRepository.in(tx).addKey({
          id: newId(),
          organisationId: id,
          name: 'k',
          keyHash: newId().replaceAll('-', '').repeat(2),
          prefix: 'kp_',
          roles: ['surveyor'],
          scopes: [],
        }),
      );
    await addKey(ours);
    await addKey(theirs);
    const seen = await database.inOrganisation(ours, (tx) =>
      tx.query<{ organisation_id: string }[]>('SELECT DISTINCT organisation_id FROM api_key'),
    );
    expect(seen).toEqual([{ organisation_id: ours }]);
    const anywhere = (work: string, parameters: readonly unknown[]) =>
      database.inOrganisation(ours, (tx) => tx.query(work, [...parameters]));
    await expect(
      anywhere(
        "INSERT INTO api_key (id, organisation_id, name, key_hash, prefix, roles) VALUES ($1, $2, 'x', 'y', 'z', '{surveyor}')",
        [newId(), theirs],
      ),
    ).rejects.toThrow(/row-level security/);
    await expect(
      anywhere("INSERT INTO edition (id, organisation_id, code, state) VALUES ($1, NULL, 'x', 'draft')", [
        newId(),
      ]),
    ).rejects.toThrow(/row-level security/);
    expect(await anywhere("UPDATE api_key SET name = 'stolen' WHERE organisation_id = $1", [theirs])).toEqual(
      [[], 0],
    );
    expect(await anywhere('DELETE FROM material WHERE organisation_id IS NULL', [])).toEqual([[], 0]);
    expect(Number((await anywhere('SELECT count(*) FROM material', []))[0].count)).toBeGreaterThan(50);
  });

  test('without an organisation nothing private is seen', async () => {
    const rows = await database.withKeyHash('0'.repeat(64), (tx) =>
      tx.query<{ count: string }[]>('SELECT count(*) FROM api_key'),
    );
    expect(Number(rows[0].count)).toBe(0);
  });

  test('an estimate or an audit entry is never changed or removed', async () => {
    const ours = await organisation('Ours');
    for (const statement of [
      "UPDATE estimate SET title = 'x'",
      'DELETE FROM estimate',
      "UPDATE audit_entry SET action = 'x'",
      'DELETE FROM audit_entry',
    ]) {
      await expect(database.inOrganisation(ours, (tx) => tx.query(statement))).rejects.toThrow(
        /permission denied/,
      );
    }
  });

  test('a published edition is kept as it is, whoever asks', async () => {
    const change = (statement: string) => database.dataSource.query(statement);
    await expect(change("UPDATE material SET name = 'x'")).rejects.toThrow(/never changed/);
    await expect(change('DELETE FROM source')).rejects.toThrow(/never changed/);
    await expect(change("UPDATE edition SET state = 'draft'")).rejects.toThrow(/never changed/);
    const current = await database.inOrganisation(newId(), (tx) =>
      EditionsRepository.in(tx).findCurrent(new Date()),
    );
    expect(current?.state).toBe('published');
  });

  test('a failed piece of work leaves nothing behind, and the connection serves on', async () => {
    const id = newId();
    await expect(
      database.asOperator(async (tx) => {
        await AccessRepository.in(tx).addOrganisation({ id, name: 'Half done' });
        throw new Error('thought better of it');
      }),
    ).rejects.toThrow('thought better of it');
    expect(await database.asOperator((tx) => AccessRepository.in(tx).findOrganisation(id))).toBeNull();
  });

  test('many pieces of work at once each see their own organisation', async () => {
    const ids = await Promise.all(Array.from({ length: 12 }, (_, index) => organisation(`Yard ${index}`)));
    const names = await Promise.all(
      ids.map((id) =>
        database.inOrganisation(id, async (tx) =>
          (await AccessRepository.in(tx).organisations({ limit: 10 })).map((row) => row.id),
        ),
      ),
    );
    expect(names).toEqual(ids.map((id) => [id]));
  });

  test('all migrations can be taken back, the last first, and made again', async () => {
    const source = database.dataSource;
    for (let left = source.migrations.length; left > 0; left -= 1) await source.undoLastMigration();
    const left: readonly { table_name: string }[] = await source.query(
      "SELECT table_name FROM information_schema.tables WHERE table_schema = 'public'",
    );
    expect(left).toEqual([{ table_name: 'migrations' }]);
    const functions: readonly unknown[] = await source.query(
      "SELECT proname FROM pg_proc WHERE proname LIKE 'kingplank%'",
    );
    expect(functions).toEqual([]);
    await source.runMigrations();
    expect(await database.asOperator((tx) => AccessRepository.in(tx).hasOrganisations())).toBe(false);
  });
});
