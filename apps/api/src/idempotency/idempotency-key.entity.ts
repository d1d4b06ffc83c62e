import { Column, CreateDateColumn, Entity, PrimaryColumn } from 'typeorm';

/** What was done under a key: the same key and request get the same answer again. */
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

  /** Null for a change that is not an estimate. */
  @Column('uuid', { name: 'estimate_id', nullable: true })
  readonly estimateId!: string | null;

  /** Tells one use of the key from another; null for an estimate. */
  @Column('uuid', { name: 'claim_id', nullable: true })
  readonly claimId!: string | null;

  /** What was done, so that it can be named even when its answer was lost. */
  @Column('text', { nullable: true })
  readonly subject!: string | null;

  @Column('text', { name: 'subject_code', nullable: true })
  readonly subjectCode!: string | null;

  /** Sealed with the caller's key. */
  @Column('bytea', { nullable: true })
  readonly answer!: Uint8Array | null;

  @CreateDateColumn({ name: 'created_at', type: 'timestamptz' })
  readonly createdAt!: Date;
}
