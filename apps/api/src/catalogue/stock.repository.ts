import type { Transaction } from '../persistence/database.js';
import { StockRow } from './stock.entity.js';

export interface Count {
  readonly sku: string;
  readonly packs: number;
}

/** What was counted of one price list, in the organisation of the transaction. */
export class StockRepository {
  private constructor(
    private readonly tx: Transaction,
    private readonly priceList: string,
  ) {}

  static in(tx: Transaction, priceList: string): StockRepository {
    return new StockRepository(tx, priceList);
  }

  /** By SKU. */
  list(): Promise<StockRow[]> {
    return this.tx.find(StockRow, { where: { priceList: this.priceList }, order: { sku: 'ASC' } });
  }

  find(sku: string): Promise<StockRow | null> {
    return this.tx.findOneBy(StockRow, { priceList: this.priceList, sku });
  }

  /** Puts counts in the place of earlier ones; those not named stay. */
  async put(organisationId: string, counts: readonly Count[]): Promise<void> {
    await this.tx.query(
      `INSERT INTO stock (organisation_id, price_list, sku, packs, counted_at)
       SELECT $1, $2, count->>'sku', (count->>'packs')::integer, clock_timestamp()
       FROM jsonb_array_elements($3::jsonb) AS count
       ON CONFLICT (organisation_id, price_list, sku)
       DO UPDATE SET packs = excluded.packs, counted_at = excluded.counted_at`,
      [organisationId, this.priceList, JSON.stringify(counts)],
    );
  }

  async remove(sku: string): Promise<void> {
    await this.tx.delete(StockRow, { priceList: this.priceList, sku });
  }
}
