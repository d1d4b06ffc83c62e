import { Column, Entity, PrimaryColumn } from 'typeorm';

@Entity('audit_entry')
export class AuditEntryRow {
  @PrimaryColumn('uuid', { primaryKeyConstraintName: 'audit_entry_pkey' })
  readonly id!: string;

  @Column('uuid', { name: 'organisation_id', nullable: true })
  readonly organisationId!: string | null;

  @Column('timestamptz', { default: () => 'now()' })
  readonly at!: Date;

  @Column('uuid', { name: 'key_id', nullable: true })
  readonly keyId!: string | null;

  @Column('text', { name: 'request_id', nullable: true })
  readonly requestId!: string | null;

  @Column('text')
  readonly action!: string;

  @Column('text')
  readonly subject!: string;

  @Column('text', { name: 'subject_code' })
  readonly subjectCode!: string;

  @Column('uuid', { name: 'edition_id', nullable: true })
  readonly editionId!: string | null;

  @Column('jsonb', { nullable: true })
  readonly before!: unknown;

  @Column('jsonb', { nullable: true })
  readonly after!: unknown;
}
