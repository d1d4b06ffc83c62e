import { Column, Entity, PrimaryColumn, UpdateDateColumn } from 'typeorm';

/** What stands at the head of an organisation's documents, beside its name. */
@Entity('letterhead')
export class LetterheadRow {
  @PrimaryColumn('uuid', { name: 'organisation_id', primaryKeyConstraintName: 'letterhead_pkey' })
  readonly organisationId!: string;

  @Column('text', { array: true })
  readonly lines!: readonly string[];

  /** For those who cannot see the logo. */
  @Column('text', { name: 'logo_description', nullable: true })
  readonly logoDescription!: string | null;

  /** A PNG that was drawn anew from the upload. */
  @Column('bytea', { nullable: true })
  readonly logo!: Uint8Array | null;

  @UpdateDateColumn({ name: 'updated_at', type: 'timestamptz' })
  readonly updatedAt!: Date;

  @Column('integer', { default: 1 })
  readonly version!: number;
}
