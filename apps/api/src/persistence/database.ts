import { Inject, Injectable } from '@nestjs/common';
import { DataSource, type DataSourceOptions, type EntityManager, type QueryRunner } from 'typeorm';
import { Defect } from '#lib/kernel';
import { configurationToken, type Configuration } from '../settings/configuration.js';
import { Readiness } from '../edge/readiness.js';
import { Log } from '../edge/log.js';
import { unavailable } from '../edge/problems.js';
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

/** Any number; the same in every copy of the service. */
const MIGRATION_LOCK = 7_130_411;

/** The one way to the database: every piece of work is a transaction under row security. */
@Injectable()
export class Database {
  private source?: DataSource;
  private embedded?: EmbeddedDatabase;

  constructor(
    @Inject(configurationToken) private readonly configuration: Configuration,
    private readonly log: Log,
    readiness: Readiness,
    @Inject(entitiesToken) private readonly entities: Entities,
  ) {
    readiness.require(() => this.obstacle());
  }

  /** Opens the database and brings it to the newest migration. */
  async open(): Promise<void> {
    this.source = await new DataSource(await this.options()).initialize();
    await this.migrate(this.source);
  }

  async close(): Promise<void> {
    await this.source?.destroy();
    await this.embedded?.close();
  }

  /** Work for one organisation: it sees and changes only what belongs to it, and what is shared. */
  inOrganisation<T>(organisationId: string, work: Work<T>): Promise<T> {
    if (!isId(organisationId)) throw new Defect(`${organisationId} is not an id`);
    return this.transaction(`SET LOCAL kingplank.organisation = '${organisationId}'`, work);
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
      // One journey to the database for all three; the runner's own startTransaction would be a journey of its own.
      await runner.query(`START TRANSACTION; SET LOCAL ROLE kingplank_service; ${scope}`);
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
    } catch {
      return 'The database does not answer.';
    }
  }

  private async options(): Promise<DataSourceOptions> {
    const common = {
      type: 'postgres' as const,
      entities: [...this.entities],
      migrations,
      synchronize: false,
      logging: false,
      migrationsTransactionMode: 'each' as const,
      applicationName: 'kingplank',
    };
    const { databaseUrl, dataDir, poolSize, statementTimeoutMs } = this.configuration;
    if (databaseUrl !== undefined) {
      return {
        ...common,
        url: databaseUrl,
        poolSize,
        extra: {
          connectionTimeoutMillis: 5000,
          statement_timeout: statementTimeoutMs,
          idle_in_transaction_session_timeout: 30_000,
        },
      };
    }
    this.embedded = await openEmbeddedDatabase(dataDir);
    const { host, port, user, database } = this.embedded;
    // More than one connection to the embedded database would mix up answers.
    return {
      ...common,
      host,
      port,
      username: user,
      database,
      poolSize: 1,
      extra: { connectionTimeoutMillis: 5000 },
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
