import { Column, CreateDateColumn, Entity, PrimaryColumn, UpdateDateColumn } from 'typeorm';
import type { Role } from './roles.js';

@Entity('organisation')
export class OrganisationRow {
  @PrimaryColumn('uuid', { primaryKeyConstraintName: 'organisation_pkey' })
  readonly id!: string;

  @Column('text')
  readonly name!: string;

  @CreateDateColumn({ name: 'created_at', type: 'timestamptz' })
  readonly createdAt!: Date;

  @UpdateDateColumn({ name: 'updated_at', type: 'timestamptz' })
  readonly updatedAt!: Date;

  @Column('integer', { default: 1 })
  readonly version!: number;
}

@Entity('api_key')
export class ApiKeyRow {
  @PrimaryColumn('uuid', { primaryKeyConstraintName: 'api_key_pkey' })
  readonly id!: string;

  @Column('uuid', { name: 'organisation_id' })
  readonly organisationId!: string;

  @Column('text')
  readonly name!: string;

  /** SHA-256 of the key. Keys are 256 random bits, so a slow hash would protect nothing that chance does not. */
  @Column('text', { name: 'key_hash' })
  readonly keyHash!: string;

  /** The first characters, by which a person recognises the key. */
  @Column('text')
  readonly prefix!: string;

  @Column('text', { array: true })
  readonly roles!: readonly Role[];

  @CreateDateColumn({ name: 'created_at', type: 'timestamptz' })
  readonly createdAt!: Date;

  @Column('timestamptz', { name: 'revoked_at', nullable: true })
  readonly revokedAt!: Date | null;

  @Column('integer', { default: 1 })
  readonly version!: number;
}
