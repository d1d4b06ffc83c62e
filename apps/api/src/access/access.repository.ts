import { IsNull } from 'typeorm';
import type { Transaction } from '../persistence/database.js';
import { ApiKeyRow, OrganisationRow } from './access.entities.js';

/** Keys and organisations, as far as the transaction may see them. */
export class AccessRepository {
  private constructor(private readonly tx: Transaction) {}

  static in(tx: Transaction): AccessRepository {
    return new AccessRepository(tx);
  }

  findLivingKey(keyHash: string): Promise<ApiKeyRow | null> {
    return this.tx.findOne(ApiKeyRow, { where: { keyHash, revokedAt: IsNull() } });
  }

  async hasOrganisations(): Promise<boolean> {
    return (await this.tx.count(OrganisationRow)) > 0;
  }

  async addOrganisation(organisation: Pick<OrganisationRow, 'id' | 'name'>): Promise<OrganisationRow> {
    await this.tx.insert(OrganisationRow, organisation);
    return this.tx.findOneByOrFail(OrganisationRow, { id: organisation.id });
  }

  organisations(): Promise<OrganisationRow[]> {
    return this.tx.find(OrganisationRow, { order: { id: 'ASC' }, take: 1000 });
  }

  findOrganisation(id: string): Promise<OrganisationRow | null> {
    return this.tx.findOneBy(OrganisationRow, { id });
  }

  /** False when the version is no longer the one that was read. */
  async renameOrganisation(id: string, version: number, name: string): Promise<boolean> {
    const { affected } = await this.tx
      .createQueryBuilder()
      .update(OrganisationRow)
      .set({ name, version: version + 1, updatedAt: () => 'now()' })
      .where({ id, version })
      .execute();
    return affected === 1;
  }

  async addKey(
    key: Pick<ApiKeyRow, 'id' | 'organisationId' | 'name' | 'keyHash' | 'prefix' | 'roles'>,
  ): Promise<ApiKeyRow> {
    await this.tx.insert(ApiKeyRow, { ...key, roles: [...key.roles] });
    return this.tx.findOneByOrFail(ApiKeyRow, { id: key.id });
  }

  keysOf(organisationId: string): Promise<ApiKeyRow[]> {
    return this.tx.find(ApiKeyRow, { where: { organisationId }, order: { id: 'ASC' }, take: 1000 });
  }

  findKey(id: string): Promise<ApiKeyRow | null> {
    return this.tx.findOneBy(ApiKeyRow, { id });
  }

  /** Ids of the keys in force that may make keys, held so that two of them cannot be revoked at once. */
  async lockOperatorKeys(): Promise<readonly string[]> {
    const rows: readonly { readonly id: string }[] = await this.tx.query(
      "SELECT id FROM api_key WHERE revoked_at IS NULL AND 'operator' = ANY(roles) ORDER BY id FOR UPDATE",
    );
    return rows.map(({ id }) => id);
  }

  async revokeKey(id: string, version: number): Promise<boolean> {
    const { affected } = await this.tx
      .createQueryBuilder()
      .update(ApiKeyRow)
      .set({ revokedAt: () => 'now()', version: version + 1 })
      .where({ id, version })
      .execute();
    return affected === 1;
  }
}
