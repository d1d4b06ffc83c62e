import type { Transaction } from '../persistence/database.js';
import type { CatalogueTable } from './catalogue-rows.js';
import type { CheckedDocument } from './dto/documents.js';

export interface ItemRow {
  readonly code: string;
  readonly kind: string;
  readonly body: unknown;
  readonly version: number;
}

interface Target {
  readonly editionId: string;
  readonly organisationId: string | null;
}

/** Rows of one table of the catalogue. The table's name is one of a closed set, never a caller's text. */
export class ItemsRepository {
  private constructor(
    private readonly tx: Transaction,
    private readonly table: CatalogueTable,
  ) {}

  static in(tx: Transaction, table: CatalogueTable): ItemsRepository {
    return new ItemsRepository(tx, table);
  }

  list(editionId: string, kind: string | undefined): Promise<readonly ItemRow[]> {
    return this.tx.query(
      `SELECT code, kind, body, version FROM ${this.table} WHERE edition_id = $1 AND ($2::text IS NULL OR kind = $2) ORDER BY position, code`,
      [editionId, kind ?? null],
    );
  }

  async find(editionId: string, code: string): Promise<ItemRow | undefined> {
    const [row]: readonly (ItemRow | undefined)[] = await this.tx.query(
      `SELECT code, kind, body, version FROM ${this.table} WHERE edition_id = $1 AND code = $2`,
      [editionId, code],
    );
    return row;
  }

  /** False when the code is taken. */
  async add(
    { editionId, organisationId }: Target,
    { code, kind, name, body }: CheckedDocument,
  ): Promise<boolean> {
    const rows: readonly unknown[] = await this.tx.query(
      `INSERT INTO ${this.table} (edition_id, code, organisation_id, kind, name, body, position)
       SELECT $1, $2, $3, $4, $5, $6::jsonb, coalesce(max(position), -1) + 1 FROM ${this.table} WHERE edition_id = $1
       ON CONFLICT (edition_id, code) DO NOTHING RETURNING code`,
      [editionId, code, organisationId, kind, name, JSON.stringify(body)],
    );
    return rows.length === 1;
  }

  /** False when the version is no longer the one that was read. */
  async replace(
    editionId: string,
    version: number,
    { code, kind, name, body }: CheckedDocument,
  ): Promise<boolean> {
    return affectedOne(
      await this.tx.query(
        `UPDATE ${this.table} SET kind = $4, name = $5, body = $6::jsonb, version = version + 1, updated_at = now()
       WHERE edition_id = $1 AND code = $2 AND version = $3`,
        [editionId, code, version, kind, name, JSON.stringify(body)],
      ),
    );
  }

  async remove(editionId: string, code: string, version: number): Promise<boolean> {
    return affectedOne(
      await this.tx.query(`DELETE FROM ${this.table} WHERE edition_id = $1 AND code = $2 AND version = $3`, [
        editionId,
        code,
        version,
      ]),
    );
  }

  /** Adds or replaces all of them in one statement; those not named stay. */
  async merge({ editionId, organisationId }: Target, documents: readonly CheckedDocument[]): Promise<void> {
    await this.tx.query(
      `INSERT INTO ${this.table} (edition_id, code, organisation_id, kind, name, body, position)
       SELECT $1, row->>'code', $2, row->>'kind', row->>'name', row->'body',
              (SELECT coalesce(max(position), -1) FROM ${this.table} WHERE edition_id = $1) + ordinal::integer
       FROM jsonb_array_elements($3::jsonb) WITH ORDINALITY AS element (row, ordinal)
       ON CONFLICT (edition_id, code) DO UPDATE
       SET kind = excluded.kind, name = excluded.name, body = excluded.body, version = ${this.table}.version + 1, updated_at = now()`,
      [editionId, organisationId, JSON.stringify(documents)],
    );
  }
}

/** The driver answers an UPDATE or DELETE with its rows and their number. */
const affectedOne = (answer: unknown): boolean => Array.isArray(answer) && answer[1] === 1;
