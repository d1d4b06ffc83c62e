import 'reflect-metadata';
import { afterAll, beforeAll, expect, jest, test } from '@jest/globals';
import { AccessRepository } from '../../apps/api/src/access/access.repository.js';
import type { Caller } from '../../apps/api/src/access/roles.js';
import { CurrentCatalogue } from '../../apps/api/src/catalogue/current-catalogue.js';
import { EditionsService } from '../../apps/api/src/catalogue/editions.service.js';
import { Log } from '../../apps/api/src/edge/log.js';
import { Readiness } from '../../apps/api/src/edge/readiness.js';
import { entities, seeds } from '../../apps/api/src/features.js';
import { Database } from '../../apps/api/src/persistence/database.js';
import { newId } from '../../apps/api/src/persistence/ids.js';
import { Seeding } from '../../apps/api/src/persistence/seeding.js';
import { Clock } from '../../apps/api/src/settings/clock.js';
import { readConfiguration } from '../../apps/api/src/settings/configuration.js';
import { databaseOfTest, type TestDatabase } from '../e2e/database-of-test.js';

jest.setTimeout(120_000);

const DAY_MS = 86_400_000;

/** A clock that the test turns on. */
class Turned extends Clock {
  aheadMs = 0;

  override now(): Date {
    return new Date(Date.now() + this.aheadMs);
  }
}

let place: TestDatabase;
let database: Database;
let shipped: string;
const clock = new Turned();
beforeAll(async () => {
  place = await databaseOfTest();
  const configuration = readConfiguration(place.environment);
  database = new Database(configuration, new Log('silent'), new Readiness(), entities);
  await database.open();
  await new Seeding(database, configuration, seeds).run();
  shipped = await (await yard()).current();
});
afterAll(async () => {
  await database.close();
  await place.remove();
});

/** A yard of its own, with what it sees as current by the service and by its memory. */
async function yard() {
  const organisationId = newId();
  await database.asOperator((tx) =>
    AccessRepository.in(tx).addOrganisation({ id: organisationId, name: 'Yard' }),
  );
  const caller: Caller = {
    organisationId,
    keyId: newId(),
    keyName: 'Admin',
    roles: ['catalogue-admin'],
    scopes: [],
    kind: 'secret',
  };
  const memory = new CurrentCatalogue(database, clock);
  const editions = new EditionsService(database, memory, clock);
  const anyVersion = (): void => undefined;
  return {
    caller,
    editions,
    draft: (code: string, basedOn?: string) =>
      editions.addDraft(caller, basedOn === undefined ? { code } : { code, basedOn }),
    publish: (code: string, inDays?: number) =>
      editions.publish(caller, code, {
        effectiveAt:
          inDays === undefined ? undefined : new Date(clock.now().getTime() + inDays * DAY_MS).toISOString(),
        check: anyVersion,
      }),
    withdraw: (code: string) => editions.withdraw(caller, code, anyVersion),
    current: async () => {
      const [{ current }, remembered] = await Promise.all([editions.list(caller), memory.of(organisationId)]);
      expect(remembered.edition).toBe(current.code);
      return current.code;
    },
  };
}

const afterDays = (days: number): void => {
  clock.aheadMs += days * DAY_MS;
};

test('an edition published ahead counts from its time, and the earlier one until then', async () => {
  const { draft, publish, current } = await yard();
  await draft('spring');
  await publish('spring', 30);
  expect(await current()).toBe(shipped);
  afterDays(29.999);
  expect(await current()).toBe(shipped);
  afterDays(0.002);
  expect(await current()).toBe('spring');
});

test('of several, the one that came into effect last is current, whichever was published last', async () => {
  const { draft, publish, current } = await yard();
  for (const code of ['first', 'second', 'now']) await draft(code);
  await publish('second', 20);
  await publish('first', 10);
  await publish('now');
  expect(await current()).toBe('now');
  afterDays(11);
  expect(await current()).toBe('first');
  afterDays(10);
  expect(await current()).toBe('second');
});

test('a publication can be taken back until it counts, and what is published then is what counts', async () => {
  const { caller, editions, draft, publish, withdraw, current } = await yard();
  await draft('spring');
  await publish('spring', 5);
  expect((await withdraw('spring')).state).toBe('draft');
  afterDays(6);
  expect(await current()).toBe(shipped);
  await publish('spring');
  expect(await current()).toBe('spring');
  await expect(withdraw('spring')).rejects.toThrow(/counts already and is never changed/);
  const history = await editions.history(caller, 'spring');
  expect(history.items.map(({ action }) => action)).toEqual([
    'published',
    'withdrawn',
    'published',
    'created',
  ]);
});

test('what is scheduled is as frozen as what counts, and the database keeps it so', async () => {
  const { caller, draft, publish, withdraw } = await yard();
  await draft('spring');
  const { id } = await publish('spring', 5);
  const change = (statement: string) =>
    database.inOrganisation(caller.organisationId, (tx) => tx.query(statement, [id]));
  await expect(change("UPDATE material SET name = 'x' WHERE edition_id = $1")).rejects.toThrow(
    /never changed/,
  );
  await expect(change("UPDATE edition SET note = 'x' WHERE id = $1")).rejects.toThrow(/never changed/);
  await expect(change('DELETE FROM edition WHERE id = $1')).rejects.toThrow(/never changed/);
  await withdraw('spring');
  await change("UPDATE material SET name = 'x' WHERE edition_id = $1");
});

test('a time that has passed, or is years away, is refused', async () => {
  const { draft, publish } = await yard();
  await draft('spring');
  await expect(publish('spring', -1)).rejects.toMatchObject({ problems: [{ at: '/effectiveAt' }] });
  await expect(publish('spring', 900)).rejects.toMatchObject({ problems: [{ at: '/effectiveAt' }] });
});

test('going back to the shape of before makes a draft of what does not count yet', async () => {
  const { caller, draft, publish, editions } = await yard();
  await draft('waits');
  await publish('waits', 300);
  const isThere = async (): Promise<boolean> => {
    const named: readonly unknown[] = await database.dataSource.query(
      "SELECT 1 FROM migrations WHERE name = 'EditionTimes1764806400000'",
    );
    return named.length > 0;
  };
  while (await isThere()) await database.dataSource.undoLastMigration();
  const states = await database.inOrganisation(caller.organisationId, (tx) =>
    tx.query('SELECT state, published_at FROM edition WHERE organisation_id IS NOT NULL'),
  );
  expect(states).toEqual([{ state: 'draft', published_at: null }]);
  await database.dataSource.runMigrations();
  expect((await editions.get(caller, 'waits')).state).toBe('draft');
});
