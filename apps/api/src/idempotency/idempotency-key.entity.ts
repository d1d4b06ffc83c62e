import { Column, CreateDateColumn, Entity, PrimaryColumn } from 'typeorm';

/** The answer given under a key: the same key and body lead to the same estimate again. */
@Entity('idempotency_key')
export class IdempotencyKeyRow {
  @PrimaryColumn('uuid', { name: 'organisation_id', primaryKeyConstraintName: 'idempotency_key_pkey' })
  readonly organisationId!: string;

  @PrimaryColumn('text', { primaryKeyConstraintName: 'idempotency_key_pkey' })
  readonly operation!: string;

  @PrimaryColumn('text', { primaryKeyConstraintName: 'idempotency_key_pkey' })
  readonly key!: string;

  @Column('text', { name: 'request_hash' })
  readonly requestHash!: string;

  @Column('uuid', { name: 'estimate_id' })
  readonly estimateId!: string;

  @CreateDateColumn({ name: 'created_at', type: 'timestamptz' })
  readonly createdAt!: Date;
}
