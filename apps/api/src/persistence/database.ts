import { statfs } from 'node:fs/promises';
import { setTimeout as delay } from 'node:timers/promises';
import { Inject, Injectable } from '@nestjs/common';
import type pg from 'pg';
import { DataSource, type DataSourceOptions, type EntityManager, type QueryRunner } from 'typeorm';
import { Defect } from '#lib/kernel';
import { ConfigurationFault, configurationToken, type Configuration } from '../settings/configuration.js';
import { Readiness } from '../edge/readiness.js';
import { currentContext } from '../edge/request-context.js';
import { failureFacts, Log } from '../edge/log.js';
import { HttpProblem, unavailable } from '../edge/problems.js';
import { openEmbeddedDatabase, type EmbeddedDatabase } from './embedded-database.js';
import { migrations } from './migrations.js';
import { databaseFailure, isWorthRepeating } from './failures.js';
import { isId } from './ids.js';

/** The manager of one transaction: repositories are made from it, so that nothing happens outside one. */
export type Transaction = EntityManager;
type Work<T> = (tx: Transaction) => Promise<T>;

/** The tables of the features, as classes; handed in from above, so that this module knows none of them. */
export type Entities = readonly (new () => object)[];
export const entitiesToken = Symbol('entities');

/** Below this nothing is opened anew: it would only fail again. */
const LEAST_FREE_MB = 32;

/** Any number; the same in every copy of the service. */
const MIGRATION_LOCK = 7_130_411;

/** The one way to the database: every piece of work is a transaction under row security. */
@Injectable()
export class Database {
  private source?: DataSource;
  private embedded?: EmbeddedDatabase;
  private mending?: Promise<void>;
  private isClosed = false;

  constructor(
    @Inject(configurationToken) private readonly configuration: Configuration,
    private readonly log: Log,
    readiness: Readiness,
    @Inject(entitiesToken) private readonly entities: Entities,
  ) {
    readiness.require(() => this.obstacle());
  }

  /** Opens the database and brings it to the newest migration; waits for a server that is starting itself. */
  async open(): Promise<void> {
    const { migrationDatabaseUrl, databaseWaitMs } = this.configuration;
    if (migrationDatabaseUrl === undefined) {
      this.source = await patiently(databaseWaitMs, async () => this.opened(await this.options()));
      await this.migrate(this.source);
      return;
    }
    const owner = await patiently(databaseWaitMs, () => this.opened(this.onServer(migrationDatabaseUrl, 2)));
    await this.migrate(owner);
    await owner.destroy();
    this.source = await this.opened(await this.options());
    await refuseUnlessBound(this.source);
  }

  async close(): Promise<void> {
    this.isClosed = true;
    await this.mending;
    await this.source?.destroy();
    await this.embedded?.close();
  }

  /** Work for one organisation: it sees and changes only what belongs to it, and what is shared. */
  inOrganisation<T>(organisationId: string, work: Work<T>): Promise<T> {
    if (!isId(organisationId)) throw new Defect(`${organisationId} is not an id`);
    return this.transaction(`SET LOCAL kingplank.organisation = '${organisationId}'; ${confinement()}`, work);
  }

  /** Work across organisations and on the shipped catalogue; it sees no organisation's estimates. */
  asOperator<T>(work: Work<T>): Promise<T> {
    return this.transaction("SET LOCAL kingplank.operator = 'on'", work);
  }

  /** Work on the queue of operations, whoever they belong to; it sees nothing else of any organisation. */
  asWorker<T>(work: Work<T>): Promise<T> {
    return this.transaction("SET LOCAL kingplank.worker = 'on'", work);
  }

  /** Finds who holds a key before any organisation is known. */
  withKeyHash<T>(keyHash: string, work: Work<T>): Promise<T> {
    if (!/^[0-9a-f]{64}$/.test(keyHash)) throw new Defect('A key hash is 64 hexadecimal digits');
    return this.transaction(`SET LOCAL kingplank.key_hash = '${keyHash}'`, work);
  }

  /** For migrations and their tests alone. */
  get dataSource(): DataSource {
    if (this.source === undefined) throw unavailable('The database is not open yet.');
    return this.source;
  }

  private async transaction<T>(scope: string, work: Work<T>): Promise<T> {
    try {
      return await this.attempt(scope, work);
    } catch (failure) {
      if (!isWorthRepeating(failure)) throw databaseFailure(failure);
    }
    try {
      return await this.attempt(scope, work);
    } catch (failure) {
      throw databaseFailure(failure);
    }
  }

  private async attempt<T>(scope: string, work: Work<T>): Promise<T> {
    const runner = this.dataSource.createQueryRunner();
    try {
      // One journey to the database for all; the runner's own startTransaction would be a journey of its own.
      await runner.query(`START TRANSACTION; ${this.bound} ${scope}`);
      const result = await work(runner.manager);
      await runner.query('COMMIT');
      return result;
    } catch (failure) {
      await this.rolledBack(runner);
      throw failure;
    } finally {
      await runner.release();
    }
  }

  /** A login that migrates has rights to lay down; one that only serves has none. */
  private get bound(): string {
    return this.configuration.migrationDatabaseUrl === undefined ? 'SET LOCAL ROLE kingplank_service;' : '';
  }

  /** A rollback can fail only when the connection is gone, and the server has then rolled back by itself. */
  private async rolledBack(runner: QueryRunner): Promise<void> {
    try {
      await runner.query('ROLLBACK');
    } catch (failure) {
      this.log.entry('warn', 'A rollback found its connection gone', { reason: String(failure) });
    }
  }

  private async obstacle(): Promise<string | undefined> {
    try {
      await this.dataSource.query('SELECT 1');
      return undefined;
    } catch (failure) {
      if (this.embedded === undefined || this.isClosed) return 'The database does not answer.';
      this.mending ??= this.mended(failure).finally(() => {
        this.mending = undefined;
      });
      return 'The database does not answer and is being opened again.';
    }
  }

  /** An embedded database that ran out of room stays broken until it is opened anew. */
  private async mended(failure: unknown): Promise<void> {
    const { dataDir } = this.configuration;
    const freeMb = await freeSpaceMb(dataDir);
    const facts = { dataDir, freeMb, reason: String(failure) };
    if (freeMb < LEAST_FREE_MB) {
      this.log.entry('error', 'The disk of the embedded database is full', facts);
      return;
    }
    this.log.entry('warn', 'The embedded database does not answer and is opened again', facts);
    try {
      await this.source?.destroy();
      await this.embedded?.abandon();
      this.source = await this.opened(await this.options());
      this.log.entry('info', 'The embedded database answers again', { dataDir });
    } catch (again) {
      this.log.entry('error', 'The embedded database could not be opened again', failureFacts(again));
    }
  }

  private opened(options: DataSourceOptions): Promise<DataSource> {
    return new DataSource(options).initialize();
  }

  private async options(): Promise<DataSourceOptions> {
    const { databaseUrl, dataDir, poolSize } = this.configuration;
    if (databaseUrl !== undefined) return this.onServer(databaseUrl, poolSize);
    this.embedded = await openEmbeddedDatabase(dataDir, (fault) => {
      this.log.entry('error', 'The embedded database reports a fault', { dataDir, reason: fault });
    });
    const { host, port, user, database } = this.embedded;
    // More than one connection to the embedded database would mix up answers.
    return {
      ...this.common(),
      host,
      port,
      username: user,
      database,
      poolSize: 1,
      extra: { connectionTimeoutMillis: 5000, onConnect: this.keepListening },
    };
  }

  private onServer(url: string, poolSize: number): DataSourceOptions {
    return {
      ...this.common(),
      url,
      poolSize,
      extra: {
        connectionTimeoutMillis: 5000,
        onConnect: this.keepListening,
        statement_timeout: this.configuration.statementTimeoutMs,
        idle_in_transaction_session_timeout: 30_000,
      },
    };
  }

  /**
   * Pool and runner hand a connection over without a listener for a moment; one that breaks just then would end
   * the process. Whoever asks it next is told that it is gone.
   */
  private readonly keepListening = (client: Pick<pg.ClientBase, 'on'>): void => {
    client.on('error', (fault) => {
      this.log.entry('warn', 'A connection to the database broke', { reason: String(fault) });
    });
  };

  private common() {
    return {
      type: 'postgres' as const,
      entities: [...this.entities],
      migrations,
      synchronize: false,
      logging: false,
      migrationsTransactionMode: 'each' as const,
      applicationName: 'kingplank',
    };
  }

  /** Copies that start together on one server take turns; the embedded database has its folder to itself. */
  private async migrate(source: DataSource): Promise<void> {
    if (this.embedded !== undefined) {
      await source.runMigrations();
      return;
    }
    const guard = source.createQueryRunner();
    try {
      await guard.query('SELECT pg_advisory_lock($1)', [MIGRATION_LOCK]);
      await source.runMigrations();
    } finally {
      await guard.query('SELECT pg_advisory_unlock($1)', [MIGRATION_LOCK]);
      await guard.release();
    }
  }
}

/** What the caller of the present request may see, for row security to hold it to. */
function confinement(): string {
  const to = currentContext()?.caller.confinedTo;
  if (to === undefined) return '';
  if (!/^[a-z]+(?::[0-9a-f-]{36,64})?$/.test(to))
    throw new Defect('What a caller is confined to has another form');
  return `SET LOCAL kingplank.confined = '${to}';`;
}

const TRY_AGAIN_MS = 500;
const BYTES_PER_MB = 2 ** 20;

/** Opens again while the world may still come up; everything else fails at once. */
async function patiently<T>(waitMs: number, open: () => Promise<T>): Promise<T> {
  const until = performance.now() + waitMs;
  for (;;) {
    try {
      return await open();
    } catch (failure) {
      const isPassing = databaseFailure(failure) instanceof HttpProblem;
      if (!isPassing || performance.now() + TRY_AGAIN_MS > until) throw failure;
    }
    await delay(TRY_AGAIN_MS);
  }
}

/** A login that could lay aside row security would make it a matter of good will. */
async function refuseUnlessBound(source: DataSource): Promise<void> {
  const [login] = await source.query<
    readonly { readonly name: string; readonly is_free: boolean; readonly owns: string }[]
  >(
    `SELECT current_user AS name, r.rolsuper OR r.rolbypassrls OR r.rolcreaterole AS is_free,
            (SELECT count(*) FROM pg_class c WHERE c.relnamespace = 'public'::regnamespace
               AND pg_has_role(current_user, c.relowner, 'MEMBER')) AS owns
     FROM pg_roles r WHERE r.rolname = current_user`,
  );
  if (!login.is_free && Number(login.owns) === 0) return;
  await source.destroy();
  throw new ConfigurationFault(
    `DATABASE_URL logs in as ${login.name}, which could lay aside row security; use a login that owns no tables and is a member of kingplank_service alone.`,
  );
}

async function freeSpaceMb(folder: string): Promise<number> {
  const { bavail, bsize } = await statfs(folder);
  return Math.floor((bavail * bsize) / BYTES_PER_MB);
}
