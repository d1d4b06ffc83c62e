import { MoreThan, type SelectQueryBuilder } from 'typeorm';
import type { Transaction } from '../persistence/database.js';
import { ApiKeyRow, OrganisationRow } from './access.entities.js';

export type NewKeyRow = Pick<
  ApiKeyRow,
  'id' | 'organisationId' | 'name' | 'keyHash' | 'prefix' | 'roles' | 'scopes'
> &
  Partial<Pick<ApiKeyRow, 'kind' | 'expiresAt' | 'renewsId' | 'shownText' | 'page'>>;

export interface Page {
  readonly limit: number;
  readonly afterId?: string;
}

const MINUTE_MS = 60_000;

/** Keys and organisations, as far as the transaction may see them. */
export class AccessRepository {
  private constructor(private readonly tx: Transaction) {}

  static in(tx: Transaction): AccessRepository {
    return new AccessRepository(tx);
  }

  findLivingKey(keyHash: string): Promise<ApiKeyRow | null> {
    return this.livingKeys().andWhere('key.keyHash = :keyHash', { keyHash }).getOne();
  }

  async livingKeyIn(organisationId: string, id: string): Promise<ApiKeyRow | null> {
    await this.tx.query("SELECT set_config('kingplank.organisation', $1, true)", [organisationId]);
    return this.livingKeys().andWhere('key.id = :id', { id }).getOne();
  }

  /** Keys that still open something. */
  private livingKeys(): SelectQueryBuilder<ApiKeyRow> {
    return this.tx
      .createQueryBuilder(ApiKeyRow, 'key')
      .where('key.revokedAt IS NULL')
      .andWhere('(key.expiresAt IS NULL OR key.expiresAt > now())');
  }

  /** To the minute, so that a busy key costs one write a minute, and no question in between. */
  async noteUse({ id, organisationId, lastUsedAt }: ApiKeyRow): Promise<void> {
    if (lastUsedAt !== null && Date.now() - lastUsedAt.getTime() < MINUTE_MS) return;
    await this.tx.query("SELECT set_config('kingplank.organisation', $1, true)", [organisationId]);
    await this.tx.query(
      `UPDATE api_key SET last_used_at = now() WHERE id = $1
       AND (last_used_at IS NULL OR last_used_at < now() - interval '1 minute')`,
      [id],
    );
  }

  async hasOrganisations(): Promise<boolean> {
    return (await this.tx.count(OrganisationRow)) > 0;
  }

  async addOrganisation(organisation: Pick<OrganisationRow, 'id' | 'name'>): Promise<OrganisationRow> {
    await this.tx.insert(OrganisationRow, organisation);
    return this.tx.findOneByOrFail(OrganisationRow, { id: organisation.id });
  }

  organisations({ limit, afterId }: Page): Promise<OrganisationRow[]> {
    return this.tx.find(OrganisationRow, {
      where: afterId === undefined ? {} : { id: MoreThan(afterId) },
      order: { id: 'ASC' },
      take: limit,
    });
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

  async addKey(key: NewKeyRow): Promise<ApiKeyRow> {
    await this.tx.insert(ApiKeyRow, { ...key, roles: [...key.roles], scopes: [...key.scopes] });
    return this.tx.findOneByOrFail(ApiKeyRow, { id: key.id });
  }

  keys(kind: ApiKeyRow['kind'], { limit, afterId }: Page): Promise<ApiKeyRow[]> {
    return this.tx.find(ApiKeyRow, {
      where: { kind, ...(afterId === undefined ? {} : { id: MoreThan(afterId) }) },
      order: { id: 'ASC' },
      take: limit,
    });
  }

  async hasPublishedEdition(code: string): Promise<boolean> {
    const rows: readonly unknown[] = await this.tx.query(
      "SELECT 1 FROM edition WHERE code = $1 AND state = 'published' AND coalesce(effective_at <= clock_timestamp(), true) LIMIT 1",
      [code],
    );
    return rows.length === 1;
  }

  findKey(id: string): Promise<ApiKeyRow | null> {
    return this.tx.findOneBy(ApiKeyRow, { id });
  }

  /** Ids of the keys that may make keys and do not end by themselves, held so that two cannot be revoked at once. */
  async lockAdminKeys(): Promise<readonly string[]> {
    const rows: readonly { readonly id: string }[] = await this.tx.query(
      `SELECT id FROM api_key WHERE revoked_at IS NULL AND expires_at IS NULL
       AND 'organisation-admin' = ANY(roles) ORDER BY id FOR UPDATE`,
    );
    return rows.map(({ id }) => id);
  }

  /** From when on a key opens nothing any more. */
  async endKey(id: string, version: number, at: Date): Promise<boolean> {
    const { affected } = await this.tx
      .createQueryBuilder()
      .update(ApiKeyRow)
      .set({ expiresAt: at, version: version + 1 })
      .where({ id, version })
      .execute();
    return affected === 1;
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
