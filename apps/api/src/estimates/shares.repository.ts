import type { Transaction } from '../persistence/database.js';

export interface ShareRow {
  readonly keyId: string;
  readonly keyName: string;
  readonly createdAt: Date;
}

/** Which chandlers' keys see which estimates, with all their revisions. */
export class SharesRepository {
  private constructor(private readonly tx: Transaction) {}

  static in(tx: Transaction): SharesRepository {
    return new SharesRepository(tx);
  }

  /** False when the organisation has no such key in force for a chandler. */
  async isChandlersKey(keyId: string): Promise<boolean> {
    const rows: readonly unknown[] = await this.tx.query(
      "SELECT 1 FROM api_key WHERE id = $1 AND revoked_at IS NULL AND 'chandler' = ANY(roles)",
      [keyId],
    );
    return rows.length === 1;
  }

  async add(rootId: string, keyId: string): Promise<void> {
    await this.tx.query(
      `INSERT INTO estimate_share (root_id, key_id, organisation_id) VALUES ($1, $2, kingplank_organisation())
       ON CONFLICT DO NOTHING`,
      [rootId, keyId],
    );
  }

  async remove(rootId: string, keyId: string): Promise<void> {
    await this.tx.query('DELETE FROM estimate_share WHERE root_id = $1 AND key_id = $2', [rootId, keyId]);
  }

  of(rootId: string): Promise<readonly ShareRow[]> {
    return this.tx.query(
      `SELECT share.key_id AS "keyId", key.name AS "keyName", share.created_at AS "createdAt"
       FROM estimate_share share JOIN api_key key ON key.id = share.key_id WHERE share.root_id = $1
       ORDER BY share.created_at, share.key_id LIMIT 1000`,
      [rootId],
    );
  }
}
