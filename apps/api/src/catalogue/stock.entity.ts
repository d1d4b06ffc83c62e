import { Column, Entity, PrimaryColumn } from 'typeorm';

/** How many packs of a SKU of a price list there are now, whatever edition is current. */
@Entity('stock')
export class StockRow {
  @PrimaryColumn('uuid', { name: 'organisation_id', primaryKeyConstraintName: 'stock_pkey' })
  readonly organisationId!: string;

  @PrimaryColumn('text', { name: 'price_list', primaryKeyConstraintName: 'stock_pkey' })
  readonly priceList!: string;

  @PrimaryColumn('text', { primaryKeyConstraintName: 'stock_pkey' })
  readonly sku!: string;

  @Column('integer')
  readonly packs!: number;

  @Column('timestamptz', { name: 'counted_at', default: () => 'now()' })
  readonly countedAt!: Date;
}
