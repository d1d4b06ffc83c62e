import type { EditionRow } from './catalogue.entities.js';

export interface Edition {
  readonly code: string;
  readonly state: 'draft' | 'published';
  /** True for the catalogue shipped with the program, which everybody reads and nobody changes. */
  readonly isShipped: boolean;
  readonly note: string;
  /** RFC 3339 instant. */
  readonly createdAt: string;
  readonly publishedAt?: string;
  /** SHA-256 of the content of a published edition. */
  readonly contentHash?: string;
}

export interface EditionList {
  /** Code of the edition that estimates are made with now. */
  readonly current: string;
  readonly items: readonly Edition[];
}

export const editionView = (row: EditionRow): Edition => ({
  code: row.code,
  state: row.state,
  isShipped: row.organisationId === null,
  note: row.note,
  createdAt: row.createdAt.toISOString(),
  ...(row.publishedAt === null ? {} : { publishedAt: row.publishedAt.toISOString() }),
  ...(row.contentHash === null ? {} : { contentHash: row.contentHash }),
});
