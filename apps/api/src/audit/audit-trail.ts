import { currentContext } from '../edge/request-context.js';
import { claimFor } from '../idempotency/claim.js';
import type { Transaction } from '../persistence/database.js';
import { newId } from '../persistence/ids.js';

export type AuditAction =
  'created' | 'changed' | 'removed' | 'published' | 'withdrawn' | 'imported' | 'revoked';

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
  about(subject: string, code: string): Promise<readonly NamedEntry[]> {
    return this.tx.query(
      `${SELECT} WHERE entry.subject = $1 AND entry.subject_code = $2 ORDER BY entry.id DESC LIMIT 500`,
      [subject, code],
    );
  }

  /** The last things done to an edition or anything in it, newest first. */
  inEdition(editionId: string, count: number): Promise<readonly NamedEntry[]> {
    return this.tx.query(`${SELECT} WHERE entry.edition_id = $1 ORDER BY entry.id DESC LIMIT $2`, [
      editionId,
      count,
    ]);
  }

  /** All of an organisation, newest first. */
  page({ limit, beforeId, subject }: AuditRequest): Promise<readonly NamedEntry[]> {
    return this.tx.query(
      `${SELECT} WHERE entry.organisation_id = kingplank_organisation()
       AND ($1::uuid IS NULL OR entry.id < $1) AND ($2::text IS NULL OR entry.subject = $2)
       ORDER BY entry.id DESC LIMIT $3`,
      [beforeId ?? null, subject ?? null, limit],
    );
  }
}

interface AuditRequest {
  readonly limit: number;
  readonly beforeId: string | undefined;
  readonly subject: string | undefined;
}

/** An entry with the name of the key, as far as the transaction may see it. */
export interface NamedEntry {
  readonly id: string;
  readonly at: Date;
  readonly action: string;
  readonly subject: string;
  readonly subjectCode: string;
  readonly keyId: string | null;
  readonly keyName: string | null;
  readonly requestId: string | null;
  readonly before: unknown;
  readonly after: unknown;
}

const SELECT = `SELECT entry.id, entry.at, entry.action, entry.subject, entry.subject_code AS "subjectCode",
  entry.key_id AS "keyId", key.name AS "keyName", entry.request_id AS "requestId", entry.before, entry.after
  FROM audit_entry entry LEFT JOIN api_key key ON key.id = entry.key_id`;

const json = (value: unknown): string | null => (value === undefined ? null : JSON.stringify(value));
