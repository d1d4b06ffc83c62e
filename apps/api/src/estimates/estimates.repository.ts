import type { Transaction } from '../persistence/database.js';
import { IdempotencyKeyRow } from '../idempotency/idempotency-key.entity.js';
import type { KeyUse } from '../idempotency/key-use.js';
import { EstimateRow } from './estimate.entity.js';
import type { NewEstimateRow, SummaryRow } from './estimate.mapper.js';

export interface WrittenRow {
  readonly row: SummaryRow;
  readonly resultJson: string;
}

interface PageRequest {
  readonly limit: number;
  /** Estimates made before this one. */
  readonly beforeId?: string;
  readonly reference?: string;
}

interface LatestRequest {
  readonly limit: number;
  readonly ids?: readonly string[];
}

/** A row with the record that it was made from, and what was made of it. */
export type RecordedRow = Omit<EstimateRow, 'derivations'>;

const summaryColumns = [
  'id',
  'createdAt',
  'organisationId',
  'createdByKeyId',
  'title',
  'reference',
  'rootId',
  'revisionNumber',
  'revisionReason',
  'engineVersion',
  'edition',
  'catalogueHash',
  'inputHash',
  'currency',
  'netAmount',
  'taxAmount',
  'totalAmount',
  'totalP10Amount',
  'totalP50Amount',
  'totalP90Amount',
  'labourH',
  'verdict',
].map((column) => `estimate.${column}`);

/** Estimates of the organisation of the transaction. */
export class EstimatesRepository {
  private constructor(private readonly tx: Transaction) {}

  static in(tx: Transaction): EstimatesRepository {
    return new EstimatesRepository(tx);
  }

  /**
   * Returns the moment at which the database wrote it. A statement of its own: the document is a fifth of a megabyte of text,
   * and a builder of queries reads it through and copies it on the thread that answers everybody.
   */
  async add({ resultJson, input, derivations, ...columns }: NewEstimateRow): Promise<Date> {
    const values: Readonly<Record<string, unknown>> = {
      ...columns,
      input: JSON.stringify(input),
      result: resultJson,
      derivations: derivations === null ? null : Buffer.from(derivations),
    };
    const known = this.tx.connection
      .getMetadata(EstimateRow)
      .columns.filter(({ propertyName }) => propertyName in values);
    const names = known.map(({ databaseName }) => `"${databaseName}"`).join(', ');
    const places = known.map((_, index) => `$${index + 1}`).join(', ');
    const [{ created_at: createdAt }] = await this.tx.query<readonly { readonly created_at: Date }[]>(
      `INSERT INTO estimate (${names}) VALUES (${places}) RETURNING created_at`,
      known.map(({ propertyName }) => values[propertyName]),
    );
    return createdAt;
  }

  async rememberKey(use: KeyUse, estimateId: string): Promise<void> {
    await this.tx
      .createQueryBuilder()
      .insert()
      .into(IdempotencyKeyRow)
      .values({ ...use, estimateId })
      .execute();
  }

  findKey({ organisationId, operation, key }: KeyUse): Promise<IdempotencyKeyRow | null> {
    return this.tx.findOneBy(IdempotencyKeyRow, { organisationId, operation, key });
  }

  find(id: string): Promise<EstimateRow | null> {
    return this.tx.findOneBy(EstimateRow, { id });
  }

  /** The row without its documents, and the document of the estimate as the text it was written as. */
  async findWritten(id: string): Promise<WrittenRow | null> {
    const {
      entities: [row],
      raw,
    } = await this.tx
      .createQueryBuilder(EstimateRow, 'estimate')
      .select(summaryColumns)
      .addSelect('estimate.result::text', 'result_json')
      .where('estimate.id = :id', { id })
      .getRawAndEntities();
    const [texts]: readonly ({ readonly result_json: string } | undefined)[] = raw;
    return row === undefined || texts === undefined ? null : { row, resultJson: texts.result_json };
  }

  async findDerivations(id: string): Promise<Uint8Array | null> {
    const [found]: readonly ({ readonly derivations: Uint8Array | null } | undefined)[] = await this.tx.query(
      'SELECT derivations FROM estimate WHERE id = $1',
      [id],
    );
    return found?.derivations ?? null;
  }

  page({ limit, beforeId, reference }: PageRequest): Promise<SummaryRow[]> {
    const query = this.tx
      .createQueryBuilder(EstimateRow, 'estimate')
      .select(summaryColumns)
      .orderBy('estimate.id', 'DESC')
      .limit(limit);
    if (beforeId !== undefined) query.andWhere('estimate.id < :beforeId', { beforeId });
    if (reference !== undefined) query.andWhere('estimate.reference = :reference', { reference });
    return query.getMany();
  }

  /** The newest revisions of the newest estimates, or those of the ids; with records and documents. */
  latest({ limit, ids }: LatestRequest): Promise<RecordedRow[]> {
    const query = this.tx
      .createQueryBuilder(EstimateRow, 'estimate')
      .select([...summaryColumns, 'estimate.input', 'estimate.result'])
      .orderBy('estimate.id', 'DESC')
      .limit(limit);
    return ids === undefined
      ? query
          .where(
            'NOT EXISTS (SELECT 1 FROM estimate later WHERE later.root_id = estimate.root_id AND later.revision_number > estimate.revision_number)',
          )
          .getMany()
      : query.where('estimate.id = ANY(:ids::uuid[])', { ids }).getMany();
  }

  async findRootId(id: string): Promise<string | null> {
    const [found]: readonly ({ readonly root_id: string } | undefined)[] = await this.tx.query(
      'SELECT root_id FROM estimate WHERE id = $1',
      [id],
    );
    return found?.root_id ?? null;
  }

  /** From the records of all revisions, and with them what was printed of these and waits to be fetched. */
  async eraseParties(rootId: string): Promise<void> {
    await this.tx.query('SELECT kingplank_erase_parties($1)', [rootId]);
    await this.tx.query(
      `DELETE FROM operation
        WHERE task->>'estimateId' IN (SELECT id::text FROM estimate WHERE root_id = $1)
           OR result_href IN (SELECT '/v1/estimates/' || id FROM estimate WHERE root_id = $1)`,
      [rootId],
    );
  }

  revisionsOf(rootId: string): Promise<SummaryRow[]> {
    return this.tx
      .createQueryBuilder(EstimateRow, 'estimate')
      .select(summaryColumns)
      .where('estimate.rootId = :rootId', { rootId })
      .orderBy('estimate.revisionNumber', 'ASC')
      .limit(1000)
      .getMany();
  }

  findRevision(rootId: string, revisionNumber: number): Promise<EstimateRow | null> {
    return this.tx.findOneBy(EstimateRow, { rootId, revisionNumber });
  }

  async lastRevisionNumber(rootId: string): Promise<number> {
    const found = await this.tx
      .createQueryBuilder(EstimateRow, 'estimate')
      .select('max(estimate.revisionNumber)', 'last')
      .where('estimate.rootId = :rootId', { rootId })
      .getRawOne<{ readonly last: number | null }>();
    return found?.last ?? 0;
  }
}
