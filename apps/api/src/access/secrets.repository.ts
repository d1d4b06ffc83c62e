import type { Transaction } from '../persistence/database.js';
import { EstimateSecretRow } from './access.entities.js';

export type NewSecretRow = Pick<
  EstimateSecretRow,
  'hash' | 'organisationId' | 'keyId' | 'rootId' | 'reference' | 'revisionsLeft' | 'expiresAt'
>;

/** Secrets of one estimate each, and what pages used up. */
export class SecretsRepository {
  private constructor(private readonly tx: Transaction) {}

  static in(tx: Transaction): SecretsRepository {
    return new SecretsRepository(tx);
  }

  findLiving(hash: string): Promise<EstimateSecretRow | null> {
    return this.tx
      .createQueryBuilder(EstimateSecretRow, 'secret')
      .where('secret.hash = :hash AND secret.expiresAt > now()', { hash })
      .getOne();
  }

  async add(secret: NewSecretRow): Promise<void> {
    await this.tx.insert(EstimateSecretRow, secret);
  }

  /** From now on the transaction sees what the secret opens, and no other estimate. */
  async confineTo(hash: string): Promise<void> {
    await this.tx.query("SELECT set_config('kingplank.confined', 'secret:' || $1, true)", [hash]);
  }

  /** False when the secret has its estimate already. */
  async bind(hash: string, rootId: string, expiresAt: Date): Promise<boolean> {
    return affectedOne(
      await this.tx.query(
        'UPDATE estimate_secret SET root_id = $2, expires_at = $3 WHERE hash = $1 AND root_id IS NULL',
        [hash, rootId, expiresAt],
      ),
    );
  }

  /** False when none is left. */
  async takeRevision(hash: string): Promise<boolean> {
    return affectedOne(
      await this.tx.query(
        'UPDATE estimate_secret SET revisions_left = revisions_left - 1 WHERE hash = $1 AND revisions_left > 0',
        [hash],
      ),
    );
  }

  /** False when the key has made as many today as it may; days are those of UTC. */
  async countUse(keyId: string, organisationId: string, perDay: number): Promise<boolean> {
    const rows: readonly unknown[] = await this.tx.query(
      `INSERT INTO page_use (key_id, organisation_id, day, made) VALUES ($1, $2, (now() AT TIME ZONE 'UTC')::date, 1)
       ON CONFLICT (key_id, day) DO UPDATE SET made = page_use.made + 1 WHERE page_use.made < $3 RETURNING made`,
      [keyId, organisationId, perDay],
    );
    return rows.length === 1;
  }

  async forgetOld(): Promise<void> {
    await this.tx.query("DELETE FROM estimate_secret WHERE expires_at < now() - interval '1 day'");
  }
}

/** The driver answers an UPDATE with its rows and their number. */
const affectedOne = (answer: unknown): boolean => Array.isArray(answer) && answer[1] === 1;
