import { createHash, randomUUID } from 'node:crypto';
import { cp, mkdtemp, readdir, readFile, rename, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import pg from 'pg';
import { shippedCatalogue } from '#lib/catalogue';
import { runService } from '../fault/running-service.js';

/** Has every role in its organisation; made when the test's database is new. */
export const TEST_KEY = 'kp_a-key-that-opens-only-test-databases';

/** Where one test's service keeps its data: a folder of its own, or a database of its own on a real server. */
export interface TestDatabase {
  readonly environment: Readonly<Record<string, string>>;
  readonly folder: string;
  readonly remove: () => Promise<void>;
}

/** `TEST_DATABASE_URL` selects a real server; otherwise the embedded database, copied from one made once. */
export async function databaseOfTest(): Promise<TestDatabase> {
  const folder = await mkdtemp(path.join(tmpdir(), 'kp-'));
  const server = process.env.TEST_DATABASE_URL;
  return server === undefined || server === '' ? embedded(folder) : onServer(server, folder);
}

async function embedded(folder: string): Promise<TestDatabase> {
  await cp(path.join(await template(), 'postgres'), path.join(folder, 'postgres'), { recursive: true });
  return {
    environment: { DATA_DIR: folder, FIRST_KEY: TEST_KEY },
    folder,
    remove: () => rm(folder, { recursive: true, force: true }),
  };
}

async function onServer(server: string, folder: string): Promise<TestDatabase> {
  const name = `kingplank_test_${randomUUID().replaceAll('-', '')}`;
  await administer(server, `CREATE DATABASE ${name}`);
  const url = new URL(server);
  url.pathname = `/${name}`;
  return {
    environment: { DATABASE_URL: url.href, DATA_DIR: folder, FIRST_KEY: TEST_KEY },
    folder,
    remove: async () => {
      await administer(server, `DROP DATABASE IF EXISTS ${name} WITH (FORCE)`);
      await rm(folder, { recursive: true, force: true });
    },
  };
}

async function administer(server: string, statement: string): Promise<void> {
  const client = new pg.Client({ connectionString: server });
  await client.connect();
  await client.query(statement);
  await client.end();
}

/** A migrated and seeded folder, made once for a set of migrations and a catalogue: a new database takes seconds. */
async function template(): Promise<string> {
  const migrations = path.join(import.meta.dirname, '../../apps/api/src/persistence/migrations');
  const written = await Promise.all(
    (await readdir(migrations)).sort().map((file) => readFile(path.join(migrations, file), 'utf8')),
  );
  const version = createHash('sha256')
    .update(written.join(''))
    .update(shippedCatalogue.hash)
    .update(TEST_KEY)
    .digest('hex')
    .slice(0, 16);
  const place = path.join(tmpdir(), `kingplank-template-${version}`);
  if (await exists(place)) return place;
  const draft = await mkdtemp(path.join(tmpdir(), 'kp-'));
  const service = await runService({ DATA_DIR: draft, FIRST_KEY: TEST_KEY, DATABASE_URL: '' });
  service.child.kill('SIGTERM');
  await service.ended;
  // Whoever renames first wins; the other copy is thrown away.
  await rename(draft, place).catch(() => rm(draft, { recursive: true, force: true }));
  return place;
}

const exists = (file: string): Promise<boolean> =>
  stat(file).then(
    () => true,
    () => false,
  );
