import type { ChangeOrder } from '#lib/costing';
import type { DefectRecord, Estimate } from '#lib/estimate';
import type { Reader } from '../reader.js';
import type { PaperName } from '../sheet/formats.js';
import type { Letterhead } from './document.js';

/** What the estimate itself does not know: who issues it, when, and what came before. */
export interface Issue {
  readonly id: string;
  /** ISO 8601 instant. */
  readonly madeAt: string;
  readonly madeBy?: string;
  readonly purpose?: string;
  readonly letterhead: Letterhead;
  readonly revision: number;
  readonly history: readonly Revision[];
  /** Against the revision before; empty for a first issue. */
  readonly changes: readonly Change[];
  /** What is to be signed; only where a change order is printed. */
  readonly changeOrder?: ChangeOrder;
}

export interface Revision {
  readonly number: number;
  readonly madeAt: string;
  readonly reason: string;
  readonly total: string;
}

export interface Change {
  readonly what: string;
  readonly before: string;
  readonly after: string;
}

export interface ReportRequest {
  readonly estimate: Estimate;
  readonly record: DefectRecord;
  readonly issue: Issue;
  readonly reader: Reader;
  readonly paper: PaperName;
  /** A page needs drawings of one width; a screen also needs narrow ones. */
  readonly medium: 'page' | 'screen';
}
