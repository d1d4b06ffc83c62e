import type { EditionRow } from './catalogue.entities.js';

/** One state of the catalogue: a draft, or published and never changed again. */
export interface Edition {
  /** Code of the edition. */
  readonly code: string;
  /** `scheduled`: published, and not yet in effect. */
  readonly state: 'draft' | 'scheduled' | 'published';
  /** True for the catalogue shipped with the program, which everybody reads and nobody changes. */
  readonly isShipped: boolean;
  /** What the edition was made for. */
  readonly note: string;
  /** When the draft was made (RFC 3339). */
  readonly createdAt: string;
  /** When it took effect (RFC 3339); absent on a draft. */
  readonly publishedAt?: string;
  /** RFC 3339 instant from which it counts; absent when that was its publication. */
  readonly effectiveAt?: string;
  /** SHA-256 of the content of a published edition. */
  readonly contentHash?: string;
}

export interface EditionList {
  /** Code of the edition that estimates are made with now. */
  readonly current: string;
  /** Editions of the organisation, newest first. */
  readonly items: readonly Edition[];
}

export const editionView = (row: EditionRow, now: Date): Edition => ({
  code: row.code,
  state: isScheduled(row, now) ? 'scheduled' : row.state,
  isShipped: row.organisationId === null,
  note: row.note,
  createdAt: row.createdAt.toISOString(),
  ...(row.publishedAt === null ? {} : { publishedAt: row.publishedAt.toISOString() }),
  ...(row.effectiveAt === null ? {} : { effectiveAt: row.effectiveAt.toISOString() }),
  ...(row.contentHash === null ? {} : { contentHash: row.contentHash }),
});

export const isScheduled = (
  { state, effectiveAt }: Pick<EditionRow, 'state' | 'effectiveAt'>,
  now: Date,
): boolean => state === 'published' && effectiveAt !== null && effectiveAt > now;
