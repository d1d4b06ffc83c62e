import { currentContext } from '../edge/request-context.js';
import { claimFor } from '../idempotency/claim.js';
import type { Transaction } from '../persistence/database.js';
import { newId } from '../persistence/ids.js';
import { AuditEntryRow } from './audit-entry.entity.js';

export type AuditAction = 'created' | 'changed' | 'removed' | 'published' | 'imported' | 'revoked';

/** Who did it: a key, for an organisation or for the shipped state that belongs to none. */
export interface Author {
  readonly organisationId: string | null;
  readonly keyId: string;
}

export interface Deed {
  readonly action: AuditAction;
  /** What kind of thing, such as `material` or `edition`. */
  readonly subject: string;
  readonly code: string;
  readonly editionId?: string;
  readonly before?: unknown;
  readonly after?: unknown;
}

/** Who did what to which thing, written in the transaction that does it. */
export class AuditTrail {
  private constructor(private readonly tx: Transaction) {}

  static in(tx: Transaction): AuditTrail {
    return new AuditTrail(tx);
  }

  async add({ organisationId, keyId }: Author, deed: Deed): Promise<void> {
    await claimFor(this.tx, deed.subject, deed.code);
    await this.tx.query(
      `INSERT INTO audit_entry (id, organisation_id, key_id, request_id, action, subject, subject_code, edition_id, before, after)
       VALUES ($1, $2, $3, $4, $5, $6, $7, $8, $9::jsonb, $10::jsonb)`,
      [
        newId(),
        organisationId,
        keyId,
        currentContext()?.requestId ?? null,
        deed.action,
        deed.subject,
        deed.code,
        deed.editionId ?? null,
        json(deed.before),
        json(deed.after),
      ],
    );
  }

  /** Newest first. */
  about(subject: string, code: string): Promise<AuditEntryRow[]> {
    return this.tx.find(AuditEntryRow, {
      where: { subject, subjectCode: code },
      order: { id: 'DESC' },
      take: 500,
    });
  }
}

const json = (value: unknown): string | null => (value === undefined ? null : JSON.stringify(value));
