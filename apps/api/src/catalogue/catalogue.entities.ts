import { Column, CreateDateColumn, Entity, PrimaryColumn, UpdateDateColumn } from 'typeorm';

export type EditionState = 'draft' | 'published';

/** One state of the catalogue: a draft that may change, or published and then never changed. */
@Entity('edition')
export class EditionRow {
  @PrimaryColumn('uuid', { primaryKeyConstraintName: 'edition_pkey' })
  readonly id!: string;

  /** Null for the shipped catalogue, which everybody reads. */
  @Column('uuid', { name: 'organisation_id', nullable: true })
  readonly organisationId!: string | null;

  @Column('text')
  readonly code!: string;

  @Column('text')
  readonly state!: EditionState;

  @Column('uuid', { name: 'based_on_id', nullable: true })
  readonly basedOnId!: string | null;

  @Column('text', { default: '' })
  readonly note!: string;

  @Column('text', { name: 'content_hash', nullable: true })
  readonly contentHash!: string | null;

  @CreateDateColumn({ name: 'created_at', type: 'timestamptz' })
  readonly createdAt!: Date;

  @Column('timestamptz', { name: 'published_at', nullable: true })
  readonly publishedAt!: Date | null;

  /** From when a published edition counts, where that is later than its publication. */
  @Column('timestamptz', { name: 'effective_at', nullable: true })
  readonly effectiveAt!: Date | null;

  @Column('integer', { default: 1 })
  readonly version!: number;
}

/** What the four kinds of catalogue rows have in common; `body` is the domain's own document. */
abstract class CatalogueRow {
  @PrimaryColumn('uuid', { name: 'edition_id' })
  readonly editionId!: string;

  @PrimaryColumn('text')
  readonly code!: string;

  @Column('uuid', { name: 'organisation_id', nullable: true })
  readonly organisationId!: string | null;

  @Column('text')
  readonly kind!: string;

  @Column('text')
  readonly name!: string;

  @Column('jsonb')
  readonly body!: unknown;

  /** Keeps the order of the catalogue, in which an estimate looks things up. */
  @Column('integer')
  readonly position!: number;

  @UpdateDateColumn({ name: 'updated_at', type: 'timestamptz' })
  readonly updatedAt!: Date;

  @Column('integer', { default: 1 })
  readonly version!: number;
}

@Entity('material')
export class MaterialRow extends CatalogueRow {}

@Entity('price_list')
export class PriceListRow extends CatalogueRow {}

@Entity('labour_rates')
export class LabourRatesRow extends CatalogueRow {}

@Entity('source')
export class SourceRow extends CatalogueRow {}
