import type { AuditEntryRow } from './audit-entry.entity.js';

export interface HistoryEntry {
  /** RFC 3339 instant. */
  readonly at: string;
  readonly action: string;
  readonly keyId?: string;
  readonly requestId?: string;
  readonly before?: unknown;
  readonly after?: unknown;
}

/** What was done to a thing, newest first. */
export interface History {
  readonly items: readonly HistoryEntry[];
}

export const historyOf = (rows: readonly AuditEntryRow[]): History => ({
  items: rows.map(({ at, action, keyId, requestId, before, after }) => ({
    at: at.toISOString(),
    action,
    ...(keyId === null ? {} : { keyId }),
    ...(requestId === null ? {} : { requestId }),
    ...(before === null ? {} : { before }),
    ...(after === null ? {} : { after }),
  })),
});
