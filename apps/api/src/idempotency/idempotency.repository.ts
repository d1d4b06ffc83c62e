import type { Transaction } from '../persistence/database.js';
import type { Claim, KeyUse } from './key-use.js';
import { IdempotencyKeyRow } from './idempotency-key.entity.js';

/** Keys of the organisation of the transaction, and what was done under them. */
export class IdempotencyRepository {
  private constructor(private readonly tx: Transaction) {}

  static in(tx: Transaction): IdempotencyRepository {
    return new IdempotencyRepository(tx);
  }

  find({ organisationId, operation, key }: KeyUse): Promise<IdempotencyKeyRow | null> {
    return this.tx.findOneBy(IdempotencyKeyRow, { organisationId, operation, key });
  }

  /** False when another use has the key; waits for one that is still in its transaction. */
  async claim(claim: Claim, subject: string, code: string): Promise<boolean> {
    return this.write(claim, { subject, code });
  }

  async keepAnswer(claim: Claim, answer: Uint8Array): Promise<boolean> {
    return this.write(claim, { answer: Buffer.from(answer) });
  }

  private async write(
    { organisationId, operation, key, requestHash, claimId }: Claim,
    {
      subject,
      code,
      answer,
    }: { readonly subject?: string; readonly code?: string; readonly answer?: Buffer },
  ): Promise<boolean> {
    const rows: readonly unknown[] = await this.tx.query(
      `INSERT INTO idempotency_key (organisation_id, operation, key, request_hash, claim_id, subject, subject_code, answer)
       VALUES ($1, $2, $3, $4, $5, $6, $7, $8)
       ON CONFLICT (organisation_id, operation, key) DO UPDATE
       SET subject = coalesce(idempotency_key.subject, excluded.subject),
           subject_code = coalesce(idempotency_key.subject_code, excluded.subject_code),
           answer = coalesce(idempotency_key.answer, excluded.answer)
       WHERE idempotency_key.claim_id = excluded.claim_id
       RETURNING claim_id`,
      [organisationId, operation, key, requestHash, claimId, subject ?? null, code ?? null, answer ?? null],
    );
    return rows.length === 1;
  }
}
