import type { NamedEntry } from './audit-trail.js';

export interface HistoryEntry {
  /** When it was done (RFC 3339). */
  readonly at: string;
  /** What was done to it, such as `created`, `changed` or `removed`. */
  readonly action: string;
  /** Key that did it; absent where the service itself did. */
  readonly keyId?: string;
  /** Whose key it was, as the key is called. */
  readonly keyName?: string;
  /** Request that did it, as in its `X-Request-Id`. */
  readonly requestId?: string;
  /** The thing before the change; absent where it was new. */
  readonly before?: unknown;
  /** The thing after the change; absent where it was removed. */
  readonly after?: unknown;
}

/** What was done to a thing, newest first. */
export interface History {
  /** Changes, newest first. */
  readonly items: readonly HistoryEntry[];
}

export interface AuditEntry extends HistoryEntry {
  /** What kind of thing, such as `key` or `edition`. */
  readonly subject: string;
  /** The id or code of the thing. */
  readonly code: string;
}

export interface AuditPage {
  /** What was done, newest first. */
  readonly items: readonly AuditEntry[];
  /** Give it as `cursor` for what was done before; absent on the last page. */
  readonly nextCursor?: string;
}

export const historyOf = (rows: readonly NamedEntry[]): History => ({ items: rows.map(entryOf) });

export const auditEntryOf = (row: NamedEntry): AuditEntry => ({
  ...entryOf(row),
  subject: row.subject,
  code: row.subjectCode,
});

const entryOf = ({ at, action, keyId, keyName, requestId, before, after }: NamedEntry): HistoryEntry => ({
  at: at.toISOString(),
  action,
  ...(keyId === null ? {} : { keyId }),
  ...(keyName === null ? {} : { keyName }),
  ...(requestId === null ? {} : { requestId }),
  ...(before === null ? {} : { before }),
  ...(after === null ? {} : { after }),
});
