import { Inject, Injectable } from '@nestjs/common';
import { configurationToken, type Configuration } from '../settings/configuration.js';
import { Database, type Transaction } from './database.js';
import { isUniqueViolation } from './failures.js';

/** Writes what a feature needs before anybody can use it, and may return a text to be shown once. */
export type Seed = (tx: Transaction, configuration: Configuration) => Promise<string | undefined>;

/** What the service asks for to receive the seeds of its features, in the order in which they are sown. */
export const seedsToken = Symbol('seeds');

/** Brings a new database to where it can be used; one that was, stays as it is. */
@Injectable()
export class Seeding {
  constructor(
    private readonly database: Database,
    @Inject(configurationToken) private readonly configuration: Configuration,
    @Inject(seedsToken) private readonly seeds: readonly Seed[],
  ) {}

  /** The text of the first key, when one was made now; it is not kept anywhere. */
  async run(): Promise<string | undefined> {
    try {
      return await this.database.asOperator((tx) => this.sown(tx));
    } catch (failure) {
      // Another copy of the service that started at the same moment was faster.
      if (isUniqueViolation(failure)) return undefined;
      throw failure;
    }
  }

  /** One after the other: they share one connection, and a later one may need what an earlier one wrote. */
  private sown(tx: Transaction): Promise<string | undefined> {
    return this.seeds.reduce<Promise<string | undefined>>(async (before, seed) => {
      const shown = await before;
      return (await seed(tx, this.configuration)) ?? shown;
    }, Promise.resolve(undefined));
  }
}
