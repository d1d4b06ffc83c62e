import type { DefectRecord, Estimate } from '#lib/estimate';
import { Column, CreateDateColumn, Entity, PrimaryColumn } from 'typeorm';

/** A stored estimate; never updated. Amounts are `numeric` and come back as exact decimal text. */
@Entity('estimate')
export class EstimateRow {
  @PrimaryColumn('uuid', { primaryKeyConstraintName: 'estimate_pkey' })
  readonly id!: string;

  @Column('uuid', { name: 'organisation_id' })
  readonly organisationId!: string;

  @CreateDateColumn({ name: 'created_at', type: 'timestamptz' })
  readonly createdAt!: Date;

  @Column('uuid', { name: 'created_by_key_id' })
  readonly createdByKeyId!: string;

  @Column('text')
  readonly title!: string;

  @Column('text', { nullable: true })
  readonly reference!: string | null;

  /** The first estimate of its line of revisions; itself for the first. */
  @Column('uuid', { name: 'root_id' })
  readonly rootId!: string;

  @Column('integer', { name: 'revision_number' })
  readonly revisionNumber!: number;

  @Column('text', { name: 'revision_reason', nullable: true })
  readonly revisionReason!: string | null;

  @Column('text', { name: 'engine_version' })
  readonly engineVersion!: string;

  @Column('text')
  readonly edition!: string;

  @Column('text', { name: 'catalogue_hash' })
  readonly catalogueHash!: string;

  @Column('text', { name: 'input_hash' })
  readonly inputHash!: string;

  @Column('text')
  readonly currency!: string;

  @Column('numeric', { name: 'net_amount', precision: 20, scale: 4 })
  readonly netAmount!: string;

  @Column('numeric', { name: 'tax_amount', precision: 20, scale: 4 })
  readonly taxAmount!: string;

  @Column('numeric', { name: 'total_amount', precision: 20, scale: 4 })
  readonly totalAmount!: string;

  @Column('numeric', { name: 'total_p10_amount', precision: 20, scale: 4 })
  readonly totalP10Amount!: string;

  @Column('numeric', { name: 'total_p50_amount', precision: 20, scale: 4 })
  readonly totalP50Amount!: string;

  @Column('numeric', { name: 'total_p90_amount', precision: 20, scale: 4 })
  readonly totalP90Amount!: string;

  @Column('double precision', { name: 'labour_h' })
  readonly labourH!: number;

  @Column('text')
  readonly verdict!: string;

  @Column('jsonb')
  readonly input!: DefectRecord;

  @Column('json')
  readonly result!: Estimate;

  /** Every figure once, compressed: see derivation-graph.ts. */
  @Column('bytea', { nullable: true })
  readonly derivations!: Uint8Array | null;
}
