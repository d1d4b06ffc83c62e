import type { Transaction } from '../persistence/database.js';
import { IdempotencyKeyRow } from '../idempotency/idempotency-key.entity.js';
import { EstimateRow } from './estimate.entity.js';
import type { NewEstimateRow, SummaryRow } from './estimate.mapper.js';

export interface KeyUse {
  readonly organisationId: string;
  readonly operation: string;
  readonly key: string;
  readonly requestHash: string;
}

interface PageRequest {
  readonly limit: number;
  /** Estimates made before this one. */
  readonly beforeId?: string;
  readonly reference?: string;
}

const summaryColumns = [
  'id', 'createdAt', 'organisationId', 'createdByKeyId', 'title', 'reference', 'rootId', 'revisionNumber', 'revisionReason', 'engineVersion',
  'edition', 'catalogueHash', 'inputHash', 'currency', 'netAmount', 'taxAmount', 'totalAmount', 'totalP10Amount', 'totalP50Amount',
  'totalP90Amount', 'labourH', 'verdict',
].map((column) => `estimate.${column}`);

/** Estimates of the organisation of the transaction. */
export class EstimatesRepository {
  private constructor(private readonly tx: Transaction) {}

  static in(tx: Transaction): EstimatesRepository {
    return new EstimatesRepository(tx);
  }

  /** Returns the moment at which the database wrote it. */
  async add(row: NewEstimateRow): Promise<Date> {
    const { generatedMaps: [generated] } = await this.tx.createQueryBuilder().insert().into(EstimateRow).values(row).returning(['createdAt']).execute();
    const createdAt: unknown = generated.createdAt;
    return createdAt instanceof Date ? createdAt : new Date(String(createdAt));
  }

  async rememberKey(use: KeyUse, estimateId: string): Promise<void> {
    await this.tx.createQueryBuilder().insert().into(IdempotencyKeyRow).values({ ...use, estimateId }).execute();
  }

  findKey({ organisationId, operation, key }: KeyUse): Promise<IdempotencyKeyRow | null> {
    return this.tx.findOneBy(IdempotencyKeyRow, { organisationId, operation, key });
  }

  find(id: string): Promise<EstimateRow | null> {
    return this.tx.findOneBy(EstimateRow, { id });
  }

  page({ limit, beforeId, reference }: PageRequest): Promise<SummaryRow[]> {
    const query = this.tx.createQueryBuilder(EstimateRow, 'estimate').select(summaryColumns).orderBy('estimate.id', 'DESC').limit(limit);
    if (beforeId !== undefined) query.andWhere('estimate.id < :beforeId', { beforeId });
    if (reference !== undefined) query.andWhere('estimate.reference = :reference', { reference });
    return query.getMany();
  }

  revisionsOf(rootId: string): Promise<SummaryRow[]> {
    return this.tx.createQueryBuilder(EstimateRow, 'estimate').select(summaryColumns)
      .where('estimate.rootId = :rootId', { rootId }).orderBy('estimate.revisionNumber', 'ASC').limit(1000).getMany();
  }

  findRevision(rootId: string, revisionNumber: number): Promise<EstimateRow | null> {
    return this.tx.findOneBy(EstimateRow, { rootId, revisionNumber });
  }

  async lastRevisionNumber(rootId: string): Promise<number> {
    const found = await this.tx.createQueryBuilder(EstimateRow, 'estimate').select('max(estimate.revisionNumber)', 'last')
      .where('estimate.rootId = :rootId', { rootId }).getRawOne<{ readonly last: number | null }>();
    return found?.last ?? 0;
  }
}
