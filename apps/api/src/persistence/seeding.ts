import { Inject, Injectable } from '@nestjs/common';
import { shippedCatalogue } from '#lib/catalogue';
import { AccessRepository } from '../access/access.repository.js';
import { newKey } from '../access/key-text.js';
import { roles } from '../access/roles.js';
import { EditionsRepository } from '../catalogue/editions.repository.js';
import { configurationToken, type Configuration } from '../configuration.js';
import { Database, type Transaction } from './database.js';
import { isUniqueViolation } from './failures.js';
import { newId } from './ids.js';

/** What a new database needs before anybody can use it: the shipped catalogue, an organisation and a key. */
@Injectable()
export class Seeding {
  constructor(
    private readonly database: Database,
    @Inject(configurationToken) private readonly configuration: Configuration,
  ) {}

  /** The text of the first key, when one was made now; it is not kept anywhere. */
  async run(): Promise<string | undefined> {
    try {
      return await this.database.asOperator((tx) => this.seed(tx));
    } catch (failure) {
      // Another copy of the service that started at the same moment was faster with the catalogue.
      if (isUniqueViolation(failure)) return undefined;
      throw failure;
    }
  }

  private async seed(tx: Transaction): Promise<string | undefined> {
    await EditionsRepository.in(tx).addShipped(shippedCatalogue);
    const access = AccessRepository.in(tx);
    if (await access.hasOrganisations()) return undefined;
    const key = newKey(this.configuration.firstKey);
    const organisation = await access.addOrganisation({ id: newId(), name: 'First organisation' });
    await access.addKey({
      id: newId(),
      organisationId: organisation.id,
      name: 'First key',
      keyHash: key.hash,
      prefix: key.prefix,
      roles,
    });
    return this.configuration.firstKey === undefined ? key.text : undefined;
  }
}
