import type { NamedEntry } from './audit-trail.js';

export interface HistoryEntry {
  /** RFC 3339 instant. */
  readonly at: string;
  readonly action: string;
  readonly keyId?: string;
  /** Whose key it was, as the key is called. */
  readonly keyName?: string;
  readonly requestId?: string;
  readonly before?: unknown;
  readonly after?: unknown;
}

/** What was done to a thing, newest first. */
export interface History {
  readonly items: readonly HistoryEntry[];
}

export interface AuditEntry extends HistoryEntry {
  /** What kind of thing, such as `key` or `edition`. */
  readonly subject: string;
  /** The id or code of the thing. */
  readonly code: string;
}

export interface AuditPage {
  readonly items: readonly AuditEntry[];
  /** Give it as `cursor` to read on; absent on the last page. */
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
