import 'reflect-metadata';
import { readFileSync } from 'node:fs';
import { connect, createServer, type AddressInfo, type Server } from 'node:net';
import path from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, jest, test } from '@jest/globals';
import pg from 'pg';
import { readConfiguration } from '../../apps/api/src/settings/configuration.js';
import { Log } from '../../apps/api/src/edge/log.js';
import type { Service } from '../../apps/api/src/service.js';
import { compiledModule } from '../support/compiled.js';
import { databaseOfTest, TEST_KEY, type TestDatabase } from '../e2e/database-of-test.js';

jest.setTimeout(120_000);

const { start } =
  await compiledModule<typeof import('../../apps/api/src/service.js')>('apps/api/src/service.ts');
const { Database } = await compiledModule<typeof import('../../apps/api/src/persistence/database.js')>(
  'apps/api/src/persistence/database.ts',
);

const headers = { 'authorization': `Bearer ${TEST_KEY}`, 'content-type': 'application/json' };
const foredeck = readFileSync(
  path.join(import.meta.dirname, '../../apps/workshop/samples/foredeck.json'),
  'utf8',
);
const CUT =
  "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE application_name = 'kingplank' AND datname = current_database()";

/** "Terminating connection" as the server says it (PostgreSQL documentation, Message Formats, ErrorResponse). */
function sentAway(): Buffer {
  const fields = Buffer.from('SFATAL\0VFATAL\0C57P01\0Mterminating connection\0\0');
  const head = Buffer.alloc(5);
  head.write('E');
  head.writeInt32BE(fields.length + 4, 1);
  return Buffer.concat([head, fields]);
}

/** "Ready for query", idle: what ends the greeting of a new connection. */
const READY = Buffer.from([0x5a, 0, 0, 0, 5, 0x49]);

/** A door to the server; while it is rude it ends every new connection in the packet that says it is ready. */
async function sendsAwayWhenReady(server: URL): Promise<{ readonly door: Server; isRude: boolean }> {
  const here = {
    isRude: false,
    door: createServer((caller) => {
      const behind = connect({ host: server.hostname, port: Number(server.port) });
      let isNew = true;
      caller.pipe(behind);
      behind.on('data', (chunk: Buffer) => {
        const isRude = here.isRude && isNew && chunk.includes(READY);
        isNew &&= !chunk.includes(READY);
        if (isRude) caller.end(Buffer.concat([chunk, sentAway()]));
        else caller.write(chunk);
      });
      for (const [one, other] of [
        [caller, behind],
        [behind, caller],
      ]) {
        one.on('error', () => other.destroy());
        one.on('close', () => other.destroy());
      }
    }),
  };
  await new Promise<void>((resolve) => {
    here.door.listen(0, '127.0.0.1', resolve);
  });
  return here;
}

const onServer =
  process.env.TEST_DATABASE_URL === undefined || process.env.TEST_DATABASE_URL === '' ? test.skip : test;

describe('a database that fails', () => {
  let place: TestDatabase;
  const services: Service[] = [];
  beforeAll(async () => {
    place = await databaseOfTest();
  });
  afterEach(async () => {
    await Promise.all(services.splice(0).map((service) => service.stop()));
  });
  afterAll(async () => {
    await place.remove();
  });

  const started = async (environment: Readonly<Record<string, string>> = {}): Promise<Service> => {
    const service = await start(
      readConfiguration({ PORT: '0', REQUESTS_PER_MINUTE: '100000', ...place.environment, ...environment }),
      new Log('silent'),
    );
    services.push(service);
    return service;
  };

  const administer = async (statement: string): Promise<void> => {
    const client = new pg.Client({ connectionString: place.environment.DATABASE_URL });
    await client.connect();
    await client.query(statement);
    await client.end();
  };

  test('gone for good: requests are told to come back, readiness says no, liveness yes', async () => {
    const { url, app } = await started();
    const database = app.get(Database);
    await database.dataSource.destroy();
    const answer = await fetch(`${url}/v1/estimates`, { headers });
    expect(answer.status).toBe(503);
    expect(Number(answer.headers.get('retry-after'))).toBeGreaterThan(0);
    expect((await fetch(`${url}/health/ready`)).status).toBe(503);
    expect((await fetch(`${url}/health/live`)).status).toBe(200);
    await database.dataSource.initialize();
  });

  onServer('its connections cut: some requests are told to come back, the next ones are served', async () => {
    const { url } = await started();
    const reading = (async () => {
      const statuses: number[] = [];
      for (let asked = 0; asked < 60; asked += 1)
        statuses.push((await fetch(`${url}/v1/materials?kind=core`, { headers })).status);
      return statuses;
    })();
    for (let cut = 0; cut < 4; cut += 1) {
      await administer(CUT);
      await new Promise((resolve) => {
        setTimeout(resolve, 50);
      });
    }
    const statuses = await reading;
    expect(statuses.filter((status) => status !== 200 && status !== 503)).toEqual([]);
    expect((await fetch(`${url}/v1/materials?kind=core`, { headers })).status).toBe(200);
  });

  onServer('a connection sent away in the moment it stands costs its request, not the process', async () => {
    const server = new URL(place.environment.DATABASE_URL);
    const rude = await sendsAwayWhenReady(server);
    const { port } = rude.door.address() as AddressInfo;
    const through = new URL(server);
    through.host = `127.0.0.1:${String(port)}`;
    const { url } = await started({ DATABASE_URL: through.href });
    const ask = async (): Promise<number> =>
      (await fetch(`${url}/v1/materials?kind=core`, { headers })).status;
    expect(await ask()).toBe(200);
    rude.isRude = true;
    await administer(CUT);
    const statuses = await Promise.all([ask(), ask(), ask()]);
    expect(new Set(statuses)).toEqual(new Set([503]));
    rude.isRude = false;
    expect(await ask()).toBe(200);
    await Promise.all(services.splice(0).map((service) => service.stop()));
    rude.door.close();
  });

  onServer('a table locked by somebody else: 503 in the time a statement may take', async () => {
    const { url } = await started({ STATEMENT_TIMEOUT_MS: '300' });
    const blocker = new pg.Client({ connectionString: place.environment.DATABASE_URL });
    await blocker.connect();
    await blocker.query('BEGIN');
    await blocker.query('LOCK TABLE estimate IN ACCESS EXCLUSIVE MODE');
    const answer = await fetch(`${url}/v1/estimates`, { headers });
    await blocker.query('ROLLBACK');
    await blocker.end();
    expect([answer.status, answer.headers.has('retry-after')]).toEqual([503, true]);
    expect((await fetch(`${url}/v1/estimates`, { headers })).status).toBe(200);
  });

  onServer('two copies of the service and one key: one estimate, and everybody gets it', async () => {
    const copies = [await started(), await started()];
    const answers = await Promise.all(
      Array.from({ length: 8 }, async (_, index) => {
        const response = await fetch(`${copies[index % 2].url}/v1/estimates`, {
          method: 'POST',
          headers: { ...headers, 'idempotency-key': 'one-among-copies' },
          body: foredeck,
        });
        return { status: response.status, location: response.headers.get('location') };
      }),
    );
    expect(answers.filter(({ status }) => status !== 201 && status !== 409)).toEqual([]);
    expect(new Set(answers.flatMap(({ status, location }) => (status === 201 ? [location] : []))).size).toBe(
      1,
    );
    const list = (await (await fetch(`${copies[0].url}/v1/estimates`, { headers })).json()) as {
      readonly items: readonly unknown[];
    };
    expect(list.items).toHaveLength(1);
  });

  onServer(
    'two copies that start at once on an empty database agree on its shape and its first key',
    async () => {
      const fresh = await databaseOfTest();
      const copies = await Promise.all(
        [1, 2, 3].map(() => start(readConfiguration({ PORT: '0', ...fresh.environment }), new Log('silent'))),
      );
      for (const { url } of copies) expect((await fetch(`${url}/v1/editions`, { headers })).status).toBe(200);
      await Promise.all(copies.map((copy) => copy.stop()));
      await fresh.remove();
    },
  );

  test('an unreachable server: the start fails and says so', async () => {
    await expect(
      start(
        readConfiguration({
          PORT: '0',
          DATABASE_URL: 'postgresql://nobody@127.0.0.1:1/nothing',
          DATABASE_WAIT_MS: '0',
        }),
        new Log('silent'),
      ),
    ).rejects.toThrow(/ECONNREFUSED/);
  });
});
