import type { Catalogue } from '#lib/catalogue';
import { newId } from '../persistence/ids.js';
import type { Transaction } from '../persistence/database.js';
import { EditionRow } from './catalogue.entities.js';
import { catalogueTables, rowsOf, type CatalogueTable } from './catalogue-rows.js';

/** Editions of the catalogue: shared ones, and those of the organisation of the transaction. */
export class EditionsRepository {
  private constructor(private readonly tx: Transaction) {}

  static in(tx: Transaction): EditionsRepository {
    return new EditionsRepository(tx);
  }

  /** Adds the shipped catalogue as a shared, published edition, unless this very content is already there. */
  async addShipped(catalogue: Catalogue): Promise<void> {
    const known = await this.tx
      .createQueryBuilder(EditionRow, 'edition')
      .where('edition.organisationId IS NULL AND edition.code = :code', { code: catalogue.edition })
      .getCount();
    if (known > 0) return;
    const id = newId();
    await this.tx.insert(EditionRow, {
      id,
      organisationId: null,
      code: catalogue.edition,
      state: 'draft',
      note: 'Shipped with the program',
    });
    for (const table of catalogueTables) await this.insertRows(table, id, null, rowsOf(catalogue, table));
    await this.publish({ id, version: 1 }, { contentHash: catalogue.hash, effectiveAt: undefined });
  }

  /** The edition of the organisation that came into effect last; without one, the shared one that did. */
  findCurrent(now: Date): Promise<EditionRow | null> {
    return this.tx
      .createQueryBuilder(EditionRow, 'edition')
      .where("edition.state = 'published'")
      .andWhere('(edition.effectiveAt IS NULL OR edition.effectiveAt <= :now)', { now })
      .orderBy('edition.organisationId IS NULL', 'ASC')
      .addOrderBy('coalesce(edition.effective_at, edition.published_at)', 'DESC')
      .addOrderBy('edition.id', 'DESC')
      .limit(1)
      .getOne();
  }

  find(code: string): Promise<EditionRow | null> {
    return this.tx
      .createQueryBuilder(EditionRow, 'edition')
      .where('edition.code = :code', { code })
      .orderBy('edition.organisationId IS NULL', 'ASC')
      .limit(1)
      .getOne();
  }

  list(): Promise<EditionRow[]> {
    return this.tx.find(EditionRow, { order: { id: 'DESC' }, take: 1000 });
  }

  /** Copies an edition into a new draft of the organisation, in one statement a table. */
  async addDraft(
    draft: {
      readonly id: string;
      readonly organisationId: string;
      readonly code: string;
      readonly note: string;
    },
    basedOn: EditionRow,
  ): Promise<void> {
    await this.tx.insert(EditionRow, { ...draft, state: 'draft', basedOnId: basedOn.id });
    for (const table of catalogueTables) {
      await this.tx.query(
        `INSERT INTO ${table} (edition_id, code, organisation_id, kind, name, body, position)
         SELECT $1, code, $2, kind, name, body, position FROM ${table} WHERE edition_id = $3`,
        [draft.id, draft.organisationId, basedOn.id],
      );
    }
  }

  /** False when the draft was changed since that version. */
  async publish({ id, version }: Versioned, { contentHash, effectiveAt }: Publication): Promise<boolean> {
    const { affected } = await this.tx
      .createQueryBuilder()
      .update(EditionRow)
      .set({
        state: 'published',
        contentHash,
        publishedAt: () => 'clock_timestamp()',
        effectiveAt: effectiveAt ?? null,
        version: version + 1,
      })
      .where({ id, version, state: 'draft' })
      .execute();
    return affected === 1;
  }

  /** Makes a draft again of what does not count yet. False when it counts, or was changed since that version. */
  async withdraw({ id, version }: Versioned, now: Date): Promise<boolean> {
    const { affected } = await this.tx
      .createQueryBuilder()
      .update(EditionRow)
      .set({ state: 'draft', contentHash: null, publishedAt: null, effectiveAt: null, version: version + 1 })
      .where({ id, version, state: 'published' })
      .andWhere('effective_at > greatest(:now, clock_timestamp())', { now })
      .execute();
    return affected === 1;
  }

  /** A draft's version counts every change to what it holds. False when it was published in the meantime. */
  async countChange(id: string): Promise<boolean> {
    const { affected } = await this.tx
      .createQueryBuilder()
      .update(EditionRow)
      .set({ version: () => 'version + 1' })
      .where({ id, state: 'draft' })
      .execute();
    return affected === 1;
  }

  async removeDraft(id: string, version: number): Promise<boolean> {
    const { affected } = await this.tx
      .createQueryBuilder()
      .delete()
      .from(EditionRow)
      .where({ id, version, state: 'draft' })
      .execute();
    return affected === 1;
  }

  /** Everything in an edition, in the order of the catalogue. */
  async contentOf(id: string): Promise<Readonly<Record<CatalogueTable, readonly unknown[]>>> {
    const content: Record<CatalogueTable, readonly unknown[]> = {
      material: [],
      price_list: [],
      labour_rates: [],
      source: [],
    };
    for (const table of catalogueTables) {
      const rows: readonly { readonly body: unknown }[] = await this.tx.query(
        `SELECT body FROM ${table} WHERE edition_id = $1 ORDER BY position, code`,
        [id],
      );
      content[table] = rows.map(({ body }) => body);
    }
    return content;
  }

  private async insertRows(
    table: CatalogueTable,
    editionId: string,
    organisationId: string | null,
    rows: ReturnType<typeof rowsOf>,
  ): Promise<void> {
    await this.tx.query(
      `INSERT INTO ${table} (edition_id, code, organisation_id, kind, name, body, position)
       SELECT $1, row->>'code', $2, row->>'kind', row->>'name', row->'body', (row->>'position')::integer
       FROM jsonb_array_elements($3::jsonb) AS row`,
      [editionId, organisationId, JSON.stringify(rows)],
    );
  }
}

type Versioned = Pick<EditionRow, 'id' | 'version'>;

interface Publication {
  readonly contentHash: string;
  /** At once when undefined. */
  readonly effectiveAt: Date | undefined;
}
