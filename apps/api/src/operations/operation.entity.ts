import { Column, CreateDateColumn, Entity, PrimaryColumn } from 'typeorm';
import type { LongOperation, OperationProblem } from './long-operation.js';

/** A piece of work that was accepted and is answered later; its answer is kept beside it until it expires. */
@Entity('operation')
export class OperationRow {
  @PrimaryColumn('uuid', { primaryKeyConstraintName: 'operation_pkey' })
  readonly id!: string;

  @Column('uuid', { name: 'organisation_id' })
  readonly organisationId!: string;

  /** Which handler understands the task. */
  @Column('text')
  readonly kind!: string;

  @Column('jsonb')
  readonly task!: unknown;

  @Column('text', { name: 'task_hash' })
  readonly taskHash!: string;

  @Column('text', { default: 'waiting' })
  readonly status!: LongOperation['status'];

  @Column('integer', { default: 0 })
  readonly attempts!: number;

  @CreateDateColumn({ name: 'created_at', type: 'timestamptz' })
  readonly createdAt!: Date;

  /** From this moment any copy of the service may take it: at once when it waits, after its lease when it runs. */
  @Column('timestamptz', { name: 'due_at', default: () => 'now()' })
  readonly dueAt!: Date;

  @Column('timestamptz', { name: 'started_at', nullable: true })
  readonly startedAt!: Date | null;

  @Column('timestamptz', { name: 'finished_at', nullable: true })
  readonly finishedAt!: Date | null;

  @Column('timestamptz', { name: 'expires_at' })
  readonly expiresAt!: Date;

  @Column('jsonb', { nullable: true })
  readonly problem!: OperationProblem | null;

  @Column('text', { name: 'media_type', nullable: true })
  readonly mediaType!: string | null;

  /** Where what was made has its place; null when it is kept here. */
  @Column('text', { name: 'result_href', nullable: true })
  readonly resultHref!: string | null;

  @Column('jsonb', { nullable: true })
  readonly headers!: Readonly<Record<string, string>> | null;

  @Column('bytea', { nullable: true })
  readonly content!: Uint8Array | null;
}
