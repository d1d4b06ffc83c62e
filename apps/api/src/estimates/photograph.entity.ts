import { Column, CreateDateColumn, Entity, PrimaryColumn } from 'typeorm';

/** A photograph of the deck of an estimate and of all its revisions. */
@Entity('photograph')
export class PhotographRow {
  @PrimaryColumn('uuid', { name: 'root_id', primaryKeyConstraintName: 'photograph_pkey' })
  readonly rootId!: string;

  /** As it is shown on the plan; given by whoever took it. */
  @PrimaryColumn('integer', { primaryKeyConstraintName: 'photograph_pkey' })
  readonly number!: number;

  @Column('uuid', { name: 'organisation_id' })
  readonly organisationId!: string;

  @Column('text')
  readonly caption!: string;

  @Column('double precision', { name: 'x_mm', nullable: true })
  readonly xMm!: number | null;

  @Column('double precision', { name: 'y_mm', nullable: true })
  readonly yMm!: number | null;

  /** 0 towards the bow, 90 to starboard. */
  @Column('double precision', { name: 'direction_deg', nullable: true })
  readonly directionDeg!: number | null;

  /** A JPEG that was drawn anew from the upload. */
  @Column('bytea')
  readonly picture!: Uint8Array;

  @Column('integer', { name: 'width_px' })
  readonly widthPx!: number;

  @Column('integer', { name: 'height_px' })
  readonly heightPx!: number;

  @CreateDateColumn({ name: 'added_at', type: 'timestamptz' })
  readonly addedAt!: Date;
}
